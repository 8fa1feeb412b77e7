package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/**
 * How often a reading that is off by 10 mm is named, and how often a clean set raises an alarm: a rectangle of 2400 by 1500,
 * straight sides, u = 1 mm, an alarm where a test exceeds 3.29, named where the wrong reading's test is the largest and no
 * other is as large. Reference: redundancy numbers to three digits and rates of 20 000 draws by an independent program
 * (mark: assumption, our own table). Here 20 000 draws, too, of the linear model; readings are functions of the four
 * points, their slopes by difference quotients, so nothing of the outline's own equations is used.
 *
 * <p>Tolerance of a rate p: half its last digit, 0.005, and four standard deviations of the difference of two such
 * counts, 4 √(2 p (1 − p) / 20 000), with p no nearer to 1 than its last digit tells, 0.995; that none is
 * ever named, 0, is exact but for the digit.
 */
class IdentificationTest {
    private static final double A = 2400;
    private static final double B = 1500;
    private static final int DRAWS = 20_000;
    private static final double ALARM = 3.29;

    /** Unknowns: x of head-right, foot-right, foot-left, a pin in the middle. */
    private static final double[] TRUTH = {A, A, B, 0, B, A / 2, B / 2};

    private record Observation(ToDoubleFunction<double[]> of, double u) {}

    private static double[] corner(int i, double[] x) {
        return switch (i) {
            case 0 -> new double[] {0, 0};
            case 1 -> new double[] {x[0], 0};
            case 2 -> new double[] {x[1], x[2]};
            default -> new double[] {x[3], x[4]};
        };
    }

    private static double[] between(int i, int j, double t, double[] x) {
        double[] p = corner(i, x);
        double[] q = corner(j, x);
        return new double[] {p[0] + t * (q[0] - p[0]), p[1] + t * (q[1] - p[1])};
    }

    private static Observation side(int i, int j) {
        return new Observation(x -> Surveys.far(corner(i, x), corner(j, x)), 1);
    }

    /** Between left and right at that part of the height: from head-left, from head-right. */
    private static Observation width(double t, double u) {
        return new Observation(x -> Surveys.far(between(0, 3, t, x), between(1, 2, t, x)), u);
    }

    private static Observation length(double t, double u) {
        return new Observation(x -> Surveys.far(between(0, 1, t, x), between(3, 2, t, x)), u);
    }

    private static Observation toMiddle(int from, int i, int j) {
        return new Observation(x -> Surveys.far(corner(from, x), between(i, j, 0.5, x)), 1);
    }

    private static Observation check(int at, int along, int up) {
        return new Observation(
                x -> {
                    double w = 800 / Surveys.far(corner(at, x), corner(along, x));
                    double l = 600 / Surveys.far(corner(at, x), corner(up, x));
                    return Surveys.far(between(at, along, w, x), between(at, up, l, x));
                },
                1);
    }

    /** How far a corner lies from a string between head-left and foot-right. */
    private static Observation offset(int i) {
        return new Observation(
                x -> {
                    double[] c = corner(2, x);
                    double[] p = corner(i, x);
                    return Math.abs(c[0] * p[1] - c[1] * p[0]) / Math.sqrt(c[0] * c[0] + c[1] * c[1]);
                },
                1);
    }

    private static Observation pin(int i) {
        return new Observation(x -> Surveys.far(corner(i, x), new double[] {x[5], x[6]}), 1);
    }

    private static List<Observation> set(Observation... more) {
        List<Observation> all =
                new ArrayList<>(List.of(side(0, 1), side(1, 2), side(2, 3), side(3, 0), side(0, 2), side(1, 3)));
        all.addAll(List.of(more));
        return all;
    }

    /** PQᵥᵥP of a set. */
    private static Tests tests(List<Observation> set, int unknowns) {
        double[][] design = new double[set.size()][unknowns];
        double[] variance = new double[set.size()];
        for (int i = 0; i < design.length; i++) {
            variance[i] = set.get(i).u() * set.get(i).u();
            for (int k = 0; k < unknowns; k++) {
                double[] up = TRUTH.clone();
                double[] down = TRUTH.clone();
                up[k] += 1e-3;
                down[k] -= 1e-3;
                design[i][k] =
                        (set.get(i).of().applyAsDouble(up) - set.get(i).of().applyAsDouble(down)) / 2e-3;
            }
        }
        LeastSquares test = new LeastSquares(variance, new double[0][], new double[0]);
        assertThat(test.isDetermined(design)).isTrue();
        return Tests.of(test, new double[design.length], TRUTH);
    }

    private static void redundancy(List<Observation> set, int unknowns, double... ofAbBcAc) {
        Tests tests = tests(set, unknowns);
        int[] which = {0, 1, 4};
        double sum = 0;
        for (int i = 0; i < set.size(); i++) {
            sum += tests.between(i, i) * set.get(i).u() * set.get(i).u();
        }
        assertThat(sum).isCloseTo(set.size() - unknowns, within(1e-6));
        for (int k = 0; k < 3; k++) {
            assertThat(tests.between(which[k], which[k])).isCloseTo(ofAbBcAc[k], within(6e-4));
        }
    }

