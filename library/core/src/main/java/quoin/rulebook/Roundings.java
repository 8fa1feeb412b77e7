package quoin.rulebook;

import java.util.List;
import java.util.Optional;
import quoin.measure.Amount;
import quoin.measure.Steps;

/** Rounding to a step or to a list. */
final class Roundings {
    /** A value this close below a half, in steps, counts as the half, since it may stem from a computation. */
    private static final double CLOSE = 1e-6;

    private Roundings() {}

    static double toStep(Rounding.Mode mode, double value, double step) {
        return switch (mode) {
            case DOWN -> Steps.down(value, step);
            case UP -> Steps.up(value, step);
            case NEAREST -> Steps.nearest(value + StrictMath.signum(value) * CLOSE * step, step);
        };
    }

    /** The greatest of a list that is not above a value; a value as good as on one counts as it. */
    static Optional<Amount> downTo(List<Amount> list, double value) {
        Optional<Amount> best = Optional.empty();
        for (Amount amount : list) {
            boolean fits = Picking.isUpTo(amount.value(), value);
            if (fits && (best.isEmpty() || amount.value() > best.get().value())) {
                best = Optional.of(amount);
            }
        }
        return best;
    }
}
