/** Quantities: what they are held in, how people write them, how they are shown. */
package strikeoff.units;
