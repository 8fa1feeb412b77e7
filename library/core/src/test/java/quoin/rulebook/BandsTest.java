package quoin.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quoin.judge.Finding;
import quoin.judge.Reason;
import quoin.judge.Step;
import quoin.judge.Verdict;
import quoin.measure.Estimate;
import quoin.measure.Uncertain;

/**
 * Standard: ISO 286-1:2010, table 1, tolerance grade IT7 in &micro;m for the ranges 0&ndash;3, 3&ndash;6, 6&ndash;10,
 * 10&ndash;18, 18&ndash;30, 30&ndash;50, 50&ndash;80 mm: 10, 12, 15, 18, 21, 25, 30. A size equal to a range's top
 * belongs to that range. Exact.
 */
class BandsTest {
    private static final Quota.Banded IT7 =
            Sample.bands("fit.width", 3, 0.010, 6, 0.012, 10, 0.015, 18, 0.018, 30, 0.021, 50, 0.025, 80, 0.030);

    private static Outcome pick(Quota quota, double value) {
        FigureSource source = Sample.only("fit.width", Uncertain.exact(value));
        return new Picking(source, Map.of()).pick(quota, "some");
    }

    @ParameterizedTest
    @CsvSource({
        "0.001, 0.010", "3, 0.010", "3.001, 0.012", "6, 0.012", "6.001, 0.015", "10.0, 0.015", "10.001, 0.018",
        "18, 0.018", "18.001, 0.021", "30, 0.021", "30.001, 0.025", "50, 0.025", "50.001, 0.030", "80, 0.030"
    })
    void theTopOfARangeBelongsToIt(double size, double tolerance) {
        Outcome outcome = pick(IT7, size);
        assertThat(outcome).isInstanceOf(Outcome.Found.class);
        assertThat(((Outcome.Found) outcome).amount()).isEqualTo(Sample.mm(tolerance));
    }

    @ParameterizedTest
    @CsvSource({"0", "-1", "80.001", "1e6"})
    void outsideTheRangesThereIsNoAmount(double size) {
        Outcome outcome = pick(IT7, size);
        assertThat(outcome).isInstanceOf(Outcome.Lost.class);
        Outcome.Lost lost = (Outcome.Lost) outcome;
        assertThat(lost.cause()).isEqualTo(Outcome.Cause.NO_SIZE_FITS);
        assertThat(lost.why().code()).isEqualTo("outside-bands");
        assertThat(lost.why().args().asMap())
                .isEqualTo(Map.of("by", "fit.width", "value", size, "above", 0.0, "upTo", 80.0, "unit", "mm"));
    }

    /** A linear program that should give 10 may give 10.0000000000003. */
    @Test
    void theLastDigitOfAComputationDecidesNothing() {
        assertThat(((Outcome.Found) pick(IT7, 10.0000000000003)).amount()).isEqualTo(Sample.mm(0.015));
        assertThat(Picking.isUpTo(Double.NaN, 10)).isFalse();
    }

    @Test
    void theBandPickedIsAStep() {
        Step step = ((Outcome.Found) pick(IT7, 9)).steps().get(0);
        assertThat(step.code()).isEqualTo("band");
        assertThat(step.args().asMap())
                .isEqualTo(Map.of(
                        "by",
                        "fit.width",
                        "value",
                        9.0,
                        "upTo",
                        10.0,
                        "unit",
                        "mm",
                        "amount",
                        0.015,
                        "amountUnit",
                        "mm"));
    }

    @Test
    void aSizeAboveTheLastBandFails() {
        Sizes sizes = Sample.decide(Sample.rulebook(), Sample.survey(3300, 2400));
        Finding tube = sizes.refused().get(0);
        assertThat(tube.clause()).isEqualTo("tube.diameter");
        assertThat(tube.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(tube.steps()).extracting(Step::code).containsExactly("outside-bands", "no-size-fits");
        assertThat(sizes.refused()).hasSize(1);
    }

    @Test
    void aLimitByBandsIsEvaluatedAtTheEstimate() {
        BoundClause clause =
                BoundClause.of("c", "gap.greatest").withAtMost(Sample.bands("frame.width", 1800, 9, 3000, 12));
        Sizes sizes = Sample.decide(Sample.rulebook(), Sample.survey(2500, 2400));
        Limits limits = clause.bound(sizes.before(figure -> Optional.<Estimate>empty()), Map.of());
        assertThat(limits).isInstanceOf(Limits.Stated.class);
        assertThat(((Limits.Stated) limits).bound().atMost()).isEqualTo(12);
        assertThat(((Limits.Stated) limits).bound().hasAtLeast()).isFalse();
        assertThat(((Limits.Stated) limits).steps()).extracting(Step::code).containsExactly("band");
    }

    @Test
    void aLimitThatIsNotStatedNeverFailsAJob() {
        BoundClause clause = BoundClause.of("c", "gap.greatest").withAtMost(Sample.bands("frame.width", 1800, 9));
        FigureSource wide = Sample.only("frame.width", Uncertain.exact(2000));
        Finding finding = ((Limits.NotStated) clause.bound(wide, Map.of())).finding();
        assertThat(finding.clause()).isEqualTo("c");
        assertThat(finding.figure()).isEqualTo("gap.greatest");
        assertThat(finding.reason()).contains(Reason.NOT_VERIFIED);
        Finding open = ((Limits.NotStated) clause.bound(figure -> Optional.empty(), Map.of())).finding();
        assertThat(open.reason()).contains(Reason.NOT_DETERMINED);
    }

    @Test
    void withinGoesBothWays() {
        Limits limits = Sample.bounds().get(2).bound(figure -> Optional.empty(), Map.of());
        assertThat(((Limits.Stated) limits).bound()).isEqualTo(quoin.judge.Bound.within(6));
        assertThat(((Limits.Stated) limits).steps()).isEmpty();
    }

    @Test
    void limitsThatCrossOrLackAreNotStated() {
        BoundClause none = BoundClause.of("c", "gap.least");
        BoundClause cross = none.withAtLeast(Sample.fixed(2)).withAtMost(Sample.fixed(1));
        BoundClause inside = none.withWithin(Sample.fixed(-1));
        for (BoundClause clause : List.of(none, cross, inside)) {
            Finding finding = ((Limits.NotStated) clause.bound(figure -> Optional.empty(), Map.of())).finding();
            assertThat(finding.reason()).contains(Reason.NOT_VERIFIED);
        }
    }
}
