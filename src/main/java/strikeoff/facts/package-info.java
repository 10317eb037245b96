/** Runs the derivations in order and gathers the facts that rules judge. */
package strikeoff.facts;
