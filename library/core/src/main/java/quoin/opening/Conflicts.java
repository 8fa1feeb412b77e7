package quoin.opening;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import quoin.measure.Uncertain;

/**
 * Which readings cannot close: a distance longer than the way round by other readings, so that no triangle or four-sided
 * figure has them all; a place that lies beyond the end of its side; an angle that nearly shuts or straightens its corner.
 * Where the geometry does not tell, the readings without each of which the rest would close; where that does not tell
 * either, all of them. Not safe for use by many threads.
 */
final class Conflicts {
    /** How many standard uncertainties a way may be longer, and a distance shorter, than read. */
    private static final double REACH = 4.13;

    /** A corner is nearly shut or straight from here on, in rad, as the adjustment has it. */
    private static final double LEAST_ANGLE = 0.01;

    private static final double NO_WAY = Double.POSITIVE_INFINITY;

    private final Survey survey;
    private final Plane plane;
    private final Map<String, Integer> nodes = new LinkedHashMap<>();
    private final List<Way> ways = new ArrayList<>();

    /** From one point to another no further than that, by those readings. */
    private record Way(int from, int to, double most, Set<Integer> entries) {}

    private Conflicts(Survey survey, Plane plane) {
        this.survey = survey;
        this.plane = plane;
    }

    /** Groups of entries of a survey whose plane cannot close, what stands in most of them first. */
    static List<List<Integer>> of(Survey survey, Plane plane) {
        Conflicts conflicts = new Conflicts(survey, plane);
        List<Set<Integer>> groups = new ArrayList<>(conflicts.ofPlaces());
        groups.addAll(conflicts.ofAngles());
        groups.addAll(conflicts.ofWays());
        if (groups.isEmpty()) {
            groups.add(conflicts.oneTooMany());
        }
        return ranked(least(groups));
    }

    /** The groups without those that hold another. */
    private static List<Set<Integer>> least(List<Set<Integer>> groups) {
        List<Set<Integer>> least = new ArrayList<>();
        for (Set<Integer> group : groups) {
            boolean holds = groups.stream().anyMatch(other -> other.size() < group.size() && group.containsAll(other));
            if (!holds && !least.contains(group)) {
                least.add(group);
            }
        }
        return least;
    }

    /** Whoever stands in most groups first, then as read; groups in the order of their size. */
    private static List<List<Integer>> ranked(List<Set<Integer>> groups) {
        List<List<Integer>> ranked = new ArrayList<>();
        for (Set<Integer> group : groups) {
            List<Integer> members = new ArrayList<>(group);
            members.sort(Comparator.comparingLong((Integer entry) ->
                            -groups.stream().filter(g -> g.contains(entry)).count())
                    .thenComparingInt(entry -> entry));
            ranked.add(members);
        }
        ranked.sort(Comparator.comparingInt(List::size));
        return ranked;
    }

    private boolean counts(Reading reading) {
        boolean bends = reading.of() instanceof Span.Bow && Double.isNaN(survey.straightWithinMm());
        return !bends && Survey.tiesOutline(reading, plane);
    }

    // --- places and angles -------------------------------------------------------------------------------------

    /** A distance along a side that is longer than the side was read, with what says how long that is. */
    private List<Set<Integer>> ofPlaces() {
        List<Set<Integer>> groups = new ArrayList<>();
        for (int i = 0; i < survey.readings().size(); i++) {
            if (!counts(survey.readings().get(i))) {
                continue;
            }
            for (TouchedPoint point : Model.touchedBy(survey.readings().get(i).of())) {
                double along = point.at().mm();
                List<Integer> sides = edges(point.side());
                boolean beyond = !sides.isEmpty() && sides.stream().allMatch(side -> most(side) <= along);
                if (beyond) {
                    Set<Integer> group = new LinkedHashSet<>(List.of(i));
                    group.addAll(sides);
                    groups.add(group);
                }
            }
        }
        return groups;
    }

    private List<Set<Integer>> ofAngles() {
        List<Set<Integer>> groups = new ArrayList<>();
        for (int i = 0; i < survey.readings().size(); i++) {
            Reading reading = survey.readings().get(i);
            if (counts(reading) && reading.of() instanceof Span.Angle) {
                boolean shut = most(i) < LEAST_ANGLE;
                boolean straight = least(i) > Math.PI - LEAST_ANGLE;
                if (shut || straight) {
                    groups.add(Set.of(i));
                }
            }
        }
        return groups;
    }

    private List<Integer> edges(Side side) {
        List<Integer> edges = new ArrayList<>();
        for (int i = 0; i < survey.readings().size(); i++) {
            Reading reading = survey.readings().get(i);
            if (counts(reading) && reading.of().equals(new Span.Edge(side))) {
                edges.add(i);
            }
        }
        return edges;
    }

    private double most(int entry) {
        return survey.observed(entry).stream()
                .mapToDouble(v -> v.value() + REACH * v.standardUncertainty())
                .max()
                .orElse(NO_WAY);
    }

