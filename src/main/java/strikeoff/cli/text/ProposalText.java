package strikeoff.cli.text;

import java.util.ArrayList;
import java.util.List;
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
    Moment today = found.before().facts().timeline().finish();
    boolean prints = !found.before().facts().timeline().impressions().isEmpty();
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
                    + ": its run stays. It ends "
                    + finish.when()
                    + ", "
                    + slowly
                    + "; of "
                    + found.tried()
                    + " runs none was better."
                : name
                    + ": "
                    + (prints ? "your run as written ends " + today.when() : "it has no run yet")
                    + "; this one ends "
                    + finish.when()
                    + ", "
                    + slowly
                    + " ("
                    + found.tried()
                    + " runs tried).",
            width));
    found.notes().forEach(note -> lines.addAll(Plain.wrap(INDENT, INDENT + INDENT, note, width)));
    lines.addAll(Plain.wrap(INDENT, INDENT + INDENT, found.proof(), width));
    if (!found.isAsItWas()) {
      lines.add("");
      lines.addAll(ClockText.of(TwoClocks.of(found), width));
      lines.add("");
      found
          .saved()
          .ifPresent(
              saved ->
                  lines.addAll(
                      Plain.wrap(
                          INDENT,
                          INDENT + INDENT,
                          saved.text() + " of opening hours are saved.",
                          width)));
      found.moved().forEach(one -> lines.addAll(Plain.wrap(INDENT, INDENT + INDENT, one, width)));
    }
    lines.addAll(Plain.wrap(INDENT, INDENT + INDENT, found.after().sentence(), width));
    found
        .advice()
        .forEach(one -> lines.addAll(Plain.wrap(INDENT + INDENT, INDENT + INDENT, one, width)));
    return lines;
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
