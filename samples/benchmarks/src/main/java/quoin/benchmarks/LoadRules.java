package quoin.benchmarks;

import quoin.json.Read;
import quoin.json.RulebookDocument;
import quoin.rulebook.Rulebook;

/** A rulebook read, checked and linted. */
final class LoadRules implements Work {
    private final byte[] text;

    LoadRules(byte[] text) {
        this.text = text.clone();
    }

    Rulebook load() {
        Read<Rulebook> read = RulebookDocument.read(text);
        return read.value()
                .orElseThrow(() -> new IllegalStateException("rulebook must be valid, got " + read.problems()));
    }

    @Override
    public double once(int time) {
        return load().sizes().size();
    }
}
