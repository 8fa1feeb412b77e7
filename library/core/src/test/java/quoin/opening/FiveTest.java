package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.junit.jupiter.api.Test;

/** What is written out for five unknowns says what the loops say, and what another library's elimination says. */
class FiveTest {
    private static final double[] WEIGHT = {1, 2, 3, 4, 5, 6, 7, 8};

    private final Random random = new Random(11);

    private double[] rows(int width) {
        double[] rows = new double[8 * width];
        for (int i = 0; i < 8; i++) {
            for (int k = 0; k < Five.SIZE; k++) {
                rows[i * width + k] = random.nextGaussian();
            }
        }
        return rows;
    }

    private static double[] triangle(double[] rows, int width) {
        double[] triangle = new double[Cholesky.sizeOf(width)];
        LeastSquares.addSquares(triangle, rows, width, WEIGHT);
        return triangle;
    }

    /** To the bit: a sixth unknown that nothing ties sends the same matrix through the loops. */
    @Test
    void theLoopsSayTheSame() {
        for (int time = 0; time < 100; time++) {
            double[] rows = rows(Five.SIZE);
            double[] wide = new double[8 * 6];
            for (int i = 0; i < 8; i++) {
                System.arraycopy(rows, i * Five.SIZE, wide, i * 6, Five.SIZE);
            }
            double[] five = triangle(rows, Five.SIZE);
            double[] six = triangle(wide, 6);
            six[Cholesky.row(5) + 5] = 1;
            assertThat(Arrays.copyOf(six, five.length)).isEqualTo(five);
            double[] b = Arrays.copyOf(rows, 6);
            b[5] = 0;
            double[] loops = b.clone();
            Cholesky writtenOut = new Cholesky(five, Five.SIZE, 0);
            Cholesky looped = new Cholesky(six, 6, 0);
            assertThat(writtenOut.isDefinite()).isTrue();
            writtenOut.solveInPlace(b);
            looped.solveInPlace(loops);
            assertThat(b).isEqualTo(loops);
            assertThat(writtenOut.leastPivot(Five.SIZE)).isEqualTo(looped.leastPivot(Five.SIZE));
            double[] halves = writtenOut.halves(rows);
            double[] wideHalves = looped.halves(wide);
            assertThat(Arrays.copyOf(halves, Five.SIZE)).isEqualTo(Arrays.copyOf(wideHalves, Five.SIZE));
        }
    }

    /** commons-math3's LU decomposition; 1e-9 for a matrix of random rows. */
    @Test
    void anotherEliminationSaysTheSame() {
        double[] triangle = triangle(rows(Five.SIZE), Five.SIZE);
        double[][] full = new double[Five.SIZE][Five.SIZE];
        for (int i = 0; i < Five.SIZE; i++) {
            for (int j = 0; j <= i; j++) {
                full[i][j] = triangle[Cholesky.row(i) + j];
                full[j][i] = full[i][j];
            }
        }
        double[][] other = new LUDecomposition(new Array2DRowRealMatrix(full))
                .getSolver()
                .getInverse()
                .getData();
        double[][] inverse = new Cholesky(triangle, Five.SIZE, 0).inverse();
        for (int i = 0; i < Five.SIZE; i++) {
            assertThat(inverse[i]).containsExactly(other[i], within(1e-9));
        }
    }

    @Test
    void whatDoesNotDetermineIsNotDefinite() {
        double[] rows = rows(Five.SIZE);
        for (int i = 0; i < 8; i++) {
            rows[i * Five.SIZE + 4] = 0;
        }
        assertThat(new Cholesky(triangle(rows, Five.SIZE), Five.SIZE, 0).isDefinite())
                .isFalse();
        rows[0] = Double.NaN;
        assertThat(new Cholesky(triangle(rows, Five.SIZE), Five.SIZE, 0).isDefinite())
                .isFalse();
    }

    /**
     * The bound of the pivots never promises more than the matrix keeps in which every row counts alike, however unequal
     * the weights are; that matrix is factored for the comparison.
     */
    @Test
    void theBoundOfThePivotsIsABound() {
        for (int time = 0; time < 200; time++) {
            double[] rows = rows(Five.SIZE);
            double[] variance = new double[8];
            double[] alike = new double[8];
            for (int i = 0; i < 8; i++) {
                double nearly = 0.5 + random.nextDouble() * 1e-3;
                rows[i * Five.SIZE + 4] = time % 2 == 0 ? rows[i * Five.SIZE + 4] : nearly * rows[i * Five.SIZE + 3];
                variance[i] = Math.pow(10, 4 * random.nextDouble());
                alike[i] = 1 / LeastSquares.product(Five.SIZE, rows, i, rows, i);
            }
            LeastSquares weighted = new LeastSquares(variance, new double[0][], new double[0]);
            assertThat(weighted.isDetermined(rows, Five.SIZE)).isTrue();
            double[] equal = new double[Cholesky.sizeOf(Five.SIZE)];
            LeastSquares.addSquares(equal, rows, Five.SIZE, alike);
            double kept = new Cholesky(equal, Five.SIZE, 0).leastPivot(Five.SIZE);
            assertThat(weighted.leastPivot()).isPositive().isLessThanOrEqualTo(kept * (1 + 1e-9));
        }
    }
}
