/** What was found wrong, and in whose words. */
package strikeoff.findings;
