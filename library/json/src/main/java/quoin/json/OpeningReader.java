package quoin.json;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import quoin.job.OpeningFacts;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.measure.Instrument;
import quoin.opening.Cannot;
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
import quoin.parts.Pull;
import quoin.parts.Substrate;

/** Turns the {@code opening} of a job document into values. Not safe for use by many threads. */
final class OpeningReader {
    static final double LONGEST = 50_000;

    private static final double RIGHT_ANGLE = 90;

    /** Where nobody says how good a lining is: plus or minus this, in mm. Common practice, no source. */
    private static final double LINING_WITHIN = 2;

    private static final List<String> SIDES = List.of("head", "right", "foot", "left");

    private final Fields in;
    private final List<String> names;
    private final Map<String, Instrument> instruments;

    OpeningReader(Fields in, List<String> names, Map<String, Instrument> instruments) {
        this.in = in;
        this.names = names;
        this.instruments = instruments;
    }

    Optional<OpeningFacts> opening() {
        boolean recess = fit();
        shape();
        double slope = in.amount("slope", Dimension.ANGLE, Range.of(0, RIGHT_ANGLE))
                .map(Amount::value)
                .orElse(Double.NaN);
        List<String> ways = List.of("ridge", "eaves", "marked", "unknown");
        HeadTowards head =
                HeadTowards.find(in.oneOf("headTowards", ways, "unknown")).orElse(HeadTowards.UNKNOWN);
        boolean marked = in.flag("markedOnSite");
        double straight = length("straightWithin", 0, 500);
        Finish finish = in.object("finish", this::finish).orElse(Finish.UNSTATED);
        in.require("readings", "a list of readings");
        List<Reading> readings = in.each("readings", this::reading);
        List<Cannot> cannot = in.each("cannot", OpeningReader::cannot);
        Map<Side, Substrate> sides = new EnumMap<>(Side.class);
        in.object("sides", inner -> {
            for (Side side : Side.values()) {
                inner.object(side.text(), this::substrate).ifPresent(s -> sides.put(side, s));
            }
            return Optional.of(sides);
        });
        List<Obstacle> obstacles = in.each("obstacles", this::obstacle);
        List<Moving> moving = in.each("moving", this::moving);
        List<KeepOut> keepOuts = in.each("keepOut", this::keepOut);
        if (!recess) {
            return Optional.empty();
        }
        return in.build(() -> new OpeningFacts(
                "recess", slope, head, marked, straight, finish, readings, cannot, sides, obstacles, moving, keepOuts));
    }

    private boolean fit() {
        Optional<Node> fit = in.require("fit", "recess");
        if (fit.isEmpty() || fit.get().kind() != Node.Kind.TEXT) {
            fit.ifPresent(value -> in.report().error("wrong-type", value, value.shown(), "recess"));
            return false;
        }
        if (!fit.get().text().equals("recess")) {
            String code = fit.get().text().equals("face") ? "not-supported" : "unknown-value";
            in.report().error(code, fit.get(), fit.get().text(), "recess");
        }
        return fit.get().text().equals("recess");
    }

    private void shape() {
        in.find("shape").ifPresent(value -> {
            if (!value.text().equals("four-sided")) {
                in.report().error("not-supported", value, value.shown(), "four-sided, or no field");
            }
        });
    }

    /** A length within limits, in mm; NaN where it is missing or wrong. */
    private double length(String name, double least, double most) {
        return in.find(name).map(value -> length(in, value, least, most)).orElse(Double.NaN);
    }

    private double length(Fields fields, Node value, double least, double most) {
        double mm = fields.amount(value, Dimension.LENGTH, Range.EVERY)
                .map(Amount::value)
                .orElse(Double.NaN);
        if (mm < least || mm > most) {
            fields.report()
                    .error(
                            "out-of-range",
                            value,
                            value.shown(),
                            Fields.plain(least) + " mm to " + Fields.plain(most) + " mm");
            return Double.NaN;
        }
        return mm;
    }

    private Optional<Finish> finish(Fields fields) {
        fields.require("state", "finished, bare");
        String state = fields.oneOf("state", List.of("finished", "bare"), "");
        Map<Side, Finish.Still> still = new EnumMap<>(Side.class);
        fields.object("still", inner -> {
            for (Side side : Side.values()) {
                inner.find(side.text())
                        .flatMap(value -> still(inner, value))
                        .ifPresent(value -> still.put(side, value));
            }
            return Optional.of(still);
        });
        if (state.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Finish(state.equals("bare") ? Finish.State.BARE : Finish.State.FINISHED, still));
    }

