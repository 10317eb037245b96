/** Takes one plan from its text to its verdict. */
package strikeoff.check;
