package quoin.json;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import quoin.clearance.SiteFacts;
import quoin.job.Choices;
import quoin.job.FigureValue;
import quoin.job.Heat;
import quoin.job.Job;
import quoin.job.OpeningFacts;
import quoin.job.PassFacts;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.measure.Instrument;
import quoin.measure.Shape;
import quoin.measure.Uncertain;
import quoin.opening.Finish;
import quoin.opening.Moving;
import quoin.opening.Obstacle;
import quoin.opening.Plane;
import quoin.opening.Reading;
import quoin.parts.Substrate;

/** Writes a job with its keys in a fixed order. Not safe for use by many threads. */
final class JobWriter {
    private static final double ROOT_THREE = StrictMath.sqrt(3);

    private final Out out = Out.pages();

    String write(Job job) {
        out.start();
        out.field("format", JobDocument.FORMAT);
        out.field("id", job.id());
        out.optional("place", job.place());
        out.optional("taken", job.taken());
        out.field("grade", job.grade() == Job.Grade.QUOTE ? "quote" : "survey");
        out.field("units", job.units());
        out.startObject("instruments");
        job.instruments().stream().sorted(Comparator.comparing(Instrument::id)).forEach(this::instrument);
        out.end();
        opening(job.opening());
        site(job.site());
        heat(job.heat());
        wayIn(job.wayIn());
        choose(job.choose());
        job.supply().ifPresent(supply -> {
            out.startObject("supply");
            out.field("kind", supply.kind());
            out.declared("voltage", supply.voltage());
            out.declared("cable", supply.cable());
            out.declared("cableLength", supply.cableLength());
            out.end();
        });
        if (!job.ordered().isEmpty()) {
            out.startObject("ordered");
            job.ordered().forEach(out::amount);
            out.end();
        }
        nominal(job);
        declared(job.declared());
        if (!job.carry().isEmpty()) {
            out.raw("carry", job.carry());
        }
        out.end();
        return out.text() + "\n";
    }

    private void nominal(Job job) {
        if (!Double.isNaN(job.nominalWidthMm()) || !Double.isNaN(job.nominalLengthMm())) {
            out.startObject("nominal");
            length("width", job.nominalWidthMm(), Dimension.LENGTH);
            length("length", job.nominalLengthMm(), Dimension.LENGTH);
            out.end();
        }
    }

    private void instrument(Instrument instrument) {
        out.startObject(instrument.id());
        out.field("kind", instrument.kind().name().toLowerCase(Locale.ROOT));
        instrument.accuracyClass().ifPresent(c -> out.field("accuracyClass", c.name()));
        if (instrument.end() != Instrument.End.UNSTATED) {
            out.field("end", instrument.end().name().toLowerCase(Locale.ROOT));
        }
        if (instrument.step() > 0) {
            out.amount("step", new Amount(instrument.step(), instrument.dimension()));
        }
        doubts("each", instrument.each());
        doubts("all", instrument.all());
        out.end();
    }

    private void doubts(String name, List<Doubt> doubts) {
        if (!doubts.isEmpty()) {
            out.array(name, doubts, Out::doubt);
        }
    }

    private void opening(OpeningFacts opening) {
        out.startObject("opening");
        out.field("fit", opening.fit());
        length("slope", opening.slopeRad(), Dimension.ANGLE);
        out.field("headTowards", opening.headTowards().text());
        out.field("markedOnSite", opening.markedOnSite());
        length("straightWithin", opening.straightWithinMm(), Dimension.LENGTH);
        finish(opening.finish());
        out.array("readings", opening.readings(), (o, reading) -> reading(reading));
        if (!opening.cannot().isEmpty()) {
            out.array("cannot", opening.cannot(), (o, cannot) -> {
                out.field("of", cannot.of().text());
                out.optional("because", cannot.because());
            });
        }
        if (!opening.sides().isEmpty()) {
            out.startObject("sides");
            opening.sides().forEach((side, substrate) -> {
                out.startObject(side.text());
                substrate(substrate);
                out.end();
            });
            out.end();
        }
        if (!opening.obstacles().isEmpty()) {
            out.array("obstacles", opening.obstacles(), (o, obstacle) -> obstacle(obstacle));
        }
        if (!opening.moving().isEmpty()) {
            out.array("moving", opening.moving(), (o, moving) -> moving(moving));
        }
        if (!opening.keepOuts().isEmpty()) {
            out.array("keepOut", opening.keepOuts(), (o, keep) -> {
                out.field("side", keep.side().text());
                length("from", keep.fromMm(), Dimension.LENGTH);
                length("to", keep.toMm(), Dimension.LENGTH);
                out.optional("because", keep.because());
            });
        }
        out.end();
    }

    /** A quantity only where it is stated. */
    private void length(String name, double value, Dimension dimension) {
        if (!Double.isNaN(value)) {
            out.amount(name, new Amount(value, dimension));
        }
    }

    private void finish(Finish finish) {
        if (finish.state() == Finish.State.UNSTATED) {
            return;
        }
        out.startObject("finish");
        out.field("state", finish.state() == Finish.State.BARE ? "bare" : "finished");
        if (!finish.still().isEmpty()) {
            out.startObject("still");
            finish.still().forEach((side, still) -> {
                out.startObject(side.text());
                length("value", still.mm(), Dimension.LENGTH);
                out.doubt(still.doubt());
                out.end();
            });
            out.end();
        }
        out.end();
    }

