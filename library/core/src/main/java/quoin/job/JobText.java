package quoin.job;

import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import quoin.clearance.SiteFacts;
import quoin.measure.Doubt;
import quoin.measure.Estimate;
import quoin.measure.Extreme;
import quoin.measure.Influence;
import quoin.measure.Instrument;
import quoin.measure.Uncertain;
import quoin.opening.Finish;
import quoin.opening.Reading;
import quoin.parts.CanonicalText;
import quoin.parts.Declared;
import quoin.parts.Substrate;

/**
 * The canonical text of a job: every field that an answer can hang on, in a fixed order. Readings keep their order, since
 * answers list them in it; instruments, sides, choices, ordered and declared figures are sets by name and are sorted. The unit
 * of bare numbers is a way of writing and leaves no trace.
 */
final class JobText {
    private final CanonicalText text = CanonicalText.of("quoin-job/1");

    private JobText() {}

    static CanonicalText of(Job job) {
        JobText writer = new JobText();
        writer.text
                .text("id", job.id())
                .text("place", job.place())
                .text("taken", job.taken())
                .text("grade", job.grade().name());
        job.instrumentsByName().forEach(writer::instrument);
        writer.opening(job);
        SiteFacts.ANSWERS
                .keySet()
                .forEach(fact -> writer.text.text(fact, job.site().get(fact)));
        writer.heat(job.heat());
        if (job.wayIn().isStated()) {
            writer.wayIn(job.wayIn());
        }
        writer.choose(job.choose());
        job.supply()
                .ifPresent(supply -> writer.text
                        .open("supply")
                        .text("kind", supply.kind())
                        .declared("voltage", supply.voltage())
                        .declared("cable", supply.cable())
                        .declared("cableLength", supply.cableLength())
                        .close());
        job.ordered()
                .forEach((size, amount) -> writer.text
                        .open("ordered")
                        .text("size", size)
                        .amount("amount", amount)
                        .close());
        job.declared().forEach(writer::declared);
        return writer.text
                .number("nominal.width", job.nominalWidthMm())
                .number("nominal.length", job.nominalLengthMm())
                .text("carry", job.carry());
    }

    private void instrument(Instrument instrument) {
        text.open("instrument")
                .text("id", instrument.id())
                .text("kind", instrument.kind().name())
                .text("dimension", instrument.dimension().name())
                .text("class", instrument.accuracyClass().map(Enum::name).orElse(""))
                .text("end", instrument.end().name())
                .number("step", instrument.step());
        instrument.each().forEach(doubt -> doubt("each", doubt));
        instrument.all().forEach(doubt -> doubt("all", doubt));
        text.close();
    }

    private void doubt(String name, Doubt doubt) {
        text.open(name)
                .number(doubt.statement().name(), doubt.amount())
                .number("k", doubt.coverageFactor())
                .text("grows", doubt.growth().name())
                .text("dimension", doubt.dimension().name())
                .close();
    }

    private void opening(Job job) {
        OpeningFacts opening = job.opening();
        text.open("opening")
                .text("fit", opening.fit())
                .number("slope", opening.slopeRad())
                .text("headTowards", opening.headTowards().text())
                .text("markedOnSite", Boolean.toString(opening.markedOnSite()))
                .number("straightWithin", opening.straightWithinMm());
        finish(opening.finish());
        opening.readings().forEach(reading -> reading(reading, job.instruments()));
        opening.cannot()
                .forEach(cannot -> text.open("cannot")
                        .text("of", cannot.of().text())
                        .text("because", cannot.because())
                        .close());
        opening.sides().forEach((side, substrate) -> side(side.text(), substrate));
        opening.obstacles()
                .forEach(obstacle -> text.open("obstacle")
                        .text("name", obstacle.name())
                        .text("on", obstacle.on().text())
                        .number("from", obstacle.fromMm())
                        .number("to", obstacle.toMm())
                        .number("out", obstacle.outMm())
                        .number("depthFrom", obstacle.depthFromMm())
                        .number("depthTo", obstacle.depthToMm())
                        .close());
        opening.moving()
                .forEach(moving -> text.open("moving")
                        .text("name", moving.name())
                        .text("hinge", moving.hinge().text())
                        .text("opens", moving.opens())
                        .number("swing", moving.swingRad())
                        .number("reach", moving.reachMm())
                        .text("mustWork", moving.mustWork())
                        .close());
        opening.keepOuts()
                .forEach(keep -> text.open("keepOut")
                        .text("side", keep.side().text())
                        .number("from", keep.fromMm())
                        .number("to", keep.toMm())
                        .text("because", keep.because())
                        .close());
        text.close();
    }

