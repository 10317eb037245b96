package strikeoff.plan;

import java.util.List;
import java.util.Optional;
import strikeoff.units.AirSpeed;
import strikeoff.units.Length;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/** One step of the run, in the order the printer works. */
public sealed interface Step {

  /** Where it stands in the run, from 1. */
  int number();

  /** A few words that name it, for findings and day sheets. */
  String title();

  PlanPath path();

  /** Mix pastes; each takes the handling's mixing time unless {@code takes} gives the whole. */
  record Mix(
      int number, List<String> pastes, Optional<Span> takes, Optional<String> by, PlanPath path)
      implements Step {

    public Mix {
      pastes = List.copyOf(pastes);
    }

    @Override
    public String title() {
      return "mix " + String.join(", ", pastes);
    }
  }

  /**
   * Print arrangements.
   *
   * @param arrangements names, printed one after the other
   * @param only numbers of the placements to print, from 1; empty for all
   * @param separations numbers of the separations to print, in this order, from 1; empty for all in
   *     the design's order
   * @param order colour by colour over a set, or all colours at a station before the next
   * @param everyOther true to print placements 1, 3, 5 … of a set and then 2, 4, 6 … in each colour
   * @param pause waiting after each impression before the next frame is laid
   * @param dryBetweenColours waiting after each colour before the next one starts
   * @param beforeMoving waiting before the cloth moves on to the next set, and on to this step's
   *     first set
   */
  record Print(
      int number,
      List<String> arrangements,
      List<Integer> only,
      List<Integer> separations,
      Order order,
      boolean everyOther,
      Span pause,
      Until dryBetweenColours,
      Until beforeMoving,
      Optional<String> by,
      PlanPath path)
      implements Step {

    public Print {
      arrangements = List.copyOf(arrangements);
      only = List.copyOf(only);
      separations = List.copyOf(separations);
    }

    @Override
    public String title() {
      return "print " + String.join(", ", arrangements);
    }
  }

  /** Let what is printed dry, with moved air if given. */
  record Dry(int number, Until until, Optional<AirSpeed> air, PlanPath path) implements Step {

    @Override
    public String title() {
      return "dry " + until.text();
    }
  }

  /** Move the cloth so that the table shows it from {@code to} on. */
  record Move(int number, Length to, Optional<Span> takes, Optional<String> by, PlanPath path)
      implements Step {

    @Override
    public String title() {
      return "move on to " + to.text();
    }
  }

  /** Sew and press a seam; the cloth leaves the table for it. */
  record Sew(int number, String seam, Optional<Span> takes, Optional<String> by, PlanPath path)
      implements Step {

    @Override
    public String title() {
      return "sew " + seam;
    }
  }

  /**
   * Fix the dye.
   *
   * @param bath ingredients of a soak, water included; empty for batch and steam
   * @param temperature of the bath, of the batching place, or of the steam
   * @param lasts how long
   */
  record Fix(
      int number,
      Fixing how,
      List<Ingredient> bath,
      Temperature temperature,
      Span lasts,
      Optional<String> by,
      PlanPath path)
      implements Step {

    public Fix {
      bath = List.copyOf(bath);
    }

    @Override
    public String title() {
      return "fix by " + how.text();
    }
  }

  /** Rinse until clear. */
  record Rinse(int number, Temperature temperature, Span lasts, Optional<String> by, PlanPath path)
      implements Step {

    @Override
    public String title() {
      return "rinse at " + temperature.text();
    }
  }

  /** Wash off with detergent. */
  record Wash(int number, Temperature temperature, Span lasts, Optional<String> by, PlanPath path)
      implements Step {

    @Override
    public String title() {
      return "wash at " + temperature.text();
    }
  }

  /** Set paint by dry heat. */
  record HeatSet(
      int number,
      String with,
      Temperature temperature,
      Span lasts,
      Optional<String> by,
      PlanPath path)
      implements Step {

    @Override
    public String title() {
      return "heat-set with " + with;
    }
  }

  /** The day ends; the next step begins when the room opens again. Films go on drying. */
  record EndOfDay(int number, PlanPath path) implements Step {

    @Override
    public String title() {
      return "end of day";
    }
  }

  /** How a set of several colours is worked. */
  enum Order {
    BY_COLOUR,
    BY_STATION
  }

  /** How dye is fixed. */
  enum Fixing {
    SOAK("soak"),
    BATCH("batch"),
    STEAM("steam");

    private final String text;

    Fixing(String text) {
      this.text = text;
    }

    public String text() {
      return text;
    }
  }
}
