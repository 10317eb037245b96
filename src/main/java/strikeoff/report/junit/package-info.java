/** Results as JUnit XML, which most CI servers show. */
package strikeoff.report.junit;
