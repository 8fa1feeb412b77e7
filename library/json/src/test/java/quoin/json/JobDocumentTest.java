package quoin.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static quoin.json.Examples.changed;
import static quoin.json.Examples.job;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quoin.job.FigureValue;
import quoin.job.Job;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.measure.Instrument;
import quoin.measure.TapeClass;
import quoin.measure.Uncertain;
import quoin.opening.Finish;
import quoin.opening.HeadTowards;
import quoin.opening.Obstacle;
import quoin.opening.Plane;
import quoin.opening.Reading;
import quoin.opening.Side;
import quoin.parts.Declared;
import quoin.parts.Substrate;

/**
 * The values expected are read off the example of the format's description by eye. An angle is exact to the last digits of
 * pi / 180, hence 1e-15 rad.
 */
class JobDocumentTest {
    private final Job job = job(Examples.JOB);

    @Test
    void readsWhoAndWhere() {
        assertThat(job.id()).isEqualTo("reading-room-2");
        assertThat(job.place()).isEqualTo("Boathouse reading room, second roof opening");
        assertThat(job.taken()).isEqualTo("2026-11-02");
        assertThat(job.grade()).isEqualTo(Job.Grade.SURVEY);
        assertThat(job.units()).isEqualTo("mm");
        assertThat(job.site().get("role")).isEqualTo("light");
        assertThat(job.site().get("glassMakerAsked")).isEqualTo("unknown");
    }

    @Test
    void readsInstruments() {
        Instrument tape = Instrument.of("tape", Instrument.Kind.TAPE)
                .withEach(List.of(Doubt.standard(0.8, Dimension.LENGTH)))
                .withStep(1)
                .withAccuracyClass(TapeClass.II)
                .withEnd(Instrument.End.HOOK);
        Instrument laser = Instrument.of("laser", Instrument.Kind.LASER)
                .withEach(List.of(Doubt.expanded(1, 2, Dimension.LENGTH)))
                .withAll(List.of(Doubt.limits(1, Dimension.LENGTH)))
                .withStep(1);
        Instrument rule =
                Instrument.of("rule", Instrument.Kind.STATED).withEach(List.of(Doubt.standard(0.4, Dimension.LENGTH)));
        assertThat(job.instruments()).containsExactly(tape, laser, rule);
    }

    @Test
    void readsTheOpening() {
        assertThat(job.opening().fit()).isEqualTo("recess");
        assertThat(job.opening().slopeRad()).isCloseTo(Math.toRadians(12), within(1e-15));
        assertThat(job.opening().headTowards()).isEqualTo(HeadTowards.RIDGE);
        assertThat(job.opening().markedOnSite()).isTrue();
        assertThat(job.opening().straightWithinMm()).isEqualTo(2);
        assertThat(job.opening().finish()).isEqualTo(Finish.FINISHED);
        assertThat(job.opening().cannot()).singleElement().satisfies(cannot -> {
            assertThat(cannot.of().text()).isEqualTo("length@3/4");
            assertThat(cannot.because()).isEqualTo("chain opener in the way");
        });
    }

    @Test
    void readsReadings() {
        List<Reading> readings = job.opening().readings();
        assertThat(readings).hasSize(11);
        assertThat(readings.get(3).of().text()).isEqualTo("width@foot");
        assertThat(readings.get(3).values()).containsExactly(1503.0, 1504.0);
        assertThat(readings.get(9).in()).isEqualTo(Plane.BACK);
        assertThat(readings.get(10).by().id()).isEqualTo("rule");
    }

    @Test
    void readsWhatTheSidesAreMadeOf() {
        Map<Side, Substrate> sides = job.opening().sides();
        assertThat(sides.keySet()).containsExactly(Side.HEAD, Side.RIGHT, Side.FOOT, Side.LEFT);
        assertThat(sides.get(Side.HEAD).thickness().value()).isEqualTo(45);
        assertThat(sides.get(Side.LEFT).timbers()).containsExactly(new Substrate.Timber(100, 47, 5));
        assertThat(sides.get(Side.RIGHT).tested()).singleElement().satisfies(pull -> {
            assertThat(pull.value().value()).isEqualTo(180);
            assertThat(pull.value().basis()).isEqualTo(Declared.Basis.RECOMMENDED);
            assertThat(pull.value().source().ref()).isEqualTo("site pull test 3 of 3");
        });
    }

    @Test
    void readsWhatIsInTheWay() {
        assertThat(job.opening().obstacles()).containsExactly(new Obstacle("handle", Side.FOOT, 700, 820, 55, 30, 60));
        assertThat(job.opening().moving()).singleElement().satisfies(sash -> {
            assertThat(sash.hinge()).isEqualTo(Side.HEAD);
            assertThat(sash.swingRad()).isCloseTo(Math.PI / 2, within(1e-15));
            assertThat(sash.reachMm()).isEqualTo(410);
            assertThat(sash.mustWork()).isEqualTo("open");
        });
        assertThat(job.opening().keepOuts()).singleElement().satisfies(keepOut -> {
            assertThat(keepOut.fromMm()).isEqualTo(1180);
            assertThat(keepOut.because()).isEqualTo("cable entry");
        });
    }

