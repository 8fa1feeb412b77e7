package quoin.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import quoin.clearance.SiteFacts;
import quoin.job.Choices;
import quoin.job.FigureValue;
import quoin.job.Heat;
import quoin.job.Job;
import quoin.job.OpeningFacts;
import quoin.job.PassFacts;
import quoin.judge.Source;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.measure.Influence;
import quoin.measure.Instrument;
import quoin.measure.Shape;
import quoin.measure.TapeClass;
import quoin.measure.Uncertain;
import quoin.opening.Cannot;
import quoin.opening.Corner;
import quoin.opening.Finish;
import quoin.opening.HeadTowards;
import quoin.opening.KeepOut;
import quoin.opening.Moving;
import quoin.opening.Obstacle;
import quoin.opening.Plane;
import quoin.opening.Reading;
import quoin.opening.Side;
import quoin.opening.Span;
import quoin.parts.Declared;
import quoin.parts.Drive;
import quoin.parts.Fabric;
import quoin.parts.Fastener;
import quoin.parts.Parts;
import quoin.parts.Profile;
import quoin.parts.Pull;
import quoin.parts.Substrate;
import quoin.parts.Supply;

/**
 * What is written reads back equal, bit for bit, whatever the numbers: jobs and parts lists of any doubles that the formats
 * allow, in every dimension.
 */
class RoundTripProperties {
    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void aJobReadsBackTheSame(@ForAll("jobs") Job job) {
        String written = JobDocument.write(job);
        Read<Job> read = JobDocument.read(Examples.utf8(written));
        assertThat(read.problems()).as(written).isEmpty();
        assertThat(read.value()).as(written).contains(job);
        assertThat(read.value().orElseThrow().digest()).isEqualTo(job.digest());
        assertThat(JobDocument.write(read.value().orElseThrow())).isEqualTo(written);
    }

    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void aPartsListReadsBackTheSame(@ForAll("lists") Parts parts) {
        String written = PartsDocument.write(parts);
        Read<Parts> read = PartsDocument.read(Examples.utf8(written));
        assertThat(read.problems().stream().filter(p -> !p.code().startsWith("hole")))
                .as(written)
                .isEmpty();
        assertThat(read.value()).as(written).contains(parts);
        assertThat(read.value().orElseThrow().digest()).isEqualTo(parts.digest());
    }

    // Lengths that a job may hold, in mm, with all their digits.
    private static Arbitrary<Double> lengths() {
        return Arbitraries.oneOf(
                Arbitraries.doubles().between(0.001, 50_000).ofScale(3),
                Arbitraries.longs()
                        .between(Double.doubleToLongBits(0.01), Double.doubleToLongBits(49_999.0))
                        .map(Double::longBitsToDouble));
    }

    private static Arbitrary<Double> positive(double least, double most) {
        return Arbitraries.longs()
                .between(Double.doubleToLongBits(least), Double.doubleToLongBits(most))
                .map(Double::longBitsToDouble);
    }

    private static Arbitrary<Double> orNaN(Arbitrary<Double> numbers) {
        return Arbitraries.oneOf(numbers, Arbitraries.just(Double.NaN));
    }

    private static Arbitrary<String> ids() {
        return Arbitraries.strings()
                .withCharRange('a', 'z')
                .numeric()
                .ofMinLength(1)
                .ofMaxLength(8);
    }

    private static Arbitrary<String> texts() {
        return Arbitraries.oneOf(
                Arbitraries.strings().ofMaxLength(12).filter(RoundTripProperties::isWhole),
                Arbitraries.of("", "chain opener", "\"quoted\" \\ / \u0001 \u2028", "Öffnung €", "😀"));
    }

    /** No half of a surrogate pair: UTF-8 cannot hold it. */
    private static boolean isWhole(String text) {
        return text.codePoints().noneMatch(c -> c >= 0xd800 && c <= 0xdfff);
    }

