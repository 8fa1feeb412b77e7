package quoin.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayDeque;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quoin.clearance.WayIn.First;
import quoin.clearance.WayIn.Recess;
import quoin.measure.Influence;
import quoin.measure.Uncertain;

class WayInTest {
    private static Recess recess(double length, double depth, double left, double right) {
        return new Recess(
                Uncertain.exact(length), Uncertain.exact(depth), Uncertain.exact(left), Uncertain.exact(right));
    }

    private static WayIn of(double length, double depth, double left, double right, double thick, double play) {
        return WayIn.of(recess(length, depth, left, right), Uncertain.exact(thick), play);
    }

    /**
     * Lips of 20 mm before a recess of 2400 by 100 mm, a box 40 mm thick: 2380.421 mm, found as well by a search over places and
     * angles outside this project (2380 went in, 2381 did not). To half the last digit.
     */
    @Test
    void aLipAtTheEndThatGoesInLast() {
        WayIn way = of(2400, 100, 20, 20, 40, 0);
        assertThat(way.longest().value()).isCloseTo(2380.421, within(0.0005));
        assertThat(way.first()).isEqualTo(First.LEFT);
        assertThat(StrictMath.sin(way.tiltRad())).isCloseTo(100 / way.longest().value(), within(1e-9));
    }

    /** Under a single lip the lipped end goes in first, and the whole length goes in. */
    @Test
    void aSingleLipIsPassedFirst() {
        assertThat(of(2400, 100, 0, 20, 40, 3).longest().value()).isEqualTo(2397);
        assertThat(of(2400, 100, 0, 20, 40, 3).first()).isEqualTo(First.RIGHT);
        assertThat(of(2400, 100, 20, 0, 40, 3).first()).isEqualTo(First.LEFT);
    }

    /** Worked by hand: without a lip everything short of the play goes in straight; a thick box goes in straight only. */
    @Test
    void straight() {
        WayIn none = of(2400, 100, 0, 0, 40, 3);
        assertThat(none.longest().value()).isEqualTo(2397);
        assertThat(none.first()).isEqualTo(First.NEITHER);
        assertThat(none.tiltRad()).isZero();
        WayIn thick = of(2400, 100, 10, 20, 101, 3);
        assertThat(thick.longest().value()).isEqualTo(2370);
        assertThat(thick.first()).isEqualTo(First.NEITHER);
        assertThat(of(2400, 100, 0, 20, 100.01, 3).first()).isEqualTo(First.NEITHER);
    }

    /** The lip passed last counts alone, where the first leaves room to turn under: the smaller is passed last. */
    @Test
    void twoLips() {
        WayIn way = of(2400, 100, 10, 20, 40, 0);
        assertThat(way.first()).isEqualTo(First.RIGHT);
        assertThat(way.longest().value())
                .isCloseTo(of(2400, 100, 10, 10, 40, 0).longest().value(), within(1e-9));
        assertThat(way.longest().value()).isGreaterThan(2400 - 30);
    }

    @Test
    void twoPartsGoInWhereOneDoesNot() {
        Recess recess = recess(2400, 50, 40, 40);
        WayIn one = WayIn.of(recess, Uncertain.exact(60), 3);
        assertThat(one.longest().value()).isEqualTo(2320);
        WayIn two = WayIn.inTwoParts(recess, Uncertain.exact(60), 3, 0.6);
        assertThat(two.longest().value()).isEqualTo(2397);
        assertThat(WayIn.inTwoParts(recess, Uncertain.exact(60), 3, 1).longest().value())
                .isEqualTo(2320);
    }

    /** Partial derivatives against differences: the doubt of each measure moves the length as the length moves. */
    @Test
    void doubtIsCarried() {
        double[] at = {2400, 100, 25, 20, 40};
        Uncertain[] measures = new Uncertain[5];
        for (int i = 0; i < 5; i++) {
            measures[i] = Uncertain.of(at[i], Influence.normal("m" + i, 1));
        }
        WayIn way = WayIn.of(new Recess(measures[0], measures[1], measures[2], measures[3]), measures[4], 0);
        Uncertain swing = way.longest().governing().value();
        for (int i = 0; i < 5; i++) {
            double[] more = at.clone();
            double[] less = at.clone();
            more[i] += 1e-3;
            less[i] = Math.max(0, less[i] - 1e-3);
            double slope = (of(more[0], more[1], more[2], more[3], more[4], 0)
                                    .longest()
                                    .value()
                            - of(less[0], less[1], less[2], less[3], less[4], 0)
                                    .longest()
                                    .value())
                    / (more[i] - less[i]);
            double expected = i == 2 ? 0 : slope;
            assertThat(swing.sensitivity(Influence.normal("m" + i, 1)))
                    .as("m%s", i)
                    .isCloseTo(expected, within(1e-5));
        }
    }

    /** A small recess against a search over places and angles: the longest box within half a millimetre. */
    @ParameterizedTest
    @CsvSource({
        "48, 10, 0, 5, 3",
        "48, 10, 2, 6, 3",
        "60, 14, 0, 9, 5",
        "40, 6, 0, 4, 4",
        "48, 12, 4, 4, 2",
        "48, 10, 12, 3, 8",
        "40, 12, 20, 2, 9"
    })
    void noSearchFindsALongerBox(double length, double depth, double left, double right, double thick) {
        double low = length - left - right;
        double high = length;
        while (high - low > 0.2) {
            double middle = (low + high) / 2;
            boolean in = new Search(length, depth, left, right, middle, thick).goesIn()
                    || new Search(length, depth, right, left, middle, thick).goesIn();
            low = in ? middle : low;
            high = in ? high : middle;
        }
        assertThat(of(length, depth, left, right, thick, 0).longest().value()).isCloseTo(low, within(0.5));
    }

