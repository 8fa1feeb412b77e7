package quoin.opening;

import java.util.ArrayList;
import java.util.List;

/**
 * How depths and falls follow their unknowns: one for each place; the middle, where all four corners are read and the
 * surface is straight within something, is the mean of the corners and a bulge of prior 0.
 */
final class DepthNet {
    private static final Span MIDDLE = new Span.Depth("middle");
    private static final int CORNERS = Corner.values().length;

    private final double[][] design;
    private final double[] priors;

    private DepthNet(double[][] design, double[] priors) {
        this.design = design;
        this.priors = priors;
    }

    /** One row for each value. */
    double[][] design() {
        return design;
    }

    /** The weight of the prior of the bulge; none where the middle is a place of its own. */
    double[] priors() {
        return priors;
    }

    /**
     * The net of those values.
     *
     * @param spans what each is of
     * @param within the surface is straight within plus or minus this, in mm; NaN where nobody said
     */
    static DepthNet of(List<Span> spans, double within) {
        List<Span> places = new ArrayList<>();
        for (Span span : spans) {
            if (!places.contains(span)) {
                places.add(span);
            }
        }
        List<Span> corners = places.stream().filter(DepthNet::isCorner).toList();
        boolean tied = places.contains(MIDDLE) && corners.size() == CORNERS && within > 0;
        if (tied) {
            places.remove(MIDDLE);
        }
        int bulge = places.size();
        double[][] design = new double[spans.size()][tied ? bulge + 1 : bulge];
        for (int i = 0; i < design.length; i++) {
            if (tied && spans.get(i).equals(MIDDLE)) {
                for (Span corner : corners) {
                    design[i][places.indexOf(corner)] = 1.0 / CORNERS;
                }
                design[i][bulge] = 1;
            } else {
                design[i][places.indexOf(spans.get(i))] = 1;
            }
        }
        return new DepthNet(design, tied ? new double[] {3 / (within * within)} : new double[0]);
    }

    private static boolean isCorner(Span span) {
        return span instanceof Span.Depth && !span.equals(MIDDLE);
    }
}
