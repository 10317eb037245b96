/** What is read from and written to a disk: plans, policies, reports; nothing is half-written. */
package strikeoff.cli.files;
