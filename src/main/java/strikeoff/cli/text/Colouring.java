package strikeoff.cli.text;

/** When output is coloured. */
public enum Colouring {
  AUTO,
  ALWAYS,
  NEVER;

  public Ink ink(Surroundings here) {
    return new Ink(
        switch (this) {
          case AUTO -> here.colourful();
          case ALWAYS -> true;
          case NEVER -> false;
        });
  }
}
