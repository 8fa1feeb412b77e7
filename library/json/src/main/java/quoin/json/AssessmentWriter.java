package quoin.json;

import java.util.List;
import quoin.job.AdjustmentReport;
import quoin.job.Assessment;
import quoin.job.FigureValue;
import quoin.job.Order;
import quoin.job.Receipt;
import quoin.job.Shape;
import quoin.job.SideHoles;
import quoin.job.SidePacker;
import quoin.judge.Caution;
import quoin.judge.Finding;
import quoin.judge.Margin;
import quoin.judge.Retake;
import quoin.judge.Step;
import quoin.measure.DegreesOfFreedom;
import quoin.measure.Dimension;
import quoin.measure.Extreme;
import quoin.measure.Uncertain;
import quoin.opening.AdjustedReading;
import quoin.opening.Plane;
import quoin.opening.PlaneTest;
import quoin.opening.Suspect;
import quoin.rulebook.Size;

/** Writes an assessment as the answer. Not safe for use by many threads. */
final class AssessmentWriter {
    private static final double TO_DEGREES = 180 / Math.PI;

    private final Assessment assessment;
    private final Out out = Out.line();

    AssessmentWriter(Assessment assessment) {
        this.assessment = assessment;
    }

    String write() {
        out.start();
        out.field("format", AssessmentDocument.FORMAT);
        Receipt receipt = assessment.receipt();
        out.field("job", assessment.job().id());
        out.field("jobDigest", receipt.job());
        out.field("library", receipt.library());
        out.field("semantics", receipt.semantics());
        out.startObject("rulebook");
        out.field("id", assessment.rulebook().id());
        out.field("version", assessment.rulebook().version());
        out.field("digest", receipt.rulebook());
        out.end();
        parts(receipt.parts());
        out.field("verdict", assessment.verdict().text());
        assessment.probability().ifPresent(p -> out.field("probability", p));
        survey();
        assessment.shape().ifPresent(this::opening);
        adjustment(assessment.adjustment());
        out.startObject("figures");
        assessment.figures().forEach(this::figure);
        out.end();
        out.startObject("sizes");
        assessment.sizes().all().forEach(this::size);
        out.end();
        assessment.order().ifPresent(this::order);
        out.array("findings", assessment.findings(), (o, finding) -> finding(finding));
        empty("cutList");
        out.array("setOut", assessment.setOut(), (o, side) -> setOut(side));
        out.array("packers", assessment.packers(), (o, packer) -> packer(packer));
        out.array("cautions", assessment.cautions(), (o, caution) -> caution(caution));
        out.texts("notChecked", assessment.notChecked());
        out.array("problems", assessment.problems(), AssessmentDocument::problem);
        out.raw("carry", assessment.carry().isEmpty() ? "{}" : assessment.carry());
        out.end();
        return out.text();
    }

    private void empty(String name) {
        out.startArray(name);
        out.endArray();
    }

    private void setOut(SideHoles holes) {
        out.field("side", holes.side().text());
        out.field("on", "frame");
        out.field("from", holes.side().from().text());
        out.field("unit", "mm");
        numbers("at", holes.holes().atMm());
        numbers("inOpening", holes.inOpeningMm());
        out.field("edge", holes.edgeMm());
        out.field("fastener", holes.fastener());
        out.startObject("proof");
        out.field("least", holes.holes().atMm().size());
        out.startObject("because");
        out.field("code", "farthest-reach");
        out.startObject("args");
        numbers("farthest", holes.holes().farthestMm());
        out.end();
        out.end();
        out.end();
    }

    private void packer(SidePacker packed) {
        out.field("side", packed.side().text());
        out.field("at", packed.packer().alongMm());
        out.field("thickness", packed.packer().thicknessMm());
        out.field("left", packed.packer().left().value());
        out.field("unit", "mm");
    }

    private void numbers(String name, List<Double> numbers) {
        out.startArray(name);
        numbers.forEach(out::number);
        out.endArray();
    }

    private void parts(String digest) {
        if (assessment.parts().id().isEmpty()) {
            return;
        }
        out.startObject("parts");
        out.field("id", assessment.parts().id());
        out.field("version", assessment.parts().version());
        out.field("digest", digest);
        out.end();
    }

    private void survey() {
        out.startObject("survey");
        out.field("complete", assessment.survey().complete());
        out.texts("missing", assessment.survey().missing());
        assessment.survey().next().ifPresent(next -> {
            out.startObject("next");
            out.field("of", next.of());
            out.optional("in", next.in() == Plane.BACK ? Plane.BACK.text() : "");
            out.optional("by", next.by());
            out.startObject("because");
            out.field("code", next.because().code());
            out.args(next.because().args());
            out.end();
            out.end();
        });
        out.end();
    }

    private void opening(Shape shape) {
        out.startObject("opening");
        out.startObject("corners");
        shape.corners().forEach((corner, at) -> point(corner.text(), at));
        out.end();
        shape.placed().ifPresent(placed -> {
            out.startObject("placed");
            point("at", placed.at());
            out.field("turned", placed.turnedRad() * TO_DEGREES);
            out.end();
        });
        out.end();
    }

    private void point(String name, Shape.Point at) {
        out.startArray(name);
        out.number(at.x());
        out.number(at.y());
        out.endArray();
    }

    private void adjustment(AdjustmentReport report) {
        out.startObject("adjustment");
        out.field("redundancy", report.redundancy());
        out.optional("statistic", report.statistic());
        out.field("accepted", report.accepted());
        out.array("readings", report.readings(), (o, reading) -> reading(reading));
        out.array("suspects", report.suspects(), (o, suspect) -> suspect(suspect));
        out.startObject("planes");
        report.planes().forEach(this::plane);
        out.end();
        out.end();
    }

