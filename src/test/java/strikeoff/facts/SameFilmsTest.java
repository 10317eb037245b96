package strikeoff.facts;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.artwork.DemoFilms;
import strikeoff.day.Effort;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.policy.yaml.PolicyReader;

/** What is true of films may be kept where neither they nor what bears on them change. */
class SameFilmsTest {

  private static final Policy POLICY = PolicyReader.builtIn();

  private static PrintPlan plan(String there, String other) throws IOException {
    String text = Files.readString(Path.of("plans/estuary-curtains.yaml"));
    assertThat(text).contains(there);
    return DemoFilms.plan(text.replace(there, other), POLICY);
  }

  @ParameterizedTest
  @CsvSource({
    "mix: all, mix: [sand]",
    "humidity: 50 %, humidity: 51 %",
    "amount: 220 g, amount: 320 g",
    "centre: {at: 2 m, centre: {at: 2.1 m"
  })
  void theFactsAreThoseOfThePlanByItself(String there, String other) throws IOException {
    PrintPlan before = plan(there, there);
    PrintPlan after = plan(there, other);
    assertThat(after.hasFilmsOf(before)).isTrue();
    Facts kept = Facts.derive(before, POLICY).derive(after, Effort.USUAL);
    assertThat(kept.films()).isNotEmpty();
    assertThat(kept.evidence()).isEqualTo(Facts.derive(after, POLICY).evidence());
  }

  @ParameterizedTest
  @CsvSource({
    "railed: yes, railed: no",
    "films/heron-rust.png, films/heron-key.png",
    "image: 31 x 24 cm, image: 32 x 24 cm",
    "'colour: \"#b5653a\"', 'colour: \"#b5653b\"'"
  })
  void anythingThatBearsOnFilmsIsAnotherPlan(String there, String other) throws IOException {
    assertThat(plan(there, other).hasFilmsOf(plan(there, there))).isFalse();
  }
}