    @Test
    void readsHeatSupplyAndChoices() {
        assertThat(job.heat().fromK()).isEqualTo(268.15);
        assertThat(job.supply()).hasValueSatisfying(supply -> {
            assertThat(supply.kind()).isEqualTo("mains");
            assertThat(supply.cable().value()).isEqualTo(1);
            assertThat(supply.cableLength().value()).isEqualTo(12_000);
        });
        assertThat(job.choose().rulebookVersion()).isEqualTo("1.2.0");
        assertThat(job.choose().parts()).containsExactly(Map.entry("fabric", "shade-a"), Map.entry("drive", "drive-m"));
        assertThat(job.choose().cableLeaves()).isEqualTo("right");
    }

    @Test
    void readsWhatIsOrderedDeclaredAndCarried() {
        assertThat(job.ordered()).containsExactly(Map.entry("frame.width", new Amount(1495, Dimension.LENGTH)));
        FigureValue headroom = job.declared().get("site.headroom");
        assertThat(headroom.dimension()).isEqualTo(Dimension.LENGTH);
        assertThat(headroom.estimate().value()).isEqualTo(2310);
        assertThat(((Uncertain) headroom.estimate()).standardUncertainty()).isEqualTo(5);
        assertThat(job.carry()).isEqualTo("{\"order\":\"any JSON up to 4 kB, handed through unread\"}");
    }

    @Test
    void whatIsWrittenReadsBackTheSame() {
        String written = JobDocument.write(job);
        assertThat(job(written)).isEqualTo(job);
        assertThat(JobDocument.write(job(written))).isEqualTo(written);
        assertThat(written).doesNotContain("\r").endsWith("}\n").contains("\n  \"id\": \"reading-room-2\",\n");
    }

    @Test
    void everyDemoJobReadsBackTheSame() {
        List<String> jobs = Examples.demo(JobDocument.FORMAT);
        assertThat(jobs).hasSizeGreaterThanOrEqualTo(4);
        for (String text : jobs) {
            assertThat(job(JobDocument.write(job(text)))).isEqualTo(job(text));
        }
    }

    @Test
    void readsAStream() throws IOException {
        assertThat(JobDocument.read(new ByteArrayInputStream(Examples.utf8(Examples.JOB)))
                        .value())
                .contains(job);
    }

    @Test
    void aMarkOfTheByteOrderIsNoMatter() {
        assertThat(job("\uFEFF" + Examples.JOB)).isEqualTo(job);
    }

    @Test
    void whatIsNotRequiredMayBeMissing() {
        Job small = job("""
                { "format": "quoin-job/1", "id": "a", "units": "in",
                  "instruments": { "t": { "kind": "tape", "accuracyClass": "II" } },
                  "opening": { "fit": "recess", "readings": [ { "of": "width@head", "read": "59 3/16 in", "by": "t" } ] },
                  "choose": { "rulebook": { "id": "b" } } }
                """);
        assertThat(small.opening().headTowards()).isEqualTo(HeadTowards.UNKNOWN);
        assertThat(small.opening().straightWithinMm()).isNaN();
        assertThat(small.opening().finish()).isEqualTo(Finish.UNSTATED);
        assertThat(small.grade()).isEqualTo(Job.Grade.SURVEY);
        assertThat(small.opening().readings().get(0).values()).containsExactly(1503.3625);
        assertThat(job(JobDocument.write(small))).isEqualTo(small);
    }

    @Test
    void aBareNumberIsInTheUnitsOfTheJob() {
        String inches = changed(Examples.JOB, "\"units\": \"mm\"", "\"units\": \"in\"")
                .replace("\"read\": 1503,", "\"read\": 59.25,")
                .replace("\"straightWithin\": \"2 mm\"", "\"straightWithin\": 0.125")
                .replace("\"each\": [ { \"u\": \"0.4 mm\" } ]", "\"step\": 0.0625, \"each\": [ { \"u\": 0.03125 } ]")
                .replace("\"ordered\": { \"frame.width\": \"1495 mm\" }", "\"ordered\": { \"frame.width\": 58.5 }")
                .replace("\"reach\": \"410 mm\"", "\"reach\": 16")
                .replace("[1503, 1504]", "[59, 59.5]")
                .replaceAll("\"read\": ([0-9]{4}),", "\"read\": \"$1 mm\",")
                .replace("\"read\": 142,", "\"read\": 5.5,");
        Job read = job(inches);
        assertThat(read.opening().readings().get(0).values()).containsExactly(1504.95);
        assertThat(read.opening().readings().get(3).values()).containsExactly(1498.6, 1511.3);
        assertThat(read.opening().straightWithinMm()).isEqualTo(3.175);
        assertThat(read.instruments().get(2).step()).isEqualTo(1.5875);
        assertThat(read.instruments().get(2).each()).containsExactly(Doubt.standard(0.79375, Dimension.LENGTH));
        assertThat(read.ordered().get("frame.width")).isEqualTo(new Amount(1485.9, Dimension.LENGTH));
        assertThat(read.opening().moving().get(0).reachMm()).isEqualTo(406.4);
        assertThat(job(JobDocument.write(read))).isEqualTo(read);
    }

