/**
 * What is true of a worked day: what touches what too early, what stands idle, what would mend it.
 */
package strikeoff.day.facts;
