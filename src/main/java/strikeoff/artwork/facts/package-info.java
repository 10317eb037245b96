/** What is true of a plan's films, against the plan and against each other. */
package strikeoff.artwork.facts;