    @Test
    void whatTheOpeningWasDrawnWith() {
        assertThat(job.nominalWidthMm()).isNaN();
        assertThat(job.nominalLengthMm()).isNaN();
        Job drawn = job(changed(Examples.JOB, "\"ordered\":", "\"nominal\": { \"width\": \"1.5 m\" }, \"ordered\":"));
        assertThat(drawn.nominalWidthMm()).isEqualTo(1500);
        assertThat(drawn.nominalLengthMm()).isNaN();
        assertThat(drawn).isNotEqualTo(job);
        assertThat(job(JobDocument.write(drawn))).isEqualTo(drawn);
    }

    @Test
    void aBareOpeningSaysWhatIsStillToCome() {
        Job bare = job(
                changed(
                        Examples.JOB,
                        "{ \"state\": \"finished\" }",
                        "{ \"state\": \"bare\", \"still\": { \"head\": { \"value\": \"15 mm\", \"limits\": \"1 mm\" }, \"left\": 12 } }"));
        assertThat(bare.opening().finish().still().get(Side.HEAD))
                .isEqualTo(new Finish.Still(15, Doubt.limits(1, Dimension.LENGTH)));
        assertThat(bare.opening().finish().still().get(Side.LEFT).mm()).isEqualTo(12);
        assertThat(job(JobDocument.write(bare))).isEqualTo(bare);
    }

    @Test
    void everyWayToStateADoubtReadsBack() {
        Job other = job(
                changed(
                        Examples.JOB,
                        "\"rule\":  { \"kind\": \"stated\", \"each\": [ { \"u\": \"0.4 mm\" } ] }",
                        "\"rule\": { \"kind\": \"stated\", \"each\": [ { \"u\": \"0.4 mm\" }, { \"u\": \"0.07 mm\", \"grows\": \"per-length\" } ],"
                                + " \"all\": [ { \"U\": \"0.3 mm\", \"k\": 1.96 }, { \"limits\": \"0.1 mm\", \"grows\": \"per-length\" } ] },"
                                + " \"bevel\": { \"kind\": \"stated\", \"step\": \"0.1 deg\", \"each\": [ { \"u\": \"0.05 deg\" } ] }"));
        assertThat(other.instruments().get(3).dimension()).isEqualTo(Dimension.ANGLE);
        assertThat(other.instruments().get(2).all().get(0).coverageFactor()).isEqualTo(1.96);
        assertThat(other.instruments().get(2).each().get(1).growth()).isEqualTo(Doubt.Growth.PER_LENGTH);
        assertThat(job(JobDocument.write(other))).isEqualTo(other);
    }

    @Test
    void declaredFiguresKeepTheirShape() {
        Job other = job(changed(
                Examples.JOB,
                "\"declared\": { \"site.headroom\": { \"value\": \"2.31 m\", \"u\": \"5 mm\" } }",
                "\"declared\": { \"own.a\": { \"value\": \"2.31 m\", \"limits\": \"5 mm\" }, \"own.b\": { \"value\": \"20 degC\","
                        + " \"U\": \"3 K\", \"k\": 2 }, \"own.c\": { \"value\": \"7 %\" }, \"own.d\": { \"value\": 12 },"
                        + " \"own.e\": { \"value\": \"3 m\", \"limits\": \"0.7 mm\", \"grows\": \"per-length\" } }"));
        assertThat(other.declared().get("own.b").estimate().value()).isEqualTo(293.15);
        assertThat(other.declared().get("own.c").estimate().value()).isEqualTo(0.07);
        assertThat(other.declared().get("own.d").dimension()).isEqualTo(Dimension.LENGTH);
        assertThat(((Uncertain) other.declared().get("own.b").estimate()).standardUncertainty())
                .isEqualTo(1.5);
        assertThat(job(JobDocument.write(other))).isEqualTo(other);
    }

    @Test
    void carryIsHandedThroughUnread() {
        String carried = "{\"a\":[1.50,1e2,-0,true,null,{}],\"q\\\"\":\"back\\\\slash \\u0007 é €\"}";
        Job other = job(
                changed(
                        Examples.JOB,
                        "\"carry\": { \"order\": \"any JSON up to 4 kB, handed through unread\" }",
                        "\"carry\": {\n  \"a\": [1.50, 1e2, -0, true, null, {}], \"q\\\"\": \"back\\\\slash \\u0007 é \\u20ac\" }"));
        assertThat(other.carry()).isEqualTo(carried);
        assertThat(job(JobDocument.write(other)).carry()).isEqualTo(carried);
    }
}
