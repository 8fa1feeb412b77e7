/**
 * One job, all of it: what is handed in, and the assessment that comes out of one pure call.
 *
 * <p>Knows every room below and computes no formula itself: it looks figures up, asks the rooms, and gathers findings.
 */
@NullMarked
package quoin.job;

import org.jspecify.annotations.NullMarked;
