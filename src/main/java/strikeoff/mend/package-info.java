/** Tries edits of a plan: only what mends a finding without a new stop is offered. */
package strikeoff.mend;
