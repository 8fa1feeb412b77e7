package quoin.judge;

/**
 * Where an estimate of a given doubt passes and where it fails; between and beyond it is undecided.
 *
 * @param passFrom the least estimate that passes
 * @param passTo the greatest estimate that passes; below {@code passFrom} where none does
 * @param failBelow estimates up to here fail
 * @param failAbove estimates from here fail
 */
record Zones(double passFrom, double passTo, double failBelow, double failAbove) {
    private static final int HALVINGS = 100;
    private static final double FAR = 40;

    /** The zones of a rule for estimates with standard uncertainty u. */
    static Zones of(DecisionRule rule, Bound bound, double u) {
        if (rule instanceof DecisionRule.Guarded guarded) {
            return guarded(guarded.probability(), bound, u);
        }
        double w = band(rule, u);
        return new Zones(bound.atLeast() + w, bound.atMost() - w, bound.atLeast() - w, bound.atMost() + w);
    }

    /** The guard band of a rule that has one; 0 for the simple rule. */
    static double band(DecisionRule rule, double u) {
        if (rule instanceof DecisionRule.GuardBand band) {
            return band.width();
        }
        return rule instanceof DecisionRule.GuardFactor factor ? factor.factor() * factor.coverageFactor() * u : 0;
    }

    private static Zones guarded(double p, Bound bound, double u) {
        if (!bound.hasAtLeast() || !bound.hasAtMost()) {
            double z = Gauss.quantile(p) * u;
            return new Zones(bound.atLeast() + z, bound.atMost() - z, bound.atLeast() - z, bound.atMost() + z);
        }
        double centre = 0.5 * (bound.atLeast() + bound.atMost());
        double half = 0.5 * (bound.atMost() - bound.atLeast());
        double pass = reach(p, half, u);
        double fail = reach(1 - p, half, u);
        return new Zones(
                pass >= 0 ? centre - pass : Double.POSITIVE_INFINITY,
                pass >= 0 ? centre + pass : Double.NEGATIVE_INFINITY,
                centre - Math.max(0, fail),
                centre + Math.max(0, fail));
    }

    /** The distance from the centre at which the odds are p; &minus;1 where they are lower everywhere. */
    private static double reach(double p, double half, double u) {
        if (!(u > 0)) {
            return half;
        }
        if (!(inside(0, half, u) >= p)) {
            return -1;
        }
        double near = 0;
        double far = half + FAR * u;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (near + far);
            if (inside(middle, half, u) >= p) {
                near = middle;
            } else {
                far = middle;
            }
        }
        return near;
    }

    private static double inside(double distance, double half, double u) {
        return Gauss.between((-half - distance) / u, (half - distance) / u);
    }

    /** {@return whether an estimate is decided} */
    boolean decides(double value) {
        return (value >= passFrom && value <= passTo) || value <= failBelow || value >= failAbove;
    }

    /** The probability that a normal estimate will be decided. */
    double decides(double mean, double spread) {
        if (!(spread > 0)) {
            return decides(mean) ? 1 : 0;
        }
        double pass = Gauss.between((passFrom - mean) / spread, (passTo - mean) / spread);
        double fail = Gauss.below((failBelow - mean) / spread) + Gauss.below((mean - failAbove) / spread);
        return Math.min(1, pass + fail);
    }
}
