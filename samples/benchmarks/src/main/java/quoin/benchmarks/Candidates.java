package quoin.benchmarks;

import java.util.List;

/** Who is measured against what, and what was promised. */
final class Candidates {
    /**
     * One line of the table.
     *
     * @param name as it is called
     * @param most the ratio that was promised; NaN where none was
     * @param bytes the bytes of one evaluation that were promised; NaN where none were
     */
    record Line(String name, double most, double bytes) {}

    static final List<Line> LINES = List.of(
            new Line("numbers", 6, 6000),
            new Line("evaluator", 4, 0),
            new Line("derivatives", Double.NaN, Double.NaN),
            new Line("derivatives by numbers", Double.NaN, Double.NaN));

    private Candidates() {}

    static Pair pair(String name) {
        return switch (name) {
            case "numbers" -> new Pair(new ByHand(), new ByNumbers());
            case "evaluator" -> new Pair(new ByHand(), new ByEvaluator());
            case "derivatives" -> new Pair(new ByHand(), new ByDerivatives());
            // How much faster the numbers are: promised is at least 6.
            case "derivatives by numbers" -> new Pair(new ByNumbers(), new ByDerivatives());
            default -> throw new IllegalArgumentException("candidate must be one of " + LINES + ", got " + name);
        };
    }
}
