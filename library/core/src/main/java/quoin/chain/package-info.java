/**
 * The parts of a frame and how they add up.
 *
 * <p>Knows {@code quoin.measure}, {@code quoin.judge}, {@code quoin.parts} and {@code quoin.opening}.
 */
@NullMarked
package quoin.chain;

import org.jspecify.annotations.NullMarked;
