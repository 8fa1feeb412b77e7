package quoin.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** The JSON Schemas (draft 2020-12) of the documents. Functions of values, safe for use by many threads. */
public final class Schemas {
    /** The formats that have a schema. */
    public static final List<String> FORMATS = List.of(
            JobDocument.FORMAT,
            RulebookDocument.FORMAT,
            PartsDocument.FORMAT,
            CaseDocument.FORMAT,
            AssessmentDocument.FORMAT,
            ImpactDocument.FORMAT);

    private Schemas() {}

    /**
     * The schema of a format.
     *
     * @param format one of {@link #FORMATS}, such as {@code quoin-job/1}
     * @return the schema as JSON text
     * @throws IllegalArgumentException if there is no such format
     */
    public static String text(String format) {
        if (!FORMATS.contains(format)) {
            throw new IllegalArgumentException("format must be one of " + FORMATS + ", got " + format);
        }
        String name = format.replace('/', '-') + ".schema.json";
        try (InputStream in = Objects.requireNonNull(Schemas.class.getResourceAsStream(name), name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
