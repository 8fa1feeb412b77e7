package quoin.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
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
import quoin.measure.Influence;
import quoin.measure.Instrument;
import quoin.measure.TapeClass;
import quoin.measure.Uncertain;
import quoin.parts.Declared;
import quoin.parts.Parts;
import quoin.parts.Supply;

/** Turns the fields of a job document into a job. Not safe for use by many threads. */
final class JobReader {
    private static final int LONGEST_CARRY = 4096;

    private final Fields in;

    JobReader(Fields in) {
        this.in = in;
    }

    Optional<Job> job() {
        in.format(JobDocument.FORMAT);
        String id = in.id("id");
        String place = in.text("place", "");
        String taken = Common.date(in, "taken");
        String grade = in.oneOf("grade", List.of("survey", "quote"), "survey");
        in.require("units", "mm, in");
        String units = in.oneOf("units", List.of("mm", "in"), "mm");
        in.require("instruments", "an object of instruments by name");
        in.bareNumbersIn(units);
        Map<String, Instrument> instruments = in.named("instruments", JobReader::instrument);
        List<String> names = in.find("instruments")
                .map(Node::fields)
                .map(Map::keySet)
                .map(List::copyOf)
                .orElse(List.of());
        in.require("opening", "an object");
        Optional<OpeningFacts> opening =
                in.object("opening", fields -> new OpeningReader(fields, names, instruments).opening());
        Optional<SiteFacts> site = in.object("site", JobReader::site);
        Optional<Heat> heat = in.object("heat", JobReader::heat);
        Optional<PassFacts> wayIn = in.object("wayIn", JobReader::wayIn);
        in.require("choose", "an object with a rulebook");
        Optional<Choices> choose = in.object("choose", JobReader::choose);
        Optional<Supply> supply = in.object("supply", JobReader::supply);
        Map<String, Amount> ordered = ordered();
        double[] nominal = nominal();
        Map<String, FigureValue> declared = declared();
        String carry = carry();
        if (id.isEmpty() || opening.isEmpty() || choose.isEmpty()) {
            return Optional.empty();
        }
        Job.Builder job = Job.named(id, opening.get(), choose.get())
                .place(place)
                .taken(taken)
                .grade(grade.equals("quote") ? Job.Grade.QUOTE : Job.Grade.SURVEY)
                .units(units)
                .instruments(List.copyOf(instruments.values()))
                .ordered(ordered)
                .nominal(nominal[0], nominal[1])
                .declared(declared)
                .carry(carry);
        site.ifPresent(job::site);
        heat.ifPresent(job::heat);
        wayIn.ifPresent(job::wayIn);
        supply.ifPresent(job::supply);
        return Optional.of(job.build());
    }

    private static Optional<Instrument> instrument(String id, Fields in) {
        in.require("kind", "tape, laser, stated");
        String kind = in.oneOf("kind", List.of("tape", "laser", "stated"), "stated");
        String tapeClass = in.oneOf("accuracyClass", List.of("I", "II", "III"), "");
        String end = in.oneOf("end", List.of("hook", "butt"), "");
        Dimension dimension = dimension(in);
        Optional<Amount> step = in.amount("step", dimension, Range.aboveZero(dimension));
        List<Doubt> each = in.each("each", doubt -> Common.doubt(doubt, dimension));
        List<Doubt> all = in.each("all", doubt -> Common.doubt(doubt, dimension));
        if (id.isEmpty()) {
            return Optional.empty();
        }
        return in.build(() -> {
            Instrument made = Instrument.of(id, kindOf(kind))
                    .withDimension(dimension)
                    .withEach(each)
                    .withAll(all);
            made = step.isEmpty() ? made : made.withStep(step.get().value());
            made = tapeClass.isEmpty() ? made : made.withAccuracyClass(TapeClass.valueOf(tapeClass));
            made = end.isEmpty() ? made : made.withEnd(end.equals("hook") ? Instrument.End.HOOK : Instrument.End.BUTT);
            if (!made.hasDoubt() && !states(in, "each") && !states(in, "all")) {
                in.report().error("missing-field", in.node(), "these fields", "one of accuracyClass, step, each, all");
            }
            return made;
        });
    }

