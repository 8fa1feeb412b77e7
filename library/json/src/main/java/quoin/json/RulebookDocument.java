package quoin.json;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import quoin.job.Figures;
import quoin.judge.Catalogue;
import quoin.parts.Parts;
import quoin.rulebook.Lint;
import quoin.rulebook.Rulebook;

/** A rulebook as a document: {@code quoin-rulebook/1}. */
public final class RulebookDocument {
    /** The name of the format. */
    public static final String FORMAT = "quoin-rulebook/1";

    private RulebookDocument() {}

    /**
     * Reads a rulebook and holds it against the library's own figures.
     *
     * @param json the text in UTF-8
     * @return the rulebook with its warnings, or every problem of the text
     */
    public static Read<Rulebook> read(byte[] json) {
        return read(json, Figures.CATALOGUE, List.of());
    }

    /**
     * Reads a rulebook, 8 MB at most, and holds it against the library's own figures.
     *
     * @param json the text in UTF-8
     * @return the rulebook with its warnings, or every problem of the text
     * @throws IOException if the stream cannot be read
     */
    public static Read<Rulebook> read(InputStream json) throws IOException {
        return read(Tree.bytes(json));
    }

    /**
     * Reads a rulebook and holds it against figures and parts.
     *
     * @param json the text in UTF-8
     * @param catalogue the figures it may name
     * @param parts the parts lists it is used with; none to leave choices unchecked
     * @return the rulebook with its warnings, or every problem of the text
     */
    public static Read<Rulebook> read(byte[] json, Catalogue catalogue, List<Parts> parts) {
        return Documents.read(
                json, fields -> new RulebookReader(fields).rulebook(), book -> Lint.problems(book, catalogue, parts));
    }

    /**
     * Writes a rulebook.
     *
     * @param rulebook the rulebook
     * @return the text, keys in a fixed order, ending with a line feed
     */
    public static String write(Rulebook rulebook) {
        return new RulebookWriter().write(rulebook);
    }
}
