package quoin.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import quoin.judge.Catalogue;
import quoin.judge.Figure;
import quoin.judge.Stage;
import quoin.measure.Dimension;
import quoin.rulebook.Comparison.Change;
import quoin.rulebook.Comparison.Demand;
import quoin.rulebook.Comparison.Flip;
import quoin.rulebook.Comparison.Level;

/** One comparison of two rulebooks. For use by one thread, once. */
final class Comparing {
    private static final List<String> FRAME = List.of("frame.width", "frame.length");

    private final Rulebook old;
    private final Rulebook now;
    private final Catalogue catalogue;
    private final Names oldNames;
    private final Names nowNames;
    private final Meter meter = new Meter();
    private final Mapping oldMap;
    private final Mapping nowMap;
    private final Offers offers;
    private final List<Change> changes;
    private final Set<String> touched;
    private final List<Effect> effects = new ArrayList<>();
    private final List<Demand> demands = new ArrayList<>();

    Comparing(Rulebook old, Rulebook now, Catalogue catalogue) {
        this.old = old;
        this.now = now;
        this.catalogue = catalogue;
        this.oldNames = new Names(old, catalogue);
        this.nowNames = new Names(now, catalogue);
        this.offers = Offers.of(old, now);
        this.oldMap = Mapping.of(old, oldNames, offers, meter);
        this.nowMap = Mapping.of(now, nowNames, offers, meter);
        this.changes = Changes.of(old, now);
        this.touched = touched();
    }

    Comparison compare() {
        Map<String, BoundClause> before = bounds(old);
        Map<String, BoundClause> after = bounds(now);
        Set<String> both = ids(now);
        both.retainAll(ids(old));
        both.stream().filter(touched::contains).forEach(this::size);
        after.forEach((id, clause) -> Optional.ofNullable(before.get(id)).ifPresent(was -> limits(was, clause)));
        List<Flip> flips = flips(before, after);
        demand(flips);
        demands.sort(Comparator.comparing(Demand::level).reversed());
        Optional<String> least = demands.isEmpty()
                ? Optional.empty()
                : Versions.after(old.version(), demands.get(0).level());
        boolean enough = demands.isEmpty()
                || (least.isPresent()
                        ? Versions.isAtLeast(now.version(), least.get())
                        : !now.version().equals(old.version()));
        return new Comparison(changes, effects, flips, demands, least, enough);
    }

    private static Map<String, BoundClause> bounds(Rulebook rulebook) {
        return rulebook.bounds().stream()
                .sorted(Comparator.comparing(BoundClause::id))
                .collect(Collectors.toMap(BoundClause::id, clause -> clause, (a, b) -> a, LinkedHashMap::new));
    }

    private static Set<String> ids(Rulebook rulebook) {
        return rulebook.sizes().stream().map(SizeClause::id).collect(Collectors.toCollection(TreeSet::new));
    }

    /** The sizes with a number that is stated differently, or that refer to such a size. */
    private Set<String> touched() {
        Set<String> all = changes.stream()
                .filter(change -> change.part().equals("size") && !change.isText())
                .map(Change::clause)
                .collect(Collectors.toCollection(TreeSet::new));
        for (Rulebook rulebook : List.of(old, now)) {
            for (SizeClause clause : rulebook.order().sorted()) {
                if (SizeOrder.figures(clause).stream().anyMatch(all::contains)) {
                    all.add(clause.id());
                }
            }
        }
        return all;
    }

    private void size(String id) {
        Dimension dimension = nowNames.dimension(id).orElse(Dimension.LENGTH);
        Effects said = new Effects(id, "size", dimension, this::axis);
        Set<String> kinds = Effects.union(oldMap.kinds(id), nowMap.kinds(id));
        if (!oldMap.isMapped(id) || !nowMap.isMapped(id)) {
            effects.add(said.anywhere());
            return;
        }
        all(said, kinds, choices -> oldMap.find(id, choices), choices -> nowMap.find(id, choices));
    }

    private Dimension axis(String axis) {
        return nowMap.isAxis(axis) ? nowMap.dimension(axis) : oldMap.dimension(axis);
    }

    /** A function of figures for one way to choose; empty where it has none. */
    private interface Mapped {
        Optional<Regions> of(Map<String, String> choices);
    }