    @Test
    void aLargerLipNeverLengthensTheLongestBox() {
        double before = Double.POSITIVE_INFINITY;
        for (double lip = 0; lip <= 200; lip += 0.5) {
            double longest = of(2400, 100, 12, lip, 40, 3).longest().value();
            assertThat(longest).as("lip %s", lip).isLessThanOrEqualTo(before + 1e-9);
            before = longest;
        }
    }

    @Test
    void whatIsNoRecessIsRefused() {
        assertThatThrownBy(() -> recess(0, 100, 0, 0)).hasMessage("length must be above 0 mm, got 0.0 mm");
        assertThatThrownBy(() -> recess(100, -1, 0, 0)).hasMessage("depth must be 0 mm or more, got -1.0 mm");
        assertThatThrownBy(() -> recess(100, 1, 0, -2)).hasMessage("right lip must be 0 mm or more, got -2.0 mm");
        assertThatThrownBy(() -> of(100, 1, 0, 0, 0, 0)).hasMessage("thickness must be above 0 mm, got 0.0 mm");
        assertThatThrownBy(() -> of(100, 1, 0, 0, 1, Double.NaN))
                .hasMessage("play must be 0 mm or more and finite, got NaN mm");
        assertThatThrownBy(() -> WayIn.inTwoParts(recess(100, 1, 0, 0), Uncertain.exact(1), 0, 0.4))
                .hasMessage("share must be from 0.5 to 1, got 0.4");
    }

    /**
     * All places of the upper corner of the end that goes in first, and all angles, on a grid, from steep to level, one step at a
     * time. Shares nothing with what it checks but the picture.
     */
    private static final class Search {
        private static final double STEP = 0.1;
        private static final double TURN = StrictMath.toRadians(0.4);
        private static final int ANGLES = 130;
        private static final int ACROSS = 140;

        private final double length;
        private final double depth;
        private final double left;
        private final double right;
        private final double box;
        private final double thick;
        private final int down;

        Search(double length, double depth, double left, double right, double box, double thick) {
            this.length = length;
            this.depth = depth;
            this.left = left;
            this.right = right;
            this.box = box;
            this.thick = thick;
            this.down = (int) Math.round(depth / STEP) + 1;
        }

        boolean goesIn() {
            boolean[] seen = new boolean[ACROSS * down * ANGLES];
            ArrayDeque<Integer> queue = new ArrayDeque<>();
            for (int x = 0; x < ACROSS; x++) {
                for (int y = 0; y < down; y++) {
                    visit(x, y, ANGLES - 1, seen, queue);
                }
            }
            while (!queue.isEmpty()) {
                int at = queue.poll();
                int angle = at % ANGLES;
                int y = at / ANGLES % down;
                int x = at / ANGLES / down;
                if (angle == 0) {
                    return true;
                }
                visit(x + 1, y, angle, seen, queue);
                visit(x - 1, y, angle, seen, queue);
                visit(x, y + 1, angle, seen, queue);
                visit(x, y - 1, angle, seen, queue);
                visit(x, y, angle + 1, seen, queue);
                visit(x, y, angle - 1, seen, queue);
            }
            return false;
        }

        private void visit(int x, int y, int angle, boolean[] seen, ArrayDeque<Integer> queue) {
            if (x < 0 || x >= ACROSS || y < 0 || y >= down || angle < 0 || angle >= ANGLES) {
                return;
            }
            int at = (x * down + y) * ANGLES + angle;
            if (!seen[at]) {
                seen[at] = true;
                if (isFree(x * STEP, y * STEP, angle * TURN)) {
                    queue.add(at);
                }
            }
        }

        /** The part of the box above the face lies in the recess, and crosses the face between the lips. */
        private boolean isFree(double px, double py, double angle) {
            double c = StrictMath.cos(angle);
            double s = StrictMath.sin(angle);
            double[] xs = {px, px + box * c, px + box * c - thick * s, px - thick * s};
            double[] ys = {py, py - box * s, py - box * s - thick * c, py - thick * c};
            for (int i = 0; i < 4; i++) {
                if (ys[i] > depth + 1e-9 || (ys[i] > 1e-9 && (xs[i] < -1e-9 || xs[i] > length + 1e-9))) {
                    return false;
                }
                int j = (i + 1) % 4;
                if (ys[i] > 1e-9 != ys[j] > 1e-9 && (ys[i] < -1e-9 || ys[j] < -1e-9)) {
                    double crossing = xs[i] + (xs[j] - xs[i]) * ys[i] / (ys[i] - ys[j]);
                    if (crossing < left - 1e-9 || crossing > length - right + 1e-9) {
                        return false;
                    }
                }
            }
            boolean whole = ys[0] > -1e-9 && ys[1] > -1e-9 && ys[2] > -1e-9 && ys[3] > -1e-9;
            return angle > 1e-9 || whole;
        }
    }
}
