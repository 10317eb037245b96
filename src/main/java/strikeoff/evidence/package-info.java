/** What a fact is: where in the plan it comes from, what is told with it, how sure it is. */
package strikeoff.evidence;
