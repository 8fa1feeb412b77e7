/**
 * Figures, bounds, decisions and findings: how a value with doubt is held against a limit, and what is said about it.
 *
 * <p>Knows {@code quoin.measure} only. Every room above publishes its figures as a {@link quoin.judge.Catalogue} and
 * answers with {@link quoin.judge.Finding}s.
 */
@NullMarked
package quoin.judge;

import org.jspecify.annotations.NullMarked;
