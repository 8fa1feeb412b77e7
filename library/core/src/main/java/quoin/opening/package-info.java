/**
 * The opening: what was read of it, the shape that fits the readings best, with its doubt, and what true rectangle goes
 * in.
 *
 * <p>Knows {@code quoin.measure} and {@code quoin.judge}. Corners and sides are named as seen standing underneath,
 * facing the head, looking up.
 */
@NullMarked
package quoin.opening;

import org.jspecify.annotations.NullMarked;