    private Optional<Finish.Still> still(Fields fields, Node value) {
        if (value.kind() == Node.Kind.OBJECT) {
            return fields.object(value, inner -> {
                Optional<Node> amount = inner.require("value", "a length such as \"15 mm\"");
                double mm = amount.map(v -> length(inner, v, 0, 999)).orElse(Double.NaN);
                Optional<Doubt> doubt = Common.doubt(inner, Dimension.LENGTH);
                return Double.isNaN(mm) ? Optional.empty() : doubt.map(d -> new Finish.Still(mm, d));
            });
        }
        double mm = length(fields, value, 0, 999);
        return Double.isNaN(mm)
                ? Optional.empty()
                : Optional.of(new Finish.Still(mm, Doubt.limits(LINING_WITHIN, Dimension.LENGTH)));
    }

    private Optional<Reading> reading(Fields fields) {
        String id = fields.optionalId("id");
        Optional<Span> of = fields.require("of", "a place such as width@head").flatMap(value -> span(fields, value));
        Plane plane = Plane.find(fields.oneOf("in", List.of("front", "back"), "front"))
                .orElse(Plane.FRONT);
        Optional<Node> read = fields.require("read", "a length, or a list of lengths");
        Optional<Instrument> by =
                fields.require("by", String.join(", ", names)).flatMap(value -> instrument(fields, value));
        if (of.isEmpty() || read.isEmpty() || by.isEmpty()) {
            return Optional.empty();
        }
        if (by.get().dimension() != of.get().dimension()) {
            fields.report()
                    .error(
                            "wrong-dimension",
                            read.get(),
                            "a reading by " + by.get().id(),
                            "an instrument whose doubts are in "
                                    + Fields.unitOf(of.get().dimension()));
            return Optional.empty();
        }
        List<Double> values = values(fields, of.get(), read.get());
        return values.isEmpty()
                ? Optional.empty()
                : fields.build(() -> new Reading(id, of.get(), plane, values, by.get()));
    }

    private List<Double> values(Fields fields, Span of, Node read) {
        List<Node> nodes = read.kind() == Node.Kind.ARRAY ? read.items() : List.of(read);
        List<Double> values = new ArrayList<>();
        for (Node node : nodes) {
            Optional<Amount> amount = fields.amount(node, of.dimension(), Range.EVERY);
            boolean signed = of instanceof Span.Bow || of instanceof Span.Fall;
            double most = of.dimension() == Dimension.ANGLE ? Math.PI : LONGEST;
            if (amount.isPresent() && isWithin(amount.get().value(), signed, most)) {
                values.add(amount.get().value());
            } else if (amount.isPresent()) {
                String limit = of.dimension() == Dimension.ANGLE ? "180 deg" : "50 m";
                fields.report()
                        .error(
                                "out-of-range",
                                node,
                                node.shown(),
                                signed ? limit + " at most" : "above 0, " + limit + " at most");
            }
        }
        if (nodes.isEmpty()) {
            fields.report().error("out-of-range", read, "an empty list", "1 value or more");
        }
        return values;
    }

    private static boolean isWithin(double value, boolean signed, double most) {
        return Math.abs(value) <= most && (signed || value > 0);
    }

    private static Optional<Span> span(Fields fields, Node value) {
        String text = fields.words(value, "a place such as width@head");
        try {
            return text.isEmpty() ? Optional.empty() : Optional.of(Span.parse(text));
        } catch (IllegalArgumentException e) {
            fields.report()
                    .error(
                            "unknown-value",
                            value,
                            text,
                            "a place such as width@head, width@1/4, length@left, diagonal@head-left");
            return Optional.empty();
        }
    }

    private Optional<Instrument> instrument(Fields fields, Node value) {
        String name = fields.text(value, "");
        @Nullable Instrument found = instruments.get(name);
        if (!names.contains(name) && value.kind() == Node.Kind.TEXT) {
            fields.report().error("unknown-instrument", value, name, String.join(", ", names));
        }
        return Optional.ofNullable(found);
    }

    private static Optional<Cannot> cannot(Fields fields) {
        Optional<Span> of = fields.require("of", "a place such as length@3/4").flatMap(value -> span(fields, value));
        String because = fields.text("because", "");
        return of.map(span -> new Cannot(span, because));
    }