    private void finish(Finish finish) {
        text.open("finish").text("state", finish.state().name());
        finish.still().forEach((side, still) -> {
            text.open("still").text("side", side.text()).number("value", still.mm());
            doubt("doubt", still.doubt());
            text.close();
        });
        text.close();
    }

    private void reading(Reading reading, List<Instrument> known) {
        text.open("reading")
                .text("id", reading.id())
                .text("of", reading.of().text())
                .text("in", reading.in().text());
        reading.values().forEach(value -> text.number("read", value));
        if (known.contains(reading.by())) {
            text.text("by", reading.by().id());
        } else {
            instrument(reading.by());
        }
        text.close();
    }

    private void side(String name, Substrate substrate) {
        text.open("side")
                .text("side", name)
                .text("substrate", substrate.kind().text())
                .declared("thickness", substrate.thickness())
                .declared("board", substrate.board());
        substrate
                .timbers()
                .forEach(timber -> text.open("timber")
                        .number("at", timber.atMm())
                        .number("width", timber.widthMm())
                        .number("u", timber.uMm())
                        .close());
        text.text("known", substrate.known());
        substrate.tested().forEach(pull -> {
            Declared depth = pull.depth();
            text.open("pull")
                    .declared("value", pull.value())
                    .text("in", pull.in().text())
                    .declared("depth", depth)
                    .close();
        });
        text.close();
    }

    private void heat(Heat heat) {
        text.open("heat")
                .number("measured", heat.measuredK())
                .number("from", heat.fromK())
                .number("to", heat.toK())
                .close();
    }

    private void wayIn(PassFacts facts) {
        text.open("wayIn")
                .text("box", facts.box())
                .number("thickness", facts.thicknessMm())
                .number("depth", facts.depthMm())
                .number("leftLip", facts.leftLipMm())
                .number("rightLip", facts.rightLipMm())
                .number("u", facts.uMm())
                .number("play", facts.playMm())
                .close();
    }

    private void choose(Choices choose) {
        text.open("choose")
                .text("rulebook", choose.rulebookId())
                .text("version", choose.rulebookVersion())
                .text("digest", choose.rulebookDigest())
                .text("parts", choose.partsId());
        new TreeMap<>(choose.parts())
                .forEach((kind, part) ->
                        text.open("part").text("kind", kind).text("id", part).close());
        text.text("roller.at", choose.rollerAt())
                .text("roller.drive", choose.rollerDrive())
                .text("cable.leaves", choose.cableLeaves())
                .close();
    }

    private void declared(String id, FigureValue figure) {
        text.open("declared")
                .text("id", id)
                .text("dimension", figure.dimension().name());
        estimate(figure.estimate());
        text.close();
    }

    private void estimate(Estimate estimate) {
        if (estimate instanceof Uncertain uncertain) {
            uncertain(uncertain);
        } else if (estimate instanceof Extreme extreme) {
            text.open(extreme.kind().name());
            extreme.parts().forEach(part -> {
                text.open("of");
                part.names().forEach(name -> text.text("name", name));
                uncertain(part.value());
                text.close();
            });
            text.close();
        }
    }

    private void uncertain(Uncertain number) {
        text.number("value", number.value());
        List<Influence> influences = number.influences().asList();
        influences.stream()
                .sorted(Comparator.comparing(Influence::id))
                .forEach(influence -> text.open("influence")
                        .text("id", influence.id())
                        .text("shape", influence.shape().name())
                        .number("u", influence.standardUncertainty())
                        .number("dof", influence.degreesOfFreedom())
                        .text("group", influence.group())
                        .number("ratio", influence.ratio())
                        .number("sensitivity", number.sensitivity(influence))
                        .close());
    }
}
