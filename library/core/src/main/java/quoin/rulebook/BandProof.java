package quoin.rulebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import quoin.judge.Args;
import quoin.measure.Amount;

/** Bands that no opening inside the limits on sizes comes to, and openings inside the limits that no band covers. */
final class BandProof {
    private final Rulebook rulebook;
    private final Mapping mapping;
    private final Names names;
    private final Meter meter;
    private final Report report;
    private final Offers offers;
    private final Limiting limiting;
    private final Map<String, List<long[]>> known = new LinkedHashMap<>();

    BandProof(Proving proving) {
        this.rulebook = proving.rulebook();
        this.mapping = proving.mapping();
        this.names = proving.names();
        this.meter = proving.meter();
        this.report = proving.report();
        this.offers = proving.offers();
        this.limiting = proving.limiting();
    }

    void check() {
        for (int i = 0; i < rulebook.sizes().size(); i++) {
            SizeClause clause = rulebook.sizes().get(i);
            String at = "/sizes/" + i;
            if (clause.of() instanceof Base.OfQuota of) {
                bands(of.quota(), at + "/of");
            }
            for (int k = 0; k < clause.less().size(); k++) {
                bands(clause.less().get(k).quota(), at + "/less/" + k);
            }
            for (int k = 0; k < clause.more().size(); k++) {
                bands(clause.more().get(k).quota(), at + "/more/" + k);
            }
        }
        for (int i = 0; i < rulebook.bounds().size(); i++) {
            BoundClause clause = rulebook.bounds().get(i);
            String at = "/bounds/" + i;
            clause.atLeast().forEach(quota -> bands(quota, at + "/atLeast"));
            clause.atMost().forEach(quota -> bands(quota, at + "/atMost"));
            clause.within().forEach(quota -> bands(quota, at + "/within"));
        }
    }

    private void bands(Quota quota, String at) {
        if (!(quota instanceof Quota.Banded banded) || banded.bands().isEmpty() || !Mapping.isExact(banded)) {
            return;
        }
        List<long[]> values = known.computeIfAbsent(banded.by(), this::values);
        if (values.isEmpty()) {
            return;
        }
        String place = at + "/bands/amounts";
        long[] hull = values.stream().reduce(Limiting::hull).orElseThrow();
        long[] edges = Mapping.edges(banded);
        for (int i = 0; i < banded.bands().size(); i++) {
            long first = Cut.firstAbove(edges[i]);
            long last = Cut.lastBelow(edges[i + 1]);
            if (values.stream().noneMatch(range -> range[0] <= last && range[1] >= first)) {
                Amount upTo = banded.bands().get(i).upTo();
                Args args = Args.of("by", banded.by())
                        .with("above", Exact.toAnswer(Cut.value(edges[i])))
                        .with("upTo", upTo.toAnswer())
                        .with("unit", upTo.dimension().answerUnit());
                report.warning("band-never-used", place + "/" + i, Limiting.with(args, hull));
            }
        }
        gap(banded, hull, place);
    }

    private void gap(Quota.Banded banded, long[] hull, String place) {
        Amount last = banded.bands().get(banded.bands().size() - 1).upTo();
        long edge = Cut.point(Exact.of(last).orElseThrow());
        if (hull[1] > edge && hull[1] != Cut.ABOVE_ALL) {
            Args args = Args.of("by", banded.by())
                    .with("witness", Exact.toAnswer(Cut.valueOf(hull[1])))
                    .with("above", last.toAnswer())
                    .with("unit", last.dimension().answerUnit());
            report.warning("band-gap", place, args);
        }
    }

    /**
     * The ranges of what picks a band while every size keeps its limits; empty where nothing is known of it. For a figure
     * each size with limits is taken alone, so the ranges may be too wide and never too narrow.
     */
    private List<long[]> values(String by) {
        if (mapping.isMapped(by)) {
            Set<String> limited = new LinkedHashSet<>(limiting.sources(List.of(by)));
            limited.add(by);
            return ranges(by, limited);
        }
        if (names.isSize(by)) {
            return List.of();
        }
        long[] all = {Cut.BELOW_ALL, Cut.ABOVE_ALL};
        for (String size : limiting.limited()) {
            List<long[]> ranges = mapping.isMapped(size) ? ranges(by, Set.of(size)) : List.of();
            Optional<long[]> hull = ranges.stream().reduce(Limiting::hull);
            if (hull.isPresent()) {
                all = new long[] {StrictMath.max(all[0], hull.get()[0]), StrictMath.min(all[1], hull.get()[1])};
            }
        }
        return all[0] <= all[1] ? List.of(all) : List.of();
    }

    /** The values of a size, or of a figure, in every box where these sizes keep their limits. */
    private List<long[]> ranges(String by, Set<String> limited) {
        List<long[]> ranges = new ArrayList<>();
        Set<String> kinds = Effects.union(mapping.kinds(by), limiting.kinds(limited));
        Optional<List<Map<String, String>>> ways = offers.ways(kinds);
        for (Map<String, String> choices : ways.orElse(List.of())) {
            Optional<List<Regions>> inside = limiting.inside(limited, choices);
            Optional<Regions> size = mapping.isMapped(by) ? mapping.find(by, choices) : Optional.of(Regions.figure(by));
            if (inside.isEmpty() || size.isEmpty()) {
                return List.of();
            }
            List<Regions> all = new ArrayList<>(List.of(size.get()));
            all.addAll(inside.get());
            Optional<Regions> over = Regions.join(all, meter, (pieces, box) -> {
                if (pieces.stream().noneMatch(piece -> piece instanceof Piece.Refused)) {
                    ranges.add(Limiting.range(pieces.get(0), box));
                }
                return pieces.get(0);
            });
            if (over.isEmpty()) {
                return List.of();
            }
        }
        return ranges;
    }
}
