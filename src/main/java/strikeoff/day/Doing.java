package strikeoff.day;

import strikeoff.plan.Step;
import strikeoff.units.Length;
import strikeoff.units.Measures;

/** What is done in a task, or what is waited for in one that waits. */
public sealed interface Doing {

  /** In a few words, for charts and tables, in the plan's units. */
  String text(Measures units);

  /** The cloth is laid on the table. */
  record LayCloth() implements Doing {

    @Override
    public String text(Measures units) {
      return "lay the cloth on the table";
    }
  }

  /** A paste is mixed. */
  record Mix(String paste) implements Doing {

    @Override
    public String text(Measures units) {
      return "mix " + paste;
    }
  }

  /**
   * One impression.
   *
   * @param placement with its number, as in {@code herons 3}
   */
  record Impress(String placement, String screen) implements Doing {

    @Override
    public String text(Measures units) {
      return placement + ", " + screen;
    }
  }

  /**
   * The cloth is moved along the table.
   *
   * @param to where on the cloth the table then begins; below zero where table lies before the
   *     cloth's start, as a frame over the first motif may need
   * @param back true if it is moved back
   */
  record MoveCloth(Length to, boolean back) implements Doing {

    /** True if its start comes to the table's. */
    public boolean toStart() {
      return Math.abs(to.mm()) <= Length.TOLERANCE;
    }

    @Override
    public String text(Measures units) {
      String move = back ? "move back" : "move on";
      if (toStart()) {
        return move + " to its start";
      }
      return to.mm() < 0
          ? move + ", its start " + new Length(-to.mm()).text(units) + " inside the table"
          : move + " to " + to.text(units);
    }
  }

  /** A step that is one task, or a wait of its own. */
  record OfStep(Step step) implements Doing {

    @Override
    public String text(Measures units) {
      return step.title(units);
    }

    /** A run has each number once; all that a step holds need not be asked for it. */
    @Override
    public int hashCode() {
      return step.number();
    }
  }

  /** A screen is washed out. */
  record WashOut(String screen) implements Doing {

    @Override
    public String text(Measures units) {
      return "wash out " + screen;
    }
  }

  /** A washed screen dries. */
  record ScreenDries(String screen) implements Doing {

    @Override
    public String text(Measures units) {
      return screen + " dries";
    }
  }

  /** The room is closed. */
  record Closed() implements Doing {

    @Override
    public String text(Measures units) {
      return "closed";
    }
  }

  /** Nobody begins anything, and the room stays open. */
  record Break() implements Doing {

    @Override
    public String text(Measures units) {
      return "break";
    }
  }

  /** A wait that a print step asks for. */
  enum Wait implements Doing {
    /** After every print. */
    PAUSE("pause"),
    BETWEEN_COLOURS("dry between colours"),
    BETWEEN_PASSES("dry between passes"),
    BETWEEN_NEIGHBOURS("dry between neighbours"),
    BEFORE_MOVING("before moving");

    private final String text;

    Wait(String text) {
      this.text = text;
    }

    @Override
    public String text(Measures units) {
      return text;
    }
  }

  /** A wait for something that is not so yet. */
  sealed interface Until extends Doing {}

  /** A paste that somebody else mixes. */
  record Mixed(String paste) implements Until {

    @Override
    public String text(Measures units) {
      return "paste " + paste + " is mixed";
    }
  }

  /** A screen that somebody washes out. */
  record WashedOut(String screen) implements Until {

    @Override
    public String text(Measures units) {
      return "screen " + screen + " is washed out";
    }
  }

  /** A screen that is wet from its wash. */
  record ScreenIsDry(String screen) implements Until {

    @Override
    public String text(Measures units) {
      return "screen " + screen + " dries";
    }
  }

  /** A screen that somebody else prints with. */
  record ScreenIsFree(String screen) implements Until {

    @Override
    public String text(Measures units) {
      return "screen " + screen + " is free";
    }
  }

  /** Somebody who does other work. */
  record IsFree(String person) implements Doing {

    @Override
    public String text(Measures units) {
      return person + " is free";
    }
  }

  /** Somebody whose hands it takes as well. */
  record ForPerson(String person) implements Doing {

    @Override
    public String text(Measures units) {
      return "waits for " + person;
    }
  }

  /**
   * A piece of equipment that others use.
   *
   * @param of how many the room has
   */
  record ForPiece(Resource.Kind kind, int of) implements Doing {

    @Override
    public String text(Measures units) {
      return "waits for " + (of > 1 ? "a " : "the ") + kind.text();
    }
  }

  /** All impressions of a screen in a chain. */
  record PrintingWith(String screen) implements Doing {

    @Override
    public String text(Measures units) {
      return "printing with " + screen;
    }
  }

  /** What others do meanwhile. */
  enum Others implements Doing {
    /** It must lie under this one. */
    EARLIER_PRINT("the print before it is done"),
    FRAME("another frame is in the way"),
    /** Others work on the cloth between two links of a chain. */
    OTHER_WORK("drying beside other work");

    private final String text;

    Others(String text) {
      this.text = text;
    }

    @Override
    public String text(Measures units) {
      return text;
    }
  }
}
