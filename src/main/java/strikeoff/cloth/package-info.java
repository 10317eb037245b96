/** What the cloth's fibres make of dye. */
package strikeoff.cloth;
