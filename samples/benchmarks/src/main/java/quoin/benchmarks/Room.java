package quoin.benchmarks;

/** One opening: what was read, and how good it is. Twelve readings in mm, all by one tape, and two deductions. */
final class Room {
    /** Sides one to four, two diagonals, three widths, three lengths. */
    static final int READINGS = 12;
    /**
     * Corner angles, diagonal difference, least width and length; what width and length less their deductions leave beyond
     * the sizes, which are decided and so without doubt; the margins of both and of their product to an upper limit.
     */
    static final int OUTPUTS = 12;

    static final double FRESH = 0.5;
    static final double SCALE = 1e-4;
    static final double OFF_WIDTH = 12;
    static final double OFF_WIDTH_U = 0.4;
    static final double OFF_LENGTH = 5;
    static final double OFF_LENGTH_U = 0.25;
    static final double SIZE_WIDTH = 1486;
    static final double SIZE_LENGTH = 2393;
    static final double MOST_WIDTH = 1600;
    static final double MOST_LENGTH = 2500;
    static final double MOST_AREA = 4e6;

    private static final double[] READ = {
        2400, 1500, 2400.5, 1501, 2830.2, 2831.1, 1500.4, 1500.9, 1500.2, 2400.1, 2400.7, 2399.9
    };

    private Room() {}

    /** The readings, the first a little longer each time. */
    static void read(double[] into, int time) {
        System.arraycopy(READ, 0, into, 0, READINGS);
        into[0] += time * 1e-6;
    }
}