    private double least(int entry) {
        return survey.observed(entry).stream()
                .mapToDouble(v -> v.value() - REACH * v.standardUncertainty())
                .min()
                .orElse(0);
    }

    // --- ways --------------------------------------------------------------------------------------------------

    /** For each distance the shortest ways round by other readings; a conflict for each that is shorter than the distance. */
    private List<Set<Integer>> ofWays() {
        gather();
        List<Set<Integer>> groups = new ArrayList<>();
        for (int i = 0; i < survey.readings().size(); i++) {
            int[] ends = counts(survey.readings().get(i))
                    ? ends(survey.readings().get(i).of())
                    : new int[0];
            if (ends.length == 2) {
                for (Uncertain value : survey.observed(i)) {
                    double least = value.value() - REACH * value.standardUncertainty();
                    Set<Integer> without = new LinkedHashSet<>(List.of(i));
                    Way round = shortest(ends[0], ends[1], without);
                    while (round.most() < least && !round.entries().isEmpty()) {
                        Set<Integer> group = new LinkedHashSet<>(List.of(i));
                        group.addAll(round.entries());
                        groups.add(group);
                        without.addAll(round.entries());
                        round = shortest(ends[0], ends[1], without);
                    }
                }
            }
        }
        return groups;
    }

    private void gather() {
        for (Corner corner : Corner.values()) {
            node(corner.text());
        }
        for (int i = 0; i < survey.readings().size(); i++) {
            Reading reading = survey.readings().get(i);
            if (!counts(reading)) {
                continue;
            }
            int[] ends = ends(reading.of());
            if (ends.length == 2) {
                ways.add(new Way(ends[0], ends[1], most(i), Set.of(i)));
            }
            Model.touchedBy(reading.of()).forEach(this::alongSide);
        }
    }

    /** From a touched point to both corners of its side, as far as the side was read. */
    private void alongSide(TouchedPoint point) {
        int at = node(point.text());
        double bulge = survey.straightWithinMm() > 0 ? survey.straightWithinMm() : 0;
        for (int edge : edges(point.side())) {
            double longest = most(edge);
            double from = Math.min(1, Math.max(0, point.on(longest)));
            ways.add(new Way(node(point.side().from().text()), at, from * longest + bulge, Set.of(edge)));
            ways.add(new Way(at, node(point.side().to().text()), (1 - from) * longest + bulge, Set.of(edge)));
        }
    }

    private int node(String name) {
        nodes.putIfAbsent(name, nodes.size());
        return Objects.requireNonNull(nodes.get(name));
    }

    /** The two points that a distance joins; none for an angle or a bow. */
    private int[] ends(Span span) {
        if (span instanceof Span.Edge edge) {
            return two(edge.side().from().text(), edge.side().to().text());
        }
        if (span instanceof Span.Diagonal diagonal) {
            return two(diagonal.from().text(), diagonal.from().opposite().text());
        }
        List<TouchedPoint> touched = Model.touchedBy(span);
        if (span instanceof Span.Cross cross) {
            return two(cross.from().text(), touched.get(0).text());
        }
        return touched.size() == 2 ? two(touched.get(0).text(), touched.get(1).text()) : new int[0];
    }

    private int[] two(String from, String to) {
        return new int[] {node(from), node(to)};
    }

    /** Bellman and Ford: every way once more until none is shorter; without some entries. */
    private Way shortest(int from, int to, Set<Integer> without) {
        List<Way> best = new ArrayList<>();
        for (int k = 0; k < nodes.size(); k++) {
            best.add(new Way(from, k, k == from ? 0 : NO_WAY, Set.of()));
        }
        boolean shorter = true;
        for (int pass = 0; shorter && pass < nodes.size(); pass++) {
            shorter = false;
            for (Way way : ways) {
                if (way.entries().stream().noneMatch(without::contains)) {
                    shorter |= relax(best, way.from(), way.to(), way);
                    shorter |= relax(best, way.to(), way.from(), way);
                }
            }
        }
        return best.get(to);
    }

    private static boolean relax(List<Way> best, int from, int to, Way way) {
        double length = best.get(from).most() + way.most();
        if (!(length < best.get(to).most())) {
            return false;
        }
        Set<Integer> entries = new LinkedHashSet<>(best.get(from).entries());
        entries.addAll(way.entries());
        best.set(to, new Way(best.get(from).from(), to, length, entries));
        return true;
    }

    // --- one left out ------------------------------------------------------------------------------------------

    /** The entries without each of which the rest closes and agrees; all where there are none. */
    private Set<Integer> oneTooMany() {
        Set<Integer> one = new LinkedHashSet<>();
        Set<Integer> all = new LinkedHashSet<>();
        for (int i = 0; i < survey.readings().size(); i++) {
            if (counts(survey.readings().get(i))) {
                all.add(i);
                List<Reading> rest = new ArrayList<>(survey.readings());
                rest.remove(i);
                if (Adjustment.of(survey.withReadings(rest), plane).isAccepted()) {
                    one.add(i);
                }
            }
        }
        return one.isEmpty() ? all : one;
    }
}
