/** Writes the catalogue of figures, checks, clauses and functions from the Javadoc, and refuses what is incomplete. */
package quoin.doclet;
