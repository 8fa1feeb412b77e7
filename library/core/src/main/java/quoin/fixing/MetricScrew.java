package quoin.fixing;

/**
 * Metric screws: the holes of ISO 273, the countersinks of ISO 15065 and the countersunk heads of ISO 7046-1.
 *
 * <p>From secondary sources. One transcription of ISO 15065 prints 0.4 for M5; 10.4 is right by another and by the row.
 */
public enum MetricScrew {
    /** M3. */
    M3(3, 3.2, 3.4, 3.6, 6.3, 5.5, 1.65),
    /** M4. */
    M4(4, 4.3, 4.5, 4.8, 9.4, 8.4, 2.7),
    /** M5. */
    M5(5, 5.3, 5.5, 5.8, 10.4, 9.3, 2.7),
    /** M6. */
    M6(6, 6.4, 6.6, 7.0, 12.6, 11.3, 3.3),
    /** M8. */
    M8(8, 8.4, 9, 10, 17.3, 15.8, 4.65);

    private final double diameterMm;
    private final double fineMm;
    private final double mediumMm;
    private final double coarseMm;
    private final double countersinkMm;
    private final double headMm;
    private final double headHeightMm;

    MetricScrew(
            double diameterMm,
            double fineMm,
            double mediumMm,
            double coarseMm,
            double countersinkMm,
            double headMm,
            double headHeightMm) {
        this.diameterMm = diameterMm;
        this.fineMm = fineMm;
        this.mediumMm = mediumMm;
        this.coarseMm = coarseMm;
        this.countersinkMm = countersinkMm;
        this.headMm = headMm;
        this.headHeightMm = headHeightMm;
    }

    /** The series of ISO 273. */
    public enum Series {
        /** Close. */
        FINE,
        /** Usual. */
        MEDIUM,
        /** Wide. */
        COARSE
    }

    /**
     * Its nominal diameter.
     *
     * @return d in mm
     */
    public double diameterMm() {
        return diameterMm;
    }

    /**
     * The hole it passes through.
     *
     * @param series how close
     * @return the diameter in mm, ISO 273
     */
    public double clearanceMm(Series series) {
        return switch (series) {
            case FINE -> fineMm;
            case MEDIUM -> mediumMm;
            case COARSE -> coarseMm;
        };
    }

    /**
     * The countersink for its head.
     *
     * @return the diameter in mm, ISO 15065, 90&deg;
     */
    public double countersinkMm() {
        return countersinkMm;
    }

    /**
     * Its countersunk head.
     *
     * @return the greatest diameter in mm, ISO 7046-1
     */
    public double headMm() {
        return headMm;
    }

    /**
     * How high its countersunk head is.
     *
     * @return the greatest height in mm, ISO 7046-1
     */
    public double headHeightMm() {
        return headHeightMm;
    }
}
