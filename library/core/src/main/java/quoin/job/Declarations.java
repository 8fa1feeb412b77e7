package quoin.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import quoin.judge.Args;
import quoin.judge.Catalogue;
import quoin.judge.Figure;
import quoin.judge.Finding;
import quoin.judge.Problem;
import quoin.judge.Reason;
import quoin.judge.Source;
import quoin.judge.Stage;
import quoin.judge.Step;
import quoin.parts.Parts;
import quoin.rulebook.Lint;
import quoin.rulebook.Rulebook;

/**
 * The figures that a job declares, held against the rules: one of another kind than the rules use it as counts as not declared,
 * and is a finding. Immutable.
 */
final class Declarations {
    private final Catalogue catalogue;
    private final List<Problem> problems;
    private final List<Finding> findings;

    private Declarations(Catalogue catalogue, List<Problem> problems, List<Finding> findings) {
        this.catalogue = catalogue;
        this.problems = problems;
        this.findings = findings;
    }

    /**
     * Holds them against the rules.
     *
     * @throws IllegalArgumentException if the rulebook has errors whatever a job declares
     */
    static Declarations of(Job job, Rulebook rulebook, Parts parts) {
        List<Parts> lists = parts.id().isEmpty() ? List.of() : List.of(parts);
        Catalogue all = catalogue(job.declared());
        List<Problem> found = Lint.problems(rulebook, all, lists);
        if (errors(found).isEmpty()) {
            return new Declarations(all, found, List.of());
        }
        refuse(rulebook, Lint.problems(rulebook, Figures.CATALOGUE, lists));
        Map<String, FigureValue> usable = new LinkedHashMap<>();
        List<Finding> findings = new ArrayList<>();
        job.declared().forEach((id, value) -> {
            List<String> errors = errors(Lint.problems(rulebook, catalogue(Map.of(id, value)), lists));
            if (errors.isEmpty()) {
                usable.put(id, value);
            } else {
                findings.add(otherwise(id, value, errors));
            }
        });
        Catalogue rest = catalogue(usable);
        List<Problem> left = Lint.problems(rulebook, rest, lists);
        refuse(rulebook, left);
        return new Declarations(rest, left, findings);
    }

    private static Finding otherwise(String id, FigureValue value, List<String> errors) {
        Args args = Args.of("figure", id).with("got", value.dimension().label()).with("places", errors);
        return Finding.undecided(id, Reason.NOT_VERIFIED).plusStep(Step.of("declared-otherwise", args));
    }

    private static void refuse(Rulebook rulebook, List<Problem> problems) {
        List<String> errors = errors(problems);
        if (!errors.isEmpty()) {
            throw new IllegalArgumentException("rulebook " + rulebook.id() + " must be free of errors, got " + errors);
        }
    }

    private static List<String> errors(List<Problem> problems) {
        return problems.stream()
                .filter(problem -> problem.severity() == Problem.Severity.ERROR)
                .map(problem -> problem.code() + " at " + problem.pointer())
                .toList();
    }

    private static Catalogue catalogue(Map<String, FigureValue> declared) {
        if (declared.isEmpty()) {
            return Figures.CATALOGUE;
        }
        List<Figure> figures = new ArrayList<>();
        declared.forEach((id, value) -> figures.add(new Figure(
                id,
                value.dimension(),
                Stage.DECLARED,
                List.of(),
                "declared by the caller",
                Source.of(Source.Kind.DECLARED, ""))));
        return Figures.CATALOGUE.union(Catalogue.of(figures));
    }

    /** Every figure of the library, and those declared that the rules can use. */
    Catalogue catalogue() {
        return catalogue;
    }

    /** What somebody should look at in the rulebook. */
    List<Problem> problems() {
        return problems;
    }

    /** The figures that the rules cannot use as they are declared. */
    List<Finding> findings() {
        return findings;
    }
}
