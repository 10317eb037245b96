package strikeoff.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import strikeoff.artwork.StudioFolder;
import strikeoff.document.Bounds;
import strikeoff.policy.Policy;
import strikeoff.policy.yaml.PolicyReader;
import strikeoff.rulebook.Rulebook;
import strikeoff.rulebook.own.OwnRules;
import strikeoff.rulebook.own.RuleFile;
import strikeoff.studio.StudioReader;
import strikeoff.studio.StudioReading;

/** Whoever copies a rule, or a line of one, out of the documents has a rule that runs. */
class OwnRulesDocumentsTest {

  private static final Path OWN_RULES = Path.of("rules/OWN-RULES.md");
  private static final Pattern RULE = Pattern.compile("(?ms)^ *rule \"[^\"]+\"\\n.*?^ *end$");

  /** Lines of conditions that are shown without their rule. */
  private static final Pattern POLICY = Pattern.compile("(?ms)^```yaml\\n(.*?)^```$");

  private static final Pattern LINES = Pattern.compile("(?m)(?:^    .*\\n)+");

  private static List<String> rules(Path document) throws IOException {
    List<String> found = new ArrayList<>();
    Matcher rule = RULE.matcher(Files.readString(document));
    while (rule.find()) {
      found.add(rule.group());
    }
    return found;
  }

  private static String rule(int number, String lines) {
    String name = "r" + (char) ('a' + number / 676) + (char) ('a' + number / 26 % 26);
    return "rule \""
        + name
        + (char) ('a' + number % 26)
        + "\"\nwhen\n"
        + lines
        + "\nthen\n  say advice: m.\n  because: b.\n  mend: r.\nend\n";
  }

  private static void runs(RuleFile... files) throws Exception {
    OwnRules own = OwnRules.of(List.of(files));
    Rulebook book = Rulebook.builtIn().with(own, 60);
    Checked checked =
        new Checker(PolicyReader.builtIn(), book, Bounds.USUAL)
            .check("border.yaml", Files.readString(Path.of("plans/first-border.yaml")));
    assertThat(checked).isInstanceOf(Checked.Judged.class);
    assertThat(((Checked.Judged) checked).failedRules()).isEmpty();
  }

  @Test
  void everyRuleThatIsShownRuns() throws Exception {
    int number = 0;
    for (Path document : List.of(OWN_RULES, Path.of("README.md"))) {
      List<String> shown = rules(document);
      assertThat(shown).as(document.toString()).isNotEmpty();
      for (String rule : shown) {
        runs(new RuleFile("rules/shown/r" + number++ + ".dslr", "shown", rule));
      }
    }
  }

  @Test
  void everyLineThatIsShownWithoutARuleRuns() throws Exception {
    Matcher block = LINES.matcher(Files.readString(OWN_RULES));
    StringBuilder rules = new StringBuilder();
    int number = 0;
    while (block.find()) {
      String lines = block.group().stripTrailing();
      if (!lines.contains("rule \"") && !lines.contains("java -jar")) {
        rules.append(rule(number++, lines));
      }
    }
    assertThat(number).isGreaterThan(8);
    runs(new RuleFile("rules/shown/lines.dslr", "shown", rules.toString()));
  }

  @Test
  void everyPolicyThatIsShownIsRead() throws IOException {
    Policy policy = PolicyReader.builtIn();
    List<String> ids = Checker.builtIn().rules().ids();
    List<String> shown = new ArrayList<>();
    Matcher block = POLICY.matcher(Files.readString(OWN_RULES));
    while (block.find()) {
      byte[] text = ("studio: Shown\n" + block.group(1)).getBytes(StandardCharsets.UTF_8);
      StudioReading reading =
          StudioReader.read(
              "studio.yaml",
              text,
              policy,
              ids,
              false,
              new StudioFolder(Optional.of(Path.of("plans"))));
      assertThat(reading).as(block.group(1)).isInstanceOf(StudioReading.Read.class);
      shown.add(block.group(1));
    }
    assertThat(shown).isNotEmpty();
  }
}
