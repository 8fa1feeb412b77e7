package quoin.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import quoin.judge.DecisionRule;
import quoin.judge.Finding;
import quoin.judge.Verdict;
import quoin.measure.Influence;
import quoin.measure.Uncertain;
import quoin.opening.LineFit.Station;

class PackersTest {
    private static final DecisionRule SURE = DecisionRule.guarded(0.95);

    private static Station gap(double at, double mm, double u) {
        return new Station(at, Uncertain.of(mm, Influence.normal("gap-" + at, u)));
    }

    private static Packer fill(List<Double> thicknesses, double mm, double u) {
        return Packers.of(thicknesses).fill(List.of(gap(0, mm, u))).get(0);
    }

    /** Worked by hand. */
    @Test
    void theThickestStackOfTheFewestPiecesGoesIn() {
        Packer packer = fill(List.of(1.0, 2.0, 3.0, 5.0), 9.4, 0.2);
        assertThat(packer.pieces()).containsExactly(5.0, 3.0, 1.0);
        assertThat(packer.thicknessMm()).isEqualTo(9);
        assertThat(packer.left().value()).isCloseTo(0.4, within(1e-12));
        assertThat(packer.left().standardUncertainty()).isEqualTo(0.2);
    }

    /** The thickest first does not do: 4 + 1 + 1 has one piece more than 3 + 3. */
    @Test
    void greedyStacksAreNotTheShortest() {
        assertThat(fill(List.of(1.0, 3.0, 4.0), 6, 0.1).pieces()).containsExactly(3.0, 3.0);
    }

    @Test
    void withoutAThinPieceMoreIsLeft() {
        Packer packer = fill(List.of(3.0, 5.0), 4.9, 0.1);
        assertThat(packer.pieces()).containsExactly(3.0);
        assertThat(packer.left().value()).isCloseTo(1.9, within(1e-12));
    }

    /** 0.7 / 0.1 is 6.999999999999999 in doubles, and still seven pieces. */
    @Test
    void aGapThatIsAStackButForRoundingTakesTheStack() {
        assertThat(fill(List.of(0.1), 0.7, 0).pieces()).hasSize(7);
    }

    /** Common practice, no source: nothing below what the reading can tell, here twice its standard uncertainty. */
    @Test
    void whatTheReadingsCannotTellGetsNoPacker() {
        assertThat(fill(List.of(1.0), 1.9, 1).pieces()).isEmpty();
        assertThat(fill(List.of(1.0), 2, 1).pieces()).containsExactly(1.0, 1.0);
        assertThat(fill(List.of(1.0), 0.99, 0).pieces()).isEmpty();
        assertThat(fill(List.of(1.0), -2, 0).left().value()).isEqualTo(-2);
    }

    @Test
    void screwsMayBeTightenedWhereLittleIsLeft() {
        Packers packers = Packers.of(List.of(1.0));
        List<Packer> close = packers.fill(List.of(gap(100, 3.2, 0.1), gap(500, 4.1, 0.1)));
        assertThat(Packers.mayTighten(close, 0.5, SURE).verdict()).isEqualTo(Verdict.PASS);
        List<Packer> wide = Packers.of(List.of(5.0)).fill(List.of(gap(100, 3.2, 0.1), gap(500, 5.1, 0.1)));
        Finding finding = Packers.mayTighten(wide, 0.5, SURE);
        assertThat(finding.verdict()).isEqualTo(Verdict.FAIL);
        List<Packer> doubtful = packers.fill(List.of(gap(100, 3.2, 0.6), gap(500, 4.1, 0.1)));
        assertThat(Packers.mayTighten(doubtful, 0.5, SURE).verdict()).isEqualTo(Verdict.UNDECIDED);
        List<Packer> inTheWay = packers.fill(List.of(gap(100, -2, 0.1)));
        assertThat(Packers.mayTighten(inTheWay, 0.5, SURE).verdict()).isEqualTo(Verdict.FAIL);
    }

    @Test
    void whatIsNoPackerIsRefused() {
        assertThatThrownBy(() -> Packers.of(List.of())).hasMessage("number of thicknesses must be from 1 to 20, got 0");
        for (double wrong : new double[] {0, -1, Double.NaN, 1.0005e-3, 101, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> Packers.of(List.of(1.0, wrong)))
                    .hasMessage("thickness must be whole thousandths from 0.001 mm to 100 mm, got " + wrong + " mm");
        }
        assertThatThrownBy(() -> fill(List.of(1.0), 100.5, 0)).hasMessage("gap must be 100.0 mm or less, got 100.5 mm");
        assertThatThrownBy(() -> Packers.mayTighten(List.of(), 1, SURE)).isInstanceOf(IllegalArgumentException.class);
    }
}
