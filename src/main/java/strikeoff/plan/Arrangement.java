package strikeoff.plan;

import java.util.List;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.units.Angle;
import strikeoff.units.Length;

/** How one design is placed on the cloth. */
public sealed interface Arrangement {

  String name();

  String design();

  /** Turn of each placement about its centre. */
  Angle turn();

  /** True if each placement is mirrored along x. */
  boolean mirrored();

  /** Names of what it is printed over on purpose, so that to lie on it is no mistake. */
  List<String> over();

  PlanPath path();

  /**
   * True if each copy takes a board of its own on a table with stations: those of a series and
   * those at stated places. Borders and fills run over several boards, and what is anchored lies
   * where its anchor does.
   */
  default boolean takesBoard() {
    return this instanceof Series || this instanceof Placed;
  }

  /**
   * Copies at a pitch along the length; {@code start} and {@code across} lead to the first one's
   * corner.
   */
  record Series(
      String name,
      String design,
      int count,
      Length pitch,
      Length start,
      Length across,
      Angle turn,
      boolean mirrored,
      List<String> over,
      PlanPath path)
      implements Arrangement {

    public Series {
      over = List.copyOf(over);
    }

    /** Printed over nothing on purpose. */
    public Series(
        String name,
        String design,
        int count,
        Length pitch,
        Length start,
        Length across,
        Angle turn,
        boolean mirrored,
        PlanPath path) {
      this(name, design, count, pitch, start, across, turn, mirrored, List.of(), path);
    }
  }

  /**
   * Repeats edge to edge along a long edge of the cloth.
   *
   * @param edge along which edge
   * @param from where the edge run begins, x
   * @param to where it ends
   * @param repeat length of one repeat along the edge
   * @param inset distance of the design from that edge of the cloth
   */
  record Border(
      String name,
      String design,
      Edge edge,
      Length from,
      Length to,
      Length repeat,
      Length inset,
      Angle turn,
      boolean mirrored,
      List<String> over,
      PlanPath path)
      implements Arrangement {

    public Border {
      over = List.copyOf(over);
    }

    /** Printed over nothing on purpose. */
    public Border(
        String name,
        String design,
        Edge edge,
        Length from,
        Length to,
        Length repeat,
        Length inset,
        Angle turn,
        boolean mirrored,
        PlanPath path) {
      this(name, design, edge, from, to, repeat, inset, turn, mirrored, List.of(), path);
    }
  }

  /**
   * Small repeats in the free area of a rectangle.
   *
   * @param lattice how neighbouring rows or columns are shifted
   * @param pitchLength from one repeat to the next along x
   * @param pitchWidth the same along y
   * @param from left end of the rectangle to fill
   * @param to right end
   * @param near near side of it, y
   * @param far far side
   * @param clear free margin to keep around other arrangements
   * @param around names of the arrangements to keep clear of; those repeats that would come closer
   *     are left out
   * @param count how many the plan expects to fit; empty if it leaves it open
   */
  record Fill(
      String name,
      String design,
      Lattice lattice,
      Length pitchLength,
      Length pitchWidth,
      Length from,
      Length to,
      Length near,
      Length far,
      Length clear,
      List<String> around,
      Optional<Integer> count,
      Angle turn,
      boolean mirrored,
      List<String> over,
      PlanPath path)
      implements Arrangement {

    public Fill {
      around = List.copyOf(around);
      over = List.copyOf(over);
    }

    /** Printed over nothing on purpose. */
    public Fill(
        String name,
        String design,
        Lattice lattice,
        Length pitchLength,
        Length pitchWidth,
        Length from,
        Length to,
        Length near,
        Length far,
        Length clear,
        List<String> around,
        Optional<Integer> count,
        Angle turn,
        boolean mirrored,
        PlanPath path) {
      this(
          name,
          design,
          lattice,
          pitchLength,
          pitchWidth,
          from,
          to,
          near,
          far,
          clear,
          around,
          count,
          turn,
          mirrored,
          List.of(),
          path);
    }
  }

  /**
   * A placement at each placement of another arrangement.
   *
   * @param anchor name of the arrangement it is set from
   * @param which numbers of the anchor's placements that get one, from 1; empty for all
   * @param dx from the anchor's lower left corner to this design's, along x
   * @param dy the same across
   */
  record Anchored(
      String name,
      String design,
      String anchor,
      List<Integer> which,
      Length dx,
      Length dy,
      Angle turn,
      boolean mirrored,
      List<String> over,
      PlanPath path)
      implements Arrangement {

    public Anchored {
      which = List.copyOf(which);
      over = List.copyOf(over);
    }

    /** Printed over nothing on purpose. */
    public Anchored(
        String name,
        String design,
        String anchor,
        List<Integer> which,
        Length dx,
        Length dy,
        Angle turn,
        boolean mirrored,
        PlanPath path) {
      this(name, design, anchor, which, dx, dy, turn, mirrored, List.of(), path);
    }
  }

  /** Placements at stated corners. */
  record Placed(
      String name,
      String design,
      List<Point> at,
      Angle turn,
      boolean mirrored,
      List<String> over,
      PlanPath path)
      implements Arrangement {

    public Placed {
      at = List.copyOf(at);
      over = List.copyOf(over);
    }

    /** Printed over nothing on purpose. */
    public Placed(
        String name, String design, List<Point> at, Angle turn, boolean mirrored, PlanPath path) {
      this(name, design, at, turn, mirrored, List.of(), path);
    }
  }

  /** A place on the cloth. */
  record Point(Length x, Length y) {}

  /** A long edge of the cloth. */
  enum Edge {
    NEAR,
    FAR
  }

  /** How a fill's repeats are shifted against their neighbours. */
  enum Lattice {
    /** No shift. */
    GRID,
    /** Neighbouring rows shifted by half the pitch along x. */
    BRICK,
    /** Neighbouring columns shifted by half the pitch along y. */
    HALF_DROP
  }
}
