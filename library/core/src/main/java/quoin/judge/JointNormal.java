package quoin.judge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/**
 * The probability that several linear functions of the same standard normal numbers all keep their limits.
 *
 * <p>Each {@link Row} asks slack + row&middot;z &ge; 0, z independent standard normals. No row, rows without doubt and
 * rows of rank 1 are exact. Otherwise the probability is bounded by the sum of the marginals from below and by the
 * least marginal from above, and integrated on a fixed lattice ({@link LatticeMean}) over the space that the rows
 * span: as a product of conditional probabilities ({@link Staircase}) or, where failing is rare, over the directions in
 * which a row fails ({@link Breach}). Rows that fail with less than 1e-7 all together, and rows that fail with less than
 * 1e-6 all together while those kept hold, are left out and widen the error instead.
 */
final class JointNormal {
    private static final double LEFT_OUT = 1e-7;
    private static final double ROUGH = 1e-3;
    private static final int FEW = 16;
    private static final double CLOSE = 1e-6;
    private static final double TABLE = 2e-8;
    private static final double COVERED = 1e-6;
    private static final double COMMON = 3;
    private static final double RARE = 0.05;

    private JointNormal() {}

    /** One condition: slack + row&middot;z &ge; 0. */
    static final class Row {
        final double slack;
        final double[] contributions;

        /** The array is kept, not copied. */
        Row(double slack, double[] contributions) {
            this.slack = slack;
            this.contributions = contributions;
        }

        double norm() {
            double most = 0;
            for (double c : contributions) {
                most = Math.max(most, Math.abs(c));
            }
            if (most == 0) {
                return 0;
            }
            double sum = 0;
            for (double c : contributions) {
                sum += (c / most) * (c / most);
            }
            return most * StrictMath.sqrt(sum);
        }
    }

    /** P(all rows hold). Rows share one basis; a NaN slack never holds. */
    static Odds allHold(List<Row> rows) {
        return allHold(rows, JointNormal::joint);
    }

    /** The same without an integral: where it is not exact, bounds of it. */
    static Odds bounded(List<Row> rows) {
        return allHold(rows, JointNormal::boundsOfFaces);
    }

    private static Odds allHold(List<Row> rows, Function<List<Face>, Odds> several) {
        List<Face> faces = new ArrayList<>();
        for (Row row : rows) {
            double norm = row.norm();
            if (norm > 0 && !Double.isNaN(row.slack)) {
                faces.add(Face.of(row, norm));
            } else if (!(norm == 0 && row.slack >= 0)) {
                return Odds.firstOrder(0);
            }
        }
        if (faces.isEmpty()) {
            return Odds.firstOrder(1);
        }
        if (faces.size() == 1) {
            return Odds.firstOrder(Gauss.below(faces.get(0).h));
        }
        return several.apply(faces);
    }

    /**
     * The same, roughly: bounds where they are close, else the first points of one lattice over the rows that fail with more
     * than 1e-3 all together. Good to a few thousandths.
     */
    static Odds rough(List<Row> rows) {
        return allHold(rows, JointNormal::roughly);
    }

    private static Odds roughly(List<Face> faces) {
        Odds bounds = boundsOfFaces(faces);
        List<Face> kept = new ArrayList<>(faces);
        double leftOut = leaveOut(kept, ROUGH);
        if (kept.isEmpty() || bounds.upper() - bounds.lower() <= ROUGH) {
            return bounds;
        }
        double[] h = new double[kept.size()];
        double[][] c = new double[h.length][];
        for (int i = 0; i < h.length; i++) {
            h[i] = kept.get(i).h;
            c[i] = kept.get(i).c;
        }
        LatticeMean mean = new LatticeMean(new Staircase(h, c), FEW);
        return within(new Integral(mean.value(), mean.error()), leftOut, bounds.lower(), bounds.upper());
    }

    private static Odds boundsOfFaces(List<Face> faces) {
        double least = 1;
        double fails = 0;
        for (Face face : faces) {
            least = Math.min(least, Gauss.below(face.h));
            fails += face.fails();
        }
        return bounds(Math.max(0, 1 - fails), least);
    }

