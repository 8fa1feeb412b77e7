package quoin.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quoin.judge.DecisionRule;
import quoin.judge.Problem;
import quoin.judge.Source;
import quoin.measure.Estimate;
import quoin.measure.Uncertain;

class CoverageTest {
    private static final Quota BANDS = new Quota.Banded(
            "frame.width",
            List.of(
                    new Quota.Band(Sample.mm(1800), Sample.mm(50)),
                    new Quota.Band(Sample.mm(3000), Sample.mm(63)),
                    new Quota.Band(Sample.mm(4000), Sample.mm(70))));

    private static final Rulebook BOOK = Rulebook.of("a", "1.0.0", "2026-01-01", "", DecisionRule.simple())
            .withSizes(List.of(
                    SizeClause.of("frame.width", new Base.OfFigure("fit.width"))
                            .withLess(
                                    new Item(new Quota.ByChoice("drive", amounts("m", "s/x")), 1, "", Source.PRACTICE)),
                    SizeClause.of("tube", new Base.OfQuota(BANDS)),
                    SizeClause.of("never", new Base.OfFigure("fit.depth"))
                            .withMore(new Item(BANDS, 1, "", Source.PRACTICE))))
            .withBounds(List.of(BoundClause.of("small", "frame.width").withAtMost(BANDS)));

    private static Map<String, Stated> amounts(String... parts) {
        Map<String, Stated> amounts = new LinkedHashMap<>();
        for (String part : parts) {
            amounts.put(part, Stated.of(Sample.mm(4)));
        }
        return amounts;
    }

    private static Coverage plus(Coverage coverage, double widthMm, String drive) {
        Map<String, Estimate> figures = Map.of("frame.width", Uncertain.exact(widthMm), "tube", Uncertain.exact(50));
        return coverage.plus(figure -> Optional.ofNullable(figures.get(figure)), Map.of("drive", drive));
    }

    private static List<String> untouched(Coverage coverage) {
        return coverage.untouched().stream()
                .map(problem -> problem.code() + " " + problem.pointer())
                .toList();
    }

    @Test
    void withoutAJobNothingIsTouchedAndWhatIsWithinAClauseIsNotSaidAgain() {
        assertThat(untouched(Coverage.of(BOOK)))
                .containsExactly(
                        "clause-untouched /sizes/0",
                        "clause-untouched /sizes/1",
                        "clause-untouched /sizes/2",
                        "clause-untouched /bounds/0");
        assertThat(Coverage.of(BOOK).size()).as("4 clauses, 9 bands, 2 choices").isEqualTo(15);
    }

    /** The upper edge of a band belongs to it. */
    @Test
    void aJobTouchesTheBandItIsInAndThePartItChose() {
        Coverage one = plus(Coverage.of(BOOK), 1800, "m");
        assertThat(untouched(one))
                .containsExactly(
                        "choice-untouched /sizes/0/less/0/amounts/s~1x",
                        "band-untouched /sizes/1/of/bands/amounts/1",
                        "band-untouched /sizes/1/of/bands/amounts/2",
                        "clause-untouched /sizes/2",
                        "band-untouched /bounds/0/atMost/bands/amounts/1",
                        "band-untouched /bounds/0/atMost/bands/amounts/2");
        Coverage two = plus(one, 1800.5, "s/x");
        assertThat(untouched(two))
                .containsExactly(
                        "band-untouched /sizes/1/of/bands/amounts/2",
                        "clause-untouched /sizes/2",
                        "band-untouched /bounds/0/atMost/bands/amounts/2");
        assertThat(untouched(plus(two, 4000.5, "m"))).as("above the last band").isEqualTo(untouched(two));
        assertThat(untouched(one)).as("the copy is another one").hasSize(6);
    }

    @Test
    void aBandIsNamedWithItsEdges() {
        Problem band = plus(Coverage.of(BOOK), 1800, "m").untouched().get(1);
        assertThat(band.severity()).isEqualTo(Problem.Severity.WARNING);
        assertThat(band.args().asMap())
                .isEqualTo(
                        Map.of("clause", "tube", "by", "frame.width", "above", 1800.0, "upTo", 3000.0, "unit", "mm"));
    }

    /** Two clauses that enter one table touch its bands each for itself. */
    @Test
    void theBandsOfATableBelongToEachClauseThatEntersIt() {
        Quota table = new Quota.Banded("frame.width", ((Quota.Banded) BANDS).bands(), "widths");
        Rulebook book = Rulebook.of("a", "1.0.0", "2026-01-01", "", DecisionRule.simple())
                .withBounds(List.of(
                        BoundClause.of("one", "tube").withAtMost(table),
                        BoundClause.of("two", "nothing").withAtMost(table)));
        assertThat(untouched(plus(Coverage.of(book), 1800, "m")))
                .containsExactly(
                        "band-untouched /bounds/0/atMost/table",
                        "band-untouched /bounds/0/atMost/table",
                        "clause-untouched /bounds/1");
    }
}
