/** A print plan as records, in the words of the trade. */
package strikeoff.plan;
