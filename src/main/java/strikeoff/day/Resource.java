package strikeoff.day;

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
   * A piece of the room's equipment, or a station.
   *
   * @param number from 1
   * @param of how many there are; the only one needs no number
   */
  public static Resource piece(Kind kind, int number, int of) {
    return new Resource(kind, of > 1 ? kind.text() + " " + number : kind.text());
  }

  /**
   * The cloth: where it is printed, dries, moves, is sewn or lies in a bath, nothing else is done.
   */
  public static final Resource CLOTH = new Resource(Kind.CLOTH, "cloth");

  // Written out: every booking looks several of them up.
  @Override
  public boolean equals(Object other) {
    return other instanceof Resource resource
        && resource.kind == kind
        && resource.name.equals(name);
  }

  @Override
  public int hashCode() {
    return 31 * kind.ordinal() + name.hashCode();
  }

  /** As people speak of it: the sink if it is the only one, else sink 2. */
  public String spoken() {
    return name.equals(kind.text()) ? "the " + name : name;
  }

  /** What can be held. */
  public enum Kind {
    PERSON("person"),
    CLOTH("cloth"),
    /** Where one placement of a set is printed. */
    STATION("station"),
    /** Where screens are washed out and the cloth is rinsed and washed off. */
    SINK("sink"),
    FAN("fan"),
    HAIR_DRYER("hair-dryer"),
    /** Where one washed screen dries. */
    DRYING_PLACE("drying place"),
    SCREEN("screen");

    private final String text;

    Kind(String text) {
      this.text = text;
    }

    /** True for what the room has to share. */
    public boolean equipment() {
      return this == SINK || this == FAN || this == HAIR_DRYER || this == DRYING_PLACE;
    }

    /** As people say it. */
    public String text() {
      return text;
    }
  }
}
