package quoin.json;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import quoin.job.Job;

/** A job as a document: {@code quoin-job/1}. */
public final class JobDocument {
    /** The name of the format. */
    public static final String FORMAT = "quoin-job/1";

    private static final int MOST_CARRIED = 4096;

    private JobDocument() {}

    /**
     * Reads a job.
     *
     * @param json the text in UTF-8
     * @return the job, or every problem of the text
     */
    public static Read<Job> read(byte[] json) {
        return Documents.read(json, fields -> new JobReader(fields).job(), job -> List.of());
    }

    /**
     * Reads a job, 8 MB at most.
     *
     * @param json the text in UTF-8
     * @return the job, or every problem of the text
     * @throws IOException if the stream cannot be read
     */
    public static Read<Job> read(InputStream json) throws IOException {
        return read(Tree.bytes(json));
    }

    /**
     * Writes a job.
     *
     * @param job the job
     * @return the text, keys in a fixed order, ending with a line feed
     */
    public static String write(Job job) {
        return new JobWriter().write(job);
    }

    /** {@return the raw text of a node, compact} */
    static Optional<String> raw(Node node) {
        String text = Raw.of(node);
        return text.getBytes(StandardCharsets.UTF_8).length <= MOST_CARRIED ? Optional.of(text) : Optional.empty();
    }
}
