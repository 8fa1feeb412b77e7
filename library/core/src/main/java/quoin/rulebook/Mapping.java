package quoin.rulebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import quoin.measure.Amount;
import quoin.measure.Dimension;

/**
 * Every size of a rulebook as a function of survey figures, for each choice of parts that it depends on.
 *
 * <p>The rulebook must be without errors. A size that cannot be mapped is named with the reason: {@code not-exact} where
 * an amount is no whole number of {@link Exact} or cannot be added, {@code too-many-regions} where the bounds of
 * {@link Meter} would be exceeded.
 *
 * <p>Cuts are those of exact arithmetic. Deciding in doubles takes a value within 1e-6 of a step below a multiple as that
 * multiple, and within 1e-9 of an edge above it as on it; so nearer to a cut than that the other side may hold.
 */
final class Mapping {
    /** So many roundings one behind the other are followed. */
    private static final int MOST_ROUNDS = 50;

    private static final long LARGEST_SUM = 100_000_000_000_000_000L;

    private final Names names;
    private final Offers offers;
    private final Meter meter;
    private final Map<String, Set<String>> kinds = new LinkedHashMap<>();
    private final Map<String, Map<Map<String, String>, Regions>> sizes = new LinkedHashMap<>();
    private final Map<String, String> lost = new LinkedHashMap<>();
    private final Map<String, Dimension> axes = new TreeMap<>();

    private Mapping(Names names, Offers offers, Meter meter) {
        this.names = names;
        this.offers = offers;
        this.meter = meter;
    }

    static Mapping of(Rulebook rulebook, Names names, Offers offers, Meter meter) {
        Mapping mapping = new Mapping(names, offers, meter);
        rulebook.order().sorted().forEach(mapping::add);
        return mapping;
    }

    /** The sizes that were mapped, each after those it refers to. */
    Set<String> mapped() {
        return sizes.keySet();
    }

    /** The sizes that were not, with the reason. */
    Map<String, String> lost() {
        return lost;
    }

    boolean isMapped(String size) {
        return sizes.containsKey(size);
    }

    /** The choices that a size depends on, each made in every way that is offered. */
    Map<Map<String, String>, Regions> cases(String size) {
        return sizes.getOrDefault(size, Map.of());
    }

    /** The kinds of parts that a size depends on. */
    Set<String> kinds(String size) {
        return kinds.getOrDefault(size, Set.of());
    }

    /** The kinds of parts that an amount depends on. */
    Set<String> kinds(Quota quota) {
        if (quota instanceof Quota.ByChoice by) {
            return Set.of(by.choice());
        }
        return quota instanceof Quota.Banded banded ? kinds(banded.by()) : Set.of();
    }

    /** A size for choices that may hold more than it depends on. */
    Optional<Regions> find(String size, Map<String, String> choices) {
        return Optional.ofNullable(cases(size).get(Offers.only(kinds(size), choices)));
    }

    /** The kind of quantity of a figure that sizes depend on. */
    Dimension dimension(String axis) {
        return axes.getOrDefault(axis, Dimension.LENGTH);
    }

    boolean isAxis(String figure) {
        return axes.containsKey(figure);
    }

    private void add(SizeClause clause) {
        Optional<String> not = cannot(clause);
        if (not.isPresent()) {
            lost.put(clause.id(), not.get());
            return;
        }
        Set<String> own = new TreeSet<>();
        base(clause.of()).ifPresent(size -> own.addAll(kinds(size)));
        clause.quotas().forEach(quota -> own.addAll(kinds(quota)));
        Optional<List<Map<String, String>>> ways = offers.ways(own);
        Map<Map<String, String>, Regions> cases = new LinkedHashMap<>();
        for (Map<String, String> choices : ways.orElse(List.of())) {
            map(clause, choices).ifPresent(regions -> cases.put(choices, regions));
        }
        if (ways.isEmpty() || cases.size() < ways.get().size()) {
            lost.put(clause.id(), "too-many-regions");
        } else {
            kinds.put(clause.id(), own);
            sizes.put(clause.id(), cases);
        }
    }

    private Optional<String> base(Base base) {
        return base instanceof Base.OfFigure of && names.isSize(of.figure())
                ? Optional.of(of.figure())
                : Optional.empty();
    }

