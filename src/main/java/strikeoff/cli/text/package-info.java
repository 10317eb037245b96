/** What is told on a terminal and how: lines in columns and ink, complaints, exit codes. */
package strikeoff.cli.text;
