/**
 * The order of work on the cloth: which medium and which colour comes on which, what is printed
 * before the seam it crosses, and what is printed twice or never.
 */
package strikeoff.sequence;
