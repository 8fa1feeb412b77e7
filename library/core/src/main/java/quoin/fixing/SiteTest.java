package quoin.fixing;

import java.util.List;
import quoin.judge.Args;
import quoin.judge.Source;
import quoin.judge.Step;

/**
 * How many anchors of a job are tested on site, and with what load, as BS 8539 has it.
 *
 * <p>The counts and factors were read in a secondary source. A test proves the anchors of that material on that site, and
 * nothing else; who may test and what a failure means is for the competent person and the local code. Stateless.
 */
public final class SiteTest {
    private static final Source SOURCE = Source.of(Source.Kind.STANDARD, "BS 8539:2012, annex B (secondary source)");
    private static final int FEWEST = 3;

    private SiteTest() {}

    /** How many are tested, which decides how hard. */
    public enum Share {
        /** One in forty, with one and a half times the load. */
        ONE_IN_FORTY(40, 1.5),
        /** One in twenty, with one and a quarter times the load. */
        ONE_IN_TWENTY(20, 1.25);

        private final int of;
        private final double factor;

        Share(int of, double factor) {
            this.of = of;
            this.factor = factor;
        }
    }

    /**
     * How many anchors of one area are tested.
     *
     * @param anchors how many there are, 1 or more
     * @param share which share
     * @return the number of tests, at least 3 and never more than there are anchors
     * @formula &lceil;n / 40&rceil; or &lceil;n / 20&rceil;, at least 3
     * @unit none
     * @edge all of them where there are fewer than 3
     * @source standard: BS 8539:2012, annex B, from a secondary source
     * @throws IllegalArgumentException if there is no anchor
     */
    public static int count(int anchors, Share share) {
        if (anchors < 1) {
            throw new IllegalArgumentException("anchors must be 1 or more, got " + anchors);
        }
        int rounded = anchors / share.of + (anchors % share.of == 0 ? 0 : 1);
        return StrictMath.min(anchors, StrictMath.max(FEWEST, rounded));
    }

    /**
     * The load of a proof test.
     *
     * @param characteristicActionN the characteristic action on one anchor, in N, above 0
     * @param share which share is tested
     * @return the load to hold, in N
     * @formula 1.5 N_Sk where one in forty is tested, 1.25 N_Sk where one in twenty is
     * @unit N
     * @edge none
     * @source standard: BS 8539:2012, annex B, from a secondary source
     * @throws IllegalArgumentException if the action is not above 0 and finite
     */
    public static double proofLoadN(double characteristicActionN, Share share) {
        CodeRange.requireAboveZero("load", characteristicActionN, " N");
        return share.factor * characteristicActionN;
    }

    /**
     * What a plug may carry where its maker declares nothing for the material: five are pulled until they let go.
     *
     * @param failuresN the five loads at which they let go, in N, above 0
     * @return a quarter of their mean; unknown where there are fewer than five
     * @formula mean / 4
     * @unit N
     * @edge more than five count as well
     * @source standard: BS 8539:2012, allowable load test, from a secondary source
     * @throws IllegalArgumentException if a load is not above 0 and finite
     */
    public static Resistance allowable(List<Double> failuresN) {
        double sum = 0;
        for (double failure : failuresN) {
            CodeRange.requireAboveZero("load", failure, " N");
            sum += failure;
        }
        Args tests = Args.of("tests", (double) failuresN.size()).with("atLeast", 5);
        if (failuresN.size() < 5) {
            return Resistance.unknown(Resistance.Method.ALLOWABLE_LOAD, new Step("too-few-tests", tests, SOURCE));
        }
        double mean = sum / failuresN.size();
        Step step = new Step("tested-mean", tests.with("mean", mean, "N").with("factor", 4), SOURCE);
        return Resistance.of(Resistance.Method.ALLOWABLE_LOAD, mean / 4, List.of(step));
    }
}
