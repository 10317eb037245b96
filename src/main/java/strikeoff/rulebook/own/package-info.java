/**
 * A studio's own rules: sentences, read here and made into what the engine runs by its own words
 * for it. Nothing is generated or compiled, so there is nothing to fence in.
 *
 * <p>{@link strikeoff.rulebook.own.Vocabulary} holds the sentences, {@link
 * strikeoff.rulebook.own.LineReader} reads a line into a {@link strikeoff.rulebook.own.Clause} of
 * what is {@link strikeoff.rulebook.own.Asked}, and {@link strikeoff.rulebook.own.EngineRule} makes
 * an engine's rule of a rule's clauses.
 *
 * <p>Running them is bounded: each condition asks whether to go on, and each pattern counts what it
 * let through ({@link strikeoff.rulebook.own.RuleThread}).
 */
package strikeoff.rulebook.own;
