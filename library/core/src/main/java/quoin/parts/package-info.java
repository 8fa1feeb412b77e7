/**
 * What the parts are: plain values of fabrics, drives, profiles, fasteners, substrates and the supply.
 *
 * <p>Knows {@code quoin.measure} and {@code quoin.judge}. Every number is a {@link quoin.parts.Declared}: it says what
 * it states and where it comes from, or that nobody declared it. Nothing is computed here.
 */
@NullMarked
package quoin.parts;

import org.jspecify.annotations.NullMarked;
