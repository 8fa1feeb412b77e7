package quoin.cli;

import quoin.judge.Problem;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonFactory;

/** Where in a text a JSON pointer leads. */
final class Spot {
    private static final JsonFactory FACTORY = new JsonFactory();

    private Spot() {}

    /** The problem with the line and column of its pointer; as it is where the text has no such place. */
    static Problem locate(byte[] json, Problem problem) {
        try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), json)) {
            while (parser.nextToken() != null) {
                boolean there =
                        parser.streamReadContext().pathAsPointer().toString().equals(problem.pointer());
                if (there) {
                    TokenStreamLocation at = parser.currentTokenLocation();
                    return problem.at(at.getLineNr(), at.getColumnNr());
                }
            }
        } catch (JacksonException e) {
            return problem;
        }
        return problem;
    }
}
