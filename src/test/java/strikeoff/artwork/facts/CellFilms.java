package strikeoff.artwork.facts;

import java.util.List;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.plan.Artwork;
import strikeoff.plan.Design;
import strikeoff.plan.PrintedCells;
import strikeoff.units.Area;
import strikeoff.units.Length;
import strikeoff.units.Pair;
import strikeoff.units.Share;

/** Films of cells of a millimetre, for facts that are counted by cells. */
record CellFilms(int columns, int rows) {

  /** Which cells print. */
  @FunctionalInterface
  interface Shape {
    boolean prints(int column, int row);
  }

  Design.Separation separation(int number, boolean key, Shape shape) {
    return separation(number, key, shape, Optional.empty());
  }

  /**
   * @param says how large the film is by itself
   */
  Design.Separation separation(int number, boolean key, Shape shape, Optional<Pair> says) {
    byte[] shares = new byte[columns * rows];
    int printed = 0;
    for (int i = 0; i < shares.length; i++) {
      boolean prints = shape.prints(i % columns, i / columns);
      shares[i] = (byte) (prints ? PrintedCells.FULL : 0);
      printed += prints ? 1 : 0;
    }
    Length length = new Length(columns);
    Length width = new Length(rows);
    Artwork film =
        new Artwork(
            number + ".png",
            Artwork.Tone.DARK,
            new Length(0),
            columns,
            rows,
            false,
            says,
            new Share((double) printed / shares.length),
            new Artwork.Tones(List.of()),
            Optional.of(new Artwork.Reach(new Length(0), length, new Length(0), width)),
            new PrintedCells(columns, rows, 1, 1, shares),
            Optional.empty(),
            Optional.empty(),
            new Share(0),
            Optional.empty(),
            Optional.empty(),
            new Artwork.Sized.ByDesign());
    return new Design.Separation(
        number,
        "s" + number,
        "p" + number,
        new Length(0),
        new Length(0),
        length,
        width,
        new Area(1),
        1,
        key,
        Optional.empty(),
        Optional.empty(),
        Optional.of(film),
        PlanPath.ROOT.key("designs").item(number - 1));
  }

  Design design(Design.Separation... separations) {
    return new Design(
        "flag",
        new Length(columns),
        new Length(rows),
        List.of(separations),
        List.of(),
        PlanPath.ROOT.key("designs"));
  }
}
