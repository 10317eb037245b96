/** Results as SARIF 2.1.0 (OASIS), for code review and CI. */
package strikeoff.report.sarif;
