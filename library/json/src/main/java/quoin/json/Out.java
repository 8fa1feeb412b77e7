package quoin.json;

import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import quoin.judge.Args;
import quoin.judge.Source;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.parts.Declared;
import quoin.parts.Pull;
import quoin.parts.Substrate;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.core.util.Separators;

/**
 * Writes JSON with its keys in the order of the calls. Numbers are the shortest that read back the same, on every JDK;
 * whole ones have no point. Not safe for use by many threads.
 */
final class Out {
    private static final double MM_IN_A_METRE = 1000;
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
            .build();
    private static final double LARGEST_WHOLE = 1e15;

    private final StringWriter text = new StringWriter();
    private final JsonGenerator json;

    private Out(ObjectWriteContext layout) {
        json = FACTORY.createGenerator(layout, text);
    }

    /** A text on one line. */
    static Out line() {
        return new Out(ObjectWriteContext.empty());
    }

    /** A text for people: two spaces a level, a field a line. */
    static Out pages() {
        return new Out(new Pages());
    }

    private static final class Pages extends ObjectWriteContext.Base {
        private static final Separators SPACED = Separators.createDefaultInstance()
                .withObjectNameValueSpacing(Separators.Spacing.AFTER)
                .withObjectEmptySeparator("")
                .withArrayEmptySeparator("");

        @Override
        public PrettyPrinter getPrettyPrinter() {
            return new DefaultPrettyPrinter(SPACED).withObjectIndenter(new DefaultIndenter("  ", "\n"));
        }

        @Override
        public boolean hasPrettyPrinter() {
            return true;
        }
    }

    void start() {
        json.writeStartObject();
    }

    void startObject(String name) {
        json.writeName(name);
        json.writeStartObject();
    }

    void end() {
        json.writeEndObject();
    }

    void startArray(String name) {
        json.writeName(name);
        json.writeStartArray();
    }

    void startArray() {
        json.writeStartArray();
    }

    void endArray() {
        json.writeEndArray();
    }

    void field(String name, String value) {
        json.writeName(name);
        json.writeString(value);
    }

    void field(String name, boolean value) {
        json.writeName(name);
        json.writeBoolean(value);
    }

    void field(String name, double value) {
        json.writeName(name);
        number(value);
    }

    void count(String name, long value) {
        json.writeName(name);
        json.writeNumber(value);
    }

    void nothing(String name) {
        json.writeName(name);
        json.writeNull();
    }

    /** A field only where it says something. */
    void optional(String name, String value) {
        if (!value.isEmpty()) {
            field(name, value);
        }
    }

    /** A field only where it is a finite number. */
    void optional(String name, double value) {
        if (Double.isFinite(value)) {
            field(name, value);
        }
    }

    void string(String value) {
        json.writeString(value);
    }

    void number(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("number must be finite in a document, got " + value);
        }
        if (value == Math.rint(value) && Math.abs(value) < LARGEST_WHOLE) {
            json.writeNumber((long) value);
        } else {
            json.writeNumber(value);
        }
    }

    void texts(String name, List<String> values) {
        startArray(name);
        values.forEach(json::writeString);
        endArray();
    }

    void raw(String name, String value) {
        json.writeName(name);
        json.writeRawValue(Raw.compact(value));
    }

    <T> void objects(String name, Map<String, T> values, BiConsumer<Out, T> writer) {
        if (values.isEmpty()) {
            return;
        }
        startObject(name);
        values.forEach((id, value) -> {
            startObject(id);
            writer.accept(this, value);
            end();
        });
        end();
    }

    <T> void array(String name, List<T> values, BiConsumer<Out, T> writer) {
        startArray(name);
        values.forEach(value -> {
            start();
            writer.accept(this, value);
            end();
        });
        endArray();
    }

    /** A quantity as a text with its unit. */
    void amount(String name, Amount amount) {
        field(name, AmountWriter.text(amount));
    }

    void amount(Amount amount) {
        json.writeString(AmountWriter.text(amount));
    }

    void declared(String name, Declared declared) {
        if (declared.isKnown()) {
            json.writeName(name);
            declared(declared);
        }
    }

    void declared(Declared declared) {
        boolean plain = declared.basis() == Declared.Basis.DECLARED
                && !declared.source().isStated();
        if (plain) {
            value(declared);
            return;
        }
        start();
        json.writeName("value");
        value(declared);
        field("basis", declared.basis().text());
        source(declared.source());
        end();
    }

    /** A count is a number, everything else has a unit. */
    private void value(Declared declared) {
        if (declared.dimension() == Dimension.RATIO) {
            number(declared.value());
        } else {
            amount(new Amount(declared.value(), declared.dimension()));
        }
    }

    void pull(Pull pull) {
        amount("value", new Amount(pull.value().value(), Dimension.FORCE));
        field("basis", pull.value().basis().text());
        if (pull.in() != Substrate.Kind.UNKNOWN) {
            field("in", pull.in().text());
        }
        declared("depth", pull.depth());
        source(pull.value().source());
    }

    /** The fields of a doubt: u, limits, or U with k; per metre where it grows. */
    void doubt(Doubt doubt) {
        String name = switch (doubt.statement()) {
            case STANDARD -> "u";
            case LIMITS -> "limits";
            case EXPANDED -> "U";
        };
        boolean grows = doubt.growth() == Doubt.Growth.PER_LENGTH;
        double scale = grows ? MM_IN_A_METRE : 1;
        field(
                name,
                AmountWriter.text(
                        doubt.amount() * scale,
                        Common.spread(doubt.dimension()),
                        value -> value / scale == doubt.amount()));
        if (doubt.statement() == Doubt.Statement.EXPANDED) {
            field("k", doubt.coverageFactor());
        }
        if (grows) {
            field("grows", "per-length");
        }
    }

    void source(Source source) {
        if (source.isStated()) {
            startObject("source");
            sourceFields(source);
            end();
        }
    }

    void sourceFields(Source source) {
        field("kind", source.kind().text());
        optional("ref", source.ref());
        optional("verifiedOn", source.verifiedOn());
        optional("reviewBy", source.reviewBy());
    }

    void args(Args args) {
        startObject("args");
        args.asMap().forEach(this::arg);
        end();
    }

    private void arg(String name, Object value) {
        json.writeName(name);
        if (value instanceof Double number) {
            number(number);
        } else if (value instanceof List<?> list) {
            json.writeStartArray();
            list.forEach(item -> json.writeString(String.valueOf(item)));
            json.writeEndArray();
        } else {
            json.writeString(String.valueOf(value));
        }
    }

    /** What was written. */
    String text() {
        json.close();
        return text.toString();
    }
}
