/** The command line: one job in, a job sheet or a JSON answer out. A sample; nothing here is API. */
@NullMarked
package quoin.cli;

import org.jspecify.annotations.NullMarked;
