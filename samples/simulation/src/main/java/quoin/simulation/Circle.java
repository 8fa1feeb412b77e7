package quoin.simulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import quoin.judge.Bound;
import quoin.judge.Conformity;
import quoin.measure.Estimate;
import quoin.measure.Extreme;
import quoin.measure.Uncertain;
import quoin.opening.AdjustedReading;
import quoin.opening.Fit;
import quoin.opening.Gaps;
import quoin.opening.Opening;
import quoin.opening.OpeningFigures;

/** Claims against what happened, for openings of some spread. */
public final class Circle {
    private static final int OPENINGS = 100_000;
    /** From wide to narrow, in standard uncertainties of a reading. */
    private static final double[] SPREADS = {40, 20, 5, 2, 1};

    private static final double LEAST_GAP = 1;
    private static final double DIAGONALS = 3;
    private static final double CORNER_RAD = 0.0025;

    private final Tally gap = new Tally("frame goes in with 1 mm");
    private final Tally doubtful = new Tally("the same, claimed 0.1 to 0.9");
    private final Tally diagonals = new Tally("diagonals within 3 mm");
    private final Tally square = new Tally("corners within 2.5 mm a metre");
    private final Tally alarms = new Tally("false alarms");
    private final Tally found = new Tally("slips of detectable size");

    Circle(double spread, int openings, long seed) {
        Population population = new Population(spread, seed);
        for (int i = 0; i < openings; i++) {
            population.next();
            one(population);
        }
    }

    /**
     * Prints the table.
     *
     * @param args how many openings for each row, 100,000 if left out
     */
    public static void main(String[] args) {
        int openings = args.length > 0 ? Integer.parseInt(args[0]) : OPENINGS;
        System.out.println(
                openings + " openings for each spread; six readings, each good to " + Population.FRESH + " mm.");
        for (double spread : SPREADS) {
            System.out.println(String.format(Locale.ROOT, "%nEach unknown drawn with a spread of %.0f u", spread));
            System.out.println(String.format("  %-32s %9s %9s %11s", "", "claimed", "happened", "difference"));
            for (Tally tally : new Circle(spread * Population.FRESH, openings, 1).tallies()) {
                System.out.println(String.format(
                        Locale.ROOT,
                        "  %-32s %9.4f %9.4f %+8.4f ± %.4f",
                        tally.name(),
                        tally.claimed(),
                        tally.happened(),
                        tally.difference(),
                        tally.error()));
            }
        }
    }

    List<Tally> tallies() {
        return new ArrayList<>(List.of(gap, doubtful, diagonals, square, alarms, found));
    }

    private void one(Population population) {
        Opening truth = population.truth();
        Opening read = population.read(-1, 0);
        alarms.add(0.001, !read.adjustment().isAccepted());
        if (read.adjustment().isSolved()) {
            odds(population, truth, read);
        }
        slip(population, read);
    }

    private void odds(Population population, Opening truth, Opening read) {
        Fit.Rectangle largest = Fit.largest(read).orElseThrow();
        double allowance = 2 * (0.5 + 0.5 * population.upTo(5));
        Uncertain width = Uncertain.exact(Math.floor(largest.width().value() - allowance));
        Uncertain length = Uncertain.exact(Math.floor(largest.length().value() - allowance));
        Bound goesIn = Bound.atLeast(LEAST_GAP);
        Extreme least = Gaps.least(Gaps.of(read, width, length).orElseThrow());
        double claimed = Conformity.odds(least, goesIn).value();
        boolean holds = Gaps.least(Gaps.of(truth, width, length).orElseThrow()).value() >= LEAST_GAP;
        gap.add(claimed, holds);
        if (claimed >= 0.1 && claimed <= 0.9) {
            doubtful.add(claimed, holds);
        }
        compare(
                diagonals,
                OpeningFigures.diagonalDifference(read),
                OpeningFigures.diagonalDifference(truth),
                DIAGONALS);
        compare(square, OpeningFigures.worstDeparture(read), OpeningFigures.worstDeparture(truth), CORNER_RAD);
    }

    private static void compare(Tally tally, Estimate read, Estimate truth, double limit) {
        tally.add(Conformity.odds(read, Bound.within(limit)).value(), Math.abs(truth.value()) <= limit);
    }

    /** A slip of the size that is said to be noticed four times in five. */
    private void slip(Population population, Opening read) {
        int which = population.upTo(6);
        List<AdjustedReading> readings = read.adjustment().readings();
        if (!readings.isEmpty()) {
            Opening wrong = population.read(which, readings.get(which).detectable());
            found.add(0.8, !wrong.adjustment().isAccepted());
        }
    }
}
