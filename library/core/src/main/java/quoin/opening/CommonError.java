package quoin.opening;

import java.util.Objects;
import java.util.Optional;

/**
 * One error that an instrument adds to every length it reads, as a bent hook does, beyond what its doubts allow for.
 *
 * <p>Distances hardly show it: all of them become longer alike. Where enough readings check each other, or another
 * instrument took some of them, it can be estimated. Immutable and safe for use by many threads.
 *
 * @param instrument the instrument
 * @param mm the error, observed minus true, in mm
 * @param u its standard uncertainty in mm
 * @param w the error in units of that
 */
public record CommonError(String instrument, double mm, double u, double w) {
    /** With fewer checks than this they are better spent on slips. */
    private static final int LEAST_REDUNDANCY = 4;

    private static final double SEEN = 1e-9;

    /** Checks that nothing is missing. */
    public CommonError {
        Objects.requireNonNull(instrument, "instrument");
    }

    /**
     * The error that an instrument most likely adds to every length it reads.
     *
     * @param adjustment readings and what they say against each other
     * @param instrument the instrument's id
     * @return the error; empty where it cannot be told
     * @formula c = 1ᵀGl / 1ᵀG1, u = 1/√(1ᵀG1), w = c/u; 1 marks the lengths read by the instrument, G = PQᵥᵥP of the full
     *     covariance, l observed less computed
     * @unit mm
     * @edge empty below a redundancy of 4, without an outline, where the instrument read no length, and where moving the
     *     outline takes up the whole error
     * @source handbook: Ghilani, Adjustment Computations, 6th edition, chapter 21 (systematic errors as unknowns, from
     *     memory)
     */
    public static Optional<CommonError> in(Adjustment adjustment, String instrument) {
        if (!adjustment.isSolved() || adjustment.redundancy() < LEAST_REDUNDANCY) {
            return Optional.empty();
        }
        Observations observations = adjustment.observations();
        Tests tests = adjustment.tests();
        double along = 0;
        double square = 0;
        double alone = 0;
        for (int i = 0; i < observations.size(); i++) {
            if (!isLengthBy(observations, i, instrument)) {
                continue;
            }
            along += tests.weighted(i);
            alone += 1 / observations.variance(i);
            for (int j = 0; j < observations.size(); j++) {
                square += isLengthBy(observations, j, instrument) ? tests.between(i, j) : 0;
            }
        }
        if (!(square > SEEN * alone)) {
            return Optional.empty();
        }
        double root = Math.sqrt(square);
        return Optional.of(new CommonError(instrument, along / square, 1 / root, along / root));
    }

    private static boolean isLengthBy(Observations observations, int i, String instrument) {
        boolean angle = observations.span(i) instanceof Span.Angle;
        return !angle && observations.reading(i).by().id().equals(instrument);
    }

    /** {@return whether it stands out in a two-sided test at 0.1 %} */
    public boolean isSeen() {
        return Math.abs(w) > Adjustment.CRITICAL_W;
    }
}
