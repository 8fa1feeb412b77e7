/**
 * What stands in the way, and the facts of a site that stop a job.
 *
 * <p>Knows {@code quoin.measure}, {@code quoin.judge}, {@code quoin.parts} and {@code quoin.opening}.
 */
@NullMarked
package quoin.clearance;

import org.jspecify.annotations.NullMarked;
