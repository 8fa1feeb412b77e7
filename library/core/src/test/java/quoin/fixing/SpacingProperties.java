package quoin.fixing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Example;
import quoin.fixing.SetOut.Holes;
import quoin.fixing.Spacing.Ends;
import quoin.fixing.Spacing.Pitch;
import quoin.fixing.Spacing.Stretch;

/** Rows against all rows, counted out one by one on small sides; shares no code with them. Seeded. */
class SpacingProperties {
    private static final int COUNT = 20_000;

    /** One small side, in marking steps. */
    private record Case(int length, int aim, int near, int far, int least, int most, List<int[]> barred) {
        static Case drawn(Random random) {
            int length = 6 + random.nextInt(17);
            int near = random.nextInt(3);
            int far = near + random.nextInt(4);
            int aim = near + random.nextInt(far - near + 1);
            int least = 1 + random.nextInt(4);
            int most = least + random.nextInt(5);
            List<int[]> barred = new ArrayList<>();
            for (int i = random.nextInt(4); i > 0; i--) {
                int from = random.nextInt(length);
                barred.add(new int[] {from, Math.min(length, from + random.nextInt(5))});
            }
            return new Case(length, aim, near, far, least, most, barred);
        }

        Spacing spacing() {
            List<Stretch> stretches = new ArrayList<>();
            for (int[] b : barred) {
                stretches.add(new Stretch(b[0], b[1], "x"));
            }
            return Spacing.of(length, new Ends(aim, near, far), new Pitch(least, most), 1)
                    .withBarred(stretches);
        }

        boolean allows(int place) {
            return place >= 0 && place <= length && barred.stream().noneMatch(b -> place > b[0] && place < b[1]);
        }

        boolean starts(int place) {
            return place >= near && place <= far && allows(place);
        }

        boolean stops(int place) {
            return place >= length - far && place <= length - near && allows(place);
        }

        Case mirrored() {
            List<int[]> other = new ArrayList<>();
            for (int[] b : barred) {
                other.add(new int[] {length - b[1], length - b[0]});
            }
            return new Case(length, aim, near, far, least, most, other);
        }
    }

    /** How good a row is: number, farthest off the aim, largest pitch, smallest pitch with its sign changed. */
    private static int[] worth(Case c, List<Integer> row) {
        int greatest = 0;
        int smallest = Integer.MAX_VALUE;
        for (int i = 1; i < row.size(); i++) {
            greatest = Math.max(greatest, row.get(i) - row.get(i - 1));
            smallest = Math.min(smallest, row.get(i) - row.get(i - 1));
        }
        int off = Math.max(Math.abs(row.get(0) - c.aim), Math.abs(c.length - row.get(row.size() - 1) - c.aim));
        return new int[] {row.size(), off, greatest, -smallest};
    }

    private static int[] best(Case c) {
        int[][] best = {null};
        for (int place = 0; place <= c.length; place++) {
            if (c.starts(place)) {
                extend(c, new ArrayList<>(List.of(place)), best);
            }
        }
        return best[0];
    }

    private static void extend(Case c, List<Integer> row, int[][] best) {
        int end = row.get(row.size() - 1);
        if (row.size() >= 2 && c.stops(end)) {
            int[] worth = worth(c, row);
            if (best[0] == null || java.util.Arrays.compare(worth, best[0]) < 0) {
                best[0] = worth;
            }
        }
        if (best[0] != null && row.size() >= best[0][0]) {
            return;
        }
        for (int step = c.least; step <= c.most; step++) {
            if (c.allows(end + step)) {
                row.add(end + step);
                extend(c, row, best);
                row.remove(row.size() - 1);
            }
        }
    }

    private static List<Integer> places(Holes holes) {
        List<Integer> places = new ArrayList<>();
        for (double at : holes.atMm()) {
            assertThat(at).isEqualTo(Math.rint(at));
            places.add((int) at);
        }
        return places;
    }

    /** An independent look at a row: every rule holds. */
    private static void check(Case c, List<Integer> row) {
        assertThat(c.starts(row.get(0))).isTrue();
        assertThat(c.stops(row.get(row.size() - 1))).isTrue();
        for (int i = 0; i < row.size(); i++) {
            assertThat(c.allows(row.get(i))).isTrue();
            assertThat(i == 0 ? c.least : row.get(i) - row.get(i - 1)).isBetween(c.least, c.most);
        }
    }

    @Example
    void noRowIsBetter() {
        Random random = new Random(20261126);
        int possible = 0;
        for (int n = 0; n < COUNT; n++) {
            Case c = Case.drawn(random);
            int[] best = best(c);
            SetOut setOut = c.spacing().setOut();
            assertThat(setOut instanceof Holes).as("%s", c).isEqualTo(best != null);
            if (setOut instanceof Holes holes) {
                possible++;
                List<Integer> row = places(holes);
                check(c, row);
                assertThat(worth(c, row)).as("%s %s", c, row).isEqualTo(best);
                if (holes.symmetric()) {
                    for (int i = 0; i < row.size(); i++) {
                        assertThat(row.get(i) + row.get(row.size() - 1 - i)).isEqualTo(c.length);
                    }
                }
            }
        }
        assertThat(possible).isBetween(COUNT / 4, COUNT * 9 / 10);
    }

    /**
     * The mirrored side has a row of the same worth; the very mirror image where the row is symmetric. More is not true: the one
     * odd millimetre of a row has to lie somewhere.
     */
    @Example
    void theMirroredSideIsAsGood() {
        Random random = new Random(7);
        for (int n = 0; n < COUNT; n++) {
            Case c = Case.drawn(random);
            SetOut one = c.spacing().setOut();
            SetOut other = c.mirrored().spacing().setOut();
            assertThat(other.getClass()).isEqualTo(one.getClass());
            if (one instanceof Holes a && other instanceof Holes b) {
                assertThat(worth(c.mirrored(), places(b))).isEqualTo(worth(c, places(a)));
                assertThat(b.symmetric()).isEqualTo(a.symmetric());
            }
        }
    }

    /** One thing more in the way never saves a hole; a wider pitch never costs one. */
    @Example
    void moreInTheWayNeverSavesAHole() {
        Random random = new Random(11);
        for (int n = 0; n < COUNT; n++) {
            Case c = Case.drawn(random);
            List<int[]> more = new ArrayList<>(c.barred);
            int from = random.nextInt(c.length);
            more.add(new int[] {from, from + random.nextInt(4)});
            Case barred = new Case(c.length, c.aim, c.near, c.far, c.least, c.most, more);
            Case wider = new Case(c.length, c.aim, c.near, c.far, c.least, c.most + 1, c.barred);
            int plain = count(c);
            assertThat(count(barred)).isGreaterThanOrEqualTo(plain);
            assertThat(count(wider)).isLessThanOrEqualTo(plain);
        }
    }

    private static int count(Case c) {
        return c.spacing().setOut() instanceof Holes holes ? holes.atMm().size() : Integer.MAX_VALUE;
    }
}
