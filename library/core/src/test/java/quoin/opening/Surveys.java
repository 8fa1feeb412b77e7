package quoin.opening;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.measure.Instrument;
import quoin.measure.Uncertain;

/** Surveys for tests: readings by instruments whose doubt is one number. */
final class Surveys {
    /** Head, right, foot, left, the diagonal from head-left, the one from head-right. */
    static final List<String> SIX = List.of(
            "width@head", "length@right", "width@foot", "length@left", "diagonal@head-left", "diagonal@head-right");

    private Surveys() {}

    /** An instrument with a standard uncertainty that is fresh for every reading. */
    static Instrument fresh(String id, double u) {
        return Instrument.of(id, Instrument.Kind.STATED).withEach(List.of(Doubt.standard(u, Dimension.LENGTH)));
    }

    static Reading read(String of, double u, double... values) {
        return Reading.of(of, fresh("u" + Double.toString(u).toLowerCase(java.util.Locale.ROOT), u), values);
    }

    static Reading behind(String of, double u, double value) {
        Reading front = read(of, u, value);
        return new Reading("", front.of(), Plane.BACK, front.values(), front.by());
    }

    /** The six usual readings in the order of {@link #SIX}. */
    static List<Reading> six(double u, double... values) {
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < SIX.size(); i++) {
            readings.add(read(SIX.get(i), u, values[i]));
        }
        return readings;
    }

    /** What those readings say of straight sides. */
    static Adjustment adjust(List<Reading> readings) {
        return Adjustment.of(straight(readings), Plane.FRONT);
    }

    static Survey straight(List<Reading> readings) {
        return Survey.finished(readings, Double.NaN);
    }

    static List<Reading> join(List<Reading> first, Reading... more) {
        List<Reading> all = new ArrayList<>(first);
        all.addAll(List.of(more));
        return all;
    }

    static AdjustedReading of(Adjustment adjustment, String of) {
        return adjustment.readings().stream()
                .filter(reading -> reading.of().equals(of))
                .findFirst()
                .orElseThrow();
    }

    static int index(Adjustment adjustment, String of) {
        return adjustment.readings().indexOf(of(adjustment, of));
    }

    /** The quadrilateral with those corners: head-left, head-right, foot-right, foot-left. */
    record Quad(double[] a, double[] b, double[] c, double[] d) {
        /** Head-left in the origin and head-right on the x axis. */
        static Quad level(double width, double cx, double cy, double dx, double dy) {
            return new Quad(new double[] {0, 0}, new double[] {width, 0}, new double[] {cx, cy}, new double[] {dx, dy});
        }

        @Override
        public String toString() {
            return java.util.Arrays.deepToString(new double[][] {a, b, c, d});
        }

        double[] corner(Corner corner) {
            return switch (corner) {
                case HEAD_LEFT -> a;
                case HEAD_RIGHT -> b;
                case FOOT_RIGHT -> c;
                case FOOT_LEFT -> d;
            };
        }

        double[] on(Side side, double t) {
            double[] p = corner(side.from());
            double[] q = corner(side.to());
            return new double[] {p[0] + t * (q[0] - p[0]), p[1] + t * (q[1] - p[1])};
        }

        double[] exact() {
            return new double[] {far(a, b), far(b, c), far(c, d), far(d, a), far(a, c), far(b, d)};
        }

        double across(Side start, double t) {
            return far(on(start, t), on(start == Side.LEFT ? Side.RIGHT : Side.FOOT, t));
        }

        List<Reading> six(double u) {
            return Surveys.six(u, exact());
        }

        Opening opening(double u) {
            return Opening.of(straight(six(u)));
        }

        Quad times(double k) {
            return new Quad(
                    new double[] {k * a[0], k * a[1]},
                    new double[] {k * b[0], k * b[1]},
                    new double[] {k * c[0], k * c[1]},
                    new double[] {k * d[0], k * d[1]});
        }
    }

    static double far(double[] p, double[] q) {
        double x = q[0] - p[0];
        double y = q[1] - p[1];
        return Math.sqrt(x * x + y * y);
    }

    static double u(Map<String, ? extends quoin.measure.Estimate> figures, String name) {
        return ((Uncertain) java.util.Objects.requireNonNull(figures.get(name))).standardUncertainty();
    }
}