    private void all(Effects said, Set<String> kinds, Mapped before, Mapped after) {
        Map<Map<String, String>, List<Effect>> byChoices = new LinkedHashMap<>();
        Optional<List<Map<String, String>>> ways = offers.ways(kinds);
        for (Map<String, String> choices : ways.orElse(List.of())) {
            Optional<Regions> a = before.of(choices);
            Optional<Regions> b = after.of(choices);
            Optional<List<Effect>> found =
                    a.isEmpty() || b.isEmpty() ? Optional.empty() : said.of(a.get(), b.get(), choices, meter);
            byChoices.put(choices, found.orElse(List.of(said.anywhere())));
        }
        effects.addAll(ways.isEmpty() ? List.of(said.anywhere()) : Effects.merged(byChoices));
    }

    private void limits(BoundClause was, BoundClause is) {
        limit(is, "atLeast", was.atLeast(), is.atLeast());
        limit(is, "atMost", was.atMost(), is.atMost());
        limit(is, "within", was.within(), is.within());
    }

    private void limit(BoundClause clause, String field, List<Quota> was, List<Quota> is) {
        if (isSame(was, is)) {
            return;
        }
        Dimension dimension = nowNames.dimension(clause.figure())
                .or(() -> is.stream()
                        .flatMap(Names::amounts)
                        .map(amount -> amount.dimension())
                        .findFirst())
                .orElse(Dimension.LENGTH);
        Effects said = new Effects(clause.id(), field, dimension, this::axis);
        Set<String> kinds = Effects.union(kinds(oldMap, was), kinds(nowMap, is));
        all(said, kinds, choices -> limit(oldMap, was, choices), choices -> limit(nowMap, is, choices));
    }

    private static Set<String> kinds(Mapping mapping, List<Quota> side) {
        return side.isEmpty() ? Set.of() : mapping.kinds(side.get(0));
    }

    private static Optional<Regions> limit(Mapping mapping, List<Quota> side, Map<String, String> choices) {
        if (side.isEmpty()) {
            return Optional.of(Regions.everywhere(new Piece.Refused("no-limit")));
        }
        return Mapping.isExact(side.get(0)) ? mapping.amount(side.get(0), 1, choices) : Optional.empty();
    }

    /** The same amounts, picked by something that did not change either. */
    private boolean isSame(List<Quota> was, List<Quota> is) {
        return was.equals(is)
                && is.stream()
                        .noneMatch(quota -> quota instanceof Quota.Banded banded && touched.contains(banded.by()));
    }

    // --- verdicts -------------------------------------------------------------------------------------------------

    private List<Flip> flips(Map<String, BoundClause> before, Map<String, BoundClause> after) {
        List<Flip> flips = new ArrayList<>();
        Set<String> all = new TreeSet<>(before.keySet());
        all.addAll(after.keySet());
        for (String id : all) {
            BoundClause was = before.get(id);
            BoundClause is = after.get(id);
            if (was == null || is == null) {
                flips.add(new Flip(id, was == null ? "added" : "removed", List.of()));
            } else {
                flips(was, is, flips);
            }
        }
        return flips;
    }

    private void flips(BoundClause was, BoundClause is, List<Flip> flips) {
        if (!was.figure().equals(is.figure())) {
            flips.add(new Flip(is.id(), "figure", List.of()));
        }
        boolean other = effects.stream()
                .anyMatch(effect ->
                        effect.clause().equals(is.id()) && !effect.field().equals("size"));
        boolean doubt = changes.stream()
                .anyMatch(change ->
                        change.part().equals("bound") && change.clause().equals(is.id()) && isDoubt(change));
        if (other || doubt) {
            flips.add(new Flip(is.id(), other ? "limit" : "doubt", List.of()));
        }
        if (!was.decideOr(old.decide()).equals(is.decideOr(now.decide()))) {
            flips.add(new Flip(is.id(), "decide", List.of()));
        }
        boolean isOrder = nowNames.isOrder(is.figure());
        if (isOrder && !old.frame().equals(now.frame())) {
            flips.add(new Flip(is.id(), "frame", List.of()));
        }
        List<String> sizes =
                sizes(is.figure(), isOrder).stream().filter(this::canDiffer).toList();
        if (!sizes.isEmpty()) {
            flips.add(new Flip(is.id(), "sizes", sizes));
        }
    }

    /** The sizes that a figure depends on: itself, those that it needs, or those of the frame. */
    private List<String> sizes(String figure, boolean isOrder) {
        if (nowNames.isSize(figure)) {
            return List.of(figure);
        }
        List<String> needs = catalogue.find(figure).map(Figure::needs).orElse(List.of()).stream()
                .filter(nowNames::isSize)
                .toList();
        return needs.isEmpty() && isOrder ? FRAME : needs;
    }

