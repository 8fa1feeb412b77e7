/**
 * Judging, sizing and checking of made-to-measure openings: values and functions without side effects.
 *
 * <p>Every type of this module is immutable and safe to share between threads.
 */
module quoin {
    requires transitive java.measure;
    requires tech.units.indriya;
    requires commons.math3;
    requires static transitive org.jspecify;

    exports quoin.measure;
    exports quoin.judge;
    exports quoin.parts;
    exports quoin.opening;
    exports quoin.rulebook;
    exports quoin.chain;
    exports quoin.clearance;
    exports quoin.fixing;
    exports quoin.job;
    exports quoin.words;
}
