/**
 * How much paste each colour needs, what it is mixed from, and how old it is when it is printed.
 */
package strikeoff.paste;
