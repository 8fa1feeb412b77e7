package quoin.opening;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quoin.measure.Uncertain;

/**
 * Whether depths and falls can be right together: values read at one place against each other, and the depth in the
 * middle against the mean of the four corners, from which a surface that is straight within plus or minus
 * {@code straightWithin} departs by no more than that. Four corners alone check nothing: a twist fits them always.
 */
final class DepthPlane {
    /** As answers name it. */
    static final String NAME = "depth";

    private DepthPlane() {}

    static Optional<PlaneTest> of(Survey survey) {
        List<Span> spans = new ArrayList<>();
        List<Uncertain> values = new ArrayList<>();
        List<PlaneTest.Observed> observed = new ArrayList<>();
        for (int i = 0; i < survey.readings().size(); i++) {
            Reading reading = survey.readings().get(i);
            if (!reading.place().tiesOutline()) {
                for (Uncertain value : survey.observed(i)) {
                    spans.add(reading.of());
                    values.add(value);
                    observed.add(new PlaneTest.Observed(reading, i, value));
                }
            }
        }
        if (values.isEmpty()) {
            return Optional.empty();
        }
        DepthNet net = DepthNet.of(spans, survey.straightWithinMm());
        return Optional.of(PlaneTest.of(NAME, observed, values, net.design(), net.priors()));
    }
}
