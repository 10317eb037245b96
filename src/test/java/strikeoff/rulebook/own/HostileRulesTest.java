package strikeoff.rulebook.own;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that nobody writes in good faith end in a sentence, soon. */
class HostileRulesTest {

  /** As large as a file may be; on a slow machine each takes a second or two. */
  private static final int LARGE = 256 * 1024;

  private static final Duration SOON = Duration.ofSeconds(30);

  private static final String SCREEN = "there is a screen with a mesh finer than 61 per cm";

  private static String rule(String name, String lines) {
    return "rule \""
        + name
        + "\"\nwhen\n"
        + lines
        + "\nthen\nsay stop: m.\nbecause: b.\nmend: r.\nend\n";
  }

  private static String filled(String line) {
    return (line + "\n").repeat(LARGE / (line.length() + 1) - 1);
  }

  private static List<String> told(String text) {
    return assertTimeoutPreemptively(
        SOON,
        () -> {
          try {
            OwnRules.of(List.of(new RuleFile("own.dslr", "own", text)));
            return List.of();
          } catch (RuleMistakes e) {
            return e.all().stream().map(RuleMistake::text).toList();
          }
        });
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          there is a scren with a mesh finner than 61 per cm | is no sentence
          there is a screen either either either either called a or called b | “either” wants an “or”
          there is a screen whose frame length is 1 cm more than 1 cm more than 2 times 50 % of its width | is no sentence
          there is a screen with a frame longer than 1 m 1 m 1 m 1 m 1 m 1 m 1 m 1 m 1 m and and | is no sentence
          either either either either either either either either | is no sentence
          every every every every every every every every every | doesn't begin with a thing
          it is not so that it is not so that it is not so that | is no sentence
          “““““““““““““““““““““““““““““““““““““““““““““““““““““““““ | is no sentence
          the the the of all of all of all of all of all of all add up to | doesn't begin with a thing
          """)
  void aFileFullOfOneLineIsToldOnceForEachOfItsFirstLines(String line, String why) {
    List<String> told = told(rule("x", filled(line)));
    assertThat(told).hasSizeBetween(1, 102);
    assertThat(told.get(0)).startsWith("own.dslr:3").contains(why);
    assertThat(told).allSatisfy(one -> assertThat(one).hasSizeLessThan(1000));
  }

  @Test
  void aRuleOfThousandsOfLinesIsRefused() {
    assertThat(told(rule("x", filled(SCREEN))))
        .containsExactly("own.dslr:103: a rule has at most 100 lines of conditions");
    assertThat(told(rule("x", SCREEN + "\n" + filled("- with a mesh finer than 61 per cm"))))
        .containsExactly("own.dslr:103: a rule has at most 100 lines of conditions");
  }

  @Test
  void thousandsOfRulesAreRefused() {
    StringBuilder text = new StringBuilder();
    for (int i = 0; text.length() < LARGE; i++) {
      text.append(rule("r " + letters(i), "there is a screen"));
    }
    assertThat(told(text.toString()))
        .containsExactly(
            "own.dslr: more than 2000 rules up to here, each way of “either … or …” counted; no"
                + " more are read");
  }

  /** Three ways in each of seven lines are 2187 for the rule. */
  @Test
  void waysThatMultiplyAreRefused() {
    String line = "either there is a screen or there is a paste or there is a design\n";
    assertThat(told(rule("x", line.repeat(7))))
        .containsExactly(
            "own.dslr:1: “either … or …” leaves more than 32 ways; make several rules of it");
    assertThat(told(rule("x", line.repeat(3)))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"\0", "\u202E", "rule", "end", "-", "when", "then", "\uFFFF", "a"})
  void aFileOfOneWordOrSignIsNoRule(String sign) {
    assertThat(told((sign + "\n").repeat(LARGE / 8))).hasSizeBetween(1, 102);
    assertThat(told(sign.repeat(LARGE / 8))).hasSizeBetween(1, 3);
  }

  /** Of a hundred lines that no sentence ends, none is deeper than the stack. */
  @Test
  void whatNestsIsReadToItsEnd() {
    List<String> lines = new ArrayList<>();
    for (String word : List.of("not ", "either ", "and ", "that is not ")) {
      lines.add("there is a screen " + word.repeat(280 / word.length()).strip());
    }
    for (String line : lines) {
      assertThat(told(rule("x", line))).as(line).hasSizeLessThan(2);
    }
  }

  /** A name of letters for a number. */
  private static String letters(int number) {
    StringBuilder name = new StringBuilder();
    for (int left = number + 1; left > 0; left /= 26) {
      name.append((char) ('a' + left % 26));
    }
    return name.toString();
  }
}
