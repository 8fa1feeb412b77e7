package quoin.job;

/**
 * Temperatures of the job, in K; NaN where not stated. Immutable and safe for use by many threads.
 *
 * @param measuredK when it was measured
 * @param fromK the coldest in service
 * @param toK the hottest in service
 */
public record Heat(double measuredK, double fromK, double toK) {
    /** Nothing was said about temperatures. */
    public static final Heat UNSTATED = new Heat(Double.NaN, Double.NaN, Double.NaN);

    /** {@return whether anything was said} */
    public boolean isStated() {
        return !(Double.isNaN(measuredK) && Double.isNaN(fromK) && Double.isNaN(toK));
    }
}
