/** Thresholds, defaults and tables that rules and derivations read as data. */
package strikeoff.policy;
