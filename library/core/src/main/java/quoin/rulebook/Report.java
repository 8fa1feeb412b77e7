package quoin.rulebook;

import java.util.ArrayList;
import java.util.List;
import quoin.judge.Args;
import quoin.judge.Problem;
import quoin.judge.Source;
import quoin.measure.Amount;
import quoin.measure.Dimension;

/** Problems as they are found. */
final class Report {
    /** No length in mm, force in N or mass in kg of a building is as large; larger numbers would only overflow. */
    private static final double LARGEST = 1e9;

    private final List<Problem> problems = new ArrayList<>();

    List<Problem> problems() {
        return List.copyOf(problems);
    }

    boolean hasErrors() {
        return problems.stream().anyMatch(problem -> problem.severity() == Problem.Severity.ERROR);
    }

    void error(String code, String pointer, Args args) {
        problems.add(Problem.error(code, pointer, args));
    }

    void warning(String code, String pointer, Args args) {
        problems.add(Problem.warning(code, pointer, args));
    }

    void source(String id, Source source, String pointer) {
        if (!source.isStated()) {
            warning("missing-source", pointer, Args.of("clause", id));
        }
    }

    void above(double limit, Amount got, String pointer) {
        number(got.value() > limit, "above", limit, got, pointer);
    }

    void atLeast(double limit, Amount got, String pointer) {
        number(got.value() >= limit, "atLeast", limit, got, pointer);
    }

    /** Nothing absurdly large. */
    void bounded(Amount got, String pointer) {
        number(StrictMath.abs(got.value()) <= LARGEST, "atMost", LARGEST, got, pointer);
    }

    private void number(boolean holds, String name, double limit, Amount got, String pointer) {
        if (!holds) {
            Dimension dimension = got.dimension();
            Args args = Args.of(name, dimension.toAnswer(limit)).with("got", shown(got));
            error("number-range", pointer, args.with("unit", dimension.answerUnit()));
        }
    }

    /** In the unit of answers; far too large a number may overflow there and then stands as it is inside. */
    private static double shown(Amount amount) {
        double shown = amount.toAnswer();
        return Double.isFinite(shown) ? shown : amount.value();
    }

    void dimension(Dimension expected, Dimension got, String pointer) {
        if (expected != got) {
            Args args = Args.of("expected", expected.label()).with("got", got.label());
            error("wrong-dimension", pointer, args.with("unit", expected.answerUnit()));
        }
    }

    /** One step of a JSON pointer. */
    static String step(String name) {
        return "/" + name.replace("~", "~0").replace("/", "~1");
    }
}
