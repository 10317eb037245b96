package strikeoff.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import strikeoff.artwork.DemoFilms;
import strikeoff.findings.Severity;

/**
 * Recall and false alarms: every printable demo plan, with one slip at a time. The table of what
 * was made and found goes to {@code target/slips.txt}.
 */
class SlipsTest {

  static final List<String> PRINTABLE =
      List.of(
          "estuary-curtains",
          "first-border",
          "class/ivo",
          "class/mina",
          "class-second/otis",
          "class-second/tobias",
          "class-second/vigo");

  private static final int LEAST_KINDS = 25;
  private static final Checker CHECKER = Checker.builtIn().with(DemoFilms.beside());

  @Test
  void everySlipIsFoundByItsRuleAndNothingElseIs() throws IOException {
    List<String> table = new ArrayList<>();
    List<String> missed = new ArrayList<>();
    List<String> alarms = new ArrayList<>();
    Set<String> answered = new TreeSet<>();
    List<Slip> slips = Slip.all();
    Set<String> used = new HashSet<>();
    for (String plan : PRINTABLE) {
      String text = Files.readString(Path.of("plans", plan + ".yaml"));
      assertThat(answers(CHECKER.check(plan, text))).as(plan).isEmpty();
      Set<String> kinds = new HashSet<>();
      int made = 0;
      int misses = missed.size();
      int false0 = alarms.size();
      for (Slip slip : slips) {
        Optional<String> changed = slip.in(plan, text);
        if (changed.isPresent()) {
          made++;
          kinds.add(slip.slip());
          used.add(slip.slip());
          Set<String> answers = answers(CHECKER.check(plan, changed.get()));
          String what = plan + ": " + slip.slip() + ": " + answers;
          if (slip.finds().stream().noneMatch(answers::contains)) {
            missed.add(what);
          }
          if (!answers.stream()
              .allMatch(a -> slip.finds().contains(a) || slip.also().contains(a))) {
            alarms.add(what);
          }
          answered.addAll(answers);
        }
      }
      assertThat(kinds).as(plan).hasSizeGreaterThanOrEqualTo(LEAST_KINDS);
      table.add(row(plan, made, missed.size() - misses, alarms.size() - false0));
    }
    table.add(0, row("plan", "slips", "missed", "false"));
    table.add("rules that answered: " + answered.size());
    Files.createDirectories(Path.of("target"));
    Files.write(Path.of("target", "slips.txt"), table);
    table.forEach(System.out::println);
    SoftAssertions.assertSoftly(
        both -> {
          both.assertThat(missed).as("missed").isEmpty();
          both.assertThat(alarms).as("false alarms").isEmpty();
        });
    assertThat(used)
        .as("slips that fit no plan")
        .containsAll(slips.stream().map(Slip::slip).toList());
  }

  private static Set<String> answers(Checked checked) {
    Set<String> answers = new TreeSet<>();
    if (checked instanceof Checked.Judged judged) {
      judged.findings().stream()
          .filter(f -> f.severity() != Severity.ADVICE)
          .forEach(f -> answers.add(f.rule().id()));
      judged.failedRules().forEach(f -> answers.add("a fault of " + f.rule()));
    } else {
      answers.add(checked instanceof Checked.Unreadable ? "reader" : checked.sentence());
    }
    return answers;
  }

  private static String row(Object... cells) {
    return String.format(Locale.ROOT, "%-22s %6s %7s %6s", cells);
  }
}
