/**
 * The bridge to the rules: loads them, puts facts in, takes findings out; alone in using Drools.
 */
package strikeoff.rulebook;
