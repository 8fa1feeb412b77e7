package quoin.judge;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import quoin.measure.Extreme;
import quoin.measure.Influences;
import quoin.measure.Uncertain;

/** Conditions that must all hold, and groups of conditions that must not all hold. */
final class Region {
    private static final int MOST_GROUPS = 4;

    private final List<Uncertain> values = new ArrayList<>();
    private final List<Side> must = new ArrayList<>();
    private final List<List<Side>> mustNotAll = new ArrayList<>();
    private final List<Constraint> constraints;

    /** sign &middot; value &ge; sign &middot; limit. */
    private record Side(int value, double limit, int sign) {}

    Region(List<Constraint> constraints) {
        this.constraints = List.copyOf(constraints);
        for (Constraint constraint : this.constraints) {
            add(constraint);
        }
    }

    private void add(Constraint constraint) {
        Bound bound = constraint.bound();
        if (constraint.estimate() instanceof Extreme extreme) {
            List<Side> low = new ArrayList<>();
            List<Side> high = new ArrayList<>();
            for (Extreme.Part part : extreme.parts()) {
                values.add(part.value());
                low.add(new Side(values.size() - 1, bound.atLeast(), 1));
                high.add(new Side(values.size() - 1, bound.atMost(), -1));
            }
            addExtreme(extreme.kind(), bound, low, high);
        } else if (constraint.estimate() instanceof Uncertain value) {
            values.add(value);
            addAll(bound.hasAtLeast(), List.of(new Side(values.size() - 1, bound.atLeast(), 1)));
            addAll(bound.hasAtMost(), List.of(new Side(values.size() - 1, bound.atMost(), -1)));
        }
    }

    private void addExtreme(Extreme.Kind kind, Bound bound, List<Side> low, List<Side> high) {
        if (kind == Extreme.Kind.GREATEST && bound.hasAtLeast()) {
            mustNotAll.add(turned(low));
        } else {
            addAll(bound.hasAtLeast(), low);
        }
        if (kind == Extreme.Kind.LEAST && bound.hasAtMost()) {
            mustNotAll.add(turned(high));
        } else {
            addAll(bound.hasAtMost(), high);
        }
    }

    private void addAll(boolean wanted, List<Side> sides) {
        if (wanted) {
            must.addAll(sides);
        }
    }

    /** The opposite of each side, without the limit itself. */
    private static List<Side> turned(List<Side> sides) {
        List<Side> result = new ArrayList<>();
        for (Side side : sides) {
            double beyond = side.sign() > 0 ? Math.nextDown(side.limit()) : Math.nextUp(side.limit());
            result.add(new Side(side.value(), beyond, -side.sign()));
        }
        return result;
    }

    /** {@return the probability that all constraints hold} */
    Odds odds() {
        return odds(JointNormal::allHold);
    }

    /** {@return that probability to a few thousandths} */
    Odds rough() {
        return odds(JointNormal::rough);
    }

    /** {@return bounds of that probability, without an integral} */
    Odds bounded() {
        return odds(JointNormal::bounded);
    }

    private Odds odds(Function<List<JointNormal.Row>, Odds> allHold) {
        Odds odds = seen(allHold);
        return values.stream().anyMatch(Marginal::isBlind) ? Conformity.unknown(odds.value()) : odds;
    }

    private Odds seen(Function<List<JointNormal.Row>, Odds> allHold) {
        if (mustNotAll.size() > MOST_GROUPS) {
            return boundsOfSingles();
        }
        Influences basis = Influences.NONE;
        for (Uncertain value : values) {
            basis = basis.union(value.influences());
        }
        List<double[]> rows = new ArrayList<>();
        for (Uncertain value : values) {
            rows.add(row(value.onto(basis)));
        }
        return sum(rows, allHold);
    }

    /** Inclusion and exclusion over the groups that must not all hold. */
    private Odds sum(List<double[]> rows, Function<List<JointNormal.Row>, Odds> allHold) {
        Odds first = probability(must, rows, allHold);
        double value = first.value();
        double lower = first.lower();
        double upper = first.upper();
        Odds.Method method = first.method();
        for (int subset = 1; subset < 1 << mustNotAll.size(); subset++) {
            Odds term = probability(withGroups(subset), rows, allHold);
            boolean taken = Integer.bitCount(subset) % 2 == 1;
            value += taken ? -term.value() : term.value();
            lower += taken ? -term.upper() : term.lower();
            upper += taken ? -term.lower() : term.upper();
            method = worse(method, term.method());
        }
        double p = clamp(value);
        return new Odds(p, Math.min(p, clamp(lower)), Math.max(p, clamp(upper)), method);
    }

    private List<Side> withGroups(int subset) {
        List<Side> sides = new ArrayList<>(must);
        for (int i = 0; i < mustNotAll.size(); i++) {
            if ((subset >> i & 1) == 1) {
                sides.addAll(mustNotAll.get(i));
            }
        }
        return sides;
    }

    private static Odds.Method worse(Odds.Method a, Odds.Method b) {
        return a.compareTo(b) >= 0 ? a : b;
    }

    private Odds probability(List<Side> sides, List<double[]> rows, Function<List<JointNormal.Row>, Odds> allHold) {
        List<JointNormal.Row> conditions = new ArrayList<>();
        for (Side side : sides) {
            Uncertain value = values.get(side.value());
            double slack = Marginal.asNormal(side.sign() * (value.value() - side.limit()), value);
            double[] row = rows.get(side.value());
            conditions.add(new JointNormal.Row(slack, side.sign() > 0 ? row : negated(row)));
        }
        return allHold.apply(conditions);
    }

    private static double clamp(double p) {
        return p > 0 ? Math.min(p, 1) : 0;
    }

    private Odds boundsOfSingles() {
        double fails = 0;
        double least = 1;
        for (Constraint constraint : constraints) {
            Odds single = Conformity.odds(constraint.estimate(), constraint.bound());
            fails += 1 - single.lower();
            least = Math.min(least, single.upper());
        }
        double low = Math.min(least, clamp(1 - fails));
        return new Odds(low, low, least, Odds.Method.BOUNDS);
    }

    private static double[] row(Uncertain value) {
        double[] row = new double[value.influences().size()];
        for (int i = 0; i < row.length; i++) {
            row[i] = value.contribution(i);
        }
        return row;
    }

    private static double[] negated(double[] row) {
        double[] result = new double[row.length];
        for (int i = 0; i < row.length; i++) {
            result[i] = -row[i];
        }
        return result;
    }
}
