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

    private static final Span MIDDLE = new Span.Depth("middle");

    private DepthPlane() {}

    static Optional<PlaneTest> of(Survey survey) {
        List<Span> places = new ArrayList<>();
        List<Uncertain> values = new ArrayList<>();
        List<Integer> entries = new ArrayList<>();
        for (int i = 0; i < survey.readings().size(); i++) {
            Span of = survey.readings().get(i).of();
            if (of instanceof Span.Depth || of instanceof Span.Fall) {
                for (Uncertain value : survey.observed(i)) {
                    values.add(value);
                    entries.add(i);
                }
                if (!places.contains(of)) {
                    places.add(of);
                }
            }
        }
        if (values.isEmpty()) {
            return Optional.empty();
        }
        boolean tied = places.contains(MIDDLE) && corners(places).size() == 4 && survey.straightWithinMm() > 0;
        if (tied) {
            places.remove(MIDDLE);
        }
        List<Integer> corners = corners(places);
        int bulge = places.size();
        List<PlaneTest.Observed> observed = new ArrayList<>();
        double[][] design = new double[values.size()][tied ? bulge + 1 : bulge];
        for (int i = 0; i < design.length; i++) {
            Reading reading = survey.readings().get(entries.get(i));
            if (tied && reading.of().equals(MIDDLE)) {
                for (int k : corners) {
                    design[i][k] = 0.25;
                }
                design[i][bulge] = 1;
            } else {
                design[i][places.indexOf(reading.of())] = 1;
            }
            observed.add(new PlaneTest.Observed(reading, entries.get(i), values.get(i)));
        }
        double within = survey.straightWithinMm();
        double[] priors = tied ? new double[] {3 / (within * within)} : new double[0];
        return Optional.of(PlaneTest.of(NAME, observed, values, design, priors));
    }

    /** Which of the places are corners. */
    private static List<Integer> corners(List<Span> places) {
        List<Integer> corners = new ArrayList<>();
        for (Corner corner : Corner.values()) {
            int at = places.indexOf(new Span.Depth(corner.text()));
            if (at >= 0) {
                corners.add(at);
            }
        }
        return corners;
    }
}
