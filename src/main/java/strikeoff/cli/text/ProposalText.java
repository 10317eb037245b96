package strikeoff.cli.text;

import java.util.ArrayList;
import java.util.List;
import strikeoff.day.Moment;
import strikeoff.findings.Finding;
import strikeoff.propose.Bound;
import strikeoff.propose.Proposal;
import strikeoff.units.Span;

/** Says what came of looking for another run. */
public final class ProposalText {

  private static final String INDENT = "  ";

  private ProposalText() {}

  /** A run that was found, how far it is from the best, and what to know of it. */
  public static List<String> of(String name, Proposal.Found found, int width) {
    List<String> lines = new ArrayList<>();
    Moment finish = found.finish();
    Moment today = found.before().facts().timeline().finish();
    boolean prints = !found.before().facts().timeline().impressions().isEmpty();
    String slowly =
        finish.equals(found.slowFinish())
            ? "slow drying too"
            : "slow drying " + found.slowFinish().when();
    lines.addAll(
        Plain.wrap(
            "",
            INDENT,
            found.isAsItWas()
                ? name
                    + ": its run stays. It ends "
                    + finish.when()
                    + ", in "
                    + slowly
                    + "; of "
                    + found.tried()
                    + " runs none was better."
                : name
                    + ": "
                    + (prints ? "today's run ends " + today.when() : "it has no run yet")
                    + "; this one ends "
                    + finish.when()
                    + ", in "
                    + slowly
                    + " ("
                    + found.tried()
                    + " runs tried).",
            width));
    lines.addAll(Plain.wrap(INDENT, INDENT + INDENT, proof(found), width));
    lines.addAll(Plain.wrap(INDENT, INDENT + INDENT, found.after().sentence(), width));
    found.notes().forEach(note -> lines.addAll(Plain.wrap(INDENT, INDENT + INDENT, note, width)));
    return lines;
  }

  private static String proof(Proposal.Found found) {
    Bound bound = found.bound();
    String none =
        "No run of these prints can end before "
            + bound.finish().text()
            + ", since "
            + bound.because().text();
    if (found.isProved()) {
      return "Shortest: proved. " + none + ".";
    }
    Span gap = found.finish().since(bound.finish());
    return none
        + "; this one ends "
        + (gap.minutes() < 1 ? "less than a minute" : gap.wholeMinutesUp().text())
        + " later.";
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
    return lines;
  }
}
