/**
 * What a screen can print: its mesh, what it lays down, and whether image, frame and squeegee fit.
 */
package strikeoff.screens;
