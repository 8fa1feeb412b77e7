package quoin.fixing;

import java.util.ArrayList;
import java.util.List;
import quoin.judge.Args;
import quoin.judge.Finding;
import quoin.judge.Reason;
import quoin.judge.Source;
import quoin.judge.Step;
import quoin.parts.Declared;
import quoin.parts.Fastener;

/**
 * Whether a screw, its hole and what it goes through fit together.
 *
 * <p>Stateless.
 */
public final class Holes {
    /** A sum of decimals may miss a limit by rounding. */
    private static final double ROUNDING_MM = 1e-9;

    private static final Source GEOMETRY = Source.of(Source.Kind.HANDBOOK, "geometry of a cone of 90 deg");

    private Holes() {}

    /**
     * How deep the cone of a countersink goes.
     *
     * @param countersinkMm its diameter at the surface, in mm
     * @param holeMm the diameter of the hole, in mm, above 0 and not above that of the countersink
     * @return the depth in mm
     * @formula (countersink &minus; hole) / 2, for 90&deg;
     * @unit mm
     * @edge 0 where both are the same
     * @source handbook: geometry of a cone of 90 degrees
     * @throws IllegalArgumentException if the hole is not above 0 or wider than the countersink
     */
    public static double coneDepthMm(double countersinkMm, double holeMm) {
        if (!(holeMm > 0 && holeMm <= countersinkMm && countersinkMm < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("hole must be above 0 mm and at most the countersink of " + countersinkMm
                    + " mm, got " + holeMm + " mm");
        }
        return (countersinkMm - holeMm) / 2;
    }

    /**
     * How long a screw must be.
     *
     * @param throughMm how thick what it is screwed through is: the sheet of the frame, in mm
     * @param packerMm how thick the packer behind it is, in mm
     * @param boardMm how thick the board before the structure is, in mm
     * @param neededMm how much thread must sit in the structure, in mm
     * @return the length in mm: thread counts in the structure only
     * @formula through + packer + board + needed
     * @unit mm, each 0 or more
     * @edge none
     * @source practice: common practice, no source
     * @throws IllegalArgumentException if one is below 0 or not finite
     */
    public static double lengthMm(double throughMm, double packerMm, double boardMm, double neededMm) {
        double[] parts = {throughMm, packerMm, boardMm, neededMm};
        double sum = 0;
        for (double part : parts) {
            if (!(part >= 0 && part < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("thickness must be 0 mm or more and finite, got " + part + " mm");
            }
            sum += part;
        }
        return sum;
    }

    /**
     * What a screw goes through.
     *
     * @param sheetMm how thick the sheet with the countersink is, in mm; NaN where nobody said
     * @param packerMm the thickest packer behind it, in mm
     * @param boardMm how thick the board before the structure is, in mm; NaN where nobody said
     * @param neededMm how much thread must sit in the structure, in mm
     */
    public record Through(double sheetMm, double packerMm, double boardMm, double neededMm) {
        /** Refuses thicknesses below 0. */
        public Through {
            for (double part : new double[] {sheetMm, packerMm, boardMm, neededMm}) {
                if (part < 0 || Double.isInfinite(part)) {
                    throw new IllegalArgumentException(
                            "thickness must be 0 mm or more and finite, got " + part + " mm");
                }
            }
        }
    }

    /**
     * The checks of one screw: its hole, its countersink, its length.
     *
     * @param fastener the screw
     * @param through what it goes through
     * @return the findings {@code fixing.hole}, {@code fixing.countersink} and {@code fixing.length}; undecided, not verified,
     *     where a number is not known
     * @check fixing.hole, fixing.countersink, fixing.length
     * @formula hole &gt; thread; (countersink &minus; hole) / 2 &le; sheet; length &ge; sheet + packer + board + needed
     * @unit mm
     * @edge a hole as wide as its thread fails; a cone as deep as its sheet passes; a length that just reaches passes
     * @source handbook: geometry; the lengths are common practice, no source
     */
    public static List<Finding> check(Fastener fastener, Through through) {
        List<Finding> findings = new ArrayList<>();
        findings.add(hole(fastener));
        findings.add(countersink(fastener, through.sheetMm()));
        findings.add(length(fastener, through));
        return findings;
    }

    private static Finding hole(Fastener fastener) {
        String clause = "fixing.hole";
        double hole = fastener.hole().value();
        double thread = fastener.thread().value();
        if (!known(fastener.hole(), fastener.thread())) {
            return unknown(clause, fastener);
        }
        Args args = Args.of("fastener", fastener.id()).with("hole", hole, "mm").with("thread", thread);
        return verdict(clause, hole > thread, new Step("hole-and-thread", args, GEOMETRY));
    }

    private static Finding countersink(Fastener fastener, double sheetMm) {
        String clause = "fixing.countersink";
        if (!known(fastener.countersink(), fastener.hole()) || Double.isNaN(sheetMm)) {
            return unknown(clause, fastener);
        }
        double countersink = fastener.countersink().value();
        double hole = fastener.hole().value();
        Args args = Args.of("fastener", fastener.id())
                .with("countersink", countersink, "mm")
                .with("hole", hole)
                .with("sheet", sheetMm);
        if (!(hole > 0 && hole <= countersink)) {
            return verdict(clause, false, new Step("countersink-below-hole", args, GEOMETRY));
        }
        double depth = coneDepthMm(countersink, hole);
        return verdict(
                clause,
                depth <= sheetMm + ROUNDING_MM,
                new Step("cone-and-sheet", args.with("depth", depth), GEOMETRY));
    }

    private static Finding length(Fastener fastener, Through through) {
        String clause = "fixing.length";
        double sum = through.sheetMm() + through.packerMm() + through.boardMm() + through.neededMm();
        if (!known(fastener.length()) || Double.isNaN(sum)) {
            return unknown(clause, fastener);
        }
        double needed = lengthMm(through.sheetMm(), through.packerMm(), through.boardMm(), through.neededMm());
        double length = fastener.length().value();
        Args args = Args.of("fastener", fastener.id())
                .with("length", length, "mm")
                .with("atLeast", needed)
                .with("packer", through.packerMm())
                .with("board", through.boardMm())
                .with("thread", through.neededMm());
        return verdict(clause, length >= needed - ROUNDING_MM, new Step("length-needed", args, Source.PRACTICE));
    }

    private static boolean known(Declared... numbers) {
        for (Declared number : numbers) {
            if (!number.isKnown()) {
                return false;
            }
        }
        return true;
    }

    private static Finding unknown(String clause, Fastener fastener) {
        return Finding.undecided(clause, Reason.NOT_VERIFIED)
                .plusStep(Step.of("fastener-not-known", Args.of("fastener", fastener.id())));
    }

    private static Finding verdict(String clause, boolean holds, Step step) {
        return (holds ? Finding.pass(clause) : Finding.fail(clause)).plusStep(step);
    }
}
