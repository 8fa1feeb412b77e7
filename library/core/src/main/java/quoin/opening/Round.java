package quoin.opening;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The way to go round an opening while reading it. */
final class Round {
    /** A side that is about so long decides which of two places on it comes first. */
    private static final double ABOUT_MM = 2000;

    private static final int ROUND = 8;

    private static final Comparator<Survey.Place> ORDER = Comparator.<Survey.Place>comparingInt(
                    place -> station(place.of()))
            .thenComparingDouble(place -> along(place.of()))
            .thenComparing(Survey.Place::in)
            .thenComparing(Survey.Place::text);

    private Round() {}

    static List<Survey.Place> of(Survey survey, List<Survey.Place> places) {
        List<Survey.Place> first = new ArrayList<>();
        List<Survey.Place> again = new ArrayList<>();
        for (Survey.Place place : places) {
            (survey.has(place) || first.contains(place) ? again : first).add(place);
        }
        List<Reading> taken = survey.readings();
        List<Survey.Place> walk = new ArrayList<>();
        if (!taken.isEmpty()) {
            walk.add(taken.get(taken.size() - 1).place());
        }
        int start = walk.size();
        goOn(walk, first);
        goOn(walk, again);
        return List.copyOf(walk.subList(start, walk.size()));
    }

    /** From the last of the walk on, then from the start of the round up to it. */
    private static void goOn(List<Survey.Place> walk, List<Survey.Place> places) {
        List<Survey.Place> sorted = new ArrayList<>(places);
        sorted.sort(ORDER);
        int from = 0;
        if (!walk.isEmpty()) {
            Survey.Place last = walk.get(walk.size() - 1);
            while (from < sorted.size() && ORDER.compare(sorted.get(from), last) <= 0) {
                from++;
            }
        }
        walk.addAll(sorted.subList(from, sorted.size()));
        walk.addAll(sorted.subList(0, from));
    }

    /** Corners and sides in turn, 0 to 7, then what runs across. */
    static int station(Span span) {
        if (span instanceof Span.Edge edge) {
            return at(edge.side());
        }
        if (span instanceof Span.Bow bow) {
            return at(bow.side());
        }
        if (span instanceof Span.Fall fall) {
            return at(fall.side());
        }
        if (span instanceof Span.Check check) {
            return at(check.corner());
        }
        if (span instanceof Span.Angle angle) {
            return at(angle.corner());
        }
        if (span instanceof Span.Depth depth) {
            return Corner.find(depth.place()).map(Round::at).orElse(ROUND + 1);
        }
        if (span instanceof Span.Across across) {
            return across.across() == Side.LEFT ? ROUND : ROUND + 2;
        }
        return span instanceof Span.Cross ? ROUND + 3 : ROUND + 4;
    }

    private static int at(Corner corner) {
        return switch (corner) {
            case HEAD_LEFT -> 0;
            case HEAD_RIGHT -> 2;
            case FOOT_RIGHT -> 4;
            case FOOT_LEFT -> 6;
        };
    }

    /** Sides stand between their corners: head, right, foot, left. */
    private static int at(Side side) {
        return switch (side) {
            case HEAD -> 1;
            case RIGHT -> 3;
            case FOOT -> 5;
            case LEFT -> 7;
        };
    }

    /** Within a station: along the way that one walks there. */
    private static double along(Span span) {
        if (span instanceof Span.Across across) {
            return across.at().on(ABOUT_MM);
        }
        if (span instanceof Span.Bow bow) {
            boolean back = bow.side() == Side.FOOT || bow.side() == Side.LEFT;
            double at = bow.at().on(ABOUT_MM);
            return back ? 1 - at : at;
        }
        return 0;
    }
}
