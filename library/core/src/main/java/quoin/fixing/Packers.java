package quoin.fixing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import quoin.judge.Bound;
import quoin.judge.Conformity;
import quoin.judge.DecisionRule;
import quoin.judge.Finding;
import quoin.measure.Dimension;
import quoin.measure.Extreme;
import quoin.measure.Steps;
import quoin.measure.Uncertain;
import quoin.opening.LineFit.Station;

/**
 * Which packers go behind a frame: for each gap the thickest stack that goes in, of the fewest pieces.
 *
 * <p>Rounded down, never up: a stack thicker than its gap pushes the frame out of line. A gap smaller than the thinnest
 * piece, or than twice its standard uncertainty, gets none: the readings cannot tell that it is there. Immutable and safe
 * for use by many threads.
 */
public final class Packers {
    private static final double GRID_MM = 1e-3;
    /** A wider gap is none to pack, in mm. */
    public static final double MOST_MM = 100;

    private static final int MOST_KINDS = 20;

    private final long[] kinds;
    private final long unit;
    /** For each thickness in units the first piece of the stack of fewest pieces, 0 where there is no such stack. */
    private final int[] first;

    private Packers(long[] kinds, long unit) {
        this.kinds = kinds;
        this.unit = unit;
        this.first = firstPieces();
    }

    /**
     * Packers of these thicknesses, as many of each as are needed.
     *
     * @param thicknesses in mm, whole thousandths, from 0.001 to 100 mm; 1 to 20 of them
     * @return the packers
     * @throws IllegalArgumentException if there are none or too many, or one is not such a thickness
     */
    public static Packers of(List<Double> thicknesses) {
        if (thicknesses.isEmpty() || thicknesses.size() > MOST_KINDS) {
            throw new IllegalArgumentException(
                    "number of thicknesses must be from 1 to " + MOST_KINDS + ", got " + thicknesses.size());
        }
        long[] kinds = new long[thicknesses.size()];
        long unit = 0;
        for (int i = 0; i < kinds.length; i++) {
            kinds[i] = thousandths(thicknesses.get(i));
            unit = divisor(kinds[i], unit);
        }
        Arrays.sort(kinds);
        return new Packers(kinds, unit);
    }

    /**
     * The packers behind a frame.
     *
     * @param gaps the gaps at the fixings, such as those of a {@link PackingLine}, in mm, each at most 100 mm
     * @return one for each gap, in their order
     * @formula the greatest sum of thicknesses not above the gap; left = gap − sum
     * @unit mm
     * @edge a gap within 1e-6 of a unit of a sum counts as that sum; none for a negative gap
     * @source practice: a packer below what a reading can tell is left out (2 u)
     * @throws IllegalArgumentException if a gap is above 100 mm: that is no gap to pack
     */
    public List<Packer> fill(List<Station> gaps) {
        List<Packer> packers = new ArrayList<>();
        for (Station gap : gaps) {
            packers.add(new Packer(gap.alongMm(), List.of(), gap.offset()));
        }
        packers.replaceAll(packer -> fill(packer.alongMm(), packer.left()));
        return packers;
    }

    private Packer fill(double along, Uncertain gap) {
        if (!(gap.value() <= MOST_MM)) {
            throw new IllegalArgumentException("gap must be " + MOST_MM + " mm or less, got " + gap.value() + " mm");
        }
        double tells = StrictMath.max(kinds[0] * GRID_MM, 2 * gap.standardUncertainty());
        List<Double> pieces = new ArrayList<>();
        double sum = 0;
        if (gap.value() >= tells) {
            int units = (int) StrictMath.rint(Steps.down(gap.value(), unit * GRID_MM) / (unit * GRID_MM));
            while (first[units] == 0) {
                units--;
            }
            for (int rest = units; rest > 0; rest -= first[rest]) {
                pieces.add(first[rest] * unit / 1e3);
            }
            sum = units * unit / 1e3;
        }
        return new Packer(along, pieces, gap.minus(sum));
    }

    /**
     * Whether the screws may be driven home: what is left bends the frame no more than is allowed.
     *
     * @param packers the packers, at least one
     * @param mostMm how far the frame may be bent, in mm, 0 or more
     * @param rule how sure one must be
     * @return a finding {@code packers}: pass, fail, or undecided
     * @throws IllegalArgumentException if there are no packers
     */
    public static Finding mayTighten(List<Packer> packers, double mostMm, DecisionRule rule) {
        List<Extreme.Part> parts = new ArrayList<>();
        for (Packer packer : packers) {
            parts.add(new Extreme.Part(List.of("at-" + packer.alongMm()), packer.left()));
        }
        return Conformity.check("packers", Extreme.largestInSize(parts), Dimension.LENGTH, Bound.within(mostMm), rule);
    }

    private int[] firstPieces() {
        int[] pieces = new int[(int) (MOST_MM / GRID_MM / unit) + 1];
        int[] fewest = new int[pieces.length];
        Arrays.fill(fewest, 1, fewest.length, Integer.MAX_VALUE);
        for (int sum = 1; sum < pieces.length; sum++) {
            for (long kind : kinds) {
                int piece = (int) (kind / unit);
                if (piece <= sum && fewest[sum - piece] < fewest[sum]) {
                    fewest[sum] = fewest[sum - piece] + 1;
                    pieces[sum] = piece;
                }
            }
        }
        return pieces;
    }

    private static long thousandths(double thickness) {
        double count = StrictMath.rint(thickness / GRID_MM);
        if (!(thickness > 0 && thickness <= MOST_MM && StrictMath.abs(thickness / GRID_MM - count) <= 1e-6)) {
            throw new IllegalArgumentException(
                    "thickness must be whole thousandths from 0.001 mm to 100 mm, got " + thickness + " mm");
        }
        return (long) count;
    }

    private static long divisor(long a, long b) {
        return b == 0 ? a : divisor(b, a % b);
    }
}
