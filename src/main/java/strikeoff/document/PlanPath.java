package strikeoff.document;

/**
 * Where in a plan a value stands, as the keys and list numbers that lead to it: {@code
 * run[3].print}. List numbers count from 0, as in the document tree: this is the form that programs
 * read. {@link #spoken()} is the one that people do. The source map turns a path into a line and a
 * column.
 */
public record PlanPath(String text) implements Comparable<PlanPath> {

  public static final PlanPath ROOT = new PlanPath("");

  public PlanPath key(String name) {
    return new PlanPath(text.isEmpty() ? name : text + "." + name);
  }

  public PlanPath item(int index) {
    return new PlanPath(text + "[" + index + "]");
  }

  /** What holds it; the root holds itself. */
  public PlanPath parent() {
    int cut = Math.max(text.lastIndexOf('.'), text.lastIndexOf('['));
    return cut < 0 ? ROOT : new PlanPath(text.substring(0, cut));
  }

  /**
   * The same as people see it and write it: list numbers count from 1, and an entry of the run is a
   * step: {@code step 4.print}, {@code designs.heron.separations 2.screen}. It stands in YAML
   * without quotes, inside braces too, unless somebody gave a part of it an odd name.
   */
  public String spoken() {
    if (text.indexOf('[') < 0) {
      return text;
    }
    StringBuilder spoken = new StringBuilder(text.length() + 4);
    int at = 0;
    while (at < text.length()) {
      int opens = text.indexOf('[', at);
      int closes = opens < 0 ? -1 : text.indexOf(']', opens);
      if (closes < 0 || !isNumber(opens + 1, closes)) {
        return spoken.append(text, at, text.length()).toString();
      }
      spoken.append(opens == 3 && text.startsWith("run") ? "step" : text.substring(at, opens));
      spoken.append(' ').append(Integer.parseInt(text.substring(opens + 1, closes)) + 1);
      at = closes + 1;
    }
    return spoken.toString();
  }

  private boolean isNumber(int from, int to) {
    return to > from
        && to - from < 9
        && text.substring(from, to).chars().allMatch(c -> c >= '0' && c <= '9');
  }

  // Written out: it is the key of most look-ups, and a record links its own only at the first use.
  @Override
  public boolean equals(Object other) {
    return other instanceof PlanPath path && path.text.equals(text);
  }

  @Override
  public int hashCode() {
    return text.hashCode();
  }

  @Override
  public int compareTo(PlanPath other) {
    return text.compareTo(other.text);
  }

  @Override
  public String toString() {
    return text;
  }
}
