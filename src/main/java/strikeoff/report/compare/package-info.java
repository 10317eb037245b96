/** What changed between two versions of a plan or of a batch. */
package strikeoff.report.compare;
