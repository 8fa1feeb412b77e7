package quoin.cli;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import quoin.job.Assessment;
import quoin.job.FigureValue;
import quoin.job.Shape;
import quoin.job.TradeRule;
import quoin.judge.Args;
import quoin.judge.Finding;
import quoin.judge.Step;
import quoin.measure.Estimate;
import quoin.measure.Uncertain;
import quoin.opening.Corner;
import quoin.opening.Suspect;
import quoin.words.Words;

/** The opening as it was measured, how far it is from square, and which readings do not fit. */
final class OpeningPart {
    private static final double SPOKEN_OF_MM = 0.5;

    private final Assessment assessment;
    private final Words words;
    private final Lengths lengths;

    OpeningPart(Assessment assessment, Words words, Lengths lengths) {
        this.assessment = assessment;
        this.words = words;
        this.lengths = lengths;
    }

    void on(Page page) {
        page.heading("THE OPENING AS MEASURED");
        if (assessment.shape().isEmpty()) {
            boolean close = assessment.adjustment().suspects().isEmpty();
            page.text(2, close ? "The readings do not determine its shape yet." : "No shape comes near the readings.");
        } else {
            new OpeningDrawing(assessment.shape().get().corners(), lengths).on(page);
            diagonals(page);
            corners(page);
            largest(page);
        }
        suspects(page);
    }

    private void diagonals(Page page) {
        value("opening.diagonal.difference")
                .ifPresent(v -> page.text(2, "They differ by " + lengths.say(Math.abs(v.value())) + give(v) + "."));
    }

    /** The corner that is furthest from square, as an offset over its leg. */
    private void corners(Page page) {
        double most = SPOKEN_OF_MM;
        String worst = "";
        for (Corner corner : Corner.values()) {
            Optional<Estimate> departure = value("opening.corner." + corner.text() + ".departure");
            double leg = leg(corner);
            double offset = departure.isEmpty() ? 0 : Math.abs(departure.get().value()) * leg;
            if (departure.isPresent() && offset > most) {
                most = offset;
                worst = words.outOver(departure.get().value(), leg, corner.text());
            }
        }
        page.text(2, worst.isEmpty() ? "Square at every corner." : "Worst corner: " + worst + ".");
    }

    private double leg(Corner corner) {
        Map<Corner, Shape.Point> corners = assessment.shape().orElseThrow().corners();
        Corner other = switch (corner) {
            case HEAD_LEFT -> Corner.FOOT_LEFT;
            case HEAD_RIGHT -> Corner.FOOT_RIGHT;
            case FOOT_RIGHT -> Corner.HEAD_RIGHT;
            case FOOT_LEFT -> Corner.HEAD_LEFT;
        };
        Shape.Point a = corners.get(corner);
        Shape.Point b = corners.get(other);
        return a == null || b == null ? 0 : StrictMath.hypot(b.x() - a.x(), b.y() - a.y());
    }

    private void largest(Page page) {
        Optional<Estimate> width = value("fit.width");
        Optional<Estimate> length = value("fit.length");
        if (width.isEmpty() || length.isEmpty()) {
            return;
        }
        page.text(
                2,
                "The largest true rectangle that goes in, level with the head: "
                        + lengths.say(width.get().value()) + " by "
                        + lengths.say(length.get().value()) + ".");
        Optional<Estimate> ruleWidth = value("fit.rule.width");
        Optional<Estimate> ruleLength = value("fit.rule.length");
        if (ruleWidth.isPresent() && ruleLength.isPresent()) {
            double more = Math.max(
                    ruleWidth.get().value() - width.get().value(),
                    ruleLength.get().value() - length.get().value());
            String warning = more >= 1 ? ": up to " + lengths.say(more) + " more than goes in." : ".";
            page.text(
                    2,
                    "The least reading each way would say "
                            + lengths.say(ruleWidth.get().value()) + " by "
                            + lengths.say(ruleLength.get().value()) + warning);
            jams(page);
        }
    }

    /** The frame that the least readings would have given, and where it jams. */
    private void jams(Page page) {
        Optional<TradeRule> rule = assessment.tradeRule().filter(TradeRule::jams);
        if (rule.isPresent()) {
            String where = rule.get().tightest().stream().map(words::figure).collect(Collectors.joining(", "));
            page.text(
                    2,
                    "A frame by that rule, " + lengths.size(rule.get().widthMm()) + " by "
                            + lengths.size(rule.get().lengthMm()) + ", jams: placed as well as can be it lacks "
                            + lengths.say(-rule.get().leastGap().value()) + " (" + where + ").");
        }
    }

    private void suspects(Page page) {
        if (assessment.adjustment().accepted()
                || assessment.adjustment().suspects().isEmpty()) {
            return;
        }
        page.blank();
        Optional<Finding> straight = assessment.findings().stream()
                .filter(finding -> finding.clause().equals("straight"))
                .findFirst();
        if (straight.isPresent()) {
            page.text(2, "THE READINGS AGREE ONLY IF A SIDE IS LESS STRAIGHT THAN STATED:");
            straight.get().steps().forEach(step -> page.hanging("  - ", words.of(step) + "."));
            return;
        }
        if (!assessment.adjustment().determined()) {
            page.text(2, "THE READINGS CANNOT CLOSE:");
            for (Suspect suspect : assessment.adjustment().suspects()) {
                Step step = Step.of("cannot-close", Args.of("readings", suspect.readings()));
                page.hanging("  - ", words.of(step) + ".");
            }
            return;
        }
        page.text(2, "THE READINGS DO NOT AGREE: no shape with four sides has all of them.");
        String first = "Most out of line";
        for (Suspect suspect : assessment.adjustment().suspects()) {
            page.text(2, first + (suspect.readings().size() == 1 ? ":" : ", no telling which of these:"));
            for (Suspect.Slip slip : suspect.slips()) {
                page.hanging("  - ", words.of(slip) + meant(slip) + ".");
            }
            first = "Next";
        }
    }

    private String meant(Suspect.Slip slip) {
        return slip.looksLike().isEmpty() ? "" : ", so " + lengths.say(slip.corrected());
    }

    private Optional<Estimate> value(String figure) {
        return Optional.ofNullable(assessment.figures().get(figure)).map(FigureValue::estimate);
    }

    private String give(Estimate estimate) {
        return estimate instanceof Uncertain uncertain
                ? ", give or take " + lengths.give(uncertain.standardUncertainty())
                : "";
    }
}
