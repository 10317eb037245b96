package strikeoff.rulebook.own;

import java.util.ArrayList;
import java.util.List;

/**
 * A condition of a rule: a kind of fact, what is asked of each, and how many there must be.
 *
 * @param thing what it finds, or looks for
 * @param asked what must hold, all of it
 */
record Clause(Thing thing, List<Asked> asked, Form form) {

  /** How facts that are as asked make the condition hold. */
  sealed interface Form {

    /** True if a later line, and the message, can speak of what is found. */
    default boolean finds() {
      return false;
    }
  }

  /** There is one; the rule is told of each. */
  record Some() implements Form {
    @Override
    public boolean finds() {
      return true;
    }
  }

  /** There is none. */
  record None() implements Form {}

  /** There are so many. */
  record Count(How how, double number) implements Form {}

  /**
   * All have so much of something together.
   *
   * @param kind of the amount
   */
  record Sum(Value value, How how, double amount, Kind kind) implements Form {}

  /**
   * It has most of something, or least; several do if they have the same.
   *
   * @param among what holds of all that it is compared with
   */
  record Extreme(Value value, boolean greatest, List<Asked> among) implements Form {

    public Extreme {
      among = List.copyOf(among);
    }

    @Override
    public boolean finds() {
      return true;
    }
  }

  /**
   * There are some, and all of them are so.
   *
   * @param all what holds of each
   */
  record Every(List<Asked> all) implements Form {

    public Every {
      all = List.copyOf(all);
    }
  }

  Clause {
    asked = List.copyOf(asked);
  }

  Class<?> type() {
    return thing.type();
  }

  boolean finds() {
    return form.finds();
  }

  /** What is asked as texts. */
  List<String> constraints() {
    return Asked.texts(asked);
  }

  /** Everything that is asked, wherever it stands. */
  List<Asked> everything() {
    List<Asked> all = new ArrayList<>(asked);
    if (form instanceof Extreme extreme) {
      all.addAll(extreme.among());
    } else if (form instanceof Every every) {
      all.addAll(every.all());
    }
    return all;
  }

  /** The same where more is asked, as by a line that begins with a dash. */
  Clause and(List<Asked> more) {
    if (form instanceof Every every) {
      List<Asked> all = new ArrayList<>(every.all());
      all.addAll(more);
      return new Clause(thing, asked, new Every(all));
    }
    List<Asked> all = new ArrayList<>(asked);
    all.addAll(more);
    return new Clause(thing, all, form);
  }
}
