/**
 * How fast the library is, as ratios to code written by hand for the same work. {@code mvn -q -Pratios -DskipTests
 * package} in the project's root prints them; see {@link quoin.benchmarks.Ratios}.
 */
@NullMarked
package quoin.benchmarks;

import org.jspecify.annotations.NullMarked;
