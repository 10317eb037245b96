package strikeoff.speech;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import strikeoff.day.WashStep;
import strikeoff.day.facts.ClearedRun;
import strikeoff.day.facts.ClothTakenUp;
import strikeoff.day.facts.DayEnd;
import strikeoff.day.facts.Outlasted;
import strikeoff.day.facts.Remedy;
import strikeoff.day.facts.Trials;
import strikeoff.day.facts.WetContact;
import strikeoff.units.Measures;
import strikeoff.units.Phrase;

/** Says which waits and passes mend what is too wet, and what they ask for besides. */
public final class RemedySpeech {

  private RemedySpeech() {}

  /** What to write, the better way first, with the finish that it leads to. */
  public static String cure(WetContact contact, Measures units) {
    return contact.passesFirst() ? passes(contact, units) : wait(contact, units);
  }

  /** A further way, as a sentence that begins with a space; empty if there is none. */
  public static String otherWay(WetContact contact, Measures units) {
    if (contact.passes().isEmpty() || contact.passesFirst() && !contact.cured()) {
      return "";
    }
    return " Or write "
        + (contact.passesFirst() ? wait(contact, units) : passes(contact, units))
        + ".";
  }

  private static String wait(WetContact contact, Measures units) {
    Trials.Outcome ordinary = contact.ordinary();
    Trials.Outcome surely = contact.surely();
    Optional<String> untilFelt = untilFelt(ordinary.remedy(), units);
    if (!ordinary.cleared() || ordinary.late().isPresent() && untilFelt.isEmpty()) {
      boolean beside = contact.laterStep() == contact.earlierStep() && !contact.sameMotif();
      return "a longer wait in another place, "
          + (beside ? "the prints in more passes, each with its own `only`, " : "")
          + "or an `- end of day` between; no wait here clears it within the room's hours, and"
          + " `strikeoff propose` looks for a run that does";
    }
    String felt =
        untilFelt.map(f -> f + " and feel each film with a gloved finger, or ").orElse("");
    if (!surely.cleared() || !surely.serves() && ordinary.serves()) {
      return felt
          + said(ordinary, units)
          + ", which does on an ordinary day only"
          + asks("; for a longer wait ", surely.outlasted());
    }
    return felt + forSlowDrying(surely, ordinary.remedy(), units);
  }

  /** A wait for slow drying, with the finish it leads to, and the one of an ordinary day. */
  private static String forSlowDrying(Trials.Outcome surely, Remedy ordinary, Measures units) {
    return said(surely, units)
        + (ordinary.minutes() < surely.remedy().minutes()
            ? "; on an ordinary day " + ordinary.time() + " will do"
            : "")
        + alsoAsks(surely.outlasted());
  }

  private static String passes(WetContact contact, Measures units) {
    Trials.Outcome passes = contact.passes().orElseThrow();
    return said(passes, units) + alsoAsks(passes.outlasted());
  }

  private static String said(Trials.Outcome outcome, Measures units) {
    return text(outcome.remedy(), units)
        + outcome
            .finish()
            .map(f -> " (the run then ends " + f.text() + late(outcome) + ")")
            .orElse("");
  }

  /** The first day on which it would keep people past closing. */
  private static String late(Trials.Outcome outcome) {
    return outcome.late().map(d -> "; " + late(d, "then ends")).orElse("");
  }

  /**
   * @param ends a verb
   */
  private static String late(DayEnd day, String ends) {
    return "day "
        + day.day()
        + " "
        + ends
        + " at "
        + day.ends().clock()
        + ", after the room closes at "
        + day.closes().clock();
  }

  /** Other colours of the same cause with their pairs, as a sentence that begins with a space. */
  public static String also(WetContact contact) {
    return contact.also().isEmpty()
        ? ""
        : contact.also().stream()
            .map(o -> o.later() + " on " + o.earlier() + " " + Phrase.times(o.pairs()))
            .collect(Collectors.joining("; ", " Too early as well: ", "."));
  }

  /** More pairs that the same wait clears, as a sentence that begins with a space. */
  public static String further(WetContact contact) {
    int pairs = contact.furtherPairs();
    return pairs == 0
        ? ""
        : " That clears " + pairs + " further " + (pairs == 1 ? "contact" : "contacts") + " too.";
  }

