/**
 * What colours look like: sRGB to CIELAB, differences between colours, and estimates of how pastes
 * look on the ground and on each other.
 */
package strikeoff.colour;
