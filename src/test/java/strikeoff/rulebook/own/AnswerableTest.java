package strikeoff.rulebook.own;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A rule that could never find anything is refused when it is read. */
class AnswerableTest {

  private static final Vocabulary WORDS = Vocabulary.shipped();

  private static List<String> told(String conditions) {
    List<RuleMistake> mistakes = new ArrayList<>();
    String text =
        "rule \"gate\"\nwhen\n"
            + conditions.replace(" / ", "\n")
            + "\nthen\nsay stop: m.\nbecause: b.\nmend: r.\nend\n";
    SentenceFile.of(new RuleFile("rules/house/gate.dslr", "house", text), WORDS, mistakes);
    return mistakes.stream().map(RuleMistake::text).toList();
  }

  private static List<String> constraints(String condition) {
    return ClauseTest.clause(condition).constraints();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          a paste of dye is mixed of the group DCT          | groups contains "dichlorotriazine"
          a paste of dye is mixed of the group "dct"        | groups contains "dichlorotriazine"
          there is a paste whose group is vinyl sulfone     | group == "vinyl sulphone"
          there is a paste holding washing soda             | ingredients contains "washing soda"
          there is a paste holding baking soda              | ingredients contains "bicarbonate"
          the cloth holds flax                              | fibres contains "linen"
          there is a cloth whose fibres include Calico      | fibres contains "cotton"
          there is a paste whose medium is dye paste        | medium == "dye"
          nobody wears heat gloves                          | worn not contains "heat gloves"
          a paste goes through a mesh whose medium is dye   | medium.text == "dye paste"
          there is a bath of the kind Heat-Set              | kind == "heat-set"
          there is a paste called “unicorn”                 | paste == "unicorn"
          """)
  void wordsAreTakenForWhatFactsCallThem(String sentence, String constraint) {
    assertThat(constraints(sentence)).contains(constraint);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          a paste of dye is mixed of the group "unicorn" | 3:39: * no reactive group is called “unicorn”
          a paste of dye is mixed of the group DTC       | 3:38: * did you mean “DCT”?
          the cloth holds "cotten"                       | 3:18: * no fibre is called “cotten”; did you mean “cotton”?
          there is a step of the kind "dance"            | 3:30: * no kind of step is called “dance”; there are batch,
          the cloth is fixed by wash                     | 3:23: * no way of fixing dye is called “wash”; there are batch, soak, steam
          air is moved over the cloth by "bellows"       | 3:33: * no moved air is called “bellows”; there are a stated speed, fan
          nobody wears "heat glove"                      | 3:15: * did you mean “heat gloves”?
          there is a paste whose medium is ink           | 3:34: * no medium is called “ink”; there are dye, paint
          a paste goes through a mesh whose medium is ink| 3:45: * no medium is called “ink”; there are dye paste, paint
          there is an arrangement whose kind is "row"    | 3:40: * no kind of arrangement is called “row”; there are anchored,
          """)
  void aWordThatIsNotKnownIsToldWhereItStands(String sentence, String told) {
    String[] parts = told.split(" \\* ");
    assertThat(told(sentence))
        .singleElement()
        .asString()
        .startsWith("rules/house/gate.dslr:" + parts[0])
        .contains(parts[1]);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "there is a screen with a mesh finer than 61 per cm and with a mesh coarser than 43 per cm",
        "a paste of paint is mixed of the group DCT",
        "there is a paste whose medium is paint and of the group DCT",
        "a series has more than 6 placements and whose kind is border",
        "the room has fewer than 0 sinks",
        "a sink is busy for more than 120 % of the time",
        "the plan takes more than 2 days / the plan takes more than 6 days / there is a plan whose"
            + " days is less than 3",
        "a design has more than 6 colours and whose colours is less than 7",
        "a design has more than 6 colours and whose colours is 7.5",
        "there is a paste whose paint is yes and whose paint is not yes",
        "the cloth isn't washed and whose washed is yes",
        "the cloth holds linen and whose fibres do not include flax",
        "there is no cloth",
        "there is no paste / there is a paste of the group DCT",
      })
  void whatNoPlanCanMeetIsRefused(String conditions) {
    assertThat(told(conditions)).singleElement().asString().contains("never find anything");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "there is a screen with a mesh finer than 43 per cm and with a mesh coarser than 61 per cm",
        "a paste of dye is mixed of the group DCT",
        "a series has more than 6 placements / there is a border",
        "a design has more than 6 colours and whose colours is less than 8",
        "there is a paste whose medium is paint / there is a paste of the group DCT",
        "a sink is busy for more than 90 % of the time",
        "there is no paste of the group DCT / there is a paste",
        "there is no paste called “rust”",
        "there is a screen whose mesh is 43/cm and whose mesh is at least 43/cm",
      })
  void whatAPlanCanMeetIsNot(String conditions) {
    assertThat(told(conditions)).isEmpty();
  }

  @Test
  void aConditionOfAnotherFormIsLeftToTheEngine() {
    assertThat(Possible.single("frameLength.base() * 2 < 300")).isEmpty();
    assertThat(Possible.single("a == \"x, y\", b > 3")).containsExactly("a == \"x, y\"", "b > 3");
  }
}
