package quoin.opening;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quoin.measure.Influence;
import quoin.measure.Uncertain;

/**
 * The outline at the back of the recess.
 *
 * <p>Where its own readings determine it, it has its own adjustment, its head parallel to the head in front and its
 * middle behind the middle in front. Where they do not, it is the front outline moved by one offset for each side point
 * that a reading touches, prior 0 within plus or minus {@code straightWithin}. Immutable and safe for use by many
 * threads.
 *
 * @param outline the outline
 * @param test whether its readings can be right together
 * @param unused readings of it that could not be used, as it is not determined
 */
record BackPlane(Outline outline, PlaneTest test, List<String> unused) {
    BackPlane {
        unused = List.copyOf(unused);
    }

    private static final String NAME = Plane.BACK.text();

    static Optional<BackPlane> of(Survey survey, Outline front) {
        if (survey.outline(Plane.BACK).isEmpty()) {
            return Optional.empty();
        }
        Adjustment own = Adjustment.of(survey, Plane.BACK);
        if (own.isSolved()) {
            Outline outline = Outline.of(own).centredOn(front);
            PlaneTest test = new PlaneTest(NAME, own.redundancy(), own.statistic(), own.readings());
            return Optional.of(new BackPlane(outline, test, List.of()));
        }
        return Optional.of(new Offsets(survey, front).solve());
    }

    /** One offset of a side point from the front outline. */
    private record Offset(Side side, double along, String at) {}

    /** The offsets that readings across the back tell of; not safe for use by many threads. */
    private static final class Offsets {
        private final Outline front;
        private final double within;
        private final List<Offset> offsets = new ArrayList<>();
        private final List<int[]> pairs = new ArrayList<>();
        private final List<Uncertain> shortfalls = new ArrayList<>();
        private final List<PlaneTest.Observed> read = new ArrayList<>();
        private final List<String> unused = new ArrayList<>();

        Offsets(Survey survey, Outline front) {
            this.front = front;
            this.within = survey.straightWithinMm() > 0 ? survey.straightWithinMm() : 0;
            for (int i = 0; i < survey.readings().size(); i++) {
                Reading reading = survey.readings().get(i);
                if (reading.in() == Plane.BACK) {
                    add(reading, i, survey.observed(i));
                }
            }
        }

        private void add(Reading reading, int entry, List<Uncertain> observed) {
            Span span = reading.of();
            int before = shortfalls.size();
            if (span instanceof Span.Across across) {
                double length = front.length(across.start());
                join(
                        across.start(),
                        across.end(),
                        across.at().on(length),
                        across.at().text(),
                        observed);
            } else if (span instanceof Span.Edge edge) {
                boolean width = edge.side() == Side.HEAD || edge.side() == Side.FOOT;
                boolean first = edge.side() == Side.HEAD || edge.side() == Side.LEFT;
                Side start = width ? Side.LEFT : Side.HEAD;
                Side end = width ? Side.RIGHT : Side.FOOT;
                join(start, end, first ? 0 : 1, edge.side().text(), observed);
            } else if (!(span instanceof Span.Depth) && !(span instanceof Span.Fall)) {
                unused.add(reading.name());
            }
            for (int i = before; i < shortfalls.size(); i++) {
                read.add(new PlaneTest.Observed(reading, entry, observed.get(i - before)));
            }
        }

        private void join(Side start, Side end, double along, String at, List<Uncertain> observed) {
            int p = index(new Offset(start, along, at));
            int q = index(new Offset(end, along, at));
            Outline.Vertex a = front.on(start, along, at);
            Outline.Vertex b = front.on(end, along, at);
            Uncertain between = a.distanceTo(b);
            for (Uncertain value : observed) {
                pairs.add(new int[] {p, q});
                shortfalls.add(between.minus(value));
            }
        }

        private int index(Offset offset) {
            int at = offsets.indexOf(offset);
            if (at >= 0) {
                return at;
            }
            offsets.add(offset);
            return offsets.size() - 1;
        }

