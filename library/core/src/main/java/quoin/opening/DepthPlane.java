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
        List<Integer> corners = corners(places);
        boolean tied = places.contains(MIDDLE) && corners.size() == 4 && survey.straightWithinMm() > 0;
        if (tied) {
            places.remove(MIDDLE);
            corners = corners(places);
        }
        double bulge = tied ? survey.straightWithinMm() * survey.straightWithinMm() / 3 : 0;
        List<PlaneTest.Observed> observed = new ArrayList<>();
        int n = values.size();
        double[][] design = new double[n][places.size()];
        double[] rest = new double[n];
        double[][] covariance = new double[n][n];
        for (int i = 0; i < n; i++) {
            Reading reading = survey.readings().get(entries.get(i));
            boolean bulges = tied && reading.of().equals(MIDDLE);
            if (bulges) {
                for (int k : corners) {
                    design[i][k] = 0.25;
                }
            } else {
                design[i][places.indexOf(reading.of())] = 1;
            }
            observed.add(new PlaneTest.Observed(reading, entries.get(i), values.get(i)));
            rest[i] = values.get(i).value();
            for (int j = 0; j <= i; j++) {
                boolean both = bulges && observed.get(j).reading().of().equals(MIDDLE);
                covariance[i][j] = values.get(i).covariance(values.get(j)) + (both ? bulge : 0);
                covariance[j][i] = covariance[i][j];
            }
            covariance[i][i] += 1e-8 * Math.max(covariance[i][i], 1e-4);
        }
        return Optional.of(PlaneTest.of(NAME, observed, design, rest, covariance));
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
