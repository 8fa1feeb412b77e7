package quoin.judge;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import quoin.measure.Dimension;
import quoin.measure.Estimate;
import quoin.measure.Extreme;
import quoin.measure.Influences;
import quoin.measure.Uncertain;

/**
 * Whether a value with doubt keeps a limit: the odds, and the finding that a decision rule makes of them.
 *
 * <p>The odds are P(atLeast &le; true value &le; atMost | readings) with a flat prior, both limits together. A least or
 * a greatest is judged by all its parts together, never by the part that happens to govern. No instances.
 */
public final class Conformity {
    private static final int MOST_TERMS = 6;

    private Conformity() {}

    /**
     * The probability that an estimate keeps a bound.
     *
     * @param estimate the value with its doubt
     * @param bound the limits, in the same base unit
     * @return the odds
     */
    public static Odds odds(Estimate estimate, Bound bound) {
        if (estimate instanceof Uncertain value) {
            return Odds.firstOrder(marginal(value, bound));
        }
        return jointOdds(List.of(new Constraint(estimate, bound)));
    }

    /**
     * The probability that several estimates keep their bounds, all together.
     *
     * @param constraints the estimates and their bounds; 1 for none
     * @return the odds
     */
    public static Odds jointOdds(List<Constraint> constraints) {
        if (constraints.size() == 1 && constraints.get(0).estimate() instanceof Uncertain value) {
            return Odds.firstOrder(marginal(value, constraints.get(0).bound()));
        }
        return new Region(constraints).odds();
    }

    private static double marginal(Uncertain value, Bound bound) {
        double u = value.standardUncertainty();
        if (u == 0) {
            return bound.contains(value.value()) ? 1 : 0;
        }
        return clamp(Gauss.between((bound.atLeast() - value.value()) / u, (bound.atMost() - value.value()) / u));
    }

    private static double clamp(double p) {
        return p > 0 ? Math.min(p, 1) : 0;
    }

    /** Conditions that must all hold, and groups of conditions that must not all hold. */
    private static final class Region {
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

        private static List<Side> turned(List<Side> sides) {
            List<Side> result = new ArrayList<>();
            for (Side side : sides) {
                result.add(new Side(side.value(), side.limit(), -side.sign()));
            }
            return result;
        }

        Odds odds() {
            if (mustNotAll.size() > MOST_TERMS) {
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
            return sum(rows);
        }

        /** Inclusion and exclusion over the groups that must not all hold. */
        private Odds sum(List<double[]> rows) {
            Odds first = probability(must, rows);
            double value = first.value();
            double lower = first.lower();
            double upper = first.upper();
            for (int subset = 1; subset < 1 << mustNotAll.size(); subset++) {
                List<Side> sides = new ArrayList<>(must);
                for (int i = 0; i < mustNotAll.size(); i++) {
                    if ((subset >> i & 1) == 1) {
                        sides.addAll(mustNotAll.get(i));
                    }
                }
                Odds term = probability(sides, rows);
                if (Integer.bitCount(subset) % 2 == 1) {
                    value -= term.value();
                    lower -= term.upper();
                    upper -= term.lower();
                } else {
                    value += term.value();
                    lower += term.lower();
                    upper += term.upper();
                }
                first = new Odds(first.value(), first.lower(), first.upper(), worse(first.method(), term.method()));
            }
            double p = clamp(value);
            return new Odds(p, Math.min(p, clamp(lower)), Math.max(p, clamp(upper)), first.method());
        }

        private static Odds.Method worse(Odds.Method a, Odds.Method b) {
            return a.compareTo(b) >= 0 ? a : b;
        }

        private Odds probability(List<Side> sides, List<double[]> rows) {
            List<JointNormal.Row> conditions = new ArrayList<>();
            for (Side side : sides) {
                double slack = side.sign() * (values.get(side.value()).value() - side.limit());
                double[] row = rows.get(side.value());
                conditions.add(new JointNormal.Row(slack, side.sign() > 0 ? row : negated(row)));
            }
            return JointNormal.allHold(conditions);
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

    /**
     * The finding that a rule makes of an estimate and a bound.
     *
     * @param clause the clause or check it is for
     * @param estimate the value with its doubt
     * @param dimension the kind of quantity
     * @param bound the limits, in base units
     * @param rule how sure one must be
     * @return the finding, with odds, margin and the step {@code bound}
     */
    public static Finding check(
            String clause, Estimate estimate, Dimension dimension, Bound bound, DecisionRule rule) {
        Objects.requireNonNull(rule, "rule");
        Uncertain governing = governing(estimate);
        Odds odds = odds(estimate, bound);
        Finding finding = Verdicts.decide(clause, estimate, bound, rule, odds);
        String against = nearer(governing.value(), bound);
        double limit = against.equals("atLeast") ? bound.atLeast() : bound.atMost();
        double spare = against.equals("atLeast") ? governing.value() - limit : limit - governing.value();
        Args args = Args.of("limit", dimension.toAnswer(limit)).with("unit", dimension.answerUnit());
        if (bound.hasAtLeast() && bound.hasAtMost()) {
            args = args.with("atLeast", dimension.toAnswer(bound.atLeast()))
                    .with("atMost", dimension.toAnswer(bound.atMost()));
        }
        return finding.withOdds(odds)
                .withMargin(new Margin(spare, governing.standardUncertainty(), dimension, against))
                .plusStep(Step.of("bound", args));
    }

    private static Uncertain governing(Estimate estimate) {
        return estimate instanceof Extreme extreme ? extreme.governing().value() : (Uncertain) estimate;
    }

    private static String nearer(double value, Bound bound) {
        return value - bound.atLeast() < bound.atMost() - value ? "atLeast" : "atMost";
    }
}
