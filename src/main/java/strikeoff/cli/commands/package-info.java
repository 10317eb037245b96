/** The commands: what each asks for on its line, and what it does then. */
package strikeoff.cli.commands;
