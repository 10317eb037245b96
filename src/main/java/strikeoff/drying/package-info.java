/**
 * How printed films dry: water in the film, evaporation into the room's air, and the three states.
 */
package strikeoff.drying;
