/**
 * Words for codes: the message catalogue of the library, and plain words for odds, margins and places.
 *
 * <p>Knows {@code quoin.judge} and {@code quoin.opening}. Nothing in the library depends on it: an answer holds codes and
 * arguments, and whoever shows it to people asks here.
 */
@NullMarked
package quoin.words;

import org.jspecify.annotations.NullMarked;