    private void reading(Reading reading) {
        out.optional("id", reading.id());
        out.field("of", reading.of().text());
        if (reading.in() == Plane.BACK) {
            out.field("in", "back");
        }
        Dimension dimension = reading.of().dimension();
        if (reading.values().size() == 1) {
            out.amount("read", new Amount(reading.values().get(0), dimension));
        } else {
            out.startArray("read");
            reading.values().forEach(value -> out.amount(new Amount(value, dimension)));
            out.endArray();
        }
        out.field("by", reading.by().id());
    }

    private void substrate(Substrate substrate) {
        out.field("substrate", substrate.kind().text());
        out.declared("thickness", substrate.thickness());
        out.declared("board", substrate.board());
        if (!substrate.timbers().isEmpty()) {
            out.array("timbers", substrate.timbers(), (o, timber) -> {
                length("at", timber.atMm(), Dimension.LENGTH);
                length("width", timber.widthMm(), Dimension.LENGTH);
                length("u", timber.uMm(), Dimension.LENGTH);
            });
        }
        out.optional("known", substrate.known());
        if (substrate.tested().size() > 1) {
            throw new IllegalArgumentException("a side must have one pull test or none in a document, got "
                    + substrate.tested().size());
        }
        substrate.tested().forEach(pull -> {
            out.startObject("pull");
            out.pull(pull);
            out.end();
        });
    }

    private void obstacle(Obstacle obstacle) {
        out.optional("name", obstacle.name());
        out.field("on", obstacle.on().text());
        two("along", obstacle.fromMm(), obstacle.toMm());
        length("out", obstacle.outMm(), Dimension.LENGTH);
        two("depth", obstacle.depthFromMm(), obstacle.depthToMm());
    }

    private void two(String name, double from, double to) {
        if (!Double.isNaN(from) && !Double.isNaN(to)) {
            out.startArray(name);
            out.amount(new Amount(from, Dimension.LENGTH));
            out.amount(new Amount(to, Dimension.LENGTH));
            out.endArray();
        }
    }

    private void moving(Moving moving) {
        out.optional("name", moving.name());
        out.field("hinge", moving.hinge().text());
        out.field("opens", moving.opens());
        length("swing", moving.swingRad(), Dimension.ANGLE);
        length("reach", moving.reachMm(), Dimension.LENGTH);
        out.field("mustWork", moving.mustWork());
    }

    private void site(SiteFacts site) {
        out.startObject("site");
        SiteFacts.ANSWERS.keySet().forEach(name -> out.field(name, site.get(name)));
        out.end();
    }

    private void heat(Heat heat) {
        if (heat.isStated()) {
            out.startObject("heat");
            length("measured", heat.measuredK(), Dimension.TEMPERATURE);
            length("from", heat.fromK(), Dimension.TEMPERATURE);
            length("to", heat.toK(), Dimension.TEMPERATURE);
            out.end();
        }
    }

    private void wayIn(PassFacts facts) {
        if (facts.isStated()) {
            out.startObject("wayIn");
            out.field("box", facts.box());
            length("thickness", facts.thicknessMm(), Dimension.LENGTH);
            length("depth", facts.depthMm(), Dimension.LENGTH);
            length("leftLip", facts.leftLipMm(), Dimension.LENGTH);
            length("rightLip", facts.rightLipMm(), Dimension.LENGTH);
            length("u", facts.uMm(), Dimension.LENGTH);
            length("play", facts.playMm(), Dimension.LENGTH);
            out.end();
        }
    }

    private void choose(Choices choose) {
        out.startObject("choose");
        out.startObject("rulebook");
        out.field("id", choose.rulebookId());
        out.optional("version", choose.rulebookVersion());
        out.optional("digest", choose.rulebookDigest());
        out.end();
        out.optional("parts", choose.partsId());
        choose.parts().forEach(out::field);
        if (!choose.rollerAt().isEmpty() || !choose.rollerDrive().isEmpty()) {
            out.startObject("roller");
            out.optional("at", choose.rollerAt());
            out.optional("drive", choose.rollerDrive());
            out.end();
        }
        if (!choose.cableLeaves().isEmpty()) {
            out.startObject("cable");
            out.field("leaves", choose.cableLeaves());
            out.end();
        }
        out.end();
    }

    private void declared(Map<String, FigureValue> declared) {
        out.objects("declared", declared, (o, figure) -> {
            out.amount("value", new Amount(figure.estimate().value(), figure.dimension()));
            if (figure.estimate() instanceof Uncertain u && u.standardUncertainty() > 0) {
                spread(u, Common.spread(figure.dimension()));
            }
        });
    }

    private void spread(Uncertain figure, Dimension dimension) {
        double u = figure.standardUncertainty();
        if (figure.influences().get(0).shape() == Shape.RECTANGULAR) {
            out.field("limits", AmountWriter.text(u * ROOT_THREE, dimension, value -> value / ROOT_THREE == u));
        } else {
            out.amount("u", new Amount(u, dimension));
        }
    }
}
