package strikeoff.day;

import strikeoff.plan.Step;
import strikeoff.units.Length;
import strikeoff.units.Measures;

/** What is done in a task, or what is waited for in one that waits. */
public sealed interface Doing {

  /** What tells it from others: it takes a start long to learn to hash a record. */
  String key();

  /** The cloth is laid on the table. */
  record LayCloth() implements Doing {

    @Override
    public String key() {
      return "lay";
    }
  }

  /** A paste is mixed. */
  record Mix(String paste) implements Doing {

    @Override
    public String key() {
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
    public String key() {
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
    public String key() {
      return (back ? "back " : "on ") + (toStart() ? "0" : to.text(Measures.METRIC));
    }
  }

  /** A step that is one task, or a wait of its own. */
  record OfStep(Step step) implements Doing {

    @Override
    public String key() {
      return "step " + step.number();
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
    public String key() {
      return "wash " + screen;
    }
  }

  /** A washed screen dries. */
  record ScreenDries(String screen) implements Doing {

    @Override
    public String key() {
      return "dries " + screen;
    }
  }

  /** The room is closed. */
  record Closed() implements Doing {

    @Override
    public String key() {
      return "closed";
    }
  }

  /** Nobody begins anything, and the room stays open. */
  record Break() implements Doing {

    @Override
    public String key() {
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

    private final String key;

    Wait(String key) {
      this.key = key;
    }

    /** As a plan calls it. */
    @Override
    public String key() {
      return key;
    }
  }

  /** A wait for something that is not so yet. */
  sealed interface Until extends Doing {}

  /** A paste that somebody else mixes. */
  record Mixed(String paste) implements Until {

    @Override
    public String key() {
      return "mixed " + paste;
    }
  }

  /** A screen that somebody washes out. */
  record WashedOut(String screen) implements Until {

    @Override
    public String key() {
      return "washed " + screen;
    }
  }

  /** A screen that is wet from its wash. */
  record ScreenIsDry(String screen) implements Until {

    @Override
    public String key() {
      return "dry " + screen;
    }
  }

  /** A screen that somebody else prints with. */
  record ScreenIsFree(String screen) implements Until {

    @Override
    public String key() {
      return "unused " + screen;
    }
  }

  /** Somebody who does other work. */
  record IsFree(String person) implements Doing {

    @Override
    public String key() {
      return "free " + person;
    }
  }

  /** Somebody whose hands it takes as well. */
  record ForPerson(String person) implements Doing {

    @Override
    public String key() {
      return "waiting " + person;
    }
  }

  /**
   * A piece of equipment that others use.
   *
   * @param of how many the room has
   */
  record ForPiece(Resource.Kind kind, int of) implements Doing {

    @Override
    public String key() {
      return "for " + kind + of;
    }
  }

  /** All impressions of a screen in a chain. */
  record PrintingWith(String screen) implements Doing {

    @Override
    public String key() {
      return "printing " + screen;
    }
  }

  /** What others do meanwhile. */
  enum Others implements Doing {
    /** It must lie under this one. */
    EARLIER_PRINT,
    FRAME,
    /** Others work on the cloth between two links of a chain. */
    OTHER_WORK;

    @Override
    public String key() {
      return name();
    }
  }
}
