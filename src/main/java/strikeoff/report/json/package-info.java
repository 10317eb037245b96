/** Results as JSON of our own, documented by a schema, and back. */
package strikeoff.report.json;
