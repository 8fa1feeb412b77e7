package quoin.json;

import java.util.List;
import java.util.Optional;
import quoin.job.Impact;
import quoin.job.ImpactTotals;
import quoin.job.Receipt;
import quoin.judge.Problem;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.rulebook.Rulebook;

/**
 * What a change of rules does to many jobs, as lines of a document: {@code quoin-impact/1}. One line a job, then one with the
 * totals; each without a line feed.
 */
public final class ImpactDocument {
    /** The name of the format. */
    public static final String FORMAT = "quoin-impact/1";

    private ImpactDocument() {}

    /**
     * The line of one job.
     *
     * @param impact what became of it
     * @return the line, keys in a fixed order
     */
    public static String write(Impact impact) {
        Out out = Out.line();
        out.start();
        out.field("format", FORMAT);
        out.field("job", impact.job());
        out.field("change", impact.change().text());
        out.startObject("verdict");
        out.field("from", impact.verdict().from().text());
        out.field("to", impact.verdict().to().text());
        out.end();
        out.objects("sizes", impact.sizes(), ImpactDocument::size);
        out.objects("findings", impact.findings(), ImpactDocument::finding);
        out.end();
        return out.text();
    }

    private static void size(Out out, Impact.Pair<Optional<Amount>> size) {
        Dimension dimension = size.from().or(size::to).map(Amount::dimension).orElse(Dimension.LENGTH);
        size.from().ifPresent(amount -> out.field("from", amount.dimension().toAnswer(amount.value())));
        size.to().ifPresent(amount -> out.field("to", amount.dimension().toAnswer(amount.value())));
        out.field("unit", dimension.answerUnit());
    }

    private static void finding(Out out, Impact.Pair<Optional<Impact.Ground>> finding) {
        finding.from().ifPresent(ground -> ground(out, "from", ground));
        finding.to().ifPresent(ground -> ground(out, "to", ground));
    }

    private static void ground(Out out, String name, Impact.Ground ground) {
        out.startObject(name);
        out.field("verdict", ground.verdict().text());
        ground.reason().ifPresent(reason -> out.field("reason", reason.text()));
        out.end();
    }

    /**
     * The line of a job that could not be read, or whose parts are not at hand.
     *
     * @param job the job's id; empty where it could not be read
     * @param problems what is wrong with it
     * @return the line, keys in a fixed order
     */
    public static String refused(String job, List<Problem> problems) {
        Out out = Out.line();
        out.start();
        out.field("format", FORMAT);
        if (job.isEmpty()) {
            out.nothing("job");
        } else {
            out.field("job", job);
        }
        out.field("change", "refused");
        out.array("problems", problems, AssessmentDocument::problem);
        out.end();
        return out.text();
    }

    /**
     * The last line: how many jobs of each kind there were, and by which rules.
     *
     * @param totals the counts
     * @param before the old rules
     * @param after the new rules
     * @return the line, keys in a fixed order
     */
    public static String write(ImpactTotals totals, Rulebook before, Rulebook after) {
        Out out = Out.line();
        out.start();
        out.field("format", FORMAT);
        out.field("library", Receipt.LIBRARY);
        out.field("semantics", Receipt.SEMANTICS);
        rulebook(out, "from", before);
        rulebook(out, "to", after);
        out.startObject("totals");
        out.count("jobs", totals.jobs());
        for (Impact.Change change : Impact.Change.values()) {
            out.count(change.text(), totals.count(change));
        }
        out.count("refused", totals.refused());
        out.startObject("flips");
        totals.flips().forEach((way, count) -> out.count(way, count));
        out.end();
        out.end();
        out.end();
        return out.text();
    }

    private static void rulebook(Out out, String name, Rulebook rulebook) {
        out.startObject(name);
        out.field("id", rulebook.id());
        out.field("version", rulebook.version());
        out.field("digest", rulebook.digest());
        out.end();
    }
}
