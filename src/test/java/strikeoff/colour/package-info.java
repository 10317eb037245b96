/** Colour against published values, and its laws. */
package strikeoff.colour;
