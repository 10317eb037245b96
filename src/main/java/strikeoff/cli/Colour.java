package strikeoff.cli;

/** When output is coloured. */
enum Colour {
  AUTO,
  ALWAYS,
  NEVER;

  Ink ink(Surroundings here) {
    return new Ink(
        switch (this) {
          case AUTO -> here.colourful();
          case ALWAYS -> true;
          case NEVER -> false;
        });
  }
}