    /** Why a size cannot be mapped, if so. */
    private Optional<String> cannot(SizeClause clause) {
        for (String name : SizeOrder.figures(clause)) {
            if (names.isSize(name) && !isMapped(name)) {
                return Optional.of(lost.getOrDefault(name, "not-exact"));
            }
        }
        boolean shortOfSize = clause.of() instanceof Base.OfShortfall of && names.isSize(of.figure());
        boolean exact = !shortOfSize
                && Exact.isAdditive(dimension(clause))
                && (!(clause.of() instanceof Base.OfQuota base) || isExact(base.quota()))
                && isExact(clause.more())
                && isExact(clause.less())
                && isExact(clause.round());
        return exact ? Optional.empty() : Optional.of("not-exact");
    }

    private Dimension dimension(SizeClause clause) {
        return names.dimension(clause.id())
                .or(() -> clause.quotas().stream()
                        .flatMap(Names::amounts)
                        .map(Amount::dimension)
                        .findFirst())
                .orElse(Dimension.LENGTH);
    }

    private static boolean isExact(List<Item> items) {
        for (Item item : items) {
            if (!isExact(item.quota(), item.times())) {
                return false;
            }
        }
        return true;
    }

    /** Whether the amounts, and the edges that pick them, are whole numbers. */
    static boolean isExact(Quota quota) {
        return isExact(quota, 1);
    }

    private static boolean isExact(Quota quota, double times) {
        if (quota instanceof Quota.Banded banded) {
            for (Quota.Band band : banded.bands()) {
                if (Exact.of(band.upTo()).isEmpty()
                        || Exact.of(band.amount(), times).isEmpty()) {
                    return false;
                }
            }
            return true;
        }
        return Names.amounts(quota).allMatch(amount -> Exact.of(amount, times).isPresent());
    }

    private static boolean isExact(Rounding rounding) {
        if (rounding instanceof Rounding.Step step) {
            OptionalLong exact = Exact.of(step.amount());
            return exact.isPresent()
                    && exact.getAsLong() > 0
                    && (step.mode() != Rounding.Mode.NEAREST || exact.getAsLong() % 2 == 0);
        }
        return !(rounding instanceof Rounding.DownTo downTo)
                || downTo.list().stream().allMatch(amount -> Exact.of(amount).isPresent());
    }

    private Optional<Regions> map(SizeClause clause, Map<String, String> choices) {
        List<Regions> parts = new ArrayList<>();
        List<Long> signs = new ArrayList<>();
        Optional<Regions> base = base(clause, choices);
        base.ifPresent(parts::add);
        for (Item item : clause.more()) {
            amount(item.quota(), item.times(), choices).ifPresent(parts::add);
            signs.add(1L);
        }
        for (Item item : clause.less()) {
            amount(item.quota(), item.times(), choices).ifPresent(parts::add);
            signs.add(-1L);
        }
        if (base.isEmpty() || parts.size() != signs.size() + 1) {
            return Optional.empty();
        }
        return Regions.join(parts, meter, (pieces, box) -> sum(pieces, signs))
                .flatMap(sum -> round(clause.round(), sum))
                .flatMap(rounded -> dimension(clause) == Dimension.LENGTH ? positive(rounded) : Optional.of(rounded))
                .map(Regions::plain)
                .filter(Mapping::isShort);
    }

    private static boolean isShort(Regions regions) {
        for (int i = 0; i < regions.count(); i++) {
            Piece piece = regions.piece(i);
            boolean isShort = piece instanceof Piece.Refused
                    || (piece instanceof Piece.Constant constant && isSmall(constant.value()))
                    || (piece instanceof Piece.Chain chain
                            && chain.rounds().size() <= MOST_ROUNDS
                            && isSmall(chain.add())
                            && chain.rounds().stream().allMatch(round -> isSmall(round.then())));
            if (!isShort) {
                return false;
            }
        }
        return true;
    }

    private static boolean isSmall(long sum) {
        return sum > -LARGEST_SUM && sum < LARGEST_SUM;
    }

    private Optional<Regions> base(SizeClause clause, Map<String, String> choices) {
        if (clause.of() instanceof Base.OfQuota of) {
            return amount(of.quota(), 1, choices);
        }
        if (clause.of() instanceof Base.OfShortfall of) {
            String axis = "shortfall(" + of.figure() + ", " + of.probability() + ")";
            return Optional.of(figure(axis, of.figure()));
        }
        String name = ((Base.OfFigure) clause.of()).figure();
        return names.isSize(name) ? find(name, choices) : Optional.of(figure(name, name));
    }

    private Regions figure(String axis, String figure) {
        names.dimension(figure).ifPresent(dimension -> axes.put(axis, dimension));
        return Regions.figure(axis);
    }

