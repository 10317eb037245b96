/** The command line: what is asked, what is printed, how it exits; alone in doing these. */
package strikeoff.cli;
