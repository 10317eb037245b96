/** What the templates fill in: words and drawings, all arithmetic done. */
package strikeoff.report.page;
