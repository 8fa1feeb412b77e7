package quoin.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import quoin.job.Impact;
import quoin.job.ImpactTotals;
import quoin.judge.Args;
import quoin.judge.Reason;
import quoin.measure.Amount;
import quoin.rulebook.Rulebook;
import quoin.words.Words;

/** What a change of rules does to jobs, a line each, for people. */
final class ImpactText {
    private static final Words WORDS = Words.in(Locale.ENGLISH);

    private ImpactText() {}

    static String of(Impact impact) {
        List<String> said = new ArrayList<>();
        Args head = Args.of("job", impact.job())
                .with("change", change(impact.change().text()));
        said.add(WORDS.text("impact.job", head));
        if (!impact.verdict().isSame()) {
            said.add(pair(
                    "verdict",
                    Args.NONE,
                    impact.verdict().from().text(),
                    impact.verdict().to().text()));
        }
        impact.sizes()
                .forEach((id, size) ->
                        said.add(pair("size", Args.of("size", id), amount(size.from()), amount(size.to()))));
        impact.findings()
                .forEach((id, finding) ->
                        said.add(pair("finding", Args.of("clause", id), ground(finding.from()), ground(finding.to()))));
        return String.join("; ", said);
    }

    static String refused(String job, int line) {
        return job.isEmpty()
                ? WORDS.text(
                        "impact.line", Args.of("line", Integer.toString(line)).with("change", change("refused")))
                : WORDS.text("impact.job", Args.of("job", job).with("change", change("refused")));
    }

    /** The totals, the kinds of change that did not occur left out, with a line feed. */
    static String of(ImpactTotals totals, Rulebook before, Rulebook after) {
        Args head = Args.of("jobs", Long.toString(totals.jobs()))
                .with("from", before.toString())
                .with("to", after.toString());
        List<String> counts = new ArrayList<>();
        for (Impact.Change change : Impact.Change.values()) {
            count(totals.count(change), change.text(), counts);
        }
        count(totals.refused(), "refused", counts);
        return WORDS.text("impact.totals", head) + (counts.isEmpty() ? "" : ": " + String.join(", ", counts)) + "\n";
    }

    private static void count(long n, String change, List<String> counts) {
        if (n > 0) {
            counts.add(WORDS.text("impact.count", Args.of("n", Long.toString(n)).with("change", change(change))));
        }
    }

    private static String change(String code) {
        return WORDS.text("impact." + code, Args.NONE);
    }

    private static String pair(String key, Args args, String from, String to) {
        return WORDS.text("impact." + key, args.with("from", from).with("to", to));
    }

    private static String amount(Optional<Amount> amount) {
        return amount.map(a -> WORDS.number(a.dimension().toAnswer(a.value())) + " "
                        + a.dimension().answerUnit())
                .orElse(WORDS.text("impact.no-size", Args.NONE));
    }

    private static String ground(Optional<Impact.Ground> ground) {
        if (ground.isEmpty()) {
            return WORDS.text("impact.no-ground", Args.NONE);
        }
        Args args = Args.of("verdict", ground.get().verdict().text());
        Optional<Reason> reason = ground.get().reason();
        return WORDS.text(
                "impact.ground",
                reason.isEmpty() ? args : args.with("reason", reason.get().text()));
    }
}
