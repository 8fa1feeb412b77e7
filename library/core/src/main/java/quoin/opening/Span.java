package quoin.opening;

import java.util.List;
import quoin.measure.Dimension;

/**
 * What a reading joins: the name of a place or of two, as documents write it after {@code of}.
 *
 * <p>Values of it are immutable and safe for use by many threads.
 */
public sealed interface Span {
    /** {@return the span as documents write it} */
    String text();

    /** {@return the kind of quantity that is read there} */
    default Dimension dimension() {
        return Dimension.LENGTH;
    }

    /**
     * The length of a whole side: {@code width@head}, {@code width@foot}, {@code length@left}, {@code length@right}.
     *
     * @param side the side
     */
    record Edge(Side side) implements Span {
        @Override
        public String text() {
            return side.edge();
        }
    }

    /**
     * Between two opposite sides at the same place on each: {@code width@1/4} joins left and right. Its text and its weights
     * are found once, since every adjustment asks for them.
     */
    final class Across implements Span {
        private final Side across;
        private final At at;
        private final String text;
        private final double[] means;

        /**
         * From one side to the one opposite.
         *
         * @param across LEFT for a width (left to right), HEAD for a length (head to foot)
         * @param at the place along both
         * @throws IllegalArgumentException if {@code across} is another side
         */
        public Across(Side across, At at) {
            if (across != Side.LEFT && across != Side.HEAD) {
                throw new IllegalArgumentException(
                        "across must be left for a width or head for a length, got " + across.text());
            }
            this.across = across;
            this.at = at;
            this.text = (across == Side.LEFT ? "width@" : "length@").concat(at.text());
            this.means = means(across, at.fraction());
        }

        private static double[] means(Side across, double along) {
            double[] near = Model.along(across == Side.LEFT ? Side.HEAD : Side.LEFT);
            double[] far = Model.along(across == Side.LEFT ? Side.FOOT : Side.RIGHT);
            double[] means = new double[near.length];
            for (int k = 0; k < means.length; k++) {
                means[k] = (1 - along) * near[k] + along * far[k];
            }
            return means;
        }

        /** {@return LEFT for a width, HEAD for a length} */
        public Side across() {
            return across;
        }

        /** {@return the place along both sides} */
        public At at() {
            return at;
        }

        /** {@return the side where it starts: left for a width, head for a length} */
        Side start() {
            return across;
        }

        /** {@return the side where it ends: right for a width, foot for a length} */
        Side end() {
            return across == Side.LEFT ? Side.RIGHT : Side.FOOT;
        }

        @Override
        public String text() {
            return text;
        }

        /** The weights of the corners in it, on straight sides; NaN where the place is a distance. Not to be written to. */
        double[] means() {
            return means;
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Across that && across == that.across && at.equals(that.at);
        }

        @Override
        public int hashCode() {
            return 31 * across.hashCode() + at.hashCode();
        }

        @Override
        public String toString() {
            return text;
        }
    }

    /**
     * From a corner at the head to the opposite one.
     *
     * @param from head-left or head-right
     */
    record Diagonal(Corner from) implements Span {
        /** Refuses a corner at the foot. */
        public Diagonal {
            if (!from.isHead()) {
                throw new IllegalArgumentException(
                        "diagonal must start at head-left or head-right, got " + from.diagonal());
            }
        }

        @Override
        public String text() {
            return from.diagonal();
        }
    }

    /**
     * From a corner to a point on a side that does not touch it.
     *
     * @param from the corner
     * @param side the side
     * @param at the place along the side
     */
    record Cross(Corner from, Side side, At at) implements Span {
        /** Refuses a side that touches the corner. */
        public Cross {
            if (side.touches(from)) {
                throw new IllegalArgumentException(
                        "cross must go to a side that does not touch its corner, got " + text(from, side, at));
            }
        }

        private static String text(Corner from, Side side, At at) {
            return "cross@" + from.text() + ":" + side.text() + ":" + at.text();
        }

        @Override
        public String text() {
            return text(from, side, at);
        }
    }

    /**
     * Between two points that far along the two sides from a corner.
     *
     * @param corner the corner
     * @param alongWidth the distance along head or foot
     * @param alongLength the distance along left or right
     */
    record Check(Corner corner, At alongWidth, At alongLength) implements Span {
        /** Refuses fractions of a side. */
        public Check {
            requireDistance(alongWidth);
            requireDistance(alongLength);
        }

        private static void requireDistance(At at) {
            if (Double.isNaN(at.mm())) {
                throw new IllegalArgumentException("corner check must have distances such as 600 mm, got " + at.text());
            }
        }

