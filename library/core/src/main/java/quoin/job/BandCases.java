package quoin.job;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import quoin.judge.Conformity;
import quoin.judge.Constraint;
import quoin.judge.Odds;
import quoin.measure.Estimate;
import quoin.rulebook.Limits;

/**
 * The odds of a bound whose limits hang on a band that the readings do not settle: P = &Sigma; P(that band, and its limits
 * are kept). A band without limits counts as kept in the upper bound of the odds and as not kept in the lower.
 */
final class BandCases {
    /** More combinations than this are not summed. */
    private static final int MOST = 32;

    /** What must hold, and whether there are limits then. */
    private record Part(List<Constraint> all, boolean stated) {
        Part and(Part other) {
            List<Constraint> both = new ArrayList<>(all);
            both.addAll(other.all);
            return new Part(both, stated && other.stated);
        }
    }

    private final List<Part> parts;

    private BandCases(List<Part> parts) {
        this.parts = parts;
    }

    static BandCases of(Estimate estimate, Limits.Stated limits) {
        if (limits.cases().isEmpty()) {
            return new BandCases(List.of(new Part(limits.on(estimate), true)));
        }
        List<Part> parts = new ArrayList<>();
        for (Limits.Case open : limits.cases()) {
            List<Constraint> all = new ArrayList<>(open.when());
            boolean stated = open.limits() instanceof Limits.Stated;
            if (open.limits() instanceof Limits.Stated then) {
                all.addAll(then.on(estimate));
            }
            parts.add(new Part(all, stated));
        }
        return new BandCases(parts);
    }

    /** The probability that the limits are kept, whichever they are. */
    Odds odds() {
        double value = 0;
        double lower = 0;
        double upper = 0;
        Odds.Method method = Odds.Method.FIRST_ORDER;
        for (Part part : parts) {
            Odds odds = Conformity.jointOdds(part.all());
            value += part.stated() ? odds.value() : 0;
            lower += part.stated() ? odds.lower() : 0;
            upper += odds.upper();
            method = method.compareTo(odds.method()) >= 0 ? method : odds.method();
        }
        double p = Math.min(1, value);
        return new Odds(p, Math.min(p, lower), Math.max(p, Math.min(1, upper)), method);
    }

    /** The probability that the limits of several bounds are kept together; empty where too much is open. */
    static OptionalDouble joint(List<BandCases> all) {
        List<Part> combined = List.of(new Part(List.of(), true));
        for (BandCases next : all) {
            List<Part> more = new ArrayList<>();
            for (Part one : combined) {
                next.parts.forEach(part -> more.add(one.and(part)));
            }
            if (more.size() > MOST) {
                return OptionalDouble.empty();
            }
            combined = more;
        }
        return OptionalDouble.of(new BandCases(combined).odds().value());
    }
}