    private static Arbitrary<Doubt> doubts(Dimension dimension) {
        Arbitrary<Double> amounts = dimension == Dimension.ANGLE ? positive(1e-6, 0.1) : positive(1e-4, 100);
        Arbitrary<Doubt> fixed = Arbitraries.oneOf(
                amounts.map(u -> Doubt.standard(u, dimension)),
                amounts.map(a -> Doubt.limits(a, dimension)),
                Combinators.combine(amounts, positive(0.5, 5)).as((u, k) -> Doubt.expanded(u, k, dimension)));
        return dimension == Dimension.LENGTH ? Arbitraries.oneOf(fixed, fixed.map(Doubt::perLength)) : fixed;
    }

    private static Arbitrary<Instrument> instruments(String id) {
        Arbitrary<List<Doubt>> each =
                doubts(Dimension.LENGTH).list().ofMinSize(1).ofMaxSize(2);
        Arbitrary<List<Doubt>> all = doubts(Dimension.LENGTH).list().ofMaxSize(2);
        Arbitrary<Double> steps = Arbitraries.oneOf(Arbitraries.just(0.0), positive(0.01, 10));
        Arbitrary<Instrument> tapes = Combinators.combine(
                        each, all, steps, Arbitraries.of(TapeClass.values()), Arbitraries.of(Instrument.End.values()))
                .as((e, a, s, c, end) -> Instrument.of(id, Instrument.Kind.TAPE)
                        .withEach(e)
                        .withAll(a)
                        .withStep(s)
                        .withAccuracyClass(c)
                        .withEnd(end));
        Arbitrary<Instrument> others = Combinators.combine(
                        each, all, steps, Arbitraries.of(Instrument.Kind.LASER, Instrument.Kind.STATED))
                .as((e, a, s, kind) ->
                        Instrument.of(id, kind).withEach(e).withAll(a).withStep(s));
        return Arbitraries.oneOf(tapes, others);
    }

    private static Arbitrary<Instrument> bevels() {
        return doubts(Dimension.ANGLE)
                .list()
                .ofMinSize(1)
                .ofMaxSize(2)
                .map(each -> Instrument.of("bevel", Instrument.Kind.STATED).withEach(each));
    }

    private static Arbitrary<Span> spans() {
        return Arbitraries.of(
                        "width@head",
                        "width@1/4",
                        "width@0.3",
                        "width@600 mm",
                        "length@right",
                        "length@2/3",
                        "diagonal@head-right",
                        "cross@foot-left:head:1/3",
                        "check@head-left:600 mm:800 mm",
                        "bow@left:1/2",
                        "depth@middle",
                        "fall@foot")
                .map(Span::parse);
    }

    private static Arbitrary<Reading> readings(Instrument by) {
        Arbitrary<String> names = Arbitraries.oneOf(ids(), Arbitraries.just(""));
        return Combinators.combine(
                        names,
                        spans(),
                        Arbitraries.of(Plane.values()),
                        lengths().list().ofMinSize(1).ofMaxSize(3))
                .as((id, of, in, values) -> new Reading(id, of, in, values, by));
    }

    private static Arbitrary<Reading> angles(Instrument by) {
        return Combinators.combine(Arbitraries.of(Corner.values()), positive(0.1, 3.1))
                .as((corner, rad) -> new Reading("", new Span.Angle(corner), Plane.FRONT, List.of(rad), by));
    }

    private static Arbitrary<Declared> declared(Dimension dimension, double least, double most) {
        Arbitrary<Double> values = dimension == Dimension.TEMPERATURE
                ? Arbitraries.doubles().between(200, 400).ofScale(9)
                : positive(least, most);
        Arbitrary<Source> sources = Arbitraries.of(
                Source.UNSTATED,
                Source.PRACTICE,
                new Source(Source.Kind.TESTED, "test 7", "2026-02-28", ""),
                new Source(Source.Kind.DECLARED, "sheet", "", "2028-02-29"));
        Arbitrary<Declared> known = Combinators.combine(values, Arbitraries.of(Declared.Basis.values()), sources)
                .as((value, basis, source) -> new Declared(value, dimension, basis, source));
        return Arbitraries.frequencyOf(Tuple.of(4, known), Tuple.of(1, Arbitraries.just(Declared.unknown(dimension))));
    }

    private static Arbitrary<Declared> length() {
        return declared(Dimension.LENGTH, 0.01, 10_000);
    }

    private static Arbitrary<Pull> pulls() {
        return Combinators.combine(
                        declared(Dimension.FORCE, 1, 1e5).filter(Declared::isKnown),
                        Arbitraries.of(Substrate.Kind.values()),
                        length())
                .as(Pull::new);
    }

