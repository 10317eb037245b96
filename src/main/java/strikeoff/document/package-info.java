/**
 * A plan's text: places and paths in it, mistakes, bounds on what is read and worked, and what can
 * be changed in it.
 */
package strikeoff.document;
