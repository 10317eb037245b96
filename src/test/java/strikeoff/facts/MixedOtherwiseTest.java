package strikeoff.facts;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import strikeoff.artwork.DemoFilms;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.policy.yaml.PolicyReader;

/** What doesn't depend on how pastes are mixed may be kept when they are mixed otherwise. */
class MixedOtherwiseTest {

  private static final Policy POLICY = PolicyReader.builtIn();

  /** Amounts, and what stands in recipes. */
  private static final Pattern GRAMS = Pattern.compile("(amount|dye|urea|alginate): (\\d+)");

  private static PrintPlan plan(String text) {
    return DemoFilms.plan(text, POLICY);
  }

  private static String mixed(String text) {
    return GRAMS
        .matcher(text)
        .replaceAll(m -> m.group(1) + ": " + Integer.parseInt(m.group(2)) * 3);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "plans/estuary-curtains.yaml",
        "plans/first-border.yaml",
        "plans/mistakes/short-blue.yaml",
        "plans/mistakes/soda-in-paste.yaml",
        "plans/class/mina.yaml",
        "plans/class-second/uma.yaml"
      })
  void theFactsAreThoseOfThePlanByItself(String file) throws IOException {
    String text = Files.readString(Path.of(file));
    PrintPlan before = plan(text);
    PrintPlan after = plan(mixed(text));
    assertThat(before.isButForMixing(after)).isTrue();
    Facts derived = Facts.derive(after, POLICY);
    Facts kept = Facts.derive(before, POLICY).mixed(after);
    assertThat(kept.evidence()).isEqualTo(derived.evidence());
    assertThat(kept.evidence()).isNotEqualTo(Facts.derive(before, POLICY).evidence());
    assertThat(kept.timeline().impressions()).isEqualTo(derived.timeline().impressions());
  }

  @ParameterizedTest
  @CsvSource({
    "humidity: 50 %, humidity: 51 %",
    "for: 60 min, for: 61 min",
    "kept: cold, kept: room",
    "length: 2.7 m, length: 2.8 m"
  })
  void anythingElseIsAnotherPlan(String there, String other) throws IOException {
    String text = Files.readString(Path.of("plans/estuary-curtains.yaml"));
    assertThat(text).contains(there);
    assertThat(plan(text).isButForMixing(plan(text.replaceFirst(there, other)))).isFalse();
  }
}