    private static Arbitrary<Substrate> substrates() {
        Arbitrary<Substrate.Timber> timbers = Combinators.combine(lengths(), lengths(), orNaN(positive(0.01, 900)))
                .as(Substrate.Timber::new);
        return Combinators.combine(
                        Arbitraries.of(Substrate.Kind.values()),
                        length(),
                        length(),
                        timbers.list().ofMaxSize(2),
                        texts(),
                        pulls().list().ofMaxSize(1))
                .as(Substrate::new);
    }

    private static Arbitrary<Finish> finishes() {
        Arbitrary<Finish.Still> still = Combinators.combine(positive(0.1, 900), doubts(Dimension.LENGTH))
                .as(Finish.Still::new);
        return Arbitraries.oneOf(
                Arbitraries.of(Finish.UNSTATED, Finish.FINISHED),
                Arbitraries.maps(Arbitraries.of(Side.values()), still)
                        .ofMaxSize(4)
                        .map(map -> new Finish(Finish.State.BARE, map)));
    }

    private static Arbitrary<OpeningFacts> openings(List<Instrument> by) {
        Arbitrary<List<Reading>> readings = Arbitraries.oneOf(
                        readings(by.get(0)), readings(by.get(1)), angles(by.get(2)))
                .list()
                .ofMaxSize(6);
        Arbitrary<List<Cannot>> cannot =
                Combinators.combine(spans(), texts()).as(Cannot::new).list().ofMaxSize(2);
        Arbitrary<Map<Side, Substrate>> sides =
                Arbitraries.maps(Arbitraries.of(Side.values()), substrates()).ofMaxSize(4);
        Arbitrary<Facts> facts = Combinators.combine(
                        orNaN(positive(0.001, 1.5)),
                        Arbitraries.of(HeadTowards.values()),
                        Arbitraries.of(true, false),
                        orNaN(positive(0.01, 100)),
                        finishes())
                .as(Facts::new);
        return Combinators.combine(facts, readings, cannot, sides, obstacles(), moving(), keepOuts())
                .as((f, r, c, s, o, m, k) -> new OpeningFacts(
                        "recess", f.slope(), f.head(), f.marked(), f.straight(), f.finish(), r, c, s, o, m, k));
    }

    private record Facts(double slope, HeadTowards head, boolean marked, double straight, Finish finish) {}

    private static Arbitrary<List<Obstacle>> obstacles() {
        return Combinators.combine(
                        texts(), Arbitraries.of(Side.values()), lengths(), lengths(), orNaN(lengths()), lengths())
                .as((name, on, a, b, out, depth) ->
                        new Obstacle(name, on, Math.min(a, b), Math.max(a, b), out, depth / 2, depth))
                .list()
                .ofMaxSize(2);
    }

    private static Arbitrary<List<Moving>> moving() {
        return Combinators.combine(
                        texts(),
                        Arbitraries.of(Side.values()),
                        Arbitraries.of("in", "out"),
                        orNaN(positive(0.01, 3)),
                        orNaN(lengths()),
                        Arbitraries.of("open", "closed", "both"))
                .as(Moving::new)
                .list()
                .ofMaxSize(2);
    }

    private static Arbitrary<List<KeepOut>> keepOuts() {
        return Combinators.combine(Arbitraries.of(Side.values()), lengths(), lengths(), texts())
                .as((side, a, b, because) -> new KeepOut(side, Math.min(a, b), Math.max(a, b), because))
                .list()
                .ofMaxSize(2);
    }

    private static Arbitrary<SiteFacts> sites() {
        return Arbitraries.of("light", "escape", "smoke", "access", "unknown")
                .flatMap(role -> Arbitraries.of("none", "ladder", "tower", "unknown")
                        .map(platform -> SiteFacts.of(Map.of("role", role, "platform", platform))));
    }

