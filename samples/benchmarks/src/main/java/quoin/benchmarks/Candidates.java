package quoin.benchmarks;

import java.nio.charset.StandardCharsets;
import java.util.List;
import quoin.opening.Survey;

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
            new Line("derivatives by numbers", Double.NaN, Double.NaN),
            new Line("adjust 6", 1.5, Double.NaN),
            new Line("adjust 12", 1.5, Double.NaN),
            new Line("adjust 6, rho", Double.NaN, Double.NaN),
            new Line("adjust 12, rho", Double.NaN, Double.NaN),
            new Line("adjust 6, tape", Double.NaN, Double.NaN),
            new Line("adjust 12, tape", Double.NaN, Double.NaN),
            new Line("adjust 6, bows", Double.NaN, Double.NaN),
            new Line("adjust 12, bows", Double.NaN, Double.NaN),
            new Line("turn by adjust 6", 20, Double.NaN),
            new Line("turn by adjust 12", 20, Double.NaN),
            new Line("turn by adjust 6, bows", Double.NaN, Double.NaN),
            // four sides by one pass that takes the farthest place first, and is wrong where that leads nowhere
            new Line("set out", 10, Double.NaN),
            // 500 clauses by the bare parse of the same text; sizes and bounds by code for that one rulebook
            new Line("load rules", 20, Double.NaN),
            new Line("apply rules", 5, Double.NaN));

    private Candidates() {}

    static Pair pair(String name) {
        return switch (name) {
            case "numbers" -> new Pair(new ByHand(), new ByNumbers());
            case "evaluator" -> new Pair(new ByHand(), new ByEvaluator());
            case "derivatives" -> new Pair(new ByHand(), new ByDerivatives());
            // How much faster the numbers are: promised is at least 6.
            case "derivatives by numbers" -> new Pair(new ByNumbers(), new ByDerivatives());
            case "adjust 6" -> adjusted(Net.SIX, Net.straight(Net.SIX));
            case "adjust 12" -> adjusted(Net.TWELVE, Net.straight(Net.TWELVE));
            case "adjust 6, rho" -> correlated(Net.SIX);
            case "adjust 12, rho" -> correlated(Net.TWELVE);
            case "adjust 6, tape" -> adjusted(Net.SIX, Net.usual(Net.SIX, 0));
            case "adjust 12, tape" -> adjusted(Net.TWELVE, Net.usual(Net.TWELVE, 0));
            case "adjust 6, bows" -> adjusted(Net.SIX, Net.usual(Net.SIX, Net.BOW));
            case "adjust 12, bows" -> adjusted(Net.TWELVE, Net.usual(Net.TWELVE, Net.BOW));
            case "turn by adjust 6" -> turned(Net.straight(Net.SIX));
            case "turn by adjust 12" -> turned(Net.straight(Net.TWELVE));
            case "turn by adjust 6, bows" -> turned(Net.usual(Net.SIX, Net.BOW));
            case "set out" -> new Pair(new SetOutByGreedy(), new SetOutByRules());
            case "load rules" -> loaded();
            case "apply rules" -> new Pair(new ApplyByHand(), new ApplyByRules());
            default -> throw new IllegalArgumentException("candidate must be one of " + LINES + ", got " + name);
        };
    }

    private static Pair loaded() {
        byte[] text = Rules.large(Rules.CLAUSES).getBytes(StandardCharsets.UTF_8);
        return new Pair(new LoadBare(text), new LoadRules(text));
    }

    private static Pair adjusted(int count, List<Survey> surveys) {
        return new Pair(new AdjustByHand(count), new AdjustByLibrary(surveys, false));
    }

    private static Pair correlated(int count) {
        return new Pair(new AdjustByHand(count), new AdjustByLibrary(Net.straight(count), true));
    }

    private static Pair turned(List<Survey> surveys) {
        return new Pair(new AdjustByLibrary(surveys, false), new Turned(surveys));
    }
}
