package strikeoff.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import strikeoff.artwork.DemoFilms;
import strikeoff.findings.Finding;
import strikeoff.findings.Mend;
import strikeoff.findings.Severity;
import strikeoff.mend.Diff;
import strikeoff.mend.EditTrials;
import strikeoff.mend.Mender;

/**
 * Every slip in a printable demo plan, and every demo mistake, whose stops an edit mends: mended,
 * it has none left, in at most three hunks. An edit that says otherwise what a film is leaves the
 * plan as it is. No rule finds more than before, but for a risk that comes with the only way to be
 * rid of the last stop, and that no edit mends. The table of what was mended goes to {@code
 * target/mended-slips.txt}.
 */
class MendedSlipsTest {

  private static final int MOST_HUNKS = 3;
  private static final Mender.Asked ALL = new Mender.Asked(false, true, true);
  private static final Checker CHECKER = Checker.builtIn().with(DemoFilms.beside());

  private static final Pattern COMMENT = Pattern.compile("   # reed \\d+(?=\\r?\\n)");

  private final List<String> table = new ArrayList<>();
  private int mended;
  private int onlyAtTheLightTable;

  @Test
  void whatAnEditMendsIsMended() throws IOException {
    SoftAssertions all = new SoftAssertions();
    for (String plan : SlipsTest.PRINTABLE) {
      String text = Files.readString(Path.of("plans", plan + ".yaml"));
      for (Slip slip : Slip.all()) {
        slip.in(plan, text).ifPresent(slipped -> mend(plan + ": " + slip.slip(), slipped, all));
      }
    }
    try (Stream<Path> mistakes = Files.list(Path.of("plans/mistakes"))) {
      for (Path plan : mistakes.sorted().toList()) {
        mend(plan.getFileName().toString(), Files.readString(plan), all);
      }
    }
    Files.write(Path.of("target", "mended-slips.txt"), table);
    all.assertAll();
    assertThat(mended).isGreaterThan(60);
    assertThat(onlyAtTheLightTable).isPositive();
  }

  @Test
  void whatHasNoStopStaysAsItIs() throws IOException {
    for (String plan : SlipsTest.PRINTABLE) {
      String text = Files.readString(Path.of("plans", plan + ".yaml"));
      Mender.Mended mended = Mender.mended(CHECKER, "plan.yaml", text, ALL);
      assertThat(mended.made()).as(plan).isEmpty();
      assertThat(mended.text()).as(plan).isEqualTo(text);
    }
  }

  /**
   * A comment at the end of each line and other line ends make no difference to what is mended, and
   * no comment of a line that stays is lost.
   */
  @Test
  void allElseIsKeptByteForByte() throws IOException {
    SoftAssertions all = new SoftAssertions();
    String plan = "first-border";
    String text = Files.readString(Path.of("plans", plan + ".yaml"));
    for (Slip slip : Slip.all()) {
      Optional<String> slipped = slip.in(plan, text);
      if (slipped.isPresent()
          && CHECKER.check("plan.yaml", slipped.get()) instanceof Checked.Judged) {
        Mender.Mended bare = Mender.mended(CHECKER, "plan.yaml", slipped.get(), ALL);
        Mender.Mended decked = Mender.mended(CHECKER, "plan.yaml", decked(slipped.get()), ALL);
        all.assertThat(COMMENT.matcher(decked.text()).replaceAll(""))
            .as(slip.slip())
            .isEqualTo(bare.text().replace("\n", "\r\n"));
        long gone = bare.made().stream().mapToLong(MendedSlipsTest::linesGone).sum();
        all.assertThat(COMMENT.matcher(decked.text()).results().count())
            .as("comments left: " + slip.slip())
            .isGreaterThanOrEqualTo(slipped.get().lines().count() - gone);
      }
    }
    all.assertAll();
  }

  private static long linesGone(Mender.Made made) {
    return made.mend().hunks().stream()
        .mapToLong(hunk -> Math.max(0, hunk.gone().size() - hunk.come().size()))
        .sum();
  }

  private static String decked(String text) {
    StringBuilder decked = new StringBuilder();
    int[] line = {0};
    text.lines()
        .forEach(each -> decked.append(each).append("   # reed ").append(++line[0]).append("\r\n"));
    return decked.toString();
  }

  private void mend(String what, String text, SoftAssertions all) {
    Checked checked = EditTrials.tried(CHECKER.check("plan.yaml", text), CHECKER);
    if (!(checked instanceof Checked.Judged before)) {
      return;
    }
    List<Finding> stops = stops(before);
    long mendable =
        stops.stream()
            .filter(stop -> stop.mends().stream().anyMatch(mend -> !isOfWhatThereIs(mend)))
            .count();
    if (stops.stream().anyMatch(stop -> !stop.mends().isEmpty()) && mendable == 0) {
      onlyAtTheLightTable++;
      all.assertThat(Mender.mended(CHECKER, "plan.yaml", text, ALL).text())
          .as(what)
          .isEqualTo(text);
    }
    if (mendable == 0) {
      return;
    }
    Mender.Mended result = Mender.mended(CHECKER, "plan.yaml", text, ALL);
    Checked.Judged after = (Checked.Judged) result.checked();
    long hunks =
        Diff.of("plan.yaml", text, result).stream().filter(l -> l.startsWith("@@")).count();
    Map<String, Long> more = more(before, after);
    table.add(
        String.join(
            " | ",
            what,
            mendable + " of " + stops.size() + " stops with a mend",
            result.made().size() + " edits",
            hunks + " hunks",
            "left " + ids(stops(after)),
            "more " + more));
    mended++;
    if (mendable == stops.size()) {
      all.assertThat(ids(stops(after))).as(what + ": stops left").isEmpty();
      all.assertThat(hunks).as(what + ": hunks").isBetween(1L, (long) MOST_HUNKS);
    }
    if (!more.isEmpty()) {
      all.assertThat(stops(after)).as(what + ": risks that came for nothing: " + more).isEmpty();
      Checked.Judged tried = (Checked.Judged) EditTrials.tried(after, CHECKER);
      all.assertThat(tried.findings())
          .as(what + ": risks that came and could be mended")
          .noneMatch(
              f ->
                  more.containsKey(f.rule().id())
                      && f.mends().stream().anyMatch(mend -> mend.risks().isEmpty()));
    }
  }

  /**
   * True of an edit that says otherwise what a film is: whether that or the film is wrong is seen
   * on the light table, so that it is offered and nobody but the printer makes it.
   */
  private static boolean isOfWhatThereIs(Mend mend) {
    return mend.edits().stream().anyMatch(edit -> edit.at().text().startsWith("designs"));
  }

  private static List<Finding> stops(Checked.Judged judged) {
    return judged.of(Severity.STOP).filter(f -> f.accepted().isEmpty()).toList();
  }

  private static String ids(List<Finding> findings) {
    return findings.stream().map(f -> f.rule().id()).distinct().collect(Collectors.joining(" "));
  }

  /** Rules that find more than before, advice left out: of what is no fault there may be more. */
  private static Map<String, Long> more(Checked.Judged before, Checked.Judged after) {
    Map<String, Long> more = new TreeMap<>(counted(after));
    counted(before).forEach((rule, many) -> more.merge(rule, -many, Long::sum));
    more.values().removeIf(many -> many <= 0);
    return more;
  }

  private static Map<String, Long> counted(Checked.Judged judged) {
    return judged.findings().stream()
        .filter(f -> f.severity() != Severity.ADVICE && f.accepted().isEmpty())
        .collect(Collectors.groupingBy(f -> f.rule().id(), Collectors.counting()));
  }
}
