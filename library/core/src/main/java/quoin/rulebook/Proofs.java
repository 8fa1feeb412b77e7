package quoin.rulebook;

import quoin.judge.Args;

/**
 * What can be proved of rules without trying any job: each warning names a witness.
 *
 * <p>For rulebooks without errors. What cannot be mapped exactly, or only with too many boxes, is named as not proved. Where
 * several limited sizes hang on one figure, a gap of bands is looked for between the limits of each size alone: its witness
 * may then be a value that another limit shuts out.
 */
final class Proofs {
    private Proofs() {}

    static void check(Rulebook rulebook, Names names, Report report) {
        Proving proving = Proving.of(rulebook, names, report);
        new GrowthProof(proving).check();
        new LimitProof(proving).check();
        new BandProof(proving).check();
        proving.mapping()
                .lost()
                .forEach((size, code) -> report.warning(
                        "not-proved",
                        "/sizes/" + names.index(size),
                        Args.of("size", size).with("got", code)));
    }
}
