package strikeoff.rulebook.own;

import java.util.ArrayList;
import java.util.List;

/**
 * The words of a line, each with its place; a name in quotes is one word.
 *
 * @param text the whole line
 */
record Tokens(String text, List<Token> all) {

  /**
   * A word.
   *
   * @param comma true if a comma follows it
   */
  record Token(String text, int from, int to, boolean comma) {

    /** Case counts for nothing, and “a” is “an”. */
    boolean is(String word) {
      return text.equalsIgnoreCase(word) || isArticle(word) && isArticle(text);
    }

    private static boolean isArticle(String word) {
      return word.equalsIgnoreCase("a") || word.equalsIgnoreCase("an");
    }

    boolean isQuoted() {
      return text.startsWith("“") || text.startsWith("\"");
    }
  }

  Tokens {
    all = List.copyOf(all);
  }

  static Tokens of(String text) {
    List<Token> all = new ArrayList<>();
    int at = 0;
    while (at < text.length()) {
      char c = text.charAt(at);
      if (Character.isWhitespace(c) || c == ',') {
        at++;
        continue;
      }
      int quote = c == '“' ? text.indexOf('”', at + 1) : c == '"' ? text.indexOf('"', at + 1) : -1;
      int to = quote < 0 ? wordEnd(text, at) : quote + 1;
      all.add(new Token(text.substring(at, to), at, to, to < text.length() && isComma(text, to)));
      at = to;
    }
    return new Tokens(text, all);
  }

  private static int wordEnd(String text, int from) {
    int to = from;
    while (to < text.length() && !Character.isWhitespace(text.charAt(to)) && !isComma(text, to)) {
      to++;
    }
    return to;
  }

  /** A comma inside a number ends no word. */
  private static boolean isComma(String text, int at) {
    return text.charAt(at) == ','
        && (at + 1 == text.length() || Character.isWhitespace(text.charAt(at + 1)));
  }

  int size() {
    return all.size();
  }

  Token get(int at) {
    return all.get(at);
  }

  /** True if these words stand there, with no comma between them. */
  boolean at(int at, String... words) {
    if (at + words.length > all.size()) {
      return false;
    }
    for (int i = 0; i < words.length; i++) {
      if (!all.get(at + i).is(words[i]) || i > 0 && all.get(at + i - 1).comma()) {
        return false;
      }
    }
    return true;
  }

  /** The text of some words as it is written. */
  String slice(int from, int to) {
    return from >= to ? "" : text.substring(all.get(from).from(), all.get(to - 1).to());
  }

  /** The text from a word on. */
  String from(int at) {
    return slice(at, all.size());
  }

  /** The same with another word at a place. */
  Tokens with(int at, String word) {
    List<Token> changed = new ArrayList<>(all);
    Token was = all.get(at);
    changed.set(at, new Token(word, was.from(), was.to(), was.comma()));
    return new Tokens(text, changed);
  }

  /** The same without the word at a place. */
  Tokens without(int at) {
    List<Token> changed = new ArrayList<>(all);
    changed.remove(at);
    return new Tokens(text, changed);
  }
}
