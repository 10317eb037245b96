/**
 * The plan and its day as plain facts for a studio's own rules: what is used, placed and done, with
 * no judgement in it. Built-in rules judge facts that are closer to a fault.
 */
package strikeoff.described;