    private static Arbitrary<Choices> choices() {
        Arbitrary<Map<String, String>> parts = Arbitraries.maps(Arbitraries.of(Parts.CHOICES), ids())
                .ofMaxSize(4)
                .map(RoundTripProperties::inOrder);
        Arbitrary<String> versions = Arbitraries.of("", "1.2.0");
        Arbitrary<String> digests = Arbitraries.of("", "sha256:" + "0a".repeat(32));
        Arbitrary<String> ends = Arbitraries.of("", "left", "right");
        return Combinators.combine(
                        ids(), versions, digests, ids(), parts, Arbitraries.of("", "head", "foot"), ends, ends)
                .as(Choices::new);
    }

    private static Map<String, String> inOrder(Map<String, String> chosen) {
        Map<String, String> ordered = new LinkedHashMap<>();
        Parts.CHOICES.stream().filter(chosen::containsKey).forEach(kind -> ordered.put(kind, chosen.get(kind)));
        return ordered;
    }

    private static Arbitrary<Map<String, FigureValue>> figures() {
        Arbitrary<FigureValue> values = Combinators.combine(
                        Arbitraries.of(
                                Dimension.LENGTH,
                                Dimension.ANGLE,
                                Dimension.TEMPERATURE,
                                Dimension.FORCE,
                                Dimension.TORQUE,
                                Dimension.TURNING_SPEED,
                                Dimension.AREA_MASS,
                                Dimension.LINE_MASS,
                                Dimension.LINE_FORCE,
                                Dimension.PER_KELVIN,
                                Dimension.RATIO),
                        positive(1e-6, 1000))
                .as(Figure::new)
                .map(f -> new FigureValue(Uncertain.exact(f.reachable()), f.dimension()));
        return Arbitraries.maps(ids().map(id -> "own." + id), values).ofMaxSize(3);
    }

    private record Figure(Dimension dimension, double value) {
        /** Of a size that documents allow; near absolute zero a text in degC cannot tell neighbouring doubles apart. */
        double reachable() {
            return switch (dimension) {
                case TEMPERATURE -> 200 + value / 10;
                case AREA_MASS, LINE_MASS -> value * 1e-6;
                case ANGLE -> value / 200;
                default -> value;
            };
        }
    }

    private static Arbitrary<Map<String, FigureValue>> doubtedFigures() {
        return Combinators.combine(
                        ids().map(id -> "site." + id),
                        positive(0.1, 5000),
                        positive(1e-4, 100),
                        Arbitraries.of(true, false))
                .as((id, value, size, limits) -> {
                    Influence influence = limits
                            ? new Influence(
                                    "declared/" + id,
                                    Shape.RECTANGULAR,
                                    size / StrictMath.sqrt(3),
                                    Double.POSITIVE_INFINITY,
                                    "")
                            : new Influence("declared/" + id, Shape.NORMAL, size, Double.POSITIVE_INFINITY, "");
                    return Map.of(id, new FigureValue(Uncertain.of(value, influence), Dimension.LENGTH));
                });
    }

    @Provide
    Arbitrary<Job> jobs() {
        Arbitrary<List<Instrument>> by = Combinators.combine(instruments("a"), instruments("b"), bevels())
                .as((a, b, c) -> List.of(a, b, c));
        return by.flatMap(list -> Combinators.combine(
                        ids(),
                        openings(list),
                        choices(),
                        texts(),
                        Arbitraries.of("", "2026-11-02", "2024-02-29"),
                        Arbitraries.of("mm", "in"),
                        sites(),
                        extras())
                .as((id, opening, choose, place, taken, units, site, extra) -> {
                    Job.Builder job = Job.named(id, opening, choose)
                            .place(place)
                            .taken(taken)
                            .units(units)
                            .grade(extra.grade())
                            .instruments(list)
                            .site(site)
                            .heat(extra.heat())
                            .wayIn(wayIn(extra))
                            .ordered(extra.ordered())
                            .nominal(extra.nominalWidth(), extra.nominalLength())
                            .declared(extra.declared())
                            .carry(extra.carry());
                    extra.supply().forEach(job::supply);
                    return job.build();
                }));
    }

    /** Measures of a way in for every other drawn job: taken from its other drawn numbers. */
    private static PassFacts wayIn(Extra extra) {
        double depth = extra.nominalLength();
        return Double.isNaN(extra.nominalWidth())
                ? PassFacts.UNSTATED
                : new PassFacts(
                        "headbox.length", extra.nominalWidth(), depth, depth, 0, Double.NaN, extra.nominalWidth());
    }

