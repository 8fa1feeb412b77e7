package quoin.judge;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.AllowedSolution;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;

/** The only door of this package to the root finders of commons-math3. */
final class Crossing {
    /** In parts of the bracket: far finer than any integral can tell. */
    private static final double CLOSE = 1e-7;

    /** In odds: less than any integral tells. */
    private static final double ENOUGH = 1e-7;

    /** In last digits: a bracket as narrow as that is one number. */
    private static final int NARROWEST = 16;

    private static final int ORDER = 5;
    private static final int MOST = 200;

    private Crossing() {}

    /**
     * The last place, within the accuracy, where a function that does not fall is not above 0: the lower end if it is above
     * there already, the upper end if it is above nowhere. A jump is closed in on from below.
     */
    static double of(DoubleUnaryOperator rising, double from, double to) {
        double least = NARROWEST * Math.ulp(Math.max(Math.abs(from), Math.abs(to)));
        if (!(to - from > least) || rising.applyAsDouble(from) > 0) {
            return from;
        }
        if (!(rising.applyAsDouble(to) > 0)) {
            return to;
        }
        double close = Math.max(CLOSE * (to - from), least);
        return new BracketingNthOrderBrentSolver(Math.ulp(1.0), close, ENOUGH, ORDER)
                .solve(MOST, rising::applyAsDouble, from, to, AllowedSolution.BELOW_SIDE);
    }
}
