/**
 * Where holes go, what they are, what each fixing carries and what is packed behind the frame.
 *
 * <p>Knows {@code quoin.measure}, {@code quoin.judge}, {@code quoin.parts} and {@code quoin.opening}.
 */
@NullMarked
package quoin.fixing;

import org.jspecify.annotations.NullMarked;
