package strikeoff.timeline;

/**
 * Something that one operation at a time may hold.
 *
 * @param kind what it is
 * @param name which one of them
 */
public record Resource(Kind kind, String name) {

  public static Resource person(String name) {
    return new Resource(Kind.PERSON, name);
  }

  public static Resource screen(String name) {
    return new Resource(Kind.SCREEN, name);
  }

  /**
   * The cloth: where it is printed, dries, moves, is sewn or lies in a bath, nothing else is done.
   */
  public static final Resource CLOTH = new Resource(Kind.CLOTH, "cloth");

  /** What can be held. */
  public enum Kind {
    PERSON,
    SCREEN,
    CLOTH
  }
}