    private static void tied(List<Observation> set, int unknowns, String... pairs) {
        Tests tests = tests(set, unknowns);
        List<String> letters = List.of("AB", "BC", "CD", "DA", "AC", "BD");
        List<String> found = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            for (int j = i + 1; j < 6; j++) {
                if (Math.abs(tests.correlation(i, j)) >= 0.99) {
                    found.add(letters.get(i) + "~" + letters.get(j));
                }
            }
        }
        assertThat(found).containsExactly(pairs);
    }

    /** Rates of naming each of the six at that slip. */
    private static void named(List<Observation> set, int unknowns, double slip, double... rates) {
        double[] found = simulated(tests(set, unknowns), set, slip, rates.length);
        for (int i = 0; i < rates.length; i++) {
            double p = Math.max(0.005, Math.min(0.995, rates[i]));
            double spread = rates[i] == 0 ? 0 : 4 * Math.sqrt(2 * p * (1 - p) / DRAWS);
            assertThat(found[i]).as("reading " + i).isCloseTo(rates[i], within(0.005 + spread));
        }
    }

    private static double[] simulated(Tests tests, List<Observation> set, double slip, int count) {
        int n = set.size();
        double[] root = new double[n];
        Arrays.setAll(root, i -> Math.sqrt(tests.between(i, i)));
        double[] found = new double[count];
        SplittableRandom random = new SplittableRandom(20261125);
        double[] clean = new double[n];
        double[] error = new double[n];
        for (int draw = 0; draw < DRAWS; draw++) {
            for (int i = 0; i < n; i++) {
                error[i] = random.nextGaussian() * set.get(i).u();
            }
            for (int i = 0; i < n; i++) {
                clean[i] = 0;
                for (int j = 0; j < n; j++) {
                    clean[i] += tests.between(i, j) * error[j];
                }
            }
            for (int wrong = 0; wrong < count; wrong++) {
                double own = Math.abs(clean[wrong] + slip * tests.between(wrong, wrong)) / root[wrong];
                double other = 0;
                for (int i = 0; i < n; i++) {
                    double w = Math.abs(clean[i] + slip * tests.between(i, wrong)) / root[i];
                    other = i == wrong ? other : Math.max(other, w);
                }
                found[wrong] += own > ALARM && own > other + 1e-6 ? 1.0 / DRAWS : 0;
            }
        }
        return found;
    }

    private static double alarms(List<Observation> set, double slip, int wrong) {
        Tests tests = tests(set, 5);
        int n = set.size();
        SplittableRandom random = new SplittableRandom(42);
        int alarms = 0;
        double[] error = new double[n];
        for (int draw = 0; draw < DRAWS; draw++) {
            for (int i = 0; i < n; i++) {
                error[i] = random.nextGaussian() * set.get(i).u() + (i == wrong ? slip : 0);
            }
            double most = 0;
            for (int i = 0; i < n; i++) {
                double sum = 0;
                for (int j = 0; j < n; j++) {
                    sum += tests.between(i, j) * error[j];
                }
                most = Math.max(most, Math.abs(sum) / Math.sqrt(tests.between(i, i)));
            }
            alarms += most > ALARM ? 1 : 0;
        }
        return alarms / (double) DRAWS;
    }

    private static List<Observation> s2(double u) {
        return set(width(0.5, u), length(0.5, u));
    }

    private static List<Observation> s3(double u) {
        return set(width(0.25, u), width(0.75, u), length(0.25, u), length(0.75, u));
    }

    private static List<Observation> with(List<Observation> set, Observation... more) {
        List<Observation> all = new ArrayList<>(set);
        all.addAll(List.of(more));
        return all;
    }

    @Test
    void sixAreDetectedAndNeverNamed() {
        named(set(), 5, 10, 0, 0, 0, 0, 0, 0);
        double[] detected = {.83, .26, .83, .26, .96, .96};
        for (int i = 0; i < 6; i++) {
            assertThat(alarms(set(), 10, i)).isCloseTo(detected[i], within(0.02));
        }
        assertThat(alarms(set(), 5, 0)).isCloseTo(.12, within(0.015));
        assertThat(alarms(set(), 5, 1)).isCloseTo(.02, within(0.01));
        assertThat(alarms(set(), 5, 4)).isCloseTo(.21, within(0.02));
    }

    @Test
    void middlesNameOnlyThemselves() {
        named(s2(1), 5, 10, 0, 0, 0, 0, 0, 0);
        named(s2(2), 5, 10, 0, 0, 0, 0, 0, 0);
        double[] all = simulated(tests(s2(1), 5), s2(1), 10, 8);
        assertThat(all[6]).isGreaterThan(.996);
        assertThat(all[7]).isGreaterThan(.996);
    }

    @Test
    void quartersAndThirdsNameTheSides() {
        named(s3(1), 5, 10, .99, .95, .99, .95, 0, 0);
        named(s3(2), 5, 10, .90, .76, .90, .76, 0, 0);
        List<Observation> thirds = set(width(1 / 3.0, 1), length(1 / 3.0, 1));
        named(thirds, 5, 10, .91, .45, .71, .79, 0, 0);
        named(s3(1), 5, 5, .43, .35, .43, .35, 0, 0);
    }

    @Test
    void aCornerToTheMiddleOfASide() {
        Observation aToBc = toMiddle(0, 1, 2);
        Observation aToCd = toMiddle(0, 2, 3);
        named(set(aToBc), 5, 10, .96, .18, 0, 0, .86, 0);
        named(set(aToBc, aToCd), 5, 10, .97, .27, .73, .79, 1.0, .74);
        named(with(s2(1), aToBc), 5, 10, .98, .64, .91, .63, .99, .96);
        named(with(s2(1), aToBc, toMiddle(1, 2, 3)), 5, 10, .99, .94, .95, .79, 1.0, 1.0);
        named(with(s3(1), aToBc), 5, 10, 1.0, .95, .99, .95, .99, .98);
        named(with(s3(1), aToBc), 5, 5, .58, .35, .43, .35, .49, .34);
        double[] twenty = simulated(tests(with(s3(1), aToBc), 5), with(s3(1), aToBc), 20, 6);
        // 0.995 and more, less four standard deviations of a count at that rate.
        assertThat(Arrays.stream(twenty).min().orElseThrow()).isGreaterThanOrEqualTo(.995 - .002);
        List<Observation> twice = with(set(), set().toArray(Observation[]::new));
        double[] again = simulated(tests(twice, 5), twice, 20, 6);
        assertThat(Arrays.stream(again).min().orElseThrow()).isGreaterThanOrEqualTo(.995 - .002);
        List<Observation> string = set(offset(1), offset(3));
        double[] across = simulated(tests(string, 5), string, 20, 6);
        assertThat(Arrays.stream(across).min().orElseThrow()).isGreaterThanOrEqualTo(.995 - .002);
    }

    @Test
    void everythingTwice() {
        List<Observation> twice = with(set(), set().toArray(Observation[]::new));
        named(twice, 5, 10, 1.0, .97, 1.0, .97, 1.0, 1.0);
        named(twice, 5, 5, .68, .55, .67, .56, .73, .73);
        List<Observation> sides = with(set(), set().subList(0, 4).toArray(Observation[]::new));
        named(sides, 5, 10, .99, .94, .99, .94, 0, 0);
        List<Observation> diagonals = with(set(), set().subList(4, 6).toArray(Observation[]::new));
        named(diagonals, 5, 10, 0, 0, 0, 0, 1.0, 1.0);
    }

    @Test
    void cornerChecks() {
        Observation at = check(0, 1, 3);
        named(set(at), 5, 10, 0, 0, 0, 0, 0, 0);
        assertThat(simulated(tests(set(at), 5), set(at), 10, 7)[6]).isGreaterThan(.99);
        named(set(at, check(2, 3, 1)), 5, 10, 0, 0, 0, 0, .92, .92);
    }

    /** Offsets of both other corners from a string along a diagonal tell all six apart. */
    @Test
    void aStringAlongADiagonal() {
        List<Observation> set = set(offset(1), offset(3));
        redundancy(set, 5, .251, .331, .267);
        tied(set, 5);
        named(set, 5, 10, .85, .91, .85, .91, .86, .98);
    }

    /** A pin in the middle, two more unknowns, tells only the diagonals. */
    @Test
    void aPinInTheMiddle() {
        List<Observation> set = set(pin(0), pin(1), pin(2), pin(3));
        redundancy(set, 7, .216, .084, .467);
        tied(set, 7, "AB~BC", "AB~CD", "AB~DA", "BC~CD", "BC~DA", "CD~DA");
        named(set, 7, 10, 0, 0, 0, 0, 1.0, 1.0);
        Tests tests = tests(set, 7);
        assertThat(Math.abs(tests.correlation(6, 8))).isGreaterThan(0.99);
        assertThat(Math.abs(tests.correlation(7, 9))).isGreaterThan(0.99);
    }

    /** Of a clean set: the more tests, the more false alarms. Four standard deviations of two counts, half a digit. */
    @Test
    void falseAlarms() {
        List<Observation> twice = with(set(), set().toArray(Observation[]::new));
        List<List<Observation>> sets = List.of(set(), s2(1), s3(1), with(s3(1), toMiddle(0, 1, 2)), twice);
        double[] rates = {.0010, .0045, .0076, .0095, .0109};
        for (int k = 0; k < 5; k++) {
            double spread = 4 * Math.sqrt(2 * rates[k] / DRAWS);
            assertThat(alarms(sets.get(k), 0, 0)).isCloseTo(rates[k], within(5e-5 + spread));
        }
    }

    /** Four sides and one diagonal: nothing is even detected. */
    @Test
    void fiveDetectNothing() {
        Tests tests = tests(set().subList(0, 5), 5);
        for (int i = 0; i < 5; i++) {
            assertThat(tests.isChecked(i, 1)).isFalse();
        }
    }
}
