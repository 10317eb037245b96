/**
 * How the colours are fixed: the soda bath, batching, steaming, washing off, and heat for paint.
 */
package strikeoff.bath;
