/** The one speaker: turns what is true of a plan, typed, into words in the plan's units. */
package strikeoff.speech;
