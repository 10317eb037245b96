/** Where the program begins and ends; alone in exiting. */
package strikeoff.cli;
