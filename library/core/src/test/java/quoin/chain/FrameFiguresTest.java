package quoin.chain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import quoin.measure.Influence;
import quoin.measure.Uncertain;

class FrameFiguresTest {
    /** Plane geometry; the doubt of a product by JCGM 100:2008, 5.1.6: relative variances add. Exact to rounding. */
    @Test
    void areaCarriesTheDoubtOfBothCuts() {
        Uncertain area = FrameFigures.area(
                Uncertain.of(1495, Influence.normal("w", 0.3)), Uncertain.of(2392, Influence.normal("l", 0.4)));
        assertThat(area.value()).isEqualTo(1495.0 * 2392);
        double relative = StrictMath.hypot(0.3 / 1495, 0.4 / 2392);
        assertThat(area.standardUncertainty() / area.value()).isCloseTo(relative, within(1e-12));
        assertThat(FrameFigures.CATALOGUE.find("frame.area")).isPresent();
    }
}