    private static boolean states(Fields in, String doubts) {
        return in.find(doubts).map(list -> !list.items().isEmpty()).orElse(false);
    }

    private static Instrument.Kind kindOf(String kind) {
        for (Instrument.Kind value : Instrument.Kind.values()) {
            if (kind.equals(value.name().toLowerCase(Locale.ROOT))) {
                return value;
            }
        }
        return Instrument.Kind.STATED;
    }

    /** An instrument whose step or doubts are angles reads angles. */
    private static Dimension dimension(Fields in) {
        String text = in.find("step").map(Node::text).orElse("");
        for (String name : List.of("each", "all")) {
            Optional<Node> list = in.find(name);
            if (text.isEmpty() && list.isPresent() && !list.get().items().isEmpty()) {
                for (String key : List.of("u", "limits", "U")) {
                    Node.Field field = list.get().items().get(0).fields().get(key);
                    text = field == null || !text.isEmpty()
                            ? text
                            : field.value().text();
                }
            }
        }
        return text.endsWith("deg") ? Dimension.ANGLE : Dimension.LENGTH;
    }

    private static Optional<SiteFacts> site(Fields in) {
        Map<String, String> stated = new LinkedHashMap<>();
        SiteFacts.ANSWERS.forEach((name, answers) -> {
            List<String> allowed = new ArrayList<>(answers);
            allowed.add("unknown");
            stated.put(name, in.oneOf(name, allowed, "unknown"));
        });
        return Optional.of(SiteFacts.of(stated));
    }

    private static Optional<Heat> heat(Fields in) {
        return Optional.of(new Heat(kelvin(in, "measured"), kelvin(in, "from"), kelvin(in, "to")));
    }

    private static Optional<PassFacts> wayIn(Fields in) {
        String box = in.id("box");
        double[] mm = new double[6];
        String[] names = {"thickness", "depth", "leftLip", "rightLip", "u", "play"};
        for (int i = 0; i < names.length; i++) {
            mm[i] = in.amount(names[i], Dimension.LENGTH).map(Amount::value).orElse(i == 5 ? 0 : Double.NaN);
        }
        return in.build(() -> new PassFacts(box, mm[0], mm[1], mm[2], mm[3], mm[4], mm[5]));
    }

    private static double kelvin(Fields in, String name) {
        return in.amount(name, Dimension.TEMPERATURE).map(Amount::value).orElse(Double.NaN);
    }

    private static Optional<Choices> choose(Fields in) {
        in.require("rulebook", "an object with an id");
        Map<String, String> book = new LinkedHashMap<>();
        in.object("rulebook", inner -> {
            book.put("id", inner.id("id"));
            book.put("version", inner.text("version", ""));
            book.put("digest", inner.text("digest", ""));
            return Optional.of(book);
        });
        String parts = in.optionalId("parts");
        Map<String, String> chosen = new LinkedHashMap<>();
        for (String kind : Parts.CHOICES) {
            String id = in.optionalId(kind);
            if (!id.isEmpty()) {
                chosen.put(kind, id);
            }
        }
        List<String> sides = List.of("head", "foot", "left", "right");
        Map<String, String> roller = new LinkedHashMap<>();
        in.object("roller", inner -> {
            roller.put("at", inner.oneOf("at", sides, ""));
            roller.put("drive", inner.oneOf("drive", List.of("left", "right"), ""));
            return Optional.of(roller);
        });
        Map<String, String> cable = new LinkedHashMap<>();
        in.object("cable", inner -> {
            cable.put("leaves", inner.oneOf("leaves", sides, ""));
            return Optional.of(cable);
        });
        String id = book.getOrDefault("id", "");
        return id.isEmpty()
                ? Optional.empty()
                : Optional.of(new Choices(
                        id,
                        book.getOrDefault("version", ""),
                        book.getOrDefault("digest", ""),
                        parts,
                        chosen,
                        roller.getOrDefault("at", ""),
                        roller.getOrDefault("drive", ""),
                        cable.getOrDefault("leaves", "")));
    }

