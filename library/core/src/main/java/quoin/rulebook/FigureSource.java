package quoin.rulebook;

import java.util.Optional;
import quoin.measure.Estimate;

/** Where the estimates of figures come from. */
@FunctionalInterface
public interface FigureSource {
    /**
     * The estimate of a figure.
     *
     * @param figure its name
     * @return the estimate, in base units; empty where the readings do not determine it
     */
    Optional<Estimate> estimate(String figure);

    /**
     * The estimate by which a figure picks a band. A size picks it at its nominal value, whatever the doubt of the cut: tables
     * are entered by nominal size.
     *
     * @param figure its name
     * @return the estimate, in base units; empty where the readings do not determine it
     */
    default Optional<Estimate> forBands(String figure) {
        return estimate(figure);
    }
}