        @Override
        public String text() {
            return "check@" + corner.text() + ":" + alongWidth.text() + ":" + alongLength.text();
        }
    }

    /**
     * The angle inside a corner.
     *
     * @param corner the corner
     */
    record Angle(Corner corner) implements Span {
        @Override
        public String text() {
            return "angle@" + corner.text();
        }

        @Override
        public Dimension dimension() {
            return Dimension.ANGLE;
        }
    }

    /**
     * The offset of a side from a string between its ends, positive into the opening.
     *
     * @param side the side
     * @param at the place along it
     */
    record Bow(Side side, At at) implements Span {
        @Override
        public String text() {
            return "bow@" + side.text() + ":" + at.text();
        }
    }

    /**
     * From the finished room face, square to it, to the first thing in the way.
     *
     * @param place a corner's name or {@code middle}
     */
    record Depth(String place) implements Span {
        @Override
        public String text() {
            return "depth@" + place;
        }
    }

    /**
     * How much lower the right end of head or foot lies than its left end.
     *
     * @param side head or foot
     */
    record Fall(Side side) implements Span {
        /** Refuses a side that is not level by name. */
        public Fall {
            if (side != Side.HEAD && side != Side.FOOT) {
                throw new IllegalArgumentException("fall must be at head or foot, got fall@" + side.text());
            }
        }

        @Override
        public String text() {
            return "fall@" + side.text();
        }
    }

    /**
     * Reads a span as documents write it.
     *
     * @param of the text, such as {@code width@1/4} or {@code cross@head-left:right:1/2}
     * @return the span
     * @throws IllegalArgumentException if there is no such span; the message says what would be right
     */
    static Span parse(String of) {
        int sign = of.indexOf('@');
        if (sign < 0) {
            throw new IllegalArgumentException("reading must be of a place such as width@head, got " + of);
        }
        String what = of.substring(0, sign);
        List<String> places = List.of(of.substring(sign + 1).split(":", -1));
        return switch (what) {
            case "width" -> across(one(places, of), Side.LEFT, Side.HEAD, Side.FOOT);
            case "length" -> across(one(places, of), Side.HEAD, Side.LEFT, Side.RIGHT);
            case "diagonal" -> new Diagonal(corner(one(places, of)));
            case "cross" -> cross(many(places, 3, of));
            case "check" -> {
                List<String> three = many(places, 3, of);
                yield new Check(corner(three.get(0)), At.parse(three.get(1)), At.parse(three.get(2)));
            }
            case "angle" -> new Angle(corner(one(places, of)));
            case "bow" -> {
                List<String> two = many(places, 2, of);
                yield new Bow(side(two.get(0)), At.parse(two.get(1)));
            }
            case "depth" ->
                new Depth(
                        one(places, of).equals("middle")
                                ? "middle"
                                : corner(places.get(0)).text());
            case "fall" -> new Fall(side(one(places, of)));
            default ->
                throw new IllegalArgumentException(
                        "reading must be of width, length, diagonal, cross, check, angle, bow, depth or fall, got "
                                + of);
        };
    }

    private static Span across(String place, Side across, Side first, Side second) {
        if (place.equals(first.text())) {
            return new Edge(first);
        }
        if (place.equals(second.text())) {
            return new Edge(second);
        }
        if (Side.find(place).isPresent()) {
            throw new IllegalArgumentException((across == Side.LEFT ? "width" : "length") + " must be at "
                    + first.text() + ", " + second.text() + ", a fraction or a distance, got " + place);
        }
        return new Across(across, At.parse(place));
    }

    private static Span cross(List<String> three) {
        return new Cross(corner(three.get(0)), side(three.get(1)), At.parse(three.get(2)));
    }

    private static String one(List<String> places, String of) {
        return many(places, 1, of).get(0);
    }

    private static List<String> many(List<String> places, int count, String of) {
        if (places.size() != count) {
            throw new IllegalArgumentException(
                    "reading must have " + count + " place" + (count == 1 ? "" : "s") + " after @, got " + of);
        }
        return places;
    }

    private static Corner corner(String text) {
        return Corner.find(text)
                .orElseThrow(() -> new IllegalArgumentException(
                        "corner must be head-left, head-right, foot-right or foot-left, got " + text));
    }

    private static Side side(String text) {
        return Side.find(text)
                .orElseThrow(() -> new IllegalArgumentException("side must be head, right, foot or left, got " + text));
    }
}
