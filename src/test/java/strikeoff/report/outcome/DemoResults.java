package strikeoff.report.outcome;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import strikeoff.check.Checked;
import strikeoff.check.Checker;

/** What comes of the demo plans and of a few that no one should write, checked once. */
public final class DemoResults {

  /**
   * Quotes, markup, a turn of the writing direction, a pair of UTF-16 units, and the end of CDATA.
   */
  public static final String HOSTILE = "<b a=\"x\">&amp;]]> \u202E \uD83E\uDEBF \u0007 é";

  private static final String ACCEPTING =
      """
      accept:
        - {rule: drying/frame-on-wet-film, because: It is <b>only</b> a “try”.}
      """;

  private static final Checker CHECKER = Checker.builtIn();
  private static final Results DEMO = demo();

  private DemoResults() {}

  /** All demo plans, an unreadable one, one the tool failed on, and one that accepts a stop. */
  public static Results all() {
    return DEMO;
  }

  /** The outcome of a plan's text. */
  public static Outcome of(int number, String file, String text) {
    Checked checked = CHECKER.check(file, text);
    return Outcome.of(checked, number, Optional.empty()).supplied(checked);
  }

  /** Results of these alone. */
  public static Results only(Outcome... plans) {
    return new Results(
        "0.0", "some", Optional.empty(), plans.length, CHECKER.rules().rules(), List.of(plans));
  }

  private static Results demo() {
    List<Outcome> plans = new ArrayList<>();
    try (Stream<Path> files = Files.walk(Path.of("plans"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
        Checked checked = CHECKER.check(file, file.toString().replace('\\', '/'));
        Optional<String> page = Optional.of(file.getFileName() + ".html");
        plans.add(Outcome.of(checked, plans.size() + 1, page).supplied(checked));
      }
      String otis = Files.readString(Path.of("plans/class/otis.yaml"));
      plans.add(of(plans.size() + 1, "plans/über <b>.yaml", otis + ACCEPTING));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    plans.add(of(plans.size() + 1, "bad.yaml", "plan: A\nclothh: {length: 2 g}\n"));
    plans.add(
        Outcome.of(
            new Checked.Failed(HOSTILE, HOSTILE, "trace"), plans.size() + 1, Optional.empty()));
    return new Results(
        "0.0", "plans", Optional.empty(), plans.size(), CHECKER.rules().rules(), plans);
  }
}
