/** Values from outside the project, and what the models make of them. */
package strikeoff.checks;
