package quoin.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Against closed forms. Where the lattice is used the tolerance is the error that the odds state themselves, and the
 * stated error must be within 1e-4 unless the test says otherwise.
 */
class JointNormalTest {
    private static final double WANTED = 1e-4;

    private static JointNormal.Row row(double slack, double... contributions) {
        return new JointNormal.Row(slack, contributions);
    }

    private static void assertNear(Odds odds, double exact) {
        assertNear(odds, exact, WANTED);
    }

    private static void assertNear(Odds odds, double exact, double wanted) {
        assertThat(odds.upper() - odds.lower()).isLessThanOrEqualTo(2 * wanted + 1e-6);
        assertThat(odds.value()).isEqualTo(exact, within(wanted));
        assertThat(exact).isBetween(odds.lower() - 1e-9, odds.upper() + 1e-9);
    }

    @Test
    void noConditionIsSure() {
        assertThat(JointNormal.allHold(List.of())).isEqualTo(Odds.firstOrder(1));
    }

    @Test
    void conditionsWithoutDoubtAreSureOrImpossible() {
        assertThat(JointNormal.allHold(List.of(row(0, 0, 0)))).isEqualTo(Odds.firstOrder(1));
        assertThat(JointNormal.allHold(List.of(row(-1e-12, 0, 0)))).isEqualTo(Odds.firstOrder(0));
        assertThat(JointNormal.allHold(List.of(row(1, 0, 0), row(0, 1, 0)))).isEqualTo(Odds.firstOrder(0.5));
        assertThat(JointNormal.allHold(List.of(row(1, 0, 0), row(5, 1, 0), row(-1, 0, 0))))
                .isEqualTo(Odds.firstOrder(0));
    }

    @Test
    void nanNeverHolds() {
        assertThat(JointNormal.allHold(List.of(row(Double.NaN, 1)))).isEqualTo(Odds.firstOrder(0));
        assertThat(JointNormal.allHold(List.of(row(Double.NaN, 0)))).isEqualTo(Odds.firstOrder(0));
        assertThat(JointNormal.allHold(List.of(row(1, Double.NaN)))).isEqualTo(Odds.firstOrder(0));
        assertThat(JointNormal.allHold(List.of(row(1, 1, Double.NaN), row(1, 1, 0))))
                .isEqualTo(Odds.firstOrder(0));
    }

    @Test
    void oneConditionIsItsMarginalWhateverItsScale() {
        assertThat(JointNormal.allHold(List.of(row(1.5, 3, 4)))).isEqualTo(Odds.firstOrder(Gauss.below(0.3)));
        Odds small = JointNormal.allHold(List.of(row(1.5e-200, 3e-200, 4e-200)));
        Odds large = JointNormal.allHold(List.of(row(1.5e200, 3e200, 4e200)));
        assertThat(small.value()).isEqualTo(Gauss.below(0.3), within(1e-14));
        assertThat(large.value()).isEqualTo(Gauss.below(0.3), within(1e-14));
    }

    // handbook: Sheppard 1898, the quadrant of a bivariate normal, 1/4 + asin(rho)/(2 pi).
    @ParameterizedTest
    @ValueSource(doubles = {-0.9995, -0.99, -0.7, -0.3, 0, 0.2, 0.5, 0.8, 0.99, 0.9995})
    void quadrants(double rho) {
        Odds odds = JointNormal.allHold(List.of(row(0, 1, 0), row(0, rho, StrictMath.sqrt(1 - rho * rho))));
        assertNear(odds, 0.25 + StrictMath.asin(rho) / (2 * StrictMath.PI));
    }

