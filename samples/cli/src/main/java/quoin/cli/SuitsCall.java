package quoin.cli;

import java.io.PrintStream;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import quoin.job.Figures;
import quoin.job.StockOpenings;
import quoin.json.Read;
import quoin.json.RulebookDocument;
import quoin.measure.Amount;
import quoin.measure.AmountText;
import quoin.measure.Dimension;
import quoin.rulebook.Interval;
import quoin.rulebook.Rulebook;
import quoin.rulebook.Suits;
import quoin.words.Words;

/** {@code quoin suits RULEBOOK}: which openings a finished frame suits. */
final class SuitsCall {
    private static final String SHAPE = "write suits RULEBOOK --width \"1495 mm\" --length \"2391 mm\"";
    private static final int NAME = 26;

    private final PrintStream out;
    private final Words words = Words.in(Locale.ENGLISH);

    private SuitsCall(PrintStream out) {
        this.out = out;
    }

    /** Runs the words after {@code suits}: 0 where an opening gives these sizes, 20 where none does. */
    static int run(List<String> args, PrintStream out, PrintStream err) throws BadUse {
        Map<String, Amount> sizes = new LinkedHashMap<>();
        Map<String, String> choices = new LinkedHashMap<>();
        String file = "";
        Iterator<String> rest = args.iterator();
        while (rest.hasNext()) {
            String word = rest.next();
            switch (word) {
                case "--width" -> sizes.put("frame.width", length(word, rest));
                case "--length" -> sizes.put("frame.length", length(word, rest));
                case "--choose" -> choose(choices, rest);
                default -> {
                    if (word.startsWith("-") || !file.isEmpty()) {
                        throw new BadUse(word + " is one word too many, " + SHAPE);
                    }
                    file = word;
                }
            }
        }
        if (file.isEmpty() || sizes.size() < 2) {
            throw new BadUse("suits needs a rulebook, a width and a length, " + SHAPE);
        }
        Read<Rulebook> read = RulebookDocument.read(Files.bytes(file));
        Problems problems = new Problems();
        problems.add(file, read.problems());
        problems.print(err);
        return read.value().isEmpty()
                ? Main.BAD
                : new SuitsCall(out).print(read.value().get(), sizes, choices);
    }

    private static Amount length(String option, Iterator<String> rest) throws BadUse {
        String text = rest.hasNext() ? rest.next() : "";
        try {
            Amount amount = AmountText.parse(text);
            if (amount.dimension() == Dimension.LENGTH && amount.value() > 0) {
                return amount;
            }
        } catch (IllegalArgumentException e) {
            throw new BadUse(option + " is \"" + text + "\", " + SHAPE);
        }
        throw new BadUse(option + " is \"" + text + "\", write a length above 0 mm");
    }

    private static void choose(Map<String, String> choices, Iterator<String> rest) throws BadUse {
        String word = rest.hasNext() ? rest.next() : "";
        int equals = word.indexOf('=');
        if (equals < 1 || equals == word.length() - 1) {
            throw new BadUse("--choose is \"" + word + "\", write --choose drive=drive-m");
        }
        choices.put(word.substring(0, equals), word.substring(equals + 1));
    }

    private int print(Rulebook rulebook, Map<String, Amount> sizes, Map<String, String> choices) throws BadUse {
        double width = sizes.getOrDefault("frame.width", new Amount(0, Dimension.LENGTH))
                .value();
        double length = sizes.getOrDefault("frame.length", new Amount(0, Dimension.LENGTH))
                .value();
        Suits suits;
        try {
            suits = Suits.of(rulebook, Figures.CATALOGUE, sizes, choices);
        } catch (IllegalArgumentException e) {
            throw new BadUse(e.getMessage() + ": this rulebook cannot be taken back");
        }
        line("%s %s: a frame of %s by %s mm", rulebook.id(), rulebook.version(), mm(width), mm(length));
        line("Made to measure for");
        if (suits.boxes().isEmpty()) {
            line("  no opening: the rules never give this size");
        }
        for (Suits.Box box : suits.boxes()) {
            box.figures().forEach((figure, ends) -> line("  %s%s", Page.pad(words.figure(figure), NAME), ends(ends)));
        }
        StockOpenings stock = StockOpenings.of(rulebook, width, length, choices);
        line(
                "From stock, in a rectangular opening, by %s",
                stock.by().isEmpty() ? "no bound" : String.join(", ", stock.by()));
        line("  %s%s", Page.pad("width", NAME), ends(stock.width()));
        line("  %s%s", Page.pad("length", NAME), ends(stock.length()));
        list("Bounds kept", suits.kept());
        list("Bounds broken", suits.broken());
        list("To be measured", suits.open());
        return suits.boxes().isEmpty() || !suits.broken().isEmpty() ? Main.FAIL : Main.PASS;
    }

    private void list(String title, List<String> clauses) {
        if (!clauses.isEmpty()) {
            line("%s: %s", title, String.join(", ", clauses));
        }
    }

    private String ends(Interval ends) {
        if (ends.isEmpty()) {
            return "none";
        }
        String from = Double.isInfinite(ends.least())
                ? ""
                : (ends.withLeast() ? "" : "above ") + mm(ends.least()) + " mm" + (ends.withLeast() ? " or more" : "");
        String to = Double.isInfinite(ends.most())
                ? ""
                : (ends.withMost() ? "" : "below ") + mm(ends.most()) + " mm" + (ends.withMost() ? " or less" : "");
        return from.isEmpty() && to.isEmpty() ? "any" : from + (from.isEmpty() || to.isEmpty() ? "" : ", ") + to;
    }

    private String mm(double value) {
        return words.number(value);
    }

    private void line(String format, Object... args) {
        out.print(String.format(Locale.ROOT, format, args) + "\n");
    }
}
