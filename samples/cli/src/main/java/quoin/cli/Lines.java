package quoin.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;

/** Lines of bytes, each kept only so far that its reader sees when it is too long. Not safe for use by many threads. */
final class Lines {
    private static final int MOST = 8 * 1024 * 1024 + 1;

    private final InputStream in;

    Lines(InputStream in) {
        this.in = in;
    }

    /** The next line without its end; empty at the end of the file. */
    Optional<byte[]> next() throws IOException {
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        int b = in.read();
        if (b < 0) {
            return Optional.empty();
        }
        while (b >= 0 && b != '\n') {
            if (b != '\r' && line.size() < MOST) {
                line.write(b);
            }
            b = in.read();
        }
        return Optional.of(line.toByteArray());
    }
}