    /** An amount as a function of what picks it; the amounts must be exact, and the choices made. */
    Optional<Regions> amount(Quota quota, double times, Map<String, String> choices) {
        if (quota instanceof Quota.Fixed fixed) {
            return Optional.of(Regions.everywhere(constant(fixed.amount(), times)));
        }
        if (quota instanceof Quota.ByChoice by) {
            Amount amount = by.amounts().get(choices.getOrDefault(by.choice(), ""));
            return Optional.of(Regions.everywhere(
                    amount == null ? new Piece.Refused("choice-not-covered") : constant(amount, times)));
        }
        Quota.Banded banded = (Quota.Banded) quota;
        List<Quota.Band> bands = banded.bands();
        boolean isSize = names.isSize(banded.by());
        if (!isSize && !bands.isEmpty()) {
            axes.putIfAbsent(banded.by(), bands.get(0).upTo().dimension());
        }
        Optional<Regions> by = isSize ? find(banded.by(), choices) : Optional.of(figure(banded.by(), banded.by()));
        Piece outside = new Piece.Refused("outside-bands");
        return by.flatMap(regions -> regions.split(edges(banded), meter, (piece, between) -> {
                    boolean inside = between > 0 && between <= bands.size();
                    return inside ? constant(bands.get(between - 1).amount(), times) : outside;
                }))
                .map(Regions::plain);
    }

    /** Where bands begin and end: just above zero, and just above each edge, which belongs to its band. */
    static long[] edges(Quota.Banded banded) {
        long[] edges = new long[banded.bands().size() + 1];
        edges[0] = Cut.after(0);
        for (int i = 1; i < edges.length; i++) {
            edges[i] = Cut.after(Exact.of(banded.bands().get(i - 1).upTo()).orElseThrow());
        }
        return edges;
    }

    private static Piece constant(Amount amount, double times) {
        return new Piece.Constant(Exact.of(amount, times).orElseThrow());
    }

    private static Piece sum(List<Piece> pieces, List<Long> signs) {
        long sum = 0;
        for (int i = 1; i < pieces.size(); i++) {
            if (pieces.get(0) instanceof Piece.Refused || pieces.get(i) instanceof Piece.Refused) {
                return pieces.get(0) instanceof Piece.Refused ? pieces.get(0) : pieces.get(i);
            }
            sum += signs.get(i - 1) * ((Piece.Constant) pieces.get(i)).value();
        }
        return plus(pieces.get(0), sum);
    }

    private static Piece plus(Piece piece, long more) {
        if (piece instanceof Piece.Constant constant) {
            return new Piece.Constant(constant.value() + more);
        }
        return piece instanceof Piece.Chain chain ? chain.plus(more) : piece;
    }

    private Optional<Regions> round(Rounding rounding, Regions sum) {
        if (rounding instanceof Rounding.DownTo downTo) {
            long[] list = downTo.list().stream()
                    .mapToLong(amount -> Exact.of(amount).orElseThrow())
                    .sorted()
                    .distinct()
                    .toArray();
            long[] cuts = java.util.Arrays.stream(list).map(Cut::before).toArray();
            Piece below = new Piece.Refused("below-list");
            return sum.split(
                    cuts, meter, (piece, between) -> between == 0 ? below : new Piece.Constant(list[between - 1]));
        }
        if (!(rounding instanceof Rounding.Step to)) {
            return Optional.of(sum);
        }
        long step = Exact.of(to.amount()).orElseThrow();
        return switch (to.mode()) {
            case DOWN -> sum.each(meter, piece -> step(piece, 0, false, step));
            case UP -> sum.each(meter, piece -> step(piece, 0, true, step));
            // halves away from zero: up above zero, down below it
            case NEAREST ->
                sum.split(
                        new long[] {Cut.before(0)},
                        meter,
                        (piece, between) ->
                                between == 0 ? step(piece, -step / 2, true, step) : step(piece, step / 2, false, step));
        };
    }

    private static Piece step(Piece piece, long shift, boolean up, long step) {
        if (piece instanceof Piece.Constant constant) {
            long point = Cut.point(constant.value() + shift);
            return new Piece.Constant(Cut.valueOf(new Piece.Round(up, step, 0).at(point)));
        }
        return piece instanceof Piece.Chain chain ? chain.plus(shift).round(up, step) : piece;
    }

    private Optional<Regions> positive(Regions regions) {
        Piece not = new Piece.Refused("not-positive");
        return regions.split(new long[] {Cut.after(0)}, meter, (piece, between) -> between == 0 ? not : piece);
    }
}
