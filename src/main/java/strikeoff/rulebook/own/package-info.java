/**
 * A studio's own rules: sentences, and rules written by hand, compiled when they are first met.
 *
 * <p>They are bounded. Compiled classes are read before they are loaded: what isn't on {@code
 * may-use.txt}, a list of what may be used rather than of what may not, is refused ({@link
 * strikeoff.rulebook.own.CodeUses}). Then they are rewritten so that every method and every jump
 * back asks whether to end ({@link strikeoff.rulebook.own.Interruptible}), and each pattern gets
 * one more constraint that asks and counts ({@link strikeoff.rulebook.own.JoinWatch}), since the
 * engine joins patterns that constrain nothing in loops of its own. What still can't be ended is a
 * single call of the platform that takes for ever; its thread is left behind and its rule not run
 * again.
 */
package strikeoff.rulebook.own;
