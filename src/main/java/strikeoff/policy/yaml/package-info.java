/** Reads the policy's YAML: limits of each family of rules, defaults, and the trade's tables. */
package strikeoff.policy.yaml;
