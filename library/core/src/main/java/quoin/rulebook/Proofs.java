package quoin.rulebook;

import java.util.List;
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
        Meter meter = new Meter();
        Mapping mapping = Mapping.of(rulebook, names, Offers.of(rulebook), meter);
        new GrowthProof(mapping, names, report).check(rulebook.sizes());
        new LimitProof(rulebook, mapping, names, meter, report).check();
        new BandProof(rulebook, mapping, names, meter, report).check();
        List<String> ids = rulebook.sizes().stream().map(SizeClause::id).toList();
        mapping.lost()
                .forEach((size, code) -> report.warning(
                        "not-proved",
                        "/sizes/" + ids.indexOf(size),
                        Args.of("size", size).with("got", code)));
    }
}
