package strikeoff.rulebook.own;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OwnRulesTest {

  private static RuleFile sentences(String text) {
    return new RuleFile("rules/bench/mesh.dslr", "bench", text);
  }

  private static final String MESH =
      """
      rule "fine mesh"
      when
        there is a screen with a mesh finer than 90 per cm
      then
        say risk: {screen} has a mesh of {mesh}.
        because: A fine mesh clogs in a slow hand.
        mend: Take a mesh of 43 per cm instead.
      end
      """;

  @Test
  void readsARule() throws RuleMistakes {
    OwnRules rules = OwnRules.of(List.of(sentences(MESH)));
    assertThat(rules.rules()).extracting(OwnRule::id).containsExactly("bench/fine-mesh");
    assertThat(rules.models()).hasSize(1);
    assertThat(OwnRules.of(List.of())).isSameAs(OwnRules.NONE);
  }

  @Test
  void twoRulesOfOneNameAreTold() {
    RuleMistakes wrong =
        catchThrowableOfType(
            RuleMistakes.class,
            () -> OwnRules.of(List.of(sentences(MESH), sentences("\n" + MESH))));
    assertThat(wrong.all())
        .extracting(RuleMistake::text)
        .containsExactly(
            "rules/bench/mesh.dslr:2: a rule is called bench/fine-mesh already, at"
                + " rules/bench/mesh.dslr:1");
  }

  @Test
  void tellsEveryMistakeWithItsLineAndTheNearestSentence() {
    RuleMistakes wrong =
        catchThrowableOfType(
            RuleMistakes.class,
            () ->
                OwnRules.of(
                    List.of(
                        sentences(
                            MESH.replace("a screen with a mesh finer", "a scren with a mesh finner")
                                .replace("{mesh}", "{mash}")
                                .replace("mend:", "mendd:")))));
    assertThat(wrong.all())
        .extracting(RuleMistake::text)
        .containsExactly(
            "rules/bench/mesh.dslr:3: “there is a scren with a mesh finner than 90 per cm” is no"
                + " sentence that is known here; the nearest is “there is a screen with a mesh"
                + " finer than {number} per cm”",
            "rules/bench/mesh.dslr:5: {mash} names no value of anything that a rule can find",
            "rules/bench/mesh.dslr:7: “mendd” is not known here; did you mean “mend”?");
  }

  /**
   * Slips of somebody who never programmed: each is told once, at its line, with what was meant.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          finer than 90 per cm | finer than 90 kg | 3: “with a mesh finer than 90 kg” is no sentence that is known here; the nearest is “with a mesh finer than {number} per cm”
          there is a screen with a mesh finer than 90 per cm | a series has more than 6 cm placements | 3: in “a series has more than 6 cm placements”, a plain number such as 20 was expected; “6 cm” is a length; the sentence is “a series has more than {number} placements”
          there is a screen with a mesh finer than 90 per cm | the day ends later than 16.30 | 3: in “the day ends later than 16.30”, a time of day such as 16:00 was expected; “16.30” is none; the sentence is “the day ends later than {clock}”
          there is a screen with a mesh finer than 90 per cm | the screen is dusty | 3: “the screen is dusty” is no sentence that is known here; the nearest is
          then@                | @                | 5: “then” is missing above this line
          because:             | becuase:         | 6: “becuase” is not known here; did you mean “because”?
          say risk:            | say rsk:         | 5: “say stop: …”, “say risk: …” or “say advice: …” was expected; “rsk” is none of them; did you mean “risk”?
          {mesh}               | {mehs}           | 5: {mehs} names no value of what the rule found; did you mean “mesh”?
          {screen} has         | {meshNme} has    | 5: {meshNme} names no value of what the rule found; did you mean
          end@                 | @                | 8: the last rule has no “end”
          then@                | thn@             | 4: “then” was expected; this is “thn”
          when@                | whn@             | 2: “when” was expected; this is “whn”
          """)
  void aTeachersSlipIsToldOnceAtItsLine(String old, String fresh, String told) {
    String text = MESH.replace(old.replace("@", "\n"), fresh.replace("@", "\n"));
    assertThat(text).isNotEqualTo(MESH);
    RuleMistakes wrong =
        catchThrowableOfType(RuleMistakes.class, () -> OwnRules.of(List.of(sentences(text))));
    assertThat(wrong).as("told: %s", told).isNotNull();
    assertThat(wrong.all())
        .extracting(RuleMistake::text)
        .satisfiesOnlyOnce(line -> assertThat(line).startsWith("rules/bench/mesh.dslr:" + told));
    assertThat(wrong.all()).hasSize(1);
  }
}
