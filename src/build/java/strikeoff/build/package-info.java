/**
 * Prepares the packaged jar for quick starts: what the JVM would work out anew at each start, such
 * as the class behind a lambda, is written into the jar once.
 */
package strikeoff.build;
