/** What people see: one self-contained HTML page for a plan, one for a batch. Decides nothing. */
package strikeoff.report;
