package quoin.benchmarks;

import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;

/** The yardstick of loading: the bare parse, every token and every text of it. */
final class LoadBare implements Work {
    private static final JsonFactory FACTORY = new JsonFactory();

    private final byte[] text;

    LoadBare(byte[] text) {
        this.text = text.clone();
    }

    @Override
    public double once(int time) {
        double sum = 0;
        try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), text)) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                sum += token == JsonToken.VALUE_STRING || token == JsonToken.PROPERTY_NAME
                        ? parser.getString().length()
                        : 1;
            }
        }
        return sum;
    }
}
