/** What is kept of checked plans for other programs, for comparing, and for joining batches. */
package strikeoff.report.outcome;
