/** A first plan to edit, from a few wishes. */
package strikeoff.start;
