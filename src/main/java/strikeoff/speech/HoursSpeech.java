package strikeoff.speech;

import java.util.List;
import java.util.stream.Collectors;
import strikeoff.day.facts.CriticalChain;
import strikeoff.day.facts.DatesHeld;
import strikeoff.day.facts.DayEnd;
import strikeoff.day.facts.IdleHand;
import strikeoff.day.facts.LeftInBath;
import strikeoff.day.facts.LeftWet;
import strikeoff.day.facts.RunFigures;
import strikeoff.day.facts.StepLength;
import strikeoff.day.facts.WaitingShare;
import strikeoff.plan.Dates;
import strikeoff.units.Measures;

/** Says how days end, what fills them and what would shorten them. */
public final class HoursSpeech {

  private HoursSpeech() {}

  /** What to write, and where, so that somebody helps. */
  public static String write(IdleHand hand) {
    return hand.by()
            .map(names -> "`by: [" + String.join(", ", names) + "]`")
            .orElse("`washes: " + hand.person() + "`")
        + " in step "
        + hand.step();
  }

  /** When the run then ends, where that changes, beginning with a colon; empty where it doesn't. */
  public static String then(IdleHand hand) {
    return hand.sooner() ? ": the run then ends on " + hand.finish().text() : "";
  }

  /** What to shorten first, with its time; empty if nothing is done. */
  public static String shortenFirst(RunFigures figures, Measures units) {
    return figures.chain().longest().map(link -> text(link, units)).orElse("");
  }

  /** What the cloth lies in. */
  public static String bath(LeftInBath left) {
    return left.steamed() ? "steam" : "soak";
  }

  /** What to do so that no cloth lies wet, as an instruction without a full stop. */
  public static String mending(LeftWet left) {
    if (left.night().isPresent()) {
      return "Write `- end of day` before step "
          + left.first()
          + " instead of after step "
          + left.step()
          + ", so that the baths follow each other within one day: they need "
          + left.needs().wholeMinutesUp().text()
          + " in all";
    }
    return left.dry().minutes() > 0
        ? "Write `- dry: "
            + left.dry().text()
            + "` before step "
            + left.first()
            + ", so that the baths follow each other without a break"
        : "Let step " + left.next() + " follow step " + left.step() + " at once";
  }

  /** The clock at closing time; midnight as the end of its day. */
  public static String closing(DayEnd end) {
    return end.closes().day() > end.day() ? "24:00" : end.closes().clock();
  }

  /** What the cloth lies in works on it, as a sentence with a blank before it; or nothing. */
  public static String working(DayEnd end) {
    return end.atRest()
        .filter(DayEnd.Rest::works)
        .map(rest -> " Left lying so until the morning, it would come to harm.")
        .orElse("");
  }

  /** What to change, as an instruction without a full stop; empty if nothing has to be. */
  public static String mending(DayEnd end) {
    return end.remedy().map(how -> mending(end, how)).orElse("");
  }

  private static String mending(DayEnd end, DayEnd.Remedy how) {
    String open = "open the room " + end.over().wholeMinutesUp().text() + " longer";
    String before =
        end.moved().stream()
            .map(step -> "before step " + step)
            .collect(Collectors.joining(" and one "));
    return switch (how) {
      case NEXT_DAY ->
          "Write `- end of day` "
              + before
              + end.atRest()
                  .filter(rest -> end.moved().equals(List.of(rest.step())))
                  .map(rest -> ", which then begins " + rest.opens().when())
                  .orElse(", or " + open);
      case SPLIT ->
          "Split step "
              + end.moved().get(0)
              + " by `only:` or `colours:` into several steps with `- end of day` between them, let"
              + " others help with `by:`, or "
              + open;
      case SHORTEN -> "Leave some of the day's work to another run, or " + open;
    };
  }

  /** That step in a few words. */
  public static String title(DayEnd end, Measures units) {
    return DaySpeech.text(end.work(), units);
  }

  /** What is waited for, longest first, each with its time. */
  public static List<String> causes(WaitingShare share, Measures units) {
    return share.waitedFor().stream()
        .map(w -> DaySpeech.text(w.doing(), units) + " (" + w.span().text() + ")")
        .toList();
  }

  /** What happens after closing time, for a sentence that ends there; empty without a rest. */
  public static String goesOn(DayEnd end, Measures units) {
    return end.atRest()
        .map(
            rest ->
                (end.stays().minutes() > 0 ? "From " + rest.from().clock() : "After that")
                    + " nobody works"
                    + rest.what().map(what -> " (" + DaySpeech.text(what, units) + ")").orElse("")
                    + " until step "
                    + rest.step()
                    + " ("
                    + DaySpeech.text(rest.work(), units)
                    + ")"
                    + (rest.begins() ? " begins " : " goes on ")
                    + rest.until().when())
        .orElse("");
  }

  /** With the step's number. */
  public static String text(CriticalChain.Link link, Measures units) {
    return DaySpeech.text(link.doing(), units)
        + (link.step() > 0 ? " in step " + link.step() : "")
        + ", "
        + link.span().text();
  }

  /** What to shorten first, with its time. */
  public static String shortenFirst(WaitingShare share, Measures units) {
    return share.toShorten().map(link -> text(link, units)).orElse("");
  }

  /** What shortens it, as an instruction without a full stop. */
  public static String shortening(WaitingShare share) {
    return "Print other pieces meanwhile, "
        + (share.forDrying() ? "move the air with a fan in the wait, " : "")
        + "or let the longest wait fall overnight";
  }

  /** What to change, as an instruction without a full stop. */
  public static String mending(StepLength length) {
    return length.prints()
        ? "Split it by `only:` or `colours:` into several steps with `- end of day` between them,"
            + " let others help with `by:`, or open the room longer"
        : "Make it shorter, or open the room longer";
  }

  /** The date on which a run begins. */
  public static String begins(DatesHeld dates) {
    return Dates.text(dates.startOn());
  }

  /** The date on which it ends. */
  public static String ends(DatesHeld dates) {
    return Dates.text(dates.finish());
  }

  /** The date by which it is to be done. */
  public static String by(DatesHeld dates) {
    return Dates.text(dates.finishBy());
  }

  /** The last date on which it may begin for that. */
  public static String latest(DatesHeld dates) {
    return Dates.text(dates.latestStart());
  }
}
