package strikeoff.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import strikeoff.day.Moment;
import strikeoff.findings.Finding;
import strikeoff.propose.Proposal;
import strikeoff.propose.TwoClocks;

/** Says what came of looking for another run. */
public final class ProposalText {

  private static final String INDENT = "  ";

  private ProposalText() {}

  /** A run that was found, how far it is from the best, and what to know of it. */
  public static List<String> of(String name, Proposal.Found found, int width) {
    List<String> lines = new ArrayList<>();
    Moment finish = found.finish();
    String slowly =
        finish.equals(found.slowFinish())
            ? "also where films dry slowly"
            : "where films dry slowly " + found.slowFinish().when();
    lines.addAll(
        Plain.wrap(
            "",
            INDENT,
            found.isAsItWas()
                ? name
                    + ": keep yours: it ends "
                    + finish.when()
                    + ", "
                    + slowly
                    + "; of "
                    + found.tried()
                    + " runs none ends sooner."
                : name
                    + ": "
                    + found
                        .ends()
                        .map(
                            end ->
                                "your run as written ends "
                                    + end.when()
                                    + (found.mends() ? ", not printable" : ""))
                        .orElse("it has no run yet")
                    + "; this one ends "
                    + finish.when()
                    + ", "
                    + slowly
                    + (found.cured().isEmpty() ? "" : ": " + found.endsBut())
                    + " ("
                    + found.tried()
                    + " runs tried).",
            width));
    Consumer<String> say = words -> lines.addAll(Plain.wrap(INDENT, INDENT + INDENT, words, width));
    found.cured().forEach(say);
    found.notes().forEach(say);
    say.accept(found.proof());
    if (!found.isAsItWas()) {
      lines.add("");
      lines.addAll(ClockText.of(TwoClocks.of(found), width));
      lines.add("");
      found.saved().ifPresent(saved -> say.accept(saved.text() + " of opening hours are saved."));
      found.moved().forEach(say);
    }
    say.accept(found.after().sentence());
    found
        .advice()
        .forEach(one -> lines.addAll(Plain.wrap(INDENT + INDENT, INDENT + INDENT, one, width)));
    return lines;
  }

  /** Said of a patch that was found in some seconds, which are of another length each time. */
  public static List<String> ofNow(int width) {
    return Plain.wrap(
        INDENT,
        INDENT,
        "In the same seconds another search may find another run: to take this one, save the patch"
            + " and run `patch -p0`, or count runs by `--effort`, with `--write` as well.",
        width);
  }

  /** Why no run is proposed, with what stands against the plan. */
  public static List<String> of(String name, Proposal.Refused refused, int width) {
    List<String> lines =
        new ArrayList<>(
            Plain.wrap("", INDENT, name + ": no run is proposed. " + refused.why(), width));
    for (Finding finding : refused.findings()) {
      lines.addAll(
          Plain.wrap(
              INDENT,
              INDENT + INDENT,
              finding.rule().id()
                  + ", line "
                  + finding.place().position().line()
                  + ": "
                  + finding.message(),
              width));
      lines.addAll(
          Plain.wrap(INDENT + INDENT, INDENT + INDENT, "Mend: " + finding.remedy(), width));
    }
    if (!refused.findings().isEmpty()) {
      lines.addAll(
          Plain.wrap(
              INDENT,
              INDENT,
              refused.findings().stream().allMatch(finding -> finding.rule().mend().isEmpty())
                  ? "Ask again when that is mended: by hand, since no edit of the run mends it."
                  : "Ask again when that is mended, by hand or, as far as edits mend it, by"
                      + " `strikeoff mend`.",
              width));
    }
    return lines;
  }
}