  /** What to write, the sooner way first; a night where a wait passes closing. */
  public static String cure(ClothTakenUp up, Measures units) {
    String felt = orUntil(up, units) + " and " + feel(up) + ", or ";
    return up.night()
        .map(
            night ->
                (up.ordinaryLate() ? "" : felt)
                    + said(night, units)
                    + ", and the films dry overnight; with a wait as long as it may take "
                    + late(up.tried().late().orElseThrow(), "would end"))
        .orElseGet(() -> felt + forSlowDrying(up.tried(), up.ordinary(), units));
  }

  private static String feel(ClothTakenUp up) {
    if (up.wrapped()) {
      return "wrap the print while it is still damp";
    }
    return "feel the "
        + (up.sewn() || up.moved() ? "films" : "thickest spot")
        + " with a gloved finger";
  }

  /** The wait that needs no figures, and where. */
  private static String orUntil(ClothTakenUp up, Measures units) {
    return untilFelt(up.remedy(), units).orElseThrow();
  }

  /** What to write, and where. */
  public static String text(Remedy remedy, Measures units) {
    if (remedy.how() != Remedy.How.EVERY_OTHER) {
      return placed(remedy, remedy.waitText(units));
    }
    String by = remedy.alone().map(name -> "`by: " + WashStep.written(name) + "`").orElse("");
    return remedy.minutes() > 0
        ? by
            + (by.isEmpty() ? "" : ", ")
            + "`every other: yes` and "
            + placed(remedy, remedy.waitText(units))
        : by + (by.isEmpty() ? "" : " and ") + "`every other: yes` in step " + remedy.step();
  }

  /** The same until the films are felt to be safe; empty where only minutes can stand. */
  public static Optional<String> untilFelt(Remedy remedy, Measures units) {
    return remedy.canBeFelt() ? Optional.of(placed(remedy, remedy.felt(units))) : Optional.empty();
  }

  private static String placed(Remedy remedy, String wait) {
    if (remedy.how() == Remedy.How.END_OF_DAY) {
      return "`- " + remedy.how().key() + "` before step " + remedy.step();
    }
    String line = remedy.how().key() + ": " + wait;
    return remedy.how() == Remedy.How.DRY_STEP
        ? "a step `- " + line + "` before step " + remedy.step()
        : "`" + line + "` in step " + remedy.step();
  }

  /** The waits as one writes them. */
  public static List<String> written(ClearedRun run, Measures units) {
    return run.waits().stream().map(wait -> text(wait, units)).toList();
  }

  /** What stands too long for the waits; empty if nothing does. */
  public static String outlasted(ClearedRun run) {
    return told(run.outlasted());
  }

  /** What stands too long, without what to do; empty if nothing does. */
  private static String told(Outlasted outlasted) {
    List<String> told = new ArrayList<>();
    if (!outlasted.pastes().isEmpty()) {
      told.add(
          Phrase.list(List.copyOf(outlasted.pastes()))
              + (outlasted.pastes().size() == 1 ? " doesn't live" : " don't live")
              + " that long");
    }
    if (!outlasted.screens().isEmpty()) {
      told.add("paste would dry in " + Phrase.list(List.copyOf(outlasted.screens())));
    }
    return String.join("; ", told);
  }

  /**
   * What a wait that is needed all the same asks for besides; begins with a semicolon, or empty.
   */
  private static String alsoAsks(Outlasted outlasted) {
    return asks("; but ", outlasted);
  }

  private static String asks(String first, Outlasted outlasted) {
    List<String> asks = new ArrayList<>();
    if (!outlasted.pastes().isEmpty()) {
      String names = Phrase.list(List.copyOf(outlasted.pastes()));
      boolean one = outlasted.pastes().size() == 1;
      asks.add(
          names
              + (one ? " doesn't live" : " don't live")
              + " that long, so print what comes after it in a step of its own, with "
              + (one ? "it" : "them")
              + " mixed afresh just before");
    }
    if (!outlasted.screens().isEmpty()) {
      asks.add(
          "paste would dry in "
              + Phrase.list(List.copyOf(outlasted.screens()))
              + " meanwhile, so wash it out as soon as it has printed");
    }
    return asks.isEmpty() ? "" : first + String.join(", and ", asks);
  }
}
