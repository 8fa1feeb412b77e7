package quoin.measure;

import java.util.OptionalDouble;

/**
 * How many degrees of freedom the standard uncertainty of a number has.
 *
 * <p>Combined once, at the end, over the influences themselves: through intermediate results that share an influence the
 * formula is wrong. Stateless.
 */
public final class DegreesOfFreedom {
    private DegreesOfFreedom() {}

    /**
     * The effective degrees of freedom by Welch and Satterthwaite, where that may be asked.
     *
     * <p>The formula presumes independent influences. All the doubt from rows of readings taken together has the n − 1
     * of the rows, whatever was computed from them; a mixture of such rows with anything else has no answer.
     *
     * @formula u⁴ / Σ (contributionᵢ⁴ / νᵢ); n − 1 for one set of rows
     * @unit none; infinite is a value
     * @edge infinite without doubt or where every ν is infinite; empty where a correlated group of few degrees of freedom
     *     contributes together with anything else
     * @source standard: JCGM 100:2008, G.4.1; H.2 for rows taken together (from memory)
     * @param number the number
     * @return the degrees of freedom, or empty where the formula must be refused: use Monte Carlo
     */
    public static OptionalDouble of(Uncertain number) {
        double variance = number.variance();
        double reciprocal = 0;
        String group = "";
        boolean mixed = false;
        double groupNu = 0;
        Influences influences = number.influences();
        for (int i = 0; i < influences.size(); i++) {
            double c = number.contribution(i);
            if (c == 0) {
                continue;
            }
            Influence influence = influences.get(i);
            double share = c * c / variance;
            boolean few = influence.degreesOfFreedom() != Double.POSITIVE_INFINITY;
            boolean member = few && !influence.group().isEmpty();
            mixed |= member
                    && groupNu != 0
                    && (!group.equals(influence.group()) || groupNu != influence.degreesOfFreedom());
            group = member ? influence.group() : group;
            groupNu = member ? influence.degreesOfFreedom() : groupNu;
            reciprocal += few ? share * share / influence.degreesOfFreedom() : 0;
        }
        if (groupNu == 0) {
            return OptionalDouble.of(reciprocal == 0 ? Double.POSITIVE_INFINITY : 1 / reciprocal);
        }
        return mixed || hasOthers(number, group) ? OptionalDouble.empty() : OptionalDouble.of(groupNu);
    }

    private static boolean hasOthers(Uncertain number, String group) {
        for (int i = 0; i < number.influences().size(); i++) {
            if (number.contribution(i) != 0
                    && !number.influences().get(i).group().equals(group)) {
                return true;
            }
        }
        return false;
    }
}
