package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * What tells pushes apart, and the least move that evens gaps. Reference: the normal equations, move = Rᵀ(RRᵀ)⁻¹e and
 * volume = √det(RRᵀ) (any textbook on linear algebra), solved by {@link Cholesky}.
 */
class ApartTest {
    private static final double CLOSE = 1e-9;

    @Test
    void asTheNormalEquationsSay() {
        Random random = new Random(1);
        for (int round = 0; round < 3000; round++) {
            int axes = 2 + round % 2;
            int count = 1 + round / 2 % axes;
            double[][] push = new double[6][3];
            for (double[] p : push) {
                for (int k = 0; k < 3; k++) {
                    p[k] = random.nextGaussian();
                }
            }
            int[] of = new int[count + 1];
            for (int k = 0; k <= count; k++) {
                of[k] = (k * 2 + round) % 6 / 2 * 2 + (k == 3 ? 1 : 0);
            }
            double[] more = {random.nextGaussian(), count > 1 ? random.nextGaussian() : 0, count > 2 ? 0.7 : 0};
            compare(push, of, axes, more);
        }
    }

    private static void compare(double[][] push, int[] of, int axes, double[] more) {
        int count = of.length - 1;
        double[][] rows = new double[count][axes];
        double[][] square = new double[count][count];
        for (int r = 0; r < count; r++) {
            for (int k = 0; k < axes; k++) {
                rows[r][k] = push[of[0]][k] - push[of[r + 1]][k];
            }
            for (int s = 0; s <= r; s++) {
                for (int k = 0; k < axes; k++) {
                    square[r][s] += rows[r][k] * rows[s][k];
                }
            }
        }
        Cholesky factored = new Cholesky(square, 0);
        double volume = factored.rootOfDeterminant();
        Apart apart = new Apart(push, of, axes);
        assertThat(apart.volume()).isCloseTo(volume, within(CLOSE));
        if (volume < 0.1) {
            return;
        }
        double[] share = java.util.Arrays.copyOf(more, count);
        factored.solveInPlace(share);
        double[] move = {10, 20, 30};
        apart.addMove(more[0], more[1], more[2], move);
        for (int k = 0; k < 3; k++) {
            double expected = 10 * (k + 1);
            for (int r = 0; r < count && k < axes; r++) {
                expected += rows[r][k] * share[r];
            }
            assertThat(move[k]).isCloseTo(expected, within(1e-7));
        }
    }

    @Test
    void nothingIsMovedWhereNothingIsToldApart() {
        double[] move = {1, 2, 3};
        new Apart(new double[][] {{1, 0, 0}, {0, 0, 0}, {0.5, 0, 0}}, new int[] {0, 1, 2}, 3).addMove(1, 1, 0, move);
        assertThat(move).containsExactly(1, 2, 3);
    }
}
