package strikeoff.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import strikeoff.day.Resource;
import strikeoff.day.Task;
import strikeoff.report.page.DaySheet;
import strikeoff.speech.SheetSpeech;

/** Writes the waits of a day's jobs: as lines of their own, or at the end of a print's line. */
final class WaitLines {

  /** A wait that nobody does anything in, at the end of a line. */
  private static final Pattern PLAIN_WAIT =
      Pattern.compile("(^|, )wait to (day \\d+, )?\\d\\d:\\d\\d$");

  private final TaskWords words;
  private final FeltWaits felt;
  private final Hands hands;
  private final int day;

  /** Whether it was said what comes of a wait that lasts longer. */
  private boolean saidLater;

  WaitLines(TaskWords words, FeltWaits felt, Hands hands, int day) {
    this.words = words;
    this.felt = felt;
    this.hands = hands;
    this.day = day;
  }

  /** A wait as a line of its own; on the first one that is felt what that means for the rest. */
  DaySheet.Line alone(WorkBlock work, String what, String after) {
    List<String> next = new ArrayList<>();
    felt.of(work, day)
        .map(FeltWaits.Felt::slow)
        .filter(slow -> !slow.isEmpty())
        .ifPresent(next::add);
    if (!next.isEmpty() && !saidLater) {
      saidLater = true;
      next.add(next.remove(0) + ", all after it later");
    }
    if (!after.isEmpty()) {
      next.add(after);
    }
    return new DaySheet.Line(
        work.start(),
        SheetSpeech.moved(air(work), what),
        how(work),
        hands.of(work),
        String.join("; ", next));
  }

  /** A wait told at the end of the line of the print that it follows. */
  DaySheet.Line after(DaySheet.Line before, WorkBlock work) {
    String who = hands.of(work);
    String until =
        felt.of(work, day)
            .map(FeltWaits.Felt::words)
            .orElse("wait to " + WorkWords.clock(work.end(), day));
    String wait =
        air(work)
                .map(piece -> SheetSpeech.moved(piece, WorkWords.clock(work.start(), day), until))
                .orElse(until)
            + (who.isEmpty() ? "" : ", held by " + who);
    // Of two waits on end only the later one's end tells anybody anything.
    String said = PLAIN_WAIT.matcher(before.next()).replaceFirst("");
    String next = said.isEmpty() ? wait : said + ", " + wait;
    return new DaySheet.Line(before.begins(), before.what(), before.with(), before.who(), next);
  }

  /** How it is done; what moves the air in a wait is put out at its end. */
  private String how(WorkBlock work) {
    return air(work).map(SheetSpeech::off).orElseGet(() -> words.how(work));
  }

  /** What moves the air in a wait. */
  private static Optional<Resource> air(WorkBlock work) {
    return work.first().piece().filter(piece -> work.kind() == Task.Kind.WAIT);
  }
}
