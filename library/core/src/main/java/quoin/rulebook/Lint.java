package quoin.rulebook;

import java.util.List;
import quoin.judge.Catalogue;
import quoin.judge.Problem;
import quoin.parts.Parts;

/**
 * What is wrong with a rulebook or a list of parts, all of it at once.
 *
 * <p>Errors: the document is refused. Warnings: somebody should look. Places are JSON pointers into the document, by
 * index as in its lists. A rulebook without errors is then looked at as a whole: whether a size steps down as the opening
 * grows, bounds that can never fail, never pass or never matter, bands that nothing comes to or that leave a gap, each
 * with a witness; what cannot be proved is named. Nothing here knows how thick a sheet is, so no countersink is held against
 * one. Functions of values, safe for use by many threads.
 */
public final class Lint {
    private Lint() {}

    /**
     * The problems of a rulebook.
     *
     * @param rulebook the rules
     * @param catalogue every figure that can be named
     * @param parts the lists of parts that are at hand; choices are held against them
     * @return the problems, in the order of the document
     */
    public static List<Problem> problems(Rulebook rulebook, Catalogue catalogue, List<Parts> parts) {
        Report report = new Report();
        Names names = new Names(rulebook, catalogue);
        new FrameLint(report).check(rulebook, parts);
        new TableLint(report, new QuotaLint(report, names, parts)).check(rulebook);
        new SizeLint(report, names, parts).check(rulebook.sizes());
        new BoundLint(report, names, parts).check(rulebook.bounds());
        if (!report.hasErrors()) {
            Proofs.check(rulebook, names, report);
        }
        return report.problems();
    }

    /**
     * The problems of a list of parts.
     *
     * @param parts the parts
     * @return the problems, in the order of the document
     */
    public static List<Problem> problems(Parts parts) {
        Report report = new Report();
        new PartsLint(report).check(parts);
        return report.problems();
    }
}
