/** The order of work, on hand-made print days. */
package strikeoff.sequence;
