package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * What sets of readings of a rectangle 2400 by 1500 can tell apart, straight sides, u = 1 mm unless said. Reference:
 * redundancy numbers and correlations of the tests by an independent program (mark: assumption, our own table), printed to
 * three digits. AB head, BC right, CD foot, DA left, AC and BD the diagonals from head-left and head-right.
 */
class SeparabilityTest {
    private static final double A = 2400;
    private static final double B = 1500;
    private static final double D = Math.sqrt(A * A + B * B);
    private static final List<String> LETTERS = List.of("AB", "BC", "CD", "DA", "AC", "BD");

    private static List<Reading> s1() {
        return Surveys.six(1, A, B, A, B, D, D);
    }

    private static Reading width(String at, double u) {
        return Surveys.read("width@" + at, u, A);
    }

    private static Reading length(String at, double u) {
        return Surveys.read("length@" + at, u, B);
    }

    private static Reading cornerToMiddle(String corner, String side) {
        boolean upright = side.equals("right") || side.equals("left");
        double far = upright ? Math.sqrt(A * A + B * B / 4) : Math.sqrt(A * A / 4 + B * B);
        return Surveys.read("cross@" + corner + ":" + side + ":1/2", 1, far);
    }

    private static List<Reading> s2(double u) {
        return Surveys.join(s1(), width("1/2", u), length("1/2", u));
    }

    private static List<Reading> s3(double u) {
        return Surveys.join(s1(), width("1/4", u), width("3/4", u), length("1/4", u), length("3/4", u));
    }

    private static List<Reading> twice(List<Reading> readings) {
        List<Reading> all = new ArrayList<>();
        for (Reading r : readings) {
            all.add(new Reading(
                    r.id(),
                    r.of(),
                    r.in(),
                    List.of(r.values().get(0), r.values().get(0)),
                    r.by()));
        }
        return all;
    }

    /** Pairs of the six usual readings whose tests say the same. */
    private static Set<String> bound(Adjustment net) {
        Set<String> pairs = new TreeSet<>();
        for (int i = 0; i < 6; i++) {
            for (int j = i + 1; j < 6; j++) {
                double rho =
                        net.correlation(Surveys.index(net, Surveys.SIX.get(i)), Surveys.index(net, Surveys.SIX.get(j)));
                if (Math.abs(rho) >= 0.99) {
                    pairs.add(LETTERS.get(i) + "~" + LETTERS.get(j));
                }
            }
        }
        return pairs;
    }

    private static void check(List<Reading> readings, int redundancy, double[] r, String... bound) {
        Adjustment net = Surveys.adjust(readings);
        assertThat(net.redundancy()).isEqualTo(redundancy);
        String[] three = {"width@head", "length@right", "diagonal@head-left"};
        for (int i = 0; i < 3; i++) {
            AdjustedReading reading = Surveys.of(net, three[i]);
            assertThat(1 / Math.pow(reading.slipU(), 2)).as(three[i]).isCloseTo(r[i], within(6e-4));
            // The table has 4.13 / √r, its last digit 0.01; 4.1321 differs by 5e-4 of it.
            assertThat(reading.detectable()).isCloseTo(r[i + 3], within(0.006 + 6e-4 * r[i + 3]));
        }
        assertThat(bound(net)).containsExactlyInAnyOrder(bound);
    }

    @Test
    void sixReadings() {
        check(
                s1(),
                1,
                new double[] {.180, .070, .250, 9.74, 15.58, 8.26},
                "AB~BC",
                "AB~CD",
                "AB~DA",
                "AB~AC",
                "AB~BD",
                "BC~CD",
                "BC~DA",
                "BC~AC",
                "BC~BD",
                "CD~DA",
                "CD~AC",
                "CD~BD",
                "DA~AC",
                "DA~BD",
                "AC~BD");
    }

    @Test
    void middleWidthAndLengthSayWhichPair() {
        check(s2(1), 3, new double[] {.263, .204, .300, 8.06, 9.14, 7.54}, "AB~CD", "BC~DA", "AC~BD");
        check(s2(2), 3, new double[] {.206, .114, .265, 9.10, 12.22, 8.03}, "AB~CD", "BC~DA", "AC~BD");
    }

    @Test
    void quartersSayWhichSide() {
        check(s3(1), 5, new double[] {.410, .373, .333, 6.45, 6.76, 7.15}, "AC~BD");
        check(s3(2), 5, new double[] {.257, .179, .278, 8.14, 9.75, 7.84}, "AC~BD");
    }

    @Test
    void thirdsSayWhichSide() {
        List<Reading> readings = Surveys.join(s1(), width("1/3", 1), length("1/3", 1));
        check(readings, 3, new double[] {.356, .123, .298, 6.93, 11.77, 7.57}, "AC~BD");
        Adjustment net = Surveys.adjust(readings);
        assertThat(1 / Math.pow(Surveys.of(net, "width@foot").slipU(), 2)).isCloseTo(.204, within(6e-4));
        assertThat(1 / Math.pow(Surveys.of(net, "length@left").slipU(), 2)).isCloseTo(.313, within(6e-4));
    }

    @Test
    void aCornerToTheMiddleOfASide() {
        Reading first = cornerToMiddle("head-left", "right");
        check(
                Surveys.join(s1(), first),
                2,
                new double[] {.359, .079, .413, 6.89, 14.68, 6.42},
                "CD~DA",
                "CD~BD",
                "DA~BD");
        check(Surveys.join(s1(), first, cornerToMiddle("head-left", "foot")), 3, new double[] {
            .360, .091, .527, 6.88, 13.72, 5.69
        });
        check(Surveys.join(s2(1), first), 4, new double[] {.402, .209, .442, 6.51, 9.03, 6.22});
        check(Surveys.join(s2(1), first, cornerToMiddle("head-right", "foot")), 5, new double[] {
            .432, .312, .467, 6.28, 7.39, 6.04
        });
        check(Surveys.join(s3(1), first), 6, new double[] {.504, .376, .463, 5.82, 6.73, 6.07});
    }

    @Test
    void everythingTwice() {
        check(twice(s1()), 7, new double[] {.590, .535, .625, 5.38, 5.65, 5.22});
        List<Reading> sides = new ArrayList<>(twice(s1().subList(0, 4)));
        sides.addAll(s1().subList(4, 6));
        check(sides, 5, new double[] {.560, .523, .333, 5.52, 5.71, 7.15}, "AC~BD");
        List<Reading> diagonals = new ArrayList<>(s1().subList(0, 4));
        diagonals.addAll(twice(s1().subList(4, 6)));
        check(
                diagonals,
                3,
                new double[] {.240, .094, .583, 8.44, 13.50, 5.41},
                "AB~BC",
                "AB~CD",
                "AB~DA",
                "BC~CD",
                "BC~DA",
                "CD~DA");
    }

    @Test
    void cornerChecks() {
        Reading here = Surveys.read("check@head-left:800 mm:600 mm", 1, 1000);
        Reading there = Surveys.read("check@foot-right:800 mm:600 mm", 1, 1000);
        check(
                Surveys.join(s1(), here),
                2,
                new double[] {.202, .079, .281, 9.18, 14.70, 7.79},
                "AB~DA",
                "AB~BD",
                "DA~BD",
                "BC~CD",
                "BC~AC",
                "CD~AC");
        check(Surveys.join(s1(), here, there), 3, new double[] {.225, .088, .312, 8.71, 13.94, 7.39}, "AB~DA", "BC~CD");
    }
}
