package quoin.words;

import quoin.judge.Args;

/** Which sentence says a probability, and with what number in it. */
final class PlainOdds {
    /** The key of a sentence and the number to put in it. */
    record Said(String key, Args args) {}

    private PlainOdds() {}

    static Said say(double probability) {
        if (!(probability >= 0 && probability <= 1)) {
            return new Said("odds.unknown", Args.NONE);
        }
        double against = 1 - probability;
        if (against < 0.01) {
            return nearlyCertain("odds.certain", against);
        }
        if (probability < 0.01) {
            return nearlyCertain("odds.hopeless", probability);
        }
        if (against < 0.155) {
            return new Said("odds.one-against", Args.of("n", StrictMath.floor(1 / against + 1e-9)));
        }
        if (probability < 0.155) {
            return new Said("odds.one-for", Args.of("n", StrictMath.ceil(1 / probability - 1e-9)));
        }
        if (against < 0.4) {
            return new Said("odds.tenths-against", Args.of("n", StrictMath.ceil(against * 10 - 1e-9)));
        }
        if (probability < 0.4) {
            return new Said("odds.tenths-for", Args.of("n", StrictMath.floor(probability * 10 + 1e-9)));
        }
        return new Said(probability >= 0.5 ? "odds.coin" : "odds.below-coin", Args.NONE);
    }

    private static Said nearlyCertain(String key, double rest) {
        return rest < 0.001
                ? new Said(key + "-least", Args.NONE)
                : new Said(key, Args.of("n", StrictMath.ceil(rest * 1000 - 1e-9)));
    }
}
