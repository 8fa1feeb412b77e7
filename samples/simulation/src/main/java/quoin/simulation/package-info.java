/**
 * The closed circle: openings of known shape are read with known doubt and assessed, and what was claimed is held against
 * what happened. {@code mvn -q -Psimulation -DskipTests package} in the project's root prints the table.
 */
@NullMarked
package quoin.simulation;

import org.jspecify.annotations.NullMarked;
