package strikeoff.bench;

/** The floor of a start: the least that a JVM can do. */
public final class Hello {

  private Hello() {}

  /** Says hello. */
  public static void main(String[] args) {
    System.out.println("hello");
  }
}