    // handbook: Kotz, Balakrishnan and Johnson 2000, the trivariate octant, 1/8 + sum of asin(rho)/(4 pi).
    @Test
    void octants() {
        double[][] rho = {{0.3, -0.2, 0.5}, {0.9, 0.8, 0.7}, {-0.4, -0.4, -0.1}};
        for (double[] r : rho) {
            double l22 = StrictMath.sqrt(1 - r[0] * r[0]);
            double l32 = (r[2] - r[0] * r[1]) / l22;
            double l33 = StrictMath.sqrt(1 - r[1] * r[1] - l32 * l32);
            Odds odds = JointNormal.allHold(List.of(row(0, 1, 0, 0), row(0, r[0], l22, 0), row(0, r[1], l32, l33)));
            double sum = StrictMath.asin(r[0]) + StrictMath.asin(r[1]) + StrictMath.asin(r[2]);
            assertNear(odds, 0.125 + sum / (4 * StrictMath.PI));
        }
    }

    // handbook: Dunnett and Sobel 1955: with all correlations 1/2 the orthant has the probability 1/(n + 1).
    @ParameterizedTest
    @ValueSource(ints = {2, 3, 4, 6, 9, 14})
    void equicorrelatedOrthants(int n) {
        List<JointNormal.Row> rows = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double[] contributions = new double[n + 1];
            contributions[0] = 2;
            contributions[i + 1] = 2;
            rows.add(row(0, contributions));
        }
        assertNear(JointNormal.allHold(rows), 1.0 / (n + 1));
    }

    // handbook: Tong 1990, 5.2: equal correlations rho >= 0 with limits off the centre are one integral,
    // the integral of density(z) * product of below((h + sqrt(rho) z) / sqrt(1 - rho)); here by the midpoint rule in
    // steps of 0.002 over +-8, error far below 1e-7.
    @ParameterizedTest
    @CsvSource({"3, 0.2", "3, 0.9", "5, 0.5", "9, 0.8", "12, 0.35"})
    void equicorrelatedLimits(int n, double rho) {
        for (double least : new double[] {-0.5, 0.6, 1.9}) {
            List<JointNormal.Row> rows = new ArrayList<>();
            double[] h = new double[n];
            for (int i = 0; i < n; i++) {
                h[i] = least + 0.2 * i;
                double[] contributions = new double[n + 1];
                contributions[0] = 3 * StrictMath.sqrt(rho);
                contributions[i + 1] = 3 * StrictMath.sqrt(1 - rho);
                rows.add(row(3 * h[i], contributions));
            }
            double sum = 0;
            double step = 0.002;
            for (double z = -8 + step / 2; z < 8; z += step) {
                double product = Gauss.density(z) * step;
                for (double one : h) {
                    product *= Gauss.below((one + StrictMath.sqrt(rho) * z) / StrictMath.sqrt(1 - rho));
                }
                sum += product;
            }
            assertNear(JointNormal.allHold(rows), sum);
        }
    }

    // A brute-force integral over space: 800 x 800 points of two coordinates, the third in closed form between the
    // limits
    // that the conditions leave it: the integrand has kinks, no jumps, and the error is below 1e-5.
    @Test
    void bruteForceInSpace() {
        double[][] c = {{1, 0.2, 0.7}, {-0.7, 1, -0.4}, {-1, -1.5, 0.9}, {0.4, -1, -1.2}, {0.3, 0.5, 1.1}, {1, 0, 0}};
        double[][] slacks = {{1.4, 1.3, 2.1, 0.9, 1.7, 2}, {-0.2, 0.4, 0.3, 1, 0.5, 1}, {4, 3.5, 5, 4.4, 3.6, 3}};
        for (double[] slack : slacks) {
            List<JointNormal.Row> rows = new ArrayList<>();
            for (int i = 0; i < c.length; i++) {
                rows.add(row(slack[i], c[i]));
            }
            double step = 0.02;
            double sum = 0;
            for (double x = -8 + step / 2; x < 8; x += step) {
                for (double y = -8 + step / 2; y < 8; y += step) {
                    sum += Gauss.density(x) * Gauss.density(y) * step * step * third(c, slack, x, y);
                }
            }
            assertNear(JointNormal.allHold(rows), sum);
        }
    }

    private static double third(double[][] c, double[] slack, double x, double y) {
        double lo = Double.NEGATIVE_INFINITY;
        double hi = Double.POSITIVE_INFINITY;
        for (int i = 0; i < c.length; i++) {
            double rest = slack[i] + c[i][0] * x + c[i][1] * y;
            if (c[i][2] == 0) {
                hi = rest >= 0 ? hi : Double.NEGATIVE_INFINITY;
            } else if (c[i][2] > 0) {
                lo = Math.max(lo, -rest / c[i][2]);
            } else {
                hi = Math.min(hi, -rest / c[i][2]);
            }
        }
        return Gauss.between(lo, hi);
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 5, 12, 30})
    void independentConditionsMultiply(int n) {
        List<JointNormal.Row> rows = new ArrayList<>();
        double product = 1;
        for (int i = 0; i < n; i++) {
            double[] contributions = new double[n];
            contributions[i] = i % 2 == 0 ? 3 : -0.5;
            double h = 0.8 + 0.1 * i;
            rows.add(row(h * Math.abs(contributions[i]), contributions));
            product *= Gauss.below(h);
        }
        assertThat(JointNormal.allHold(rows).value()).isEqualTo(product, within(2e-7));
    }

    @Test
    void perfectlyCorrelatedConditionsAreTheLeastMarginal() {
        Odds odds = JointNormal.allHold(List.of(row(2, 1, 2), row(3, 2, 4), row(9, 3, 6)));
        double least = Gauss.below(3 / StrictMath.sqrt(20));
        assertThat(odds.value()).isEqualTo(least, within(1e-12));
        assertThat(odds.method()).isEqualTo(Odds.Method.FIRST_ORDER);
    }

    @Test
    void oppositeConditionsLeaveAnInterval() {
        Odds odds = JointNormal.allHold(List.of(row(1, 0.6, 0.8), row(0.5, -0.6, -0.8)));
        assertThat(odds.value()).isEqualTo(Gauss.below(0.5) - Gauss.below(-1), within(1e-12));
        assertThat(JointNormal.allHold(List.of(row(-1, 0.6, 0.8), row(0.5, -0.6, -0.8)))
                        .value())
                .isZero();
    }

    // The regular polygon in the plane: 1 - (m/pi) * integral over 0..pi/m of exp(-(h/cos)^2/2), by polar
    // coordinates; here by the midpoint rule in 2000 steps, error below 1e-7.
    @ParameterizedTest
    @ValueSource(ints = {3, 4, 7, 24, 60})
    void moreConditionsThanCoordinates(int sides) {
        for (double h : new double[] {0.3, 1, 2.2, 3}) {
            List<JointNormal.Row> rows = new ArrayList<>();
            for (int i = 0; i < sides; i++) {
                double angle = 0.1 + 2 * StrictMath.PI * i / sides;
                double c = StrictMath.cos(angle);
                double s = StrictMath.sin(angle);
                rows.add(row(h, 0.6 * c, 0.8 * c, s));
            }
            double sum = 0;
            for (int i = 0; i < 2000; i++) {
                double r = h / StrictMath.cos(StrictMath.PI / sides * (i + 0.5) / 2000);
                sum += StrictMath.exp(-r * r / 2) / 2000;
            }
            assertNear(JointNormal.allHold(rows), 1 - sum);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 4, 8})
    void boxesMultiply(int n) {
        for (double h : new double[] {1, 2, 3.3}) {
            List<JointNormal.Row> rows = new ArrayList<>();
            for (int i = 0; i < n; i++) {
                double[] up = new double[n];
                double[] down = new double[n];
                up[i] = 1;
                down[i] = -1;
                rows.add(row(h, up));
                rows.add(row(h + 0.2, down));
            }
            double side = Gauss.between(-h, h + 0.2);
            assertNear(JointNormal.allHold(rows), StrictMath.pow(side, n));
        }
    }

    // A brute-force integral over the plane: 2000 x 2000 cells of 0.006, corners of the region cut by at most
    // a cell: error below 1e-4 for five sides.
    @Test
    void bruteForceInThePlane() {
        double[][] c = {{1, 0.2}, {-0.7, 1}, {-1, -1.5}, {0.4, -1}, {2, 1}};
        double[] slack = {0.9, 1.3, 2.1, -0.1, 1.7};
        List<JointNormal.Row> rows = new ArrayList<>();
        for (int i = 0; i < c.length; i++) {
            rows.add(row(slack[i], c[i]));
        }
        double sum = 0;
        double step = 0.006;
        for (int i = 0; i < 2000; i++) {
            double x = -6 + (i + 0.5) * step;
            for (int j = 0; j < 2000; j++) {
                double y = -6 + (j + 0.5) * step;
                boolean inside = true;
                for (int k = 0; k < c.length; k++) {
                    inside &= slack[k] + c[k][0] * x + c[k][1] * y >= 0;
                }
                sum += inside ? Gauss.density(x) * Gauss.density(y) * step * step : 0;
            }
        }
        Odds odds = JointNormal.allHold(rows);
        assertThat(odds.value()).isEqualTo(sum, within(2e-4));
        assertThat(odds.method()).isEqualTo(Odds.Method.LATTICE);
    }

    @Test
    void aSingularCovarianceIsNoObstacle() {
        // x, y and x + y over two coordinates: P(x >= -1, y >= -1, x + y >= -1), by the same brute force in one
        // dimension: integral over x >= -1 of density(x) * P(y >= max(-1, -1 - x)).
        double sum = 0;
        double step = 1e-4;
        for (double x = -1 + step / 2; x < 9; x += step) {
            sum += Gauss.density(x) * Gauss.below(-Math.max(-1, -1 - x)) * step;
        }
        assertNear(JointNormal.allHold(List.of(row(1, 1, 0), row(1, 0, 1), row(1, 1, 1))), sum);
    }

    @Test
    void bothWaysToIntegrateAgree() {
        double[][] c = new double[12][];
        double[] h = new double[c.length];
        for (int i = 0; i < c.length; i++) {
            c[i] = unit(StrictMath.sin(7.0 * i), StrictMath.cos(3.0 * i), StrictMath.sin(2.0 + 5.0 * i), 0.4);
            h[i] = 1.6 + 0.1 * i;
        }
        Staircase stairs = new Staircase(h, c);
        LatticeMean product = new LatticeMean(stairs).grow();
        LatticeMean breach = new LatticeMean(new Breach(h, stairs.turned())).grow();
        assertThat(1 - breach.value()).isEqualTo(product.value(), within(product.error() + breach.error()));
    }

    private static double[] unit(double... a) {
        double size = 0;
        for (double x : a) {
            size += x * x;
        }
        for (int i = 0; i < a.length; i++) {
            a[i] /= StrictMath.sqrt(size);
        }
        return a;
    }

    // The cross-polytope: the mean of the sizes of d normals stays below a limit; 2^d conditions in d coordinates. By
    // repeated convolution of the half-normal, trapezoids of 0.01, error below 1e-5. Even odds, where the integral is
    // hardest: what it states may stay above 1e-4.
    @ParameterizedTest
    @CsvSource({"5, 0.8, 3e-4", "5, 1.1, 1e-4", "7, 0.8, 7e-4", "8, 0.9, 7e-4"})
    void manyConditionsInFewCoordinates(int d, double mean, double wanted) {
        List<JointNormal.Row> rows = new ArrayList<>();
        for (int signs = 0; signs < 1 << d; signs++) {
            double[] contributions = new double[d];
            for (int k = 0; k < d; k++) {
                contributions[k] = (signs >> k & 1) == 1 ? 1 : -1;
            }
            rows.add(row(mean * d, contributions));
        }
        Odds odds = JointNormal.allHold(rows);
        double exact = sumOfSizes(d, mean * d);
        assertThat(exact).isBetween(0.3, 0.97);
        assertThat(odds.upper() - odds.lower()).isLessThan(2 * wanted + 1e-6);
        assertThat(exact).isBetween(odds.lower() - 1e-5, odds.upper() + 1e-5);
    }

    /** P(|z1| + … + |zd| <= limit). */
    private static double sumOfSizes(int d, double limit) {
        int steps = (int) StrictMath.rint(limit / 0.01);
        double[] below = new double[steps + 1];
        for (int i = 0; i <= steps; i++) {
            below[i] = 2 * Gauss.below(0.01 * i) - 1;
        }
        for (int k = 1; k < d; k++) {
            double[] next = new double[steps + 1];
            for (int i = 1; i <= steps; i++) {
                for (int j = 0; j <= i; j++) {
                    double weight = j == 0 || j == i ? 0.005 : 0.01;
                    next[i] += weight * 2 * Gauss.density(0.01 * j) * below[i - j];
                }
            }
            below = next;
        }
        return below[steps];
    }

    // A condition amid a ring of sixty that lean away from it by 0.2 and hold half a unit longer: each fails alone with
    // about 2e-4. Given the coordinate along the axis, a regular polygon; by the midpoint rule in steps of 0.01.
    @Test
    void conditionsThatANeighbourNearlyCoversAreCounted() {
        double lean = 0.2;
        double cos = StrictMath.cos(lean);
        double sin = StrictMath.sin(lean);
        List<JointNormal.Row> rows = new ArrayList<>(List.of(row(1.5, 1, 0, 0)));
        for (int i = 0; i < 60; i++) {
            double angle = 2 * StrictMath.PI * i / 60;
            rows.add(row(2, cos, sin * StrictMath.cos(angle), sin * StrictMath.sin(angle)));
        }
        double exact = 0;
        for (double x = -1.5 + 0.005; x < 9; x += 0.01) {
            exact += Gauss.density(x) * 0.01 * polygon(60, (2 + x * cos) / sin);
        }
        assertThat(exact).isLessThan(Gauss.below(1.5) - 2e-4);
        assertNear(JointNormal.allHold(rows), exact);
    }

    /** P(a point of the plane is in the regular polygon), by polar coordinates in 200 steps. */
    private static double polygon(int sides, double h) {
        double sum = 0;
        double step = StrictMath.PI / sides / 200;
        for (int k = 0; k < 200; k++) {
            double r = h / StrictMath.cos((k + 0.5) * step);
            sum += step * sides / StrictMath.PI * StrictMath.exp(-r * r / 2);
        }
        return 1 - sum;
    }

    // Copies a tenth of a milliradian off and a hundredth further out never fail first.
    @Test
    void conditionsCoveredByANearlyParallelOneAddNothing() {
        double rho = 0.3;
        List<JointNormal.Row> rows = new ArrayList<>();
        for (double[] c : new double[][] {{1, 0, 0}, {rho, StrictMath.sqrt(1 - rho * rho), 0}}) {
            rows.add(row(0, c));
            for (int i = 1; i <= 100; i++) {
                rows.add(row(0.01, c[0] + 1e-4 * StrictMath.sin(i), c[1] + 1e-4 * StrictMath.cos(i), 1e-4));
            }
        }
        Odds two = JointNormal.allHold(List.of(rows.get(0), rows.get(101)));
        assertNear(two, 0.25 + StrictMath.asin(rho) / (2 * StrictMath.PI));
        assertThat(JointNormal.allHold(rows).value()).isEqualTo(two.value(), within(1e-12));
    }

    // The quadrant of two that all but coincide: taken as one, and the error says by how much that may be off.
    @Test
    void whatIsTakenAsParallelIsSaid() {
        double off = 9e-7;
        Odds odds = JointNormal.allHold(List.of(row(0, 1, 0), row(0, -1, off)));
        double exact = off / (2 * StrictMath.PI);
        assertThat(odds.method()).isEqualTo(Odds.Method.FIRST_ORDER);
        assertThat(exact).isBetween(odds.lower(), odds.upper());
        assertThat(odds.upper()).isLessThan(1e-6);
    }

    @Test
    void conditionsThatHardlyEverFailAreLeftOutOfTheIntegralAndCountedInTheLowerBound() {
        Odds with = JointNormal.allHold(List.of(row(1, 1, 0), row(1, 0, 1), row(8, 1, 1)));
        Odds without = JointNormal.allHold(List.of(row(1, 1, 0), row(1, 0, 1)));
        assertThat(with.value()).isEqualTo(without.value());
        assertThat(with.lower()).isLessThan(without.lower()).isGreaterThan(without.lower() - 1e-7);
    }

    @Test
    void conditionsThatHardlyEverFailAtAllAreBounded() {
        Odds odds = JointNormal.allHold(List.of(row(7, 1, 0), row(8, 0, 1)));
        assertThat(odds.method()).isEqualTo(Odds.Method.BOUNDS);
        assertThat(odds.lower()).isEqualTo(1 - Gauss.below(-7) - Gauss.below(-8), within(1e-15));
        assertThat(odds.upper()).isEqualTo(1, within(1e-10));
    }

    @Test
    void impossibleConditionsAreBoundedByTheLeastMarginal() {
        Odds odds = JointNormal.allHold(List.of(row(-9, 1, 0), row(1, 0, 1)));
        assertThat(odds.upper()).isEqualTo(Gauss.below(-9));
        assertThat(odds.method()).isEqualTo(Odds.Method.BOUNDS);
    }

    @Test
    void theSameConditionsGiveTheSameDigits() {
        List<JointNormal.Row> rows =
                List.of(row(1, 1, 0.3, 0), row(0.7, -0.2, 1, 0.1), row(1.4, 0.5, -0.5, 1), row(2, -1, -1, -1));
        Odds once = JointNormal.allHold(rows);
        Odds again = JointNormal.allHold(new ArrayList<>(rows));
        assertThat(again).isEqualTo(once);
    }

    @Test
    void aCapOnTheWorkLeavesAnHonestError() {
        // 200 conditions over 40 coordinates near the edge: more than the cap allows for 1e-4.
        int n = 40;
        List<JointNormal.Row> rows = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            double[] contributions = new double[n];
            for (int k = 0; k < n; k++) {
                contributions[k] = StrictMath.sin(1.0 + 13.0 * i * (k + 1) + k * k);
            }
            rows.add(row(2.4 * StrictMath.sqrt(n / 2.0), contributions));
        }
        Odds odds = JointNormal.allHold(rows);
        assertThat(odds.upper() - odds.lower()).isGreaterThan(2 * WANTED);
        assertThat(odds.lower()).isPositive();
        assertThat(odds.upper()).isLessThan(Gauss.below(2.4));
    }

    @Test
    void theLatticeAveragesAKnownIntegrand() {
        // The mean of the product of 12 x (1 - x)^2 over three coordinates is 1.
        LatticeMean mean = new LatticeMean(new Integrand() {
                    @Override
                    public int dimensions() {
                        return 3;
                    }

                    @Override
                    public double work() {
                        return 10;
                    }

                    @Override
                    public double at(double[] point) {
                        double product = 1;
                        for (double x : point) {
                            product *= 12 * x * (1 - x) * (1 - x);
                        }
                        return product;
                    }
                })
                .grow();
        assertThat(mean.error()).isLessThan(1e-3);
        assertThat(mean.value()).isEqualTo(1, within(mean.error()));
    }
}