    private record Extra(
            Job.Grade grade,
            Heat heat,
            List<Supply> supply,
            Map<String, Amount> ordered,
            Map<String, FigureValue> declared,
            String carry,
            double nominalWidth,
            double nominalLength) {}

    private static Arbitrary<Extra> extras() {
        Arbitrary<Double> kelvin = orNaN(Arbitraries.doubles().between(200, 400).ofScale(10));
        Arbitrary<Heat> heats = Combinators.combine(kelvin, kelvin, kelvin).as(Heat::new);
        Arbitrary<Supply> supplies = Combinators.combine(
                        Arbitraries.of("mains", "low-voltage", "battery"),
                        declared(Dimension.VOLTAGE, 1, 1000),
                        declared(Dimension.AREA, 0.1, 100),
                        length())
                .as(Supply::new);
        Arbitrary<Map<String, Amount>> ordered = Arbitraries.maps(
                        ids(), lengths().map(mm -> new Amount(mm, Dimension.LENGTH)))
                .ofMaxSize(2);
        return Combinators.combine(
                        Arbitraries.of(Job.Grade.values()),
                        heats,
                        supplies.list().ofMaxSize(1),
                        ordered,
                        Arbitraries.oneOf(figures(), doubtedFigures()),
                        Arbitraries.of("", "{}", "[1.50,\"a\"]", "null", "{\"a\":{\"b\":[true,1e5]}}"),
                        orNaN(positive(0.01, 50_000)),
                        orNaN(positive(0.01, 50_000)))
                .as(Extra::new);
    }

    @Provide
    Arbitrary<Parts> lists() {
        return Combinators.combine(
                        ids(),
                        fabrics().list().ofMaxSize(2),
                        drives().list().ofMaxSize(2),
                        profiles().list().ofMaxSize(2),
                        fasteners().list().ofMaxSize(2))
                .as((id, fabrics, drives, profiles, fasteners) -> Parts.of(
                        id,
                        "1.0.0",
                        distinct(fabrics.stream()
                                .map(f -> new Named<>(f.id(), f))
                                .toList()),
                        distinct(
                                drives.stream().map(f -> new Named<>(f.id(), f)).toList()),
                        distinct(profiles.stream()
                                .map(f -> new Named<>(f.id(), f))
                                .toList()),
                        distinct(fasteners.stream()
                                .map(f -> new Named<>(f.id(), f))
                                .toList())));
    }

    private record Named<T>(String id, T part) {}

    private static <T> List<T> distinct(List<Named<T>> parts) {
        Map<String, T> byId = new LinkedHashMap<>();
        parts.forEach(named -> byId.putIfAbsent(named.id(), named.part()));
        return new ArrayList<>(byId.values());
    }

    private static Arbitrary<Fabric> fabrics() {
        return Combinators.combine(
                        ids(),
                        declared(Dimension.AREA_MASS, 1e-8, 1e-5),
                        length(),
                        length(),
                        Arbitraries.of(true, false))
                .as(Fabric::new);
    }

    private static Arbitrary<Drive> drives() {
        return Combinators.combine(
                        ids(),
                        declared(Dimension.TORQUE, 10, 1e6),
                        declared(Dimension.TURNING_SPEED, 0.01, 100),
                        declared(Dimension.TIME, 1, 1e5),
                        declared(Dimension.RATIO, 1, 1000),
                        declared(Dimension.VOLTAGE, 1, 1000),
                        declared(Dimension.CURRENT, 0.01, 100),
                        declared(Dimension.TEMPERATURE, 200, 400))
                .as(Drive::new);
    }

    private static Arbitrary<Profile> profiles() {
        return Combinators.combine(
                        ids(),
                        declared(Dimension.LINE_MASS, 1e-5, 0.1),
                        length().filter(Declared::isKnown).list().ofMaxSize(3),
                        declared(Dimension.PER_KELVIN, 1e-7, 1e-3))
                .as(Profile::new);
    }

    private static Arbitrary<Fastener> fasteners() {
        return Combinators.combine(
                        ids(),
                        length(),
                        length(),
                        length(),
                        length(),
                        pulls().list().ofMaxSize(1))
                .as(Fastener::new);
    }
}