    private static Optional<Supply> supply(Fields in) {
        String kind = in.oneOf("kind", List.of("mains", "low-voltage", "battery", "unknown"), "unknown");
        Declared voltage = Common.declared(in, "voltage", Dimension.VOLTAGE);
        Declared cable = Common.declared(in, "cable", Dimension.AREA);
        Declared length = Common.declared(in, "cableLength", Dimension.LENGTH);
        return in.build(() -> new Supply(kind, voltage, cable, length));
    }

    private Map<String, Amount> ordered() {
        Map<String, Amount> ordered = new LinkedHashMap<>();
        in.find("ordered").ifPresent(value -> {
            if (value.kind() != Node.Kind.OBJECT) {
                in.report().error("wrong-type", value, value.shown(), "an object of sizes by name");
            }
            value.fields().forEach((size, field) -> {
                String id = in.id(size, value.key(size));
                in.amount(field.value(), Dimension.LENGTH, Range.EVERY).ifPresent(amount -> {
                    if (amount.value() > 0 && amount.value() <= OpeningReader.LONGEST) {
                        ordered.put(id, amount);
                    } else {
                        in.report()
                                .error(
                                        "out-of-range",
                                        field.value(),
                                        field.value().shown(),
                                        "above 0, 50 m at most");
                    }
                });
            });
        });
        return ordered;
    }

    private double[] nominal() {
        double[] nominal = {Double.NaN, Double.NaN};
        in.object("nominal", fields -> {
            Range range = Range.longerThanZero(OpeningReader.LONGEST);
            fields.amount("width", Dimension.LENGTH, range).ifPresent(amount -> nominal[0] = amount.value());
            fields.amount("length", Dimension.LENGTH, range).ifPresent(amount -> nominal[1] = amount.value());
            return Optional.of(nominal);
        });
        return nominal;
    }

    private Map<String, FigureValue> declared() {
        return in.named("declared", (id, fields) -> {
            boolean named = id.startsWith("site.") || id.startsWith("own.");
            if (!named && !id.isEmpty()) {
                Node key = in.find("declared").map(all -> all.key(id)).orElse(fields.node());
                fields.report().error("bad-id", key, id, "a name that starts with site. or own.");
            }
            Optional<Node> value = fields.require("value", "a text with a unit, such as \"2.31 m\"");
            Optional<Amount> amount = value.flatMap(v -> fields.anyAmount(v, Dimension.LENGTH));
            Dimension dimension = amount.map(Amount::dimension).orElse(Dimension.LENGTH);
            Optional<Doubt> doubt = doubt(fields, dimension);
            return amount.map(a -> new FigureValue(
                    doubt.filter(d -> d.amount() > 0)
                            .map(d -> uncertain(id, a, d))
                            .orElse(Uncertain.exact(a.value())),
                    dimension));
        });
    }

    private static Optional<Doubt> doubt(Fields in, Dimension dimension) {
        boolean stated = in.find("u").isPresent()
                || in.find("limits").isPresent()
                || in.find("U").isPresent();
        return stated || in.find("k").isPresent() ? Common.doubt(in, dimension) : Optional.empty();
    }

    private static Uncertain uncertain(String id, Amount amount, Doubt doubt) {
        double u = doubt.standardUncertainty(amount.value());
        return Uncertain.of(
                amount.value(), new Influence("declared/" + id, doubt.shape(), u, Double.POSITIVE_INFINITY, ""));
    }

    private String carry() {
        Optional<Node> carry = in.find("carry");
        if (carry.isEmpty()) {
            return "";
        }
        Optional<String> raw = JobDocument.raw(carry.get());
        if (raw.isEmpty()) {
            in.report()
                    .error(
                            "carry-too-large",
                            carry.get(),
                            "more than " + LONGEST_CARRY + " characters",
                            "4 kB or less");
        }
        return raw.orElse("");
    }
}
