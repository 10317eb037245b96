/**
 * Proposes the run of a plan: the shortest day that the check accepts, and how far from the best.
 */
package strikeoff.propose;
