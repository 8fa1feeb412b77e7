package quoin.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quoin.rulebook.Comparison.Change;
import quoin.rulebook.Comparison.Demand;
import quoin.rulebook.Comparison.Flip;
import quoin.rulebook.Comparison.Level;
import quoin.rulebook.Effect;

class RuleWordsTest {
    private static final RuleWords WORDS = RuleWords.in(Locale.ENGLISH);
    private static final Effect.Range ALL =
            new Effect.Range(Double.NEGATIVE_INFINITY, false, Double.POSITIVE_INFINITY, false, "");

    private static Effect.Range mm(double from, double to) {
        return new Effect.Range(from, true, to, false, "mm");
    }

    private static Effect effect(
            Effect.Kind kind,
            Map<String, Effect.Range> where,
            String along,
            double period,
            Effect.Stretch... stretches) {
        return new Effect("box", "size", kind, Map.of(), where, along, period, List.of(stretches), "mm");
    }

    @Test
    void whereAndByHowMuch() {
        Map<String, Effect.Range> where = Map.of("fit.width", mm(1000, Double.POSITIVE_INFINITY));
        assertThat(WORDS.of(effect(Effect.Kind.CHANGED, where, "", 0, new Effect.Stretch(ALL, -2, -2))))
                .isEqualTo("box is 2 mm smaller where fit.width is 1000 mm or more");
        assertThat(WORDS.of(effect(Effect.Kind.CHANGED, Map.of(), "", 0, new Effect.Stretch(ALL, 2.5, 2.5))))
                .isEqualTo("box is 2.5 mm larger everywhere");
        assertThat(WORDS.of(
                        effect(Effect.Kind.CHANGED, where, "fit.width", 1, new Effect.Stretch(mm(0.5, 1), 0.5, 0.5))))
                .isEqualTo("box is 0.5 mm larger where fit.width is 1000 mm or more, and 0.5 mm or more and below 1 mm"
                        + " above a multiple of 1 mm");
        assertThat(WORDS.of(effect(
                        Effect.Kind.CHANGED,
                        Map.of(),
                        "fit.width",
                        2,
                        new Effect.Stretch(mm(0, 0.5), 0, 1),
                        new Effect.Stretch(mm(1, 1.5), -1, -1))))
                .isEqualTo("box differs by -1 to +1 mm everywhere; fit.width above a multiple of 2 mm: 0 mm or more and"
                        + " below 0.5 mm: 0 to +1 mm; 1 mm or more and below 1.5 mm: -1 mm");
        double nan = Double.NaN;
        assertThat(WORDS.of(effect(Effect.Kind.DECIDED, where, "", 0, new Effect.Stretch(ALL, nan, nan))))
                .isEqualTo("box is newly stated where fit.width is 1000 mm or more");
    }

    @Test
    void whatIsStated() {
        assertThat(WORDS.of(new Change(Change.Kind.CHANGED, "size", "box", "round/down", "1 mm", "0.5 mm")))
                .isEqualTo("box, round/down: was 1 mm, is 0.5 mm");
        assertThat(WORDS.of(new Change(Change.Kind.ADDED, "bound", "goes-in", "", "", "at least 1 mm")))
                .isEqualTo("bound goes-in: new");
        assertThat(WORDS.of(new Change(Change.Kind.CHANGED, "rulebook", "", "effective", "2026-01-01", "2027-01-01")))
                .isEqualTo("effective: was 2026-01-01, is 2027-01-01");
    }

    @Test
    void everyReasonHasWords() {
        for (String because : List.of("added", "removed", "figure", "limit", "doubt", "decide", "frame", "sizes")) {
            assertThat(WORDS.of(new Flip("b", because, List.of("s")))).startsWith("b: ");
        }
        for (String because : List.of(
                "id",
                "survey",
                "site",
                "choice",
                "declared",
                "size-removed",
                "size-added",
                "size",
                "limit",
                "verdict",
                "number",
                "text")) {
            for (Level level : Level.values()) {
                assertThat(WORDS.of(new Demand(level, because, List.of("s"))))
                        .startsWith(level.name().toLowerCase(Locale.ROOT) + ": ");
            }
        }
    }
}
