/**
 * Physical chemistry of the soda bath and of dye pastes: pure functions of numbers, each with its
 * source and the range it holds in.
 */
package strikeoff.chemistry;