    private void plane(PlaneTest plane) {
        out.startObject(plane.plane());
        out.field("redundancy", plane.redundancy());
        out.optional("statistic", plane.statistic());
        out.field("accepted", plane.isAccepted());
        out.array("readings", plane.readings(), (o, reading) -> reading(reading));
        out.end();
    }

    /** Angles are answered in degrees. */
    private static double answer(String of, double value) {
        return of.startsWith("angle@") ? value * TO_DEGREES : value;
    }

    /** What an entry with a name of its own is of. */
    private String placeOf(String name) {
        for (AdjustedReading reading : assessment.adjustment().readings()) {
            if (reading.name().equals(name)) {
                return reading.of();
            }
        }
        return name;
    }

    private void reading(AdjustedReading reading) {
        out.field("of", reading.of());
        if (!reading.name().equals(reading.of())) {
            out.field("id", reading.name());
        }
        out.optional("residual", answer(reading.of(), reading.residual()));
        out.optional("w", reading.w());
        out.optional("detectable", answer(reading.of(), reading.detectable()));
        AdjustedReading.Effect effect = reading.effect();
        if (Double.isFinite(reading.detectable()) && !Double.isNaN(effect.widthMm())) {
            out.startObject("effect");
            out.field("width", effect.widthMm());
            out.field("length", effect.lengthMm());
            out.field("angle", effect.angleRad() * TO_DEGREES);
            out.end();
        }
    }

    private void suspect(Suspect suspect) {
        out.texts("readings", suspect.readings());
        out.array("slips", suspect.slips(), (o, slip) -> {
            out.field("reading", slip.reading());
            out.optional("by", answer(placeOf(slip.reading()), slip.by()));
            out.optional("looksLike", slip.looksLike());
            out.optional("corrected", answer(placeOf(slip.reading()), slip.corrected()));
        });
        out.field("askFor", suspect.askFor());
    }

    private void figure(String id, FigureValue figure) {
        Dimension dimension = figure.dimension();
        out.startObject(id);
        out.field("value", dimension.toAnswer(figure.estimate().value()));
        if (figure.estimate() instanceof Uncertain u) {
            out.field("u", dimension.widthToAnswer(u.standardUncertainty()));
        }
        out.field("unit", dimension.answerUnit());
        if (figure.estimate() instanceof Uncertain u) {
            DegreesOfFreedom.of(u).ifPresent(this::degreesOfFreedom);
        }
        if (figure.estimate() instanceof Extreme extreme) {
            String name = switch (extreme.kind()) {
                case LEAST -> "leastOf";
                case GREATEST -> "greatestOf";
                case LARGEST_IN_SIZE -> "largestOf";
            };
            out.startArray(name);
            extreme.parts().forEach(part -> {
                out.startArray();
                part.names().forEach(out::string);
                out.endArray();
            });
            out.endArray();
        }
        out.end();
    }

    private void degreesOfFreedom(double nu) {
        if (nu == Double.POSITIVE_INFINITY) {
            out.field("dof", "infinite");
        } else {
            out.field("dof", nu);
        }
    }

    private void size(Size size) {
        out.startObject(size.id());
        out.field("value", size.dimension().toAnswer(size.value()));
        out.field("unit", size.dimension().answerUnit());
        if (size.within() > 0) {
            out.field("within", size.within());
        }
        steps(size.steps());
        out.end();
    }

    private void order(Order order) {
        out.startObject("order");
        out.startObject("made");
        out.field("width", order.widthMm());
        out.field("length", order.lengthMm());
        out.end();
        out.field("note", "made-size");
        out.optional("roller", order.roller());
        out.optional("drive", order.drive());
        out.optional("cable", order.cable());
        out.end();
    }

    private void finding(Finding finding) {
        out.field("clause", finding.clause());
        out.optional("figure", finding.figure());
        out.field("verdict", finding.verdict().text());
        finding.reason().ifPresent(reason -> out.field("reason", reason.text()));
        finding.odds().ifPresent(odds -> {
            out.field("probability", odds.value());
            out.field("prior", "flat");
            out.field("method", odds.method().text());
        });
        finding.margin().ifPresent(this::margin);
        steps(finding.steps());
        if (!finding.retakes().isEmpty()) {
            out.array("retake", finding.retakes(), (o, retake) -> retake(retake));
        }
        if (!finding.cautions().isEmpty()) {
            out.array("cautions", finding.cautions(), (o, caution) -> caution(caution));
        }
    }

    private void margin(Margin margin) {
        out.startObject("margin");
        out.optional("value", margin.dimension().widthToAnswer(margin.value()));
        out.optional("u", margin.dimension().widthToAnswer(margin.u()));
        out.field("unit", Common.spread(margin.dimension()).answerUnit());
        out.field("against", margin.against());
        out.end();
    }

    private void steps(List<Step> steps) {
        if (steps.isEmpty()) {
            return;
        }
        out.array("steps", steps, (o, step) -> {
            out.field("code", step.code());
            out.args(step.args());
            out.source(step.source());
        });
    }

    private void retake(Retake retake) {
        out.texts("readings", retake.readings());
        out.optional("by", retake.by());
        out.field("times", retake.times());
        out.optional("u", answer(placeOf(retake.readings().get(0)), retake.u()));
        out.optional("settles", retake.settles());
    }

    private void caution(Caution caution) {
        out.field("code", caution.code());
        out.field("severity", caution.severity().text());
        if (!caution.args().asMap().isEmpty()) {
            out.args(caution.args());
        }
    }
}
