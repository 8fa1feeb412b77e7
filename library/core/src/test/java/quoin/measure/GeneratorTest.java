package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class GeneratorTest {
    @Test
    void xoshiroFromItsReferenceState() {
        // handbook (from memory): first outputs of the authors' C code from the state 1, 2, 3, 4
        Generator random = new Generator(1, 2, 3, 4);
        assertThat(random.next()).isEqualTo(41943041L);
        assertThat(random.next()).isEqualTo(58720359L);
        assertThat(random.next()).isEqualTo(3588806011781223L);
        assertThat(random.next()).isEqualTo(3591011842654386L);
        assertThat(Long.toUnsignedString(random.next())).isEqualTo("9228616714210784205");
    }

    @Test
    void splitmixFillsTheState() {
        // handbook (from memory): first output of splitmix64 for the seed 1234567
        assertThat(Generator.mix(1234567L + 0x9E3779B97F4A7C15L)).isEqualTo(6457827717110365317L);
    }

    @Test
    void unitsLeaveZeroOut() {
        Generator random = new Generator(7);
        double least = 1;
        double greatest = 0;
        double sum = 0;
        for (int i = 0; i < 100_000; i++) {
            double unit = random.unit();
            least = StrictMath.min(least, unit);
            greatest = StrictMath.max(greatest, unit);
            sum += random.signed();
        }
        assertThat(least).isBetween(Double.MIN_VALUE, 1e-3);
        assertThat(greatest).isBetween(0.999, 1.0);
        // five standard errors of a mean of 100 000 numbers of standard deviation 1 / √3
        assertThat(sum / 100_000).isBetween(-0.0092, 0.0092);
    }
}
