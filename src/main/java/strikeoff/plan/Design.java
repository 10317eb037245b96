package strikeoff.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.units.Angle;
import strikeoff.units.Area;
import strikeoff.units.Length;

/**
 * A design with its separations in their listed order.
 *
 * @param length of the design's bounding rectangle along x
 * @param width of it along y
 * @param joints how its films meet, as far as they were compared
 */
public record Design(
    String name,
    Length length,
    Length width,
    List<Separation> separations,
    List<Joint> joints,
    PlanPath path) {

  /** Nobody pulls more often for one impression. */
  public static final int MOST_PULLS = 50;

  public Design {
    separations = List.copyOf(separations);
    joints = List.copyOf(joints);
  }

  /** The same whose films were compared. */
  public Design with(List<Joint> compared) {
    return new Design(name, length, width, separations, compared, path);
  }

  /** Its separation of that number, from 1 on. */
  public Separation separation(int number) {
    return separations.get(number - 1);
  }

  /** How the films of two separations meet; empty where they were not compared. */
  public Optional<Joint> joint(Separation one, Separation other) {
    return joints.stream().filter(j -> j.isBetween(one.number(), other.number())).findFirst();
  }

  /**
   * The area that two separations print one over the other, by their films; empty where films don't
   * tell it.
   */
  public Optional<Area> overlap(Separation one, Separation other) {
    return joint(one, other)
        .map(Joint::both)
        .or(() -> one.isApartFrom(other) ? Optional.of(new Area(0)) : Optional.empty());
  }

  /** How long it is along x once it is turned: that of the rectangle around what is seen. */
  public Length lengthTurned(Angle turn) {
    return new Length(length.mm() * Math.abs(turn.cos()) + width.mm() * Math.abs(turn.sin()));
  }

  /** How wide it is along y once it is turned, likewise. */
  public Length widthTurned(Angle turn) {
    return new Length(length.mm() * Math.abs(turn.sin()) + width.mm() * Math.abs(turn.cos()));
  }

  /**
   * One colour of a design: a screen and the paste that goes through it.
   *
   * @param number its place in the design's list, from 1
   * @param x where its image begins inside the design, from the design's left edge
   * @param y the same across
   * @param length of its image along x
   * @param width of its image along y
   * @param printed area that takes paste, within that rectangle
   * @param pulls squeegee passes for one impression
   * @param key true for an outline or key colour
   * @param trap how far it overlaps the colours it adjoins; empty if the plan doesn't say
   * @param detail finest line or dot in it; empty if the plan doesn't say
   * @param artwork its film; empty if the plan names none
   */
  public record Separation(
      int number,
      String screen,
      String paste,
      Length x,
      Length y,
      Length length,
      Length width,
      Area printed,
      int pulls,
      boolean key,
      Optional<Length> trap,
      Optional<Length> detail,
      Optional<Artwork> artwork,
      PlanPath path) {

    /** True if, by the films of both, they print in different parts of the design. */
    private boolean isApartFrom(Separation other) {
      return artwork.isPresent()
          && other.artwork.isPresent()
          && (artwork.get().reach().isEmpty()
              || other.artwork.get().reach().isEmpty()
              || isBeside(other)
              || other.isBeside(this));
    }

    /** True if it ends before the other begins, along or across. */
    private boolean isBeside(Separation other) {
      Artwork.Reach mine = artwork.orElseThrow().reach().orElseThrow();
      Artwork.Reach its = other.artwork.orElseThrow().reach().orElseThrow();
      return x.plus(mine.right()).compareTo(other.x.plus(its.left())) <= 0
          || y.plus(mine.far()).compareTo(other.y.plus(its.near())) <= 0;
    }

    /**
     * True if another fills the same rectangle of the design, so that their films can be compared.
     */
    public boolean fillsRectangleOf(Separation other) {
      return x.equals(other.x)
          && y.equals(other.y)
          && length.equals(other.length)
          && width.equals(other.width);
    }

    /** Those that fill one rectangle each, in the order of their first ones. */
    public static List<List<Separation>> byRectangle(List<Separation> separations) {
      List<List<Separation>> all = new ArrayList<>();
      List<Separation> open = new ArrayList<>(separations);
      while (!open.isEmpty()) {
        List<Separation> here = open.stream().filter(open.get(0)::fillsRectangleOf).toList();
        open.removeAll(here);
        all.add(here);
      }
      return all;
    }

    /** The whole rectangle of its image, printed or not. */
    public Area rectangle() {
      return new Area(length.mm() * width.mm() / 100);
    }
  }
}
