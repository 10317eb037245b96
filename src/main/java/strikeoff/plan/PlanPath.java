package strikeoff.plan;

/**
 * Where in a plan a value stands, as the keys and list numbers that lead to it: {@code
 * run[3].print}. List numbers count from 0, as in the document tree. The source map turns a path
 * into a line and a column.
 */
public record PlanPath(String text) implements Comparable<PlanPath> {

  public static final PlanPath ROOT = new PlanPath("");

  public PlanPath key(String name) {
    return new PlanPath(text.isEmpty() ? name : text + "." + name);
  }

  public PlanPath item(int index) {
    return new PlanPath(text + "[" + index + "]");
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
