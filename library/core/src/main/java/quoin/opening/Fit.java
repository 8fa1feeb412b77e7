package quoin.opening;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import quoin.measure.Uncertain;

/** What true rectangle goes in, held parallel to the head. */
public final class Fit {
    private Fit() {}

    /**
     * A rectangle with its place. Lengths in mm. Immutable and safe for use by many threads.
     *
     * @param width its size parallel to the head
     * @param length its size from head to foot
     * @param x its head-left corner, along the head from head-left
     * @param y its head-left corner, towards the foot
     */
    public record Rectangle(Uncertain width, Uncertain length, double x, double y) {}

    /**
     * The rectangle of largest area that goes through every plane that was read, parallel to the head: the most central
     * among equals.
     *
     * @param opening the opening
     * @return the rectangle, or empty where there is no shape or not even a small one goes in
     * @formula max w·l such that no point of an outline lies inside; sides are prolonged past the corners; touched
     *     points count as facing the frame
     * @unit mm
     * @edge no shape: empty; where several gaps hold a side alike, the doubt is that of their mean
     * @source standard: linear constraints and a concave aim have one optimum (convex optimisation)
     */
    public static Optional<Rectangle> largest(Opening opening) {
        if (!opening.hasShape()) {
            return Optional.empty();
        }
        List<SideGap> gaps = opening.gaps();
        double[] xs = places(opening, 0);
        double[] ys = places(opening, 1);
        double centreX = Arrays.stream(xs).sum() / 4;
        double centreY = Arrays.stream(ys).sum() / 4;
        double reach = Math.min(extent(xs), extent(ys)) * 0.2;
        LargestRectangle.@Nullable Solution solution = LargestRectangle.solve(gaps, centreX, centreY, reach);
        if (solution == null) {
            return Optional.empty();
        }
        double[] z = solution.z();
        Uncertain[] moved = new Uncertain[gaps.size()];
        for (int i = 0; i < moved.length; i++) {
            moved[i] = gaps.get(i).at(z);
        }
        return Optional.of(new Rectangle(
                side(z[1] - z[0], solution.follow()[1], solution.follow()[0], moved),
                side(z[3] - z[2], solution.follow()[3], solution.follow()[2], moved),
                z[0],
                z[2]));
    }

    private static double[] places(Opening opening, int axis) {
        return Arrays.stream(Corner.values())
                .mapToDouble(corner -> opening.corner(corner).get(axis).value())
                .toArray();
    }

    private static double extent(double[] values) {
        return Arrays.stream(values).max().orElse(0)
                - Arrays.stream(values).min().orElse(0);
    }

    private static Uncertain side(double value, double[] far, double[] near, Uncertain[] gaps) {
        double[] partials = new double[gaps.length];
        for (int i = 0; i < partials.length; i++) {
            partials[i] = far[i] - near[i];
        }
        return Uncertain.combine(value, partials, gaps);
    }
}