    private boolean canDiffer(String size) {
        return effects.stream()
                        .anyMatch(effect ->
                                effect.clause().equals(size) && effect.field().equals("size"))
                || changes.stream()
                        .anyMatch(change ->
                                change.clause().equals(size) && change.part().equals("size") && isLoose(change));
    }

    /** A field, beside its text, whose effect is not computed: how exactly it is cut, and the doubt of a number. */
    private static boolean isLoose(Change change) {
        List<String> path = List.of(change.field().split("/", -1));
        if (change.isText() || change.field().isEmpty()) {
            return false;
        }
        if (path.get(path.size() - 1).equals("number")) {
            return (change.from() + change.to()).contains("doubt ");
        }
        return path.contains("number")
                || !List.of("of", "less", "more", "round").contains(path.get(0));
    }

    /** A number of a limit that is as large as it was, and known in another way. */
    private static boolean isDoubt(Change change) {
        return List.of(change.field().split("/", -1)).contains("number") && isLoose(change);
    }

    // --- the version ----------------------------------------------------------------------------------------------

    private void demand(List<Flip> flips) {
        demand(Level.MAJOR, "id", rulebook("id"));
        List<String> survey =
                new ArrayList<>(different(old.survey().needs(), now.survey().needs()));
        List.of("goodTo", "detects").forEach(field -> survey.addAll(rulebook(field)));
        demand(Level.MAJOR, "survey", survey);
        demand(Level.MAJOR, "site", rulebook("site"));
        demand(Level.MAJOR, "choice", fresh(choices(old), choices(now)));
        demand(Level.MAJOR, "declared", fresh(declared(old), declared(now)));
        demand(Level.MAJOR, "size-removed", fresh(ids(now), ids(old)));
        demand(Level.MINOR, "size-added", fresh(ids(old), ids(now)));
        demand(Level.MINOR, "size", effects("size", true));
        demand(Level.MINOR, "limit", effects("size", false));
        demand(
                Level.MINOR,
                "verdict",
                flips.stream().map(Flip::bound).distinct().toList());
        List<String> numbers = new ArrayList<>();
        changes.stream()
                .filter(change -> change.part().equals("size") && isLoose(change))
                .forEach(change -> numbers.add(change.clause()));
        List.of("decide", "guarded", "frame", "fixings", "sources.asks")
                .forEach(field -> numbers.addAll(rulebook(field)));
        demand(Level.MINOR, "number", numbers.stream().distinct().toList());
        if (demands.isEmpty() && !changes.isEmpty()) {
            demand(
                    Level.PATCH,
                    "text",
                    changes.stream()
                            .map(change -> change.clause().isEmpty() ? change.field() : change.clause())
                            .distinct()
                            .toList());
        }
    }

    private void demand(Level level, String because, List<String> of) {
        if (!of.isEmpty()) {
            demands.add(new Demand(level, because, of));
        }
    }

    private List<String> rulebook(String field) {
        boolean changed = changes.stream()
                .anyMatch(change -> change.part().equals("rulebook")
                        && !change.isText()
                        && change.field().split("/", -1)[0].equals(field));
        return changed ? List.of(field) : List.of();
    }

    private List<String> effects(String field, boolean same) {
        return effects.stream()
                .filter(effect -> effect.field().equals(field) == same)
                .map(Effect::clause)
                .distinct()
                .toList();
    }

    private static List<String> fresh(Set<String> before, Set<String> after) {
        return after.stream().filter(name -> !before.contains(name)).toList();
    }

    private static List<String> different(List<String> before, List<String> after) {
        Set<String> all = new TreeSet<>(before);
        all.addAll(after);
        all.removeIf(name -> before.contains(name) && after.contains(name));
        return List.copyOf(all);
    }

    private static Set<String> choices(Rulebook rulebook) {
        return rulebook.quotas().stream()
                .filter(quota -> quota instanceof Quota.ByChoice)
                .map(quota -> ((Quota.ByChoice) quota).choice())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** The figures that a job must declare. */
    private Set<String> declared(Rulebook rulebook) {
        Set<String> all = new TreeSet<>();
        rulebook.sizes().forEach(clause -> all.addAll(SizeOrder.figures(clause)));
        rulebook.bounds().forEach(clause -> all.add(clause.figure()));
        rulebook.quotas().forEach(quota -> {
            if (quota instanceof Quota.Banded banded) {
                all.add(banded.by());
            }
        });
        all.removeIf(name -> !Names.isDeclared(name)
                || catalogue
                        .find(name)
                        .filter(figure -> figure.stage() != Stage.DECLARED)
                        .isPresent());
        return all;
    }
}
