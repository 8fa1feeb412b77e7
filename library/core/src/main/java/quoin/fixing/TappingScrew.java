package quoin.fixing;

/**
 * Tapping screws for sheet: thread, pitch and core of ISO 1478 (secondary source).
 *
 * <p>The sheet must be thicker than one pitch, or the hold is a matter of test.
 */
public enum TappingScrew {
    /** ST2.9. */
    ST_2_9(2.90, 1.06, 2.18),
    /** ST3.5. */
    ST_3_5(3.53, 1.27, 2.64),
    /** ST4.2. */
    ST_4_2(4.22, 1.41, 3.10),
    /** ST4.8. */
    ST_4_8(4.80, 1.59, 3.58),
    /** ST5.5. */
    ST_5_5(5.46, 1.81, 4.17);

    private final double diameterMm;
    private final double pitchMm;
    private final double coreMm;

    TappingScrew(double diameterMm, double pitchMm, double coreMm) {
        this.diameterMm = diameterMm;
        this.pitchMm = pitchMm;
        this.coreMm = coreMm;
    }

    /**
     * The outer diameter of its thread.
     *
     * @return d in mm
     */
    public double diameterMm() {
        return diameterMm;
    }

    /**
     * From one turn of its thread to the next.
     *
     * @return the pitch in mm
     */
    public double pitchMm() {
        return pitchMm;
    }

    /**
     * The diameter of its core.
     *
     * @return the core in mm
     */
    public double coreMm() {
        return coreMm;
    }

    /**
     * Whether a sheet is thick enough for its thread.
     *
     * @param sheetMm how thick the sheet is, in mm
     * @return whether it is thicker than one pitch; false for NaN
     * @formula sheet &gt; pitch
     * @unit mm
     * @edge a sheet of exactly one pitch is not thick enough
     * @source handbook: rule for tapping screws, read in secondary sources
     */
    public boolean bites(double sheetMm) {
        return sheetMm > pitchMm;
    }
}
