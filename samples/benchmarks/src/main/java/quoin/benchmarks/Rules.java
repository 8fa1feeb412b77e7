package quoin.benchmarks;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quoin.job.Figures;
import quoin.json.RulebookDocument;
import quoin.judge.Catalogue;
import quoin.measure.Influence;
import quoin.measure.Influences;
import quoin.measure.Uncertain;
import quoin.rulebook.FigureSource;
import quoin.rulebook.Rulebook;

/** Rulebooks as documents: one as small as a real one, one with very many clauses; and figures to decide them with. */
final class Rules {
    static final int CLAUSES = 500;
    static final Map<String, String> CHOICES = Map.of("drive", "drive-m");
    static final Catalogue CATALOGUE = Figures.CATALOGUE;
    static final double PROBABILITY = 0.95;

    /** The sizes and limits of {@link #SMALL}, which the code by hand knows as numbers. */
    static final double GAP = 3;

    static final double PLATES = 4;
    static final double WRAPS = 350;
    static final double[] TUBE_UP_TO = {1800, 3000};
    static final double[] TUBE = {50, 63};
    static final double WIDEST = 3000;
    static final double LEAST_LENGTH = 500;
    static final double LEAST_FIT = 1400;
    static final double OUT_OF_SQUARE = 6;
    static final double CUT = 0.5;

    static final String SMALL = """
            { "format": "quoin-rulebook/1", "id": "small", "version": "1", "effective": "2026-01-01",
              "decide": { "rule": "guarded", "probability": 0.95 },
              "sizes": [
                { "id": "frame.width", "of": "fit.width", "less": [ { "amount": "3 mm", "times": 2, "because": "gap" } ],
                  "round": { "down": "1 mm" }, "cutWithin": "0.5 mm", "source": { "kind": "assumption" } },
                { "id": "frame.length", "of": "fit.length", "less": [ { "amount": "3 mm", "times": 2, "because": "gap" } ],
                  "round": { "down": "1 mm" }, "cutWithin": "0.5 mm", "source": { "kind": "assumption" } },
                { "id": "headbox.length", "of": "frame.width", "less": [
                  { "choice": "drive", "amounts": { "drive-m": "4 mm" }, "because": "plates" } ],
                  "source": { "kind": "assumption" } },
                { "id": "tube.diameter", "of": { "bands": { "by": "frame.width", "amounts": [
                  { "upTo": "1800 mm", "amount": "50 mm" }, { "upTo": "3000 mm", "amount": "63 mm" } ] } },
                  "source": { "kind": "assumption" } },
                { "id": "fabric.length", "of": "frame.length", "more": [ { "amount": "350 mm", "because": "wraps" } ],
                  "source": { "kind": "assumption" } } ],
              "bounds": [
                { "id": "widest", "figure": "frame.width", "atMost": "3000 mm", "source": { "kind": "practice" } },
                { "id": "shortest", "figure": "frame.length", "atLeast": "500 mm", "source": { "kind": "practice" } },
                { "id": "narrowest", "figure": "fit.width", "atLeast": "1400 mm", "source": { "kind": "practice" } },
                { "id": "square", "figure": "opening.diagonal.difference", "within": "6 mm",
                  "source": { "kind": "practice" } } ] }
            """;

    private static final Influences READ = Influences.of(List.of(
            Influence.normal("width", 1),
            Influence.normal("length", 1),
            Influence.normal("first", 1),
            Influence.normal("second", 1)));

    private Rules() {}

    static Rulebook small() {
        return RulebookDocument.read(SMALL.getBytes(StandardCharsets.UTF_8))
                .value()
                .orElseThrow();
    }

    /** What the readings of one job give. */
    static double width(int time) {
        return 1500 + time % 1000 * 0.37;
    }

    static double length(int time) {
        return 2400 + time % 700 * 0.21;
    }

    static double difference(int time) {
        return time % 90 * 0.1 - 4;
    }

    static FigureSource figures(int time) {
        Uncertain width = Uncertain.of(width(time), READ, new double[] {0.9, 0, 0.1, 0.1});
        Uncertain length = Uncertain.of(length(time), READ, new double[] {0, 0.9, 0.1, 0.1});
        Uncertain difference = Uncertain.of(difference(time), READ, new double[] {0, 0, 0.8, -0.8});
        return figure -> switch (figure) {
            case "fit.width" -> Optional.of(width);
            case "fit.length" -> Optional.of(length);
            case "opening.diagonal.difference" -> Optional.of(difference);
            default -> Optional.empty();
        };
    }

    /** A rulebook of so many clauses, half of them sizes, as somebody would write it. */
    static String large(int clauses) {
        StringBuilder text = new StringBuilder("""
                {
                  "format": "quoin-rulebook/1", "id": "large", "version": "1", "effective": "2026-01-01",
                  "decide": { "rule": "guarded", "probability": 0.95 },
                  "sizes": [
                """);
        text.append(size("frame.width", "fit.width")).append(size("frame.length", "fit.length"));
        for (int i = 2; i < clauses / 2; i++) {
            text.append(i % 3 == 0 ? banded(i) : size("size." + i, i % 2 == 0 ? "frame.width" : "fit.length"));
        }
        text.setLength(text.length() - 2);
        text.append("\n  ],\n  \"bounds\": [\n");
        for (int i = clauses / 2; i < clauses; i++) {
            text.append(bound(i));
        }
        text.setLength(text.length() - 2);
        return text.append("\n  ]\n}\n").toString();
    }

    private static String size(String id, String of) {
        return """
                    {
                      "id": "%s", "of": "%s",
                      "less": [ { "amount": "3 mm", "times": 2, "because": "gap allowance each side" } ],
                      "round": { "down": "1 mm" }, "cutWithin": "0.5 mm",
                      "because": "frame must enter", "source": { "kind": "assumption" }
                    },
                """.formatted(id, of);
    }

    private static String banded(int i) {
        return """
                    {
                      "id": "size.%s",
                      "of": { "bands": { "by": "frame.width", "amounts": [
                        { "upTo": "%s mm", "amount": "50 mm" }, { "upTo": "3000 mm", "amount": "63 mm" } ] } },
                      "because": "bending", "source": { "kind": "assumption" }
                    },
                """.formatted(i, 1000 + i);
    }

    private static String bound(int i) {
        return """
                    {
                      "id": "bound.%s", "figure": "%s", "within": "%s mm",
                      "because": "the gap becomes a wedge", "source": { "kind": "practice" }
                    },
                """.formatted(i, i % 2 == 0 ? "opening.diagonal.difference" : "opening.bow.left", 6 + i);
    }
}
