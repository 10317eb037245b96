/** Reads plans: each part of the plan has its own small decoder, and every mistake its place. */
package strikeoff.plan.yaml;
