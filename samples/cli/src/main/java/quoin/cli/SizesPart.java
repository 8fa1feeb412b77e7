package quoin.cli;

import java.util.stream.Collectors;
import quoin.job.Assessment;
import quoin.job.Order;
import quoin.judge.Verdict;
import quoin.measure.Dimension;
import quoin.rulebook.Size;
import quoin.words.Words;

/** The made sizes, how each came about, and what the order says besides. */
final class SizesPart {
    private static final int NAME = 18;

    private final Assessment assessment;
    private final Words words;
    private final Lengths lengths;

    SizesPart(Assessment assessment, Words words, Lengths lengths) {
        this.assessment = assessment;
        this.words = words;
        this.lengths = lengths;
    }

    void on(Page page) {
        page.heading(heading());
        if (assessment.sizes().all().isEmpty()) {
            page.text(2, "None can be decided yet.");
            return;
        }
        for (Size size : assessment.sizes().all()) {
            page.hanging("  " + Page.pad(words.figure(size.id()), NAME), value(size));
            String how = size.steps().stream().map(words::of).collect(Collectors.joining("; "));
            if (!how.isEmpty()) {
                page.text(6, how);
            }
        }
        assessment.order().ifPresent(order -> order(page, order));
    }

    private String heading() {
        if (Headline.isQuote(assessment)) {
            return "SIZES FOR A PRICE: not for cutting";
        }
        return assessment.verdict() == Verdict.PASS
                ? "MADE SIZES: nothing more is taken off"
                : "SIZES SO FAR: not to be cut";
    }

    private String value(Size size) {
        String value = size.dimension() == Dimension.LENGTH
                ? lengths.size(size.value())
                : lengths.amount(size.value(), size.dimension());
        return size.within() > 0 ? value + ", cut within " + words.number(size.within()) + " mm" : value;
    }

    private void order(Page page, Order order) {
        StringBuilder line = new StringBuilder();
        append(line, "roller at the ", order.roller());
        append(line, "drive on the ", order.drive());
        append(line, "cable leaves on the ", order.cable());
        if (line.length() > 0) {
            page.text(2, "As ordered: " + line + ".");
        }
    }

    private static void append(StringBuilder line, String label, String value) {
        if (!value.isEmpty()) {
            line.append(line.length() == 0 ? "" : ", ").append(label).append(value);
        }
    }
}
