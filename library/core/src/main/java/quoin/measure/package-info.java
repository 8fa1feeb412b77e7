/**
 * Numbers with their doubt, instruments, and the text of quantities.
 *
 * <p>{@link quoin.measure.Uncertain} is a number that knows which {@link quoin.measure.Influence influences} it
 * depends on, and how strongly. An {@link quoin.measure.Instrument} turns what was read into such numbers.
 * Everything inside is a {@code double} in one coherent set: mm, rad, N, N·mm, kg, s, K. All types are immutable and
 * safe to share between threads.
 */
@NullMarked
package quoin.measure;

import org.jspecify.annotations.NullMarked;
