package quoin.json;

import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import quoin.judge.Args;
import quoin.judge.Source;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.parts.Declared;
import quoin.parts.Pull;
import quoin.parts.Substrate;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.json.JsonFactory;

/**
 * Writes JSON with its keys in the order of the calls. Numbers are the shortest that read back the same, on every JDK;
 * whole ones have no point. Not safe for use by many threads.
 */
final class Out {
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
            .build();
    private static final double LARGEST_WHOLE = 1e15;

    private final StringWriter text = new StringWriter();
    private final JsonGenerator json = FACTORY.createGenerator(ObjectWriteContext.empty(), text);

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
        json.writeRawValue(value);
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

    /** A quantity as a text with its unit, or a bare number where it is a count. */
    void amount(String name, Amount amount) {
        json.writeName(name);
        amount(amount);
    }

    void amount(Amount amount) {
        if (amount.dimension() == Dimension.RATIO) {
            number(amount.value());
        } else {
            json.writeString(text(amount));
        }
    }

    /** A quantity in the unit of answers, written so that it reads back to the very same value. */
    static String text(Amount amount) {
        double value = exact(amount);
        return Fields.plain(value) + " " + amount.dimension().answerUnit();
    }

    /** The shortest decimal in the answer unit that reads back exactly; else the plain conversion. */
    private static double exact(Amount amount) {
        Dimension dimension = amount.dimension();
        double value = dimension.toAnswer(amount.value());
        for (int digits = 3; digits < 15; digits++) {
            double scale = StrictMath.pow(10, digits);
            double rounded = Math.rint(value * scale) / scale;
            if (dimension.fromAnswer(rounded) == amount.value()) {
                return rounded;
            }
        }
        return value;
    }

    void declared(String name, Declared declared) {
        if (declared.isKnown()) {
            json.writeName(name);
            declared(declared);
        }
    }

    void declared(Declared declared) {
        Amount amount = new Amount(declared.value(), declared.dimension());
        boolean plain = declared.basis() == Declared.Basis.DECLARED
                && !declared.source().isStated();
        if (plain) {
            amount(amount);
            return;
        }
        start();
        amount("value", amount);
        field("basis", declared.basis().text());
        source(declared.source());
        end();
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

    /** The text on one line. */
    String line() {
        json.close();
        return text.toString();
    }

    /** The text as a document of its own, ending with a line feed. */
    String document() {
        return line() + "\n";
    }
}
