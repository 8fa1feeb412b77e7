/**
 * Numbers with doubt: values and the influences on them, instruments, units and texts of quantities.
 *
 * <p>Knows the JDK, the units interface and the mathematics library only. Inside one coherent set of units is used: mm,
 * rad, kg, s, N, K, V, A.
 */
@NullMarked
package quoin.measure;

import org.jspecify.annotations.NullMarked;
