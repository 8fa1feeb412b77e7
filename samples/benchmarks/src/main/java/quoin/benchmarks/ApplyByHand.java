package quoin.benchmarks;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.special.Erf;

/**
 * The same typed out for this one rulebook, as a careful engineer would who must show how each number came about: values,
 * verdicts, odds, margins, and a record for each step. Doubt is propagated by plain sums of squares.
 */
final class ApplyByHand implements Work {
    /** One step: what was done, with which numbers. */
    record Said(String code, String what, double a, double b, double c, String unit) {}

    /** What was found of one bound. */
    record Found(String clause, String verdict, double odds, double margin, double u, List<Said> said) {}

    /** One size. */
    record Made(String id, double value, double within, List<Said> said) {}

    final List<Made> sizes = new ArrayList<>();
    final List<Found> findings = new ArrayList<>();

    @Override
    public double once(int time) {
        sizes.clear();
        findings.clear();
        double width = Rules.width(time);
        double length = Rules.length(time);
        double frameWidth = frame("frame.width", "fit.width", width);
        double frameLength = frame("frame.length", "fit.length", length);
        List<Said> box = new ArrayList<>();
        box.add(new Said("base-figure", "frame.width", frameWidth, 0, 0, "mm"));
        box.add(new Said("choice", "drive-m", Rules.PLATES, 0, 0, "mm"));
        box.add(new Said("less", "plates", Rules.PLATES, 1, 0, "mm"));
        sizes.add(new Made("headbox.length", frameWidth - Rules.PLATES, 0, box));
        sizes.add(tube(frameWidth));
        List<Said> fabric = new ArrayList<>();
        fabric.add(new Said("base-figure", "frame.length", frameLength, 0, 0, "mm"));
        fabric.add(new Said("more", "wraps", Rules.WRAPS, 1, 0, "mm"));
        sizes.add(new Made("fabric.length", frameLength + Rules.WRAPS, 0, fabric));
        double cut = Rules.CUT / Math.sqrt(3);
        double fit = Math.sqrt(0.9 * 0.9 + 0.1 * 0.1 + 0.1 * 0.1);
        double square = Math.sqrt(0.8 * 0.8 + 0.8 * 0.8);
        bound("widest", frameWidth, cut, Double.NEGATIVE_INFINITY, Rules.WIDEST);
        bound("shortest", frameLength, cut, Rules.LEAST_LENGTH, Double.POSITIVE_INFINITY);
        bound("narrowest", width, fit, Rules.LEAST_FIT, Double.POSITIVE_INFINITY);
        bound("square", Rules.difference(time), square, -Rules.OUT_OF_SQUARE, Rules.OUT_OF_SQUARE);
        double sum = 0;
        for (Made made : sizes) {
            sum += made.value() + made.said().size();
        }
        for (Found found : findings) {
            sum += found.odds() + found.margin();
        }
        return sum;
    }

    private double frame(String id, String figure, double fit) {
        double bare = fit - 2 * Rules.GAP;
        double value = Math.floor(bare + 1e-6);
        List<Said> said = new ArrayList<>();
        said.add(new Said("base-figure", figure, fit, 0, 0, "mm"));
        said.add(new Said("less", "gap", Rules.GAP, 2, 0, "mm"));
        said.add(new Said("round", "down", bare, value, bare - value, "mm"));
        sizes.add(new Made(id, value, Rules.CUT, said));
        return value;
    }

    private static Made tube(double width) {
        for (int i = 0; i < Rules.TUBE.length; i++) {
            if (width <= Rules.TUBE_UP_TO[i]) {
                List<Said> said = new ArrayList<>();
                said.add(new Said("band", "frame.width", width, Rules.TUBE_UP_TO[i], Rules.TUBE[i], "mm"));
                said.add(new Said("base-amount", "", Rules.TUBE[i], 0, 0, "mm"));
                return new Made("tube.diameter", Rules.TUBE[i], 0, said);
            }
        }
        throw new IllegalStateException("width must be at most 3000 mm, got " + width + " mm");
    }

    private void bound(String clause, double y, double u, double least, double most) {
        double odds = below((most - y) / u) - below((least - y) / u);
        String verdict = odds >= Rules.PROBABILITY ? "pass" : odds <= 1 - Rules.PROBABILITY ? "fail" : "undecided";
        double margin = Math.min(y - least, most - y);
        List<Said> said = new ArrayList<>();
        said.add(new Said("bound", y - least < most - y ? "atLeast" : "atMost", least, most, margin, "mm"));
        findings.add(new Found(clause, verdict, odds, margin, u, said));
    }

    private static double below(double z) {
        return z == Double.POSITIVE_INFINITY
                ? 1
                : z == Double.NEGATIVE_INFINITY ? 0 : 0.5 * Erf.erfc(-z / Math.sqrt(2));
    }
}
