package quoin.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Supplier;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/**
 * A comparison by effect against a scan: both rulebooks are decided at many points, and where the results differ the
 * comparison must say so and by how much, and nowhere else.
 */
class ComparisonProperties {
    /** All amounts and steps, and halves of steps, are multiples of this: 0.0015625 mm. So all cuts lie on multiples. */
    private static final long LATTICE = 15_625;

    /** Far enough from every cut for the dust of doubles not to matter: 0.0004 mm. */
    private static final long BESIDE = 4_000;

    @Property(tries = 30)
    void aRulebookDoesNotDifferFromItself(@ForAll long seed) {
        Rulebook rulebook = RandomRules.of(seed);
        Comparison comparison = Comparison.of(rulebook, rulebook, Sample.CATALOGUE);
        assertThat(comparison.isEmpty()).isTrue();
        assertThat(comparison.flips()).isEmpty();
        assertThat(comparison.demands()).isEmpty();
        assertThat(comparison.isVersionEnough()).isTrue();
    }

    @Property(tries = 30)
    void theOrderOfClausesDoesNotMatter(@ForAll long seed) {
        Rulebook old = RandomRules.of(seed);
        Rulebook now = RandomRules.changed(old, seed + 1);
        assertThat(Comparison.of(old, shuffled(old, seed), Sample.CATALOGUE).isEmpty())
                .isTrue();
        assertThat(Comparison.of(shuffled(old, seed), shuffled(now, seed + 2), Sample.CATALOGUE))
                .isEqualTo(Comparison.of(old, now, Sample.CATALOGUE));
    }

    private static Rulebook shuffled(Rulebook rulebook, long seed) {
        List<SizeClause> sizes = new ArrayList<>(rulebook.sizes());
        List<BoundClause> bounds = new ArrayList<>(rulebook.bounds());
        Collections.shuffle(sizes, new Random(seed));
        Collections.shuffle(bounds, new Random(seed));
        return rulebook.withSizes(sizes).withBounds(bounds);
    }

    /** A reordering of what is taken off is no change of a number. */
    @Property(tries = 30)
    void theOrderOfItemsIsNoChangeOfANumber(@ForAll long seed) {
        Rulebook old = RandomRules.of(seed);
        List<SizeClause> turned = old.sizes().stream()
                .map(clause -> {
                    List<Item> less = new ArrayList<>(clause.less());
                    Collections.reverse(less);
                    return clause.withLess(less.toArray(Item[]::new));
                })
                .toList();
        assertThat(Comparison.of(old, old.withSizes(turned), Sample.CATALOGUE).isEmpty())
                .isTrue();
    }

    @Property(tries = 120)
    void whatAScanFindsTheComparisonFindsAndNothingElse(@ForAll long seed) {
        Rulebook old = RandomRules.of(seed);
        Rulebook now = RandomRules.changed(old, seed + 1);
        Comparison comparison = Comparison.of(old, now, Sample.CATALOGUE);
        Random random = new Random(seed);
        for (int i = 0; i < 80; i++) {
            Map<String, Double> figures = new LinkedHashMap<>();
            for (String figure : RandomRules.FIGURES) {
                long value = LATTICE * (random.nextInt(60 * 640) - 5 * 640) + (random.nextBoolean() ? BESIDE : 0);
                figures.put(figure, Exact.toAnswer(i % 3 == 0 ? value - value % (Exact.ONE / 2) : value));
            }
            Map<String, String> choices = Map.of("drive", RandomRules.DRIVES.get(i % 2));
            Map<String, Double> before = scan(old, figures, choices);
            Map<String, Double> after = scan(now, figures, choices);
            for (String name : before.keySet()) {
                check(comparison, name, before.get(name), after.get(name), figures, choices);
            }
        }
    }

    private static void check(
            Comparison comparison,
            String name,
            double before,
            double after,
            Map<String, Double> figures,
            Map<String, String> choices) {
        List<Effect> here = comparison.effects().stream()
                .filter(effect -> (effect.clause() + " " + effect.field()).equals(name))
                .filter(effect ->
                        choices.entrySet().containsAll(effect.choices().entrySet()))
                .filter(effect -> effect.holdsAt(figures))
                .toList();
        Supplier<String> as = () -> name + " at " + figures + " " + choices + ": " + before + " -> " + after + " in "
                + comparison.effects() + comparison.changes();
        boolean same =
                before == after || Math.abs(before - after) < 1e-6 || Double.isNaN(before) && Double.isNaN(after);
        if (same) {
            assertThat(here).as(as).allMatch(effect -> effect.kind() == Effect.Kind.OPEN);
            return;
        }
        assertThat(here).as(as).hasSize(1);
        Effect effect = here.get(0);
        if (effect.kind() == Effect.Kind.CHANGED) {
            Effect.Stretch stretch = effect.stretches().stream()
                    .filter(one -> new Effect(
                                    effect.clause(),
                                    effect.field(),
                                    effect.kind(),
                                    Map.of(),
                                    Map.of(),
                                    effect.along(),
                                    effect.period(),
                                    List.of(one),
                                    "")
                            .holdsAt(figures))
                    .findFirst()
                    .orElseThrow();
            assertThat(after - before).as(as).isBetween(stretch.least() - 1e-6, stretch.most() + 1e-6);
            if (stretch.least() == stretch.most()) {
                assertThat(after - before).as(as).isCloseTo(stretch.least(), within(1e-6));
            }
        } else if (effect.kind() != Effect.Kind.OPEN) {
            assertThat(effect.kind())
                    .as(as)
                    .isEqualTo(Double.isNaN(before) ? Effect.Kind.DECIDED : Effect.Kind.REFUSED);
        }
    }

    /** Every size and limit by its name; NaN where there is none. */
    private static Map<String, Double> scan(
            Rulebook rulebook, Map<String, Double> figures, Map<String, String> choices) {
        FigureSource known = RandomRules.known(figures);
        Sizes sizes = Sizing.decide(rulebook, Sample.CATALOGUE, known, choices, Map.of());
        Map<String, Double> all = new LinkedHashMap<>();
        for (SizeClause clause : rulebook.sizes()) {
            all.put(
                    clause.id() + " size",
                    sizes.find(clause.id()).map(Size::value).orElse(Double.NaN));
        }
        for (BoundClause clause : rulebook.bounds()) {
            Optional<Limits.Stated> stated = Optional.of(clause.bound(sizes.before(known), choices))
                    .filter(Limits.Stated.class::isInstance)
                    .map(Limits.Stated.class::cast);
            all.put(clause.id() + " atLeast", finite(stated.map(s -> s.bound().atLeast())));
            all.put(clause.id() + " atMost", finite(stated.map(s -> s.bound().atMost())));
        }
        return all;
    }

    private static double finite(Optional<Double> limit) {
        return limit.filter(Double::isFinite).orElse(Double.NaN);
    }
}
