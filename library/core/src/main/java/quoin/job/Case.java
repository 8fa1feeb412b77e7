package quoin.job;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import quoin.judge.Args;
import quoin.judge.Finding;
import quoin.judge.Problem;
import quoin.judge.Verdict;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.rulebook.Coverage;
import quoin.rulebook.Size;

/**
 * A job with what its rulebook must make of it: a test that travels beside the rules. Immutable and safe for use by many threads.
 *
 * @param id its name
 * @param title what it is there for; may be empty
 * @param job the job
 * @param choose the job's choices, with the rulebook that the case is for
 * @param verdict the verdict that is expected; empty where the case says nothing of it
 * @param sizes the sizes that are expected, by name
 * @param findings the verdicts that are expected of clauses, by clause; a size that cannot be decided is a finding under its
 *     name
 */
public record Case(
        String id,
        String title,
        Job job,
        Choices choose,
        Optional<Verdict> verdict,
        Map<String, Amount> sizes,
        Map<String, Verdict> findings) {
    /** A size is as expected if it is no farther off than this: rounding in computing, no more. */
    private static final double EXACT = 1e-6;

    /** Refuses an empty name and a case that expects nothing; copies the maps. */
    public Case {
        if (id.isEmpty()) {
            throw new IllegalArgumentException("case must have an id, got an empty text");
        }
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(job, "job");
        Objects.requireNonNull(choose, "choose");
        Objects.requireNonNull(verdict, "verdict");
        sizes = Collections.unmodifiableMap(new TreeMap<>(sizes));
        findings = Collections.unmodifiableMap(new TreeMap<>(findings));
        if (verdict.isEmpty() && sizes.isEmpty() && findings.isEmpty()) {
            throw new IllegalArgumentException("case must expect a verdict, size or finding, got none of them");
        }
    }

    /**
     * What an assessment of the job does not make of it as expected.
     *
     * @param assessment the assessment
     * @return one error each, {@code case-verdict}, {@code case-size} or {@code case-finding}, at its place in the case's
     *     document; none exactly where the case holds
     */
    public List<Problem> against(Assessment assessment) {
        List<Problem> problems = new ArrayList<>();
        verdict.filter(expected -> expected != assessment.verdict())
                .ifPresent(expected -> problems.add(Problem.error(
                        "case-verdict",
                        "/expect/verdict",
                        args(id, expected, assessment.verdict().text()))));
        sizes.forEach((size, expected) -> size(size, expected, assessment).ifPresent(problems::add));
        findings.forEach(
                (clause, expected) -> finding(clause, expected, assessment).ifPresent(problems::add));
        return problems;
    }

    private static Args args(String id, Verdict expected, String got) {
        return Args.of("case", id).with("expected", expected.text()).with("got", got);
    }

    private Optional<Problem> size(String name, Amount expected, Assessment assessment) {
        Optional<Size> size = assessment.sizes().find(name);
        boolean holds = size.isPresent()
                && size.get().dimension() == expected.dimension()
                && StrictMath.abs(size.get().value() - expected.value()) <= EXACT;
        if (holds) {
            return Optional.empty();
        }
        Args args = Args.of("case", id)
                .with("size", name)
                .with("expected", shown(expected))
                .with(
                        "got",
                        size.map(s -> shown(new Amount(s.value(), s.dimension())))
                                .orElse("none"));
        return Optional.of(Problem.error("case-size", "/expect/sizes/" + name, args));
    }

    private static String shown(Amount amount) {
        Dimension dimension = amount.dimension();
        double value = dimension.toAnswer(amount.value());
        boolean whole = value == StrictMath.rint(value) && StrictMath.abs(value) < 1e15;
        return (whole ? Long.toString((long) value) : Double.toString(value)) + " " + dimension.answerUnit();
    }

    /** Of several findings of one clause the worst counts. */
    private Optional<Problem> finding(String clause, Verdict expected, Assessment assessment) {
        Optional<Verdict> got = assessment.findings().stream()
                .filter(finding -> finding.clause().equals(clause))
                .map(Finding::verdict)
                .reduce(Verdict::worse);
        if (got.isPresent() && got.get() == expected) {
            return Optional.empty();
        }
        Args args = args(id, expected, got.map(Verdict::text).orElse("none")).with("clause", clause);
        return Optional.of(Problem.error("case-finding", "/expect/findings/" + clause, args));
    }

    /**
     * What the job of a case touches of its rulebook, besides what others touched.
     *
     * @param assessment the assessment of the job by that rulebook
     * @param others what others touched
     * @return both together
     */
    public static Coverage covered(Assessment assessment, Coverage others) {
        Map<String, FigureValue> figures = assessment.figures();
        return others.plus(
                assessment
                        .sizes()
                        .before(figure ->
                                Optional.ofNullable(figures.get(figure)).map(FigureValue::estimate)),
                assessment.job().choose().parts());
    }
}