    private static Odds joint(List<Face> faces) {
        double least = 1;
        double fails = 0;
        for (Face face : faces) {
            least = Math.min(least, Gauss.below(face.h));
            fails += face.fails();
        }
        double sum = Math.max(0, 1 - fails);
        List<Face> kept = new ArrayList<>(faces);
        double leftOut = leaveOut(kept, LEFT_OUT) + leaveOutCovered(kept);
        if (kept.isEmpty()) {
            return bounds(sum, least);
        }
        double[] h = new double[kept.size()];
        double[][] c = new double[h.length][];
        for (int i = 0; i < h.length; i++) {
            h[i] = kept.get(i).h;
            c[i] = kept.get(i).c;
        }
        Staircase stairs = new Staircase(h, c);
        if (stairs.rank() == 1) {
            double exact = Math.min(stairs.exact(), least);
            double off = stairs.flattened();
            return new Odds(
                    exact, Math.max(0, exact - leftOut - off), Math.min(least, exact + off), Odds.Method.FIRST_ORDER);
        }
        if (least - sum <= CLOSE) {
            return bounds(sum, least);
        }
        return within(integral(kept, h, stairs), leftOut + stairs.flattened() + TABLE * stairs.rank(), sum, least);
    }

    /** The better of the two ways to integrate, by how well each does on the first points. */
    private static Integral integral(List<Face> faces, double[] h, Staircase stairs) {
        double fails = 0;
        for (Face face : faces) {
            fails += face.fails();
        }
        // the faces are sorted: the first is the likeliest to fail
        if (h.length == stairs.rank() || !(fails < COMMON) || !(h[0] > 0)) {
            return Integral.of(new LatticeMean(stairs).grow());
        }
        LatticeMean beyond = new LatticeMean(new Breach(h, stairs.turned()));
        if (fails > RARE) {
            LatticeMean product = new LatticeMean(stairs);
            if (product.effort() < beyond.effort()) {
                return Integral.of(product.grow());
            }
        }
        Integral failing = Integral.of(beyond.grow());
        return new Integral(1 - failing.value(), failing.error());
    }

    private record Integral(double value, double error) {
        static Integral of(LatticeMean mean) {
            return new Integral(mean.value(), mean.error());
        }
    }

    private static Odds within(Integral integral, double roundings, double lower, double upper) {
        double value = integral.value();
        double error = integral.error() + roundings;
        double clipped = Math.min(Math.max(value, lower), upper);
        return new Odds(
                clipped,
                Math.min(clipped, Math.max(value - error, lower)),
                Math.max(clipped, Math.min(value + error, upper)),
                Odds.Method.LATTICE);
    }

    private static Odds bounds(double lower, double upper) {
        double low = Math.min(lower, upper);
        return new Odds(low + 0.5 * (upper - low), low, upper, Odds.Method.BOUNDS);
    }

    /** Removes the faces that hardly ever fail; returns the probability that one of them does, at most. */
    private static double leaveOut(List<Face> faces, double most) {
        faces.sort(Comparator.comparingDouble((Face face) -> face.h));
        double sum = 0;
        for (int i = faces.size() - 1; i >= 0; i--) {
            double fails = faces.get(i).fails();
            if (!(sum + fails <= most)) {
                break;
            }
            sum += fails;
            faces.remove(i);
        }
        return sum;
    }

    /**
     * Removes the faces that hardly ever fail while a likelier one holds, sorted as they are; returns the probability that
     * one of them does, at most. Whatever covers another stays or is covered itself, so the sum holds for all.
     */
    private static double leaveOutCovered(List<Face> faces) {
        double each = COVERED / faces.size();
        double sum = 0;
        for (int i = faces.size() - 1; i > 0; i--) {
            double alone = 1;
            for (int j = 0; j < i && alone > each; j++) {
                alone = faces.get(i).failsAlone(faces.get(j));
            }
            if (alone <= each) {
                sum += alone;
                faces.remove(i);
            }
        }
        return sum;
    }
}
