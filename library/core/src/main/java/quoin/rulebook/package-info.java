/**
 * Rules as data: how sizes are decided, which bounds they and the figures must keep, and what is wrong with a rulebook.
 *
 * <p>Knows {@code quoin.measure}, {@code quoin.judge} and {@code quoin.parts}; knows no room: figures are looked up by
 * name. A rule cannot run: sizes are linear in figures, picked from bands or by choice, and rounded.
 */
@NullMarked
package quoin.rulebook;

import org.jspecify.annotations.NullMarked;
