package quoin.rulebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import quoin.judge.DecisionRule;
import quoin.judge.Source;
import quoin.measure.Estimate;
import quoin.measure.Uncertain;

/**
 * Rulebooks made by chance from a seed: sizes of sizes, bands by figures and by sizes, amounts by choice, every way to
 * round, in metric and inch steps. The openings are small, so that many bands are met.
 */
final class RandomRules {
    static final List<String> FIGURES = List.of("fit.width", "fit.length", "opening.diagonal.difference");
    static final List<String> DRIVES = List.of("drive-a", "drive-b");
    private static final double[] STEPS = {1, 0.25, 0.5, 1.5875, 0.79375, 2.5, 3, 25.4};

    private final Random random;
    private final List<String> names = new ArrayList<>();

    private RandomRules(long seed) {
        this.random = new Random(seed);
    }

    static Rulebook of(long seed) {
        return new RandomRules(seed).rulebook();
    }

    /** The same rulebook with one thing changed by chance, seldom nothing. */
    static Rulebook changed(Rulebook rulebook, long seed) {
        RandomRules rules = new RandomRules(seed);
        List<SizeClause> sizes = new ArrayList<>(rulebook.sizes());
        rules.names.addAll(sizes.stream().map(SizeClause::id).toList());
        int i = rules.random.nextInt(sizes.size());
        String id = sizes.get(i).id();
        rules.names.retainAll(rules.names.subList(0, i));
        SizeClause other = sizes.get(i);
        switch (rules.random.nextInt(3)) {
            case 0 -> sizes.set(i, other.withRound(rules.round()));
            case 1 -> sizes.set(i, other.withLess(rules.item()));
            default -> sizes.set(i, rules.clause(id));
        }
        return rulebook.withSizes(sizes).withBounds(rules.random.nextBoolean() ? rulebook.bounds() : rules.bounds());
    }

    private Rulebook rulebook() {
        List<SizeClause> sizes = new ArrayList<>();
        for (String id : List.of("frame.width", "frame.length", "s0", "s1", "s2")) {
            sizes.add(clause(id));
            names.add(id);
        }
        return Rulebook.of("random", "1.0.0", "2026-01-01", "", DecisionRule.simple())
                .withSizes(sizes)
                .withBounds(bounds());
    }

    private List<BoundClause> bounds() {
        List<BoundClause> bounds = new ArrayList<>();
        for (String id : List.of("b0", "b1")) {
            BoundClause clause = BoundClause.of(id, names.isEmpty() ? "frame.width" : any(names));
            bounds.add(
                    random.nextBoolean()
                            ? clause.withAtMost(quota())
                            : clause.withAtLeast(Sample.fixed(random.nextInt(20))));
        }
        return bounds;
    }

    private SizeClause clause(String id) {
        SizeClause clause = SizeClause.of(id, base(id)).withBecause("by chance", Sample.ASSUMED);
        for (int i = random.nextInt(3); i > 0; i--) {
            clause = clause.withLess(item());
        }
        return (random.nextInt(3) == 0 ? clause.withMore(item()) : clause).withRound(round());
    }

    private Base base(String id) {
        if (id.startsWith("frame")) {
            return new Base.OfFigure(id.endsWith("width") ? "fit.width" : "fit.length");
        }
        return switch (random.nextInt(4)) {
            case 0 -> new Base.OfFigure("fit.width");
            case 1 -> new Base.OfQuota(bands());
            default -> new Base.OfFigure(any(names));
        };
    }

    private Item item() {
        return new Item(quota(), random.nextInt(3) == 0 ? 2 : 1, "", Source.UNSTATED);
    }

    private Quota quota() {
        return switch (random.nextInt(4)) {
            case 0 -> bands();
            case 1 -> {
                Map<String, quoin.measure.Amount> amounts = new LinkedHashMap<>();
                DRIVES.forEach(drive -> amounts.put(drive, Sample.mm(amount())));
                yield Quota.byChoice("drive", amounts);
            }
            default -> Sample.fixed(amount());
        };
    }

    private Quota.Banded bands() {
        String by = names.isEmpty() || random.nextBoolean() ? any(FIGURES) : any(names);
        double[] pairs = new double[2 * (1 + random.nextInt(3))];
        double edge = 0;
        for (int i = 0; i < pairs.length; i += 2) {
            edge += 0.5 * (1 + random.nextInt(60));
            pairs[i] = edge;
            pairs[i + 1] = 1 + amount();
        }
        return Sample.bands(by, pairs);
    }

    private double amount() {
        return random.nextInt(4) == 0 ? 1.5875 * random.nextInt(5) : 0.25 * random.nextInt(24);
    }

    private Rounding round() {
        Rounding.Mode[] modes = Rounding.Mode.values();
        return switch (random.nextInt(5)) {
            case 0 -> Rounding.NONE;
            case 1 -> new Rounding.DownTo(List.of(Sample.mm(30), Sample.mm(10.5), Sample.mm(21)));
            default ->
                new Rounding.Step(modes[random.nextInt(modes.length)], Sample.mm(STEPS[random.nextInt(STEPS.length)]));
        };
    }

    private <T> T any(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    /** Figures that are known without a doubt. */
    static FigureSource known(Map<String, Double> figures) {
        Map<String, Estimate> estimates = new LinkedHashMap<>();
        figures.forEach((name, value) -> estimates.put(name, Uncertain.exact(value)));
        return name -> Optional.ofNullable(estimates.get(name));
    }
}
