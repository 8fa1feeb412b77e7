package quoin.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** The map of a size says what deciding it gives, everywhere. The deciding itself is checked elsewhere. */
class MappingProperties {
    /** Nearer to a cut than this the dust of doubles, and what counts as on a multiple, may decide: 1e-4 mm. */
    private static final long NEAR = Exact.ONE / 10_000;

    @Property(tries = 120)
    void theMapSaysWhatDecidingGives(@ForAll long seed) {
        Rulebook rulebook = RandomRules.of(seed);
        Mapping mapping = mapping(rulebook);
        assertThat(mapping.lost()).isEmpty();
        Random random = new Random(seed);
        for (int i = 0; i < 40; i++) {
            Map<String, Long> at = point(random, mapping);
            Map<String, String> choices = Map.of("drive", RandomRules.DRIVES.get(i % 2));
            Map<String, Double> figures = new LinkedHashMap<>();
            at.forEach((figure, value) -> figures.put(figure, Exact.toAnswer(value)));
            Sizes sizes = Sizing.decide(rulebook, Sample.CATALOGUE, RandomRules.known(figures), choices, Map.of());
            for (String id : mapping.mapped()) {
                Regions regions = mapping.find(id, choices).orElseThrow();
                TreeSet<String> expected = new TreeSet<>();
                for (long side : new long[] {-NEAR, 0, NEAR}) {
                    Map<String, Long> beside = new LinkedHashMap<>(at);
                    beside.replaceAll((figure, value) -> value + side);
                    expected.add(shown(value(regions, beside), side));
                }
                if (expected.size() == 1) {
                    assertThat(shown(sizes.find(id)))
                            .as(id + " at " + figures + " of " + rulebook.canonicalText())
                            .isEqualTo(expected.first());
                }
            }
        }
    }

    /** What moves with the figures is shown as if it had not, so that both sides can be compared. */
    private static String shown(Value value, long moved) {
        return value.refused() ? "none" : String.valueOf(value.at() - (value.moves() ? moved : 0));
    }

    private static String shown(Optional<Size> size) {
        return size.map(found -> String.valueOf(Math.round(found.value() * Exact.ONE)))
                .orElse("none");
    }

    private record Value(boolean refused, long at, boolean moves) {}

    private static Value value(Regions regions, Map<String, Long> at) {
        for (int i = 0; i < regions.count(); i++) {
            Regions.Box box = regions.box(i);
            boolean inside = regions.axes().stream().allMatch(axis -> {
                long value = at.getOrDefault(axis, 0L);
                return value >= least(box.low(axis)) && value <= most(box.high(axis));
            });
            if (inside) {
                Piece piece = box.piece();
                if (piece instanceof Piece.Constant constant) {
                    return new Value(false, constant.value(), false);
                }
                return piece instanceof Piece.Chain chain
                        ? new Value(
                                false,
                                Cut.valueOf(chain.at(Cut.point(at.getOrDefault(chain.figure(), 0L)))),
                                chain.rounds().isEmpty())
                        : new Value(true, 0, false);
            }
        }
        throw new AssertionError("the boxes leave a gap at " + at);
    }

    private static long least(long cut) {
        return cut == Cut.BELOW_ALL ? Long.MIN_VALUE : Cut.value(cut) + (Cut.isBefore(cut) ? 0 : 1);
    }

    private static long most(long cut) {
        return cut == Cut.ABOVE_ALL ? Long.MAX_VALUE : Cut.value(cut) - (Cut.isBefore(cut) ? 1 : 0);
    }

    /** A point by chance, often just beside a cut. */
    private static Map<String, Long> point(Random random, Mapping mapping) {
        Map<String, Long> at = new LinkedHashMap<>();
        for (String figure : RandomRules.FIGURES) {
            long value = Exact.ONE * (random.nextInt(90) - 10) + random.nextInt((int) Exact.ONE);
            at.put(figure, random.nextBoolean() ? value - value % (Exact.ONE / 32) : value);
        }
        for (String id : mapping.mapped()) {
            Regions regions = mapping.cases(id).values().iterator().next();
            for (String axis : regions.axes()) {
                long low = regions.box(random.nextInt(regions.count())).low(axis);
                if (random.nextInt(6) == 0 && !Cut.isEnd(low)) {
                    at.put(axis, Cut.value(low) + 2 * NEAR * (random.nextBoolean() ? 1 : -1));
                }
            }
        }
        return at;
    }

    static Mapping mapping(Rulebook rulebook) {
        return Mapping.of(rulebook, new Names(rulebook, Sample.CATALOGUE), Offers.of(rulebook), new Meter());
    }
}
