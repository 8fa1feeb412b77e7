package quoin.fixing;

import java.util.List;

/** Where the holes of one side go, or why there is no way. Values are immutable and safe for use by many threads. */
public sealed interface SetOut {
    /**
     * A row of the fewest holes, as even as it can be.
     *
     * @param atMm running dimensions from the start of the side to the centre of each hole, in mm
     * @param farthestMm for each hole but the last the farthest place that it can take in any row, in mm: with fewer holes the
     *     last would not come to its end
     * @param symmetric whether the row is its own mirror image
     */
    record Holes(List<Double> atMm, List<Double> farthestMm, boolean symmetric) implements SetOut {
        /** Copies the lists. */
        public Holes {
            atMm = List.copyOf(atMm);
            farthestMm = List.copyOf(farthestMm);
        }

        /**
         * The largest pitch.
         *
         * @return the greatest distance of two neighbours in mm, 0 where there is one hole
         */
        public double greatestPitchMm() {
            double greatest = 0;
            for (int i = 1; i < atMm.size(); i++) {
                greatest = Math.max(greatest, atMm.get(i) - atMm.get(i - 1));
            }
            return greatest;
        }
    }

    /**
     * There is no row.
     *
     * @param fromMm where the next hole would have to be at the nearest, in mm
     * @param toMm where it would have to be at the farthest, in mm
     * @param because what bars that stretch, in order; {@code timbers} where there is no timber to find; empty where pitch
     *     and ends leave no place at all
     */
    record Blocked(double fromMm, double toMm, List<String> because) implements SetOut {
        /** Copies the list. */
        public Blocked {
            because = List.copyOf(because);
        }
    }
}
