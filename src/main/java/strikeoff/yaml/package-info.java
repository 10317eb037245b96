/**
 * YAML as a tree that knows its places: strict, bounded, and kind to the person who wrote it. The
 * readers of plans and of the policy decode that tree.
 */
package strikeoff.yaml;
