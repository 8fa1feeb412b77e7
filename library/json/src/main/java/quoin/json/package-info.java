/**
 * The documents of the library as JSON, both ways: jobs, rulebooks, parts lists, answers; and their schemas.
 *
 * <p>Every problem of a document is found in one pass and carries its line and column.
 */
@NullMarked
package quoin.json;

import org.jspecify.annotations.NullMarked;
