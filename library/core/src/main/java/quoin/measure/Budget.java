package quoin.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;

/**
 * Where the doubt of a number comes from. Immutable.
 *
 * @param number the number
 * @param lines its influences with a contribution, the largest first
 * @param parts its influences put together by what they belong to, the largest first
 */
public record Budget(Uncertain number, List<Line> lines, List<Part> parts) {
    private static final double ROUNDING = 1e-12;

    /**
     * One influence.
     *
     * @param influence the influence
     * @param sensitivity the partial derivative
     * @param contribution sensitivity · u, with its sign, in the unit of the number
     * @param share its part of the variance, 0 to 1
     */
    public record Line(Influence influence, double sensitivity, double contribution, double share) {
        /** Checks every part. */
        public Line {
            Objects.requireNonNull(influence, "influence");
            sensitivity = Require.finite("sensitivity", sensitivity, "");
            contribution = Require.finite("contribution", contribution, "");
            share = partOfTheWhole(share);
        }
    }

    /**
     * Several influences that belong to one thing: an instrument, a reading, a number of a rulebook, a correlated group.
     *
     * @param name what they belong to
     * @param contribution the root of the sum of their squares, 0 or more, in the unit of the number
     * @param share their part of the variance, 0 to 1
     */
    public record Part(String name, double contribution, double share) {
        /** Checks every part. */
        public Part {
            Require.id("name", name);
            contribution = Require.atLeastZero("contribution", contribution, "");
            share = partOfTheWhole(share);
        }
    }

    /** Copies the lists. */
    public Budget {
        lines = List.copyOf(lines);
        parts = List.copyOf(parts);
    }

    /**
     * The budget of a number, its parts by owner.
     *
     * <p>The owner of an influence is its correlated group, or else the front of its id: {@code tape/scale} belongs to
     * {@code tape}, {@code width@head#1/each1} to {@code width@head}.
     *
     * @param number the number
     * @return the budget
     */
    public static Budget of(Uncertain number) {
        return of(number, Budget::owner);
    }

    /**
     * The budget of a number, its parts by a rule of the caller.
     *
     * @param number the number
     * @param owner what each influence belongs to
     * @return the budget
     */
    public static Budget of(Uncertain number, Function<Influence, String> owner) {
        double variance = number.variance();
        List<Line> lines = new ArrayList<>();
        Map<String, Double> squares = new LinkedHashMap<>();
        for (int i = 0; i < number.influences().size(); i++) {
            Influence influence = number.influences().get(i);
            double c = number.contribution(i);
            if (c != 0) {
                lines.add(new Line(influence, number.sensitivity(influence), c, c * c / variance));
                squares.merge(owner.apply(influence), c * c, Double::sum);
            }
        }
        List<Part> parts = new ArrayList<>();
        squares.forEach((name, sum) -> parts.add(new Part(name, StrictMath.sqrt(sum), sum / variance)));
        lines.sort(Comparator.comparingDouble((Line line) -> -line.share()));
        parts.sort(Comparator.comparingDouble((Part part) -> -part.share()));
        return new Budget(number, lines, parts);
    }

    /** Rounding may leave a share a little above the whole. */
    private static double partOfTheWhole(double share) {
        return StrictMath.min(1, Require.between("share", share, 0, 1 + ROUNDING, ""));
    }

    /**
     * What an influence belongs to: its correlated group, or the front of its id up to the last {@code /} and the last
     * {@code #} before that.
     *
     * @param influence the influence
     * @return the name of the owner; the whole id where it has no such front
     */
    public static String owner(Influence influence) {
        if (!influence.group().isEmpty()) {
            return influence.group();
        }
        String id = influence.id();
        int slash = id.lastIndexOf('/');
        if (slash <= 0) {
            return id;
        }
        int hash = id.lastIndexOf('#', slash);
        return id.substring(0, hash > 0 ? hash : slash);
    }
}
