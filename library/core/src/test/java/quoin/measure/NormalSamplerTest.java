package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class NormalSamplerTest {
    private static final int COUNT = 200_000;

    /** So many that tails and the corners of layers, which draw again, are among them. */
    @Test
    void manyAtOnceAreTheSameAsOneByOne() {
        Generator one = new Generator(7);
        Generator many = new Generator(7);
        double[] z = new double[COUNT + 2];
        NormalSampler.INSTANCE.fill(many, z, 1, COUNT + 1);
        for (int i = 1; i <= COUNT; i++) {
            assertThat(z[i]).isEqualTo(NormalSampler.INSTANCE.sample(one));
        }
        assertThat(z[0]).isZero();
        assertThat(z[COUNT + 1]).isZero();
        assertThat(many.next()).isEqualTo(one.next());
    }
}