        /** Least squares: the offsets of both ends add up to what the back is narrower. */
        BackPlane solve() {
            int m = offsets.size();
            int n = shortfalls.size();
            double priorVariance = within > 0 ? within * within / 3 : 1e-6;
            double[][] c = new double[n][n];
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    c[i][j] = shortfalls.get(i).covariance(shortfalls.get(j)) + shared(i, j) * priorVariance;
                }
                c[i][i] += 1e-8;
            }
            double[][] inverse = new Cholesky(c, 0).inverse();
            List<Uncertain> inputs = new ArrayList<>(shortfalls);
            for (Offset offset : offsets) {
                inputs.add(Uncertain.of(
                        0,
                        Influence.rectangular(
                                "straight/back/" + offset.side().text() + "@" + offset.at(),
                                Math.sqrt(3 * priorVariance))));
            }
            List<Uncertain> solved = new ArrayList<>();
            for (int k = 0; k < m; k++) {
                solved.add(offset(k, inverse, inputs, priorVariance));
            }
            PlaneTest test = n == 0 ? new PlaneTest(NAME, 0, 0, List.of()) : test(priorVariance);
            return new BackPlane(outline(solved), test, unused);
        }

        /** Whether what falls short is no more than the doubts and the offsets of both ends explain. */
        private PlaneTest test(double priorVariance) {
            int m = offsets.size();
            double[][] design = new double[pairs.size()][m];
            List<Uncertain> beyond = new ArrayList<>();
            for (int i = 0; i < design.length; i++) {
                for (int offset : pairs.get(i)) {
                    design[i][offset] -= 1;
                }
                beyond.add(shortfalls.get(i).negated());
            }
            double[] priors = new double[m];
            Arrays.fill(priors, 1 / priorVariance);
            return PlaneTest.of(NAME, read, beyond, design, priors);
        }

        private int shared(int i, int j) {
            int count = 0;
            for (int a : pairs.get(i)) {
                for (int b : pairs.get(j)) {
                    count += a == b ? 1 : 0;
                }
            }
            return count;
        }

        /**
         * The k-th offset as a weighted sum of shortfalls and priors: prior plus gain times what it does not explain. What
         * falls short may be the bow in front, not only the offset from it: the gain is that of both together.
         */
        private Uncertain offset(int k, double[][] inverse, List<Uncertain> inputs, double priorVariance) {
            int n = shortfalls.size();
            double[] partials = new double[inputs.size()];
            partials[n + k] = 1;
            double value = 0;
            Uncertain bow = bow(offsets.get(k));
            for (int i = 0; i < n; i++) {
                double gain = 0;
                for (int j = 0; j < n; j++) {
                    boolean touches = pairs.get(j)[0] == k || pairs.get(j)[1] == k;
                    double own = touches ? priorVariance : 0;
                    gain += (own - bow.covariance(shortfalls.get(j))) * inverse[j][i];
                }
                partials[i] += gain;
                partials[n + pairs.get(i)[0]] -= gain;
                partials[n + pairs.get(i)[1]] -= gain;
                value += gain * shortfalls.get(i).value();
            }
            return Uncertain.combine(value, partials, inputs);
        }

        /** How far the front outline stands in from the chord of its side at that place. */
        private Uncertain bow(Offset offset) {
            Outline.Vertex v = front.on(offset.side(), offset.along(), offset.at());
            Outline.Vertex from = front.corner(offset.side().from());
            Outline.Vertex to = front.corner(offset.side().to());
            double t = offset.along();
            double[] weights = {1, t - 1, -t};
            Uncertain x = Uncertain.combine(0, weights, v.x(), from.x(), to.x());
            Uncertain y = Uncertain.combine(0, weights, v.y(), from.y(), to.y());
            Uncertain[] normal = front.inward(offset.side());
            return x.times(normal[0].value()).plus(y.times(normal[1].value()));
        }

        private Outline outline(List<Uncertain> solved) {
            Map<Side, List<Outline.Vertex>> sides = new EnumMap<>(Side.class);
            for (Side side : Side.values()) {
                List<Integer> own = new ArrayList<>();
                for (int k = 0; k < offsets.size(); k++) {
                    if (offsets.get(k).side() == side) {
                        own.add(k);
                    }
                }
                own.sort(Comparator.comparingDouble(k -> offsets.get(k).along()));
                sides.put(side, chain(side, own, solved));
            }
            return new Outline(sides);
        }

        /** Beyond the outermost touched points the side runs on beside the one in front. */
        private List<Outline.Vertex> chain(Side side, List<Integer> own, List<Uncertain> solved) {
            List<Outline.Vertex> front1 = front.side(side);
            if (own.isEmpty()) {
                return front1;
            }
            Uncertain[] normal = front.inward(side);
            List<Outline.Vertex> chain = new ArrayList<>();
            int first = own.get(0);
            int last = own.get(own.size() - 1);
            if (offsets.get(first).along() > 0) {
                chain.add(moved(front1.get(0), normal, solved.get(first)));
            }
            for (int k : own) {
                Offset offset = offsets.get(k);
                chain.add(moved(front.on(side, offset.along(), offset.at()), normal, solved.get(k)));
            }
            if (offsets.get(last).along() < 1) {
                chain.add(moved(front1.get(front1.size() - 1), normal, solved.get(last)));
            }
            return chain;
        }

        private static Outline.Vertex moved(Outline.Vertex v, Uncertain[] normal, Uncertain by) {
            return v.moved(normal[0].times(by), normal[1].times(by));
        }
    }
}
