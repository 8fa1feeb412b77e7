package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class DoubtTest {
    /** The divisors are exact numbers; only the rounding of doubles is allowed for. */
    private static final double EXACT = 1e-15;

    @Test
    void theDivisorsOfTheStatements() {
        // standard (from memory): GUM 4.3.7, limits / sqrt 3; GUM 4.3.3, expanded / k
        assertThat(Doubt.limits(1, Dimension.LENGTH).standardUncertainty(500))
                .isCloseTo(1 / StrictMath.sqrt(3), within(EXACT));
        assertThat(Doubt.expanded(1, 2, Dimension.LENGTH).standardUncertainty(500))
                .isEqualTo(0.5);
        assertThat(Doubt.standard(0.8, Dimension.LENGTH).standardUncertainty(500))
                .isEqualTo(0.8);
    }

    @Test
    void aResolutionOfOneMillimetreIs0289() {
        // standard (from memory): GUM F.2.2.1, r / sqrt 12; three printed digits
        assertThat(Doubt.limits(0.5, Dimension.LENGTH).standardUncertainty(0)).isCloseTo(0.289, within(5e-4));
        assertThat(Doubt.limits(0.25, Dimension.LENGTH).standardUncertainty(0)).isCloseTo(0.144, within(5e-4));
    }

    @Test
    void aDoubtPerLengthIsPerMetreOfTheReading() {
        Doubt doubt = Doubt.standard(0.1, Dimension.LENGTH).perLength();
        assertThat(doubt.standardUncertainty(2500)).isCloseTo(0.25, within(EXACT));
        assertThat(doubt.standardUncertainty(-2500)).isCloseTo(0.25, within(EXACT));
        assertThat(doubt.perLength()).isSameAs(doubt);
        assertThat(doubt.amount()).isCloseTo(1e-4, within(EXACT));
    }

    @Test
    void onlyLimitsAreRectangular() {
        assertThat(Doubt.limits(1, Dimension.LENGTH).shape()).isEqualTo(Shape.RECTANGULAR);
        assertThat(Doubt.standard(1, Dimension.LENGTH).shape()).isEqualTo(Shape.NORMAL);
        assertThat(Doubt.expanded(1, 2, Dimension.LENGTH).shape()).isEqualTo(Shape.NORMAL);
    }

    @Test
    void badStatementsAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Doubt.standard(-1, Dimension.LENGTH))
                .withMessage("doubt must be 0 mm or more and finite, got -1 mm");
        assertThatIllegalArgumentException().isThrownBy(() -> Doubt.limits(Double.NaN, Dimension.LENGTH));
        assertThatIllegalArgumentException().isThrownBy(() -> Doubt.limits(Double.POSITIVE_INFINITY, Dimension.LENGTH));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Doubt.expanded(1, 0, Dimension.LENGTH))
                .withMessage("coverage factor must be more than 0 and finite, got 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Doubt.standard(1, Dimension.ANGLE).perLength())
                .withMessage("a doubt that grows per length must be one of length, got angle");
    }
}
