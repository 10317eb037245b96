package strikeoff.document;

/**
 * One change of a plan that a printer could make by hand. Values are text of one line, in the plan
 * language and with whatever quotes YAML needs.
 */
public sealed interface Edit {

  /** Where it is made. */
  PlanPath at();

  /** Writes a value: in place of what stands there, or as a new key behind the others. */
  record Write(PlanPath at, String value) implements Edit {}

  /** Adds an item at the end of a list, which begins with it if there is none yet. */
  record Append(PlanPath at, String item) implements Edit {}

  /**
   * Puts an item into a list.
   *
   * @param at the item that it comes to stand before
   */
  record Insert(PlanPath at, String item) implements Edit {}

  /**
   * Moves an item of a list, with its comments.
   *
   * @param at the item that moves
   * @param before the item of the same list that it comes to stand before
   */
  record Move(PlanPath at, PlanPath before) implements Edit {}

  /** Takes out a key with its value, or an item of a list. */
  record Remove(PlanPath at) implements Edit {}
}
