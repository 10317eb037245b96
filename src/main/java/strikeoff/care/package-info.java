/** Where the plan's work can hurt someone, and the usual cautions for it. */
package strikeoff.care;