    private Optional<Substrate> substrate(Fields fields) {
        fields.require("substrate", String.join(", ", Common.substrates()));
        String kind = fields.oneOf("substrate", Common.substrates(), "unknown");
        Declared thickness = Common.declared(fields, "thickness", Dimension.LENGTH);
        Declared board = Common.declared(fields, "board", Dimension.LENGTH);
        List<Substrate.Timber> timbers = fields.each("timbers", this::timber);
        String known = fields.text("known", "");
        List<Pull> pulls = fields.object("pull", Common::pull).map(List::of).orElse(List.of());
        return fields.build(() -> new Substrate(
                Substrate.Kind.find(kind).orElse(Substrate.Kind.UNKNOWN), thickness, board, timbers, known, pulls));
    }

    private Optional<Substrate.Timber> timber(Fields fields) {
        double at = needed(fields, "at");
        double width = fields.require("width", "a length such as \"47 mm\"")
                .flatMap(v -> fields.amount(v, Dimension.LENGTH, new Range(0, true, LONGEST)))
                .map(Amount::value)
                .orElse(Double.NaN);
        double u = fields.find("u").map(v -> length(fields, v, 0, 1000)).orElse(Double.NaN);
        return Double.isNaN(at) || Double.isNaN(width)
                ? Optional.empty()
                : fields.build(() -> new Substrate.Timber(at, width, u));
    }

    private double needed(Fields fields, String name) {
        return fields.require(name, "a length such as \"100 mm\"")
                .map(v -> length(fields, v, 0, LONGEST))
                .orElse(Double.NaN);
    }

    private Optional<Obstacle> obstacle(Fields fields) {
        String name = fields.text("name", "");
        fields.require("on", String.join(", ", SIDES));
        Optional<Side> on = Side.find(fields.oneOf("on", SIDES, ""));
        double[] along = two(fields, "along");
        double out = fields.find("out").map(v -> length(fields, v, 0, LONGEST)).orElse(Double.NaN);
        double[] depth = two(fields, "depth");
        return on.map(side -> new Obstacle(name, side, along[0], along[1], out, depth[0], depth[1]));
    }

    /** Two lengths, the smaller first; NaN where they are missing or wrong. */
    private double[] two(Fields fields, String name) {
        double[] two = {Double.NaN, Double.NaN};
        fields.find(name).ifPresent(value -> {
            List<Node> items = fields.list(value, "two lengths");
            if (value.kind() == Node.Kind.ARRAY && items.size() != 2) {
                fields.report().error("out-of-range", value, items.size() + " values", "two lengths");
                return;
            }
            for (int i = 0; i < items.size(); i++) {
                two[i] = length(fields, items.get(i), 0, LONGEST);
            }
            if (two[0] > two[1]) {
                fields.report().error("out-of-range", value, "the larger first", "the smaller first");
            }
        });
        return two;
    }

    private Optional<Moving> moving(Fields fields) {
        String name = fields.text("name", "");
        fields.require("hinge", String.join(", ", SIDES));
        Optional<Side> hinge = Side.find(fields.oneOf("hinge", SIDES, ""));
        String opens = fields.oneOf("opens", List.of("in", "out", "unknown"), "unknown");
        double swing = fields.amount("swing", Dimension.ANGLE, Range.fromZero(Dimension.ANGLE))
                .map(Amount::value)
                .orElse(Double.NaN);
        double reach =
                fields.find("reach").map(v -> length(fields, v, 0, LONGEST)).orElse(Double.NaN);
        String mustWork = fields.oneOf("mustWork", List.of("open", "closed", "both", "unknown"), "unknown");
        return hinge.map(side -> new Moving(name, side, opens, swing, reach, mustWork));
    }

    private Optional<KeepOut> keepOut(Fields fields) {
        fields.require("side", String.join(", ", SIDES));
        Optional<Side> side = Side.find(fields.oneOf("side", SIDES, ""));
        double from = needed(fields, "from");
        double to = needed(fields, "to");
        String because = fields.text("because", "");
        if (to < from) {
            String start = fields.find("from").map(Node::shown).orElse("from");
            fields.find("to")
                    .ifPresent(
                            value -> fields.report().error("out-of-range", value, value.shown(), start + " or more"));
            return Optional.empty();
        }
        return side.isEmpty() || Double.isNaN(from) || Double.isNaN(to)
                ? Optional.empty()
                : fields.build(() -> new KeepOut(side.get(), from, to, because));
    }
}
