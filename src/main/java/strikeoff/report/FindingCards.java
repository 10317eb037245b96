package strikeoff.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import strikeoff.evidence.Evidence;
import strikeoff.findings.Finding;
import strikeoff.findings.Mend;
import strikeoff.findings.Place;
import strikeoff.findings.Severity;
import strikeoff.findings.Since;
import strikeoff.findings.Sources;
import strikeoff.layout.Layout;
import strikeoff.report.drawing.Mark;
import strikeoff.report.drawing.MarkShapes;
import strikeoff.report.drawing.RingMark;
import strikeoff.report.page.FindingCard;
import strikeoff.report.page.FindingGroup;
import strikeoff.report.page.MendLines;
import strikeoff.report.page.Quote;

/**
 * The findings as numbered cards. Within a severity they follow the work: what changes the cloth
 * and its layout comes before what changes the run, since every time and amount depends on it.
 *
 * @param marks the same numbers, to be drawn on the cloth
 * @param rings those of findings that have a place on a film
 */
record FindingCards(
    List<FindingGroup> groups, List<FindingCard> accepted, List<Mark> marks, List<RingMark> rings) {

  private static final List<String> WORK =
      List.of(
          "cloth", "layout", "artwork", "screens", "table", "seams", "media", "order", "paste",
          "drying", "time", "fixing", "care");

  private static final int LONGEST_QUOTE = 240;

  static FindingCards of(List<Finding> findings, Layout layout) {
    List<FindingGroup> groups = new ArrayList<>();
    List<FindingCard> accepted = new ArrayList<>();
    List<Mark> marks = new ArrayList<>();
    List<RingMark> rings = new ArrayList<>();
    int number = 0;
    for (Severity severity : Severity.values()) {
      List<FindingCard> cards = new ArrayList<>();
      for (Finding finding : inOrderOfWork(findings, severity, false)) {
        cards.add(card(finding, ++number, layout));
        rings.addAll(rings(finding, number));
        marks.add(new Mark(number, severity, Runs.marked(finding.marks(), layout)));
      }
      if (!cards.isEmpty()) {
        groups.add(new FindingGroup(heading(severity), explanation(severity), cards));
      }
    }
    for (Severity severity : Severity.values()) {
      for (Finding finding : inOrderOfWork(findings, severity, true)) {
        accepted.add(card(finding, ++number, layout));
        rings.addAll(rings(finding, number));
        marks.add(new Mark(number, severity, Runs.marked(finding.marks(), layout)));
      }
    }
    return new FindingCards(groups, accepted, marks, rings);
  }

  /** What the finding of that number says in short. */
  String summary(int number) {
    return Stream.concat(
            groups.stream().flatMap(group -> group.cards().stream()), accepted.stream())
        .filter(card -> card.number() == number)
        .map(FindingCard::summary)
        .findFirst()
        .orElseThrow();
  }

  private static List<Finding> inOrderOfWork(
      List<Finding> findings, Severity severity, boolean accepted) {
    return findings.stream()
        .filter(f -> f.severity() == severity && f.accepted().isPresent() == accepted)
        .sorted(Comparator.comparingInt(FindingCards::turn).thenComparing(Finding.ORDER))
        .toList();
  }

  /** Where the values lie that its message tells. */
  private static List<RingMark> rings(Finding finding, int number) {
    List<RingMark> rings = new ArrayList<>();
    if (!finding.evidence().isEmpty()) {
      Evidence judged = finding.evidence().get(0);
      judged
          .onFilms()
          .forEach(
              (value, place) -> {
                if (finding.rule().message().contains("{" + value + "}")) {
                  rings.add(new RingMark(number, finding.severity(), judged.path(), place));
                }
              });
    }
    return rings;
  }

  private static int turn(Finding finding) {
    int turn = WORK.indexOf(finding.rule().family());
    return turn < 0 ? WORK.size() : turn;
  }

  private static FindingCard card(Finding finding, int number, Layout layout) {
    return new FindingCard(
        number,
        finding.severity().text(),
        MarkShapes.icon(finding.severity()),
        finding.rule().summary(),
        finding.message(),
        finding.remedy(),
        finding.rule().because(),
        Sources.shown(finding.rule().source()),
        finding.rule().id(),
        Runs.placements(finding.marks(), layout),
        quote(finding.place()),
        finding.related().stream().map(FindingCards::quote).toList(),
        finding.accepted().map(a -> a.because()).orElse(""),
        finding.since().map(Since::spoken).orElse(""),
        finding.mends().stream().map(FindingCards::lines).toList(),
        finding.acceptLine().orElse(""));
  }

  private static MendLines lines(Mend mend) {
    List<MendLines.Line> lines = new ArrayList<>();
    for (Mend.Hunk hunk : mend.hunks()) {
      int gone = hunk.line();
      for (String line : hunk.gone()) {
        lines.add(new MendLines.Line(gone++, true, shown(line)));
      }
      int come = hunk.line();
      for (String line : hunk.come()) {
        lines.add(new MendLines.Line(come++, false, shown(line)));
      }
    }
    return new MendLines(mend.costs(), lines);
  }

  private static Quote quote(Place place) {
    return quote(place.label(), place.position().line(), place.excerpt());
  }

  static Quote quote(String label, int line, String text) {
    return new Quote(label, line, shown(text.strip()));
  }

  private static String shown(String text) {
    int length = text.codePointCount(0, text.length());
    return length <= LONGEST_QUOTE
        ? text
        : text.substring(0, text.offsetByCodePoints(0, LONGEST_QUOTE)) + " …";
  }

  private static String heading(Severity severity) {
    return switch (severity) {
      case STOP -> "Stops";
      case RISK -> "Risks";
      case ADVICE -> "Advice";
    };
  }

  private static String explanation(Severity severity) {
    return switch (severity) {
      case STOP -> "Printed as it stands, this spoils cloth.";
      case RISK -> "It may go wrong, or goes wrong within the range of an estimate.";
      case ADVICE -> "Better known before than after.";
    };
  }
}
