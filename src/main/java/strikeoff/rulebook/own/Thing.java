package strikeoff.rulebook.own;

/**
 * Something that a line of a rule has found, for later lines to speak of.
 *
 * @param number tells it from the rule's others; negative for what each plan has and no line names
 * @param opening the words that found it
 */
record Thing(int number, Class<?> type, String opening) {

  /** True if “the NOUN” may mean it. */
  boolean isCalled(String noun, Vocabulary words) {
    return opening.matches("(?iu)(?:.* )?(?:an?|the|another|some) \\Q" + noun + "\\E(?: .*)?")
        || words.nouns(type).contains(noun);
  }
}
