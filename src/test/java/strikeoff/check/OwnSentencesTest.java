package strikeoff.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.artwork.DemoFilms;
import strikeoff.document.Bounds;
import strikeoff.findings.Finding;
import strikeoff.policy.yaml.PolicyReader;
import strikeoff.rulebook.Rulebook;
import strikeoff.rulebook.own.OwnRules;
import strikeoff.rulebook.own.RuleFile;
import strikeoff.rulebook.own.RuleMistake;
import strikeoff.rulebook.own.RuleMistakes;

/**
 * Each kind of sentence, said of the estuary curtains, with a twin that differs in a word and finds
 * something else. What they find was counted in the plan's text.
 */
class OwnSentencesTest {

  private static final String PLAN = "plans/estuary-curtains.yaml";

  private static String rule(String lines, String message) {
    return "rule \"said\"\nwhen\n"
        + lines.replace(" / ", "\n")
        + "\nthen\n  say advice: "
        + message
        + "\n  because: b.\n  mend: r.\nend\n";
  }

  private static List<String> found(String lines, String message) throws RuleMistakes {
    OwnRules own =
        OwnRules.of(List.of(new RuleFile("rules/own/said.dslr", "own", rule(lines, message))));
    Rulebook book = Rulebook.builtIn().with(own, 60);
    Checked.Judged checked =
        (Checked.Judged)
            new Checker(PolicyReader.builtIn(), book, Bounds.USUAL)
                .with(DemoFilms.beside())
                .check(PLAN, text());
    assertThat(checked.failedRules()).isEmpty();
    return checked.findings().stream()
        .filter(finding -> finding.rule().id().equals("own/said"))
        .map(Finding::message)
        .toList();
  }

  private static String text() {
    try {
      return Files.readString(Path.of(PLAN));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> told(String lines, String message) {
    RuleMistakes wrong =
        catchThrowableOfType(RuleMistakes.class, () -> OwnRules.of(file(lines, message)));
    assertThat(wrong).as(lines).isNotNull();
    return wrong.all().stream().map(RuleMistake::text).toList();
  }

  private static List<RuleFile> file(String lines, String message) {
    return List.of(new RuleFile("own.dslr", "own", rule(lines, message)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          there are more than 6 screens | 1
          there are more than 7 screens | 0
          there are at least three screens with a mesh finer than 43 per cm | 1
          there are at least four screens with a mesh finer than 43 per cm | 0
          there are exactly 4 screens with a mesh coarser than 61 per cm | 1
          there are exactly 5 screens with a mesh coarser than 61 per cm | 0
          there are fewer than 4 designs | 1
          there are fewer than 3 designs | 0
          there is more than one fill | 0
          there is at least one fill | 1
          there is at most one fill | 1
          there are at most six screens | 0
          more than 6 screens | 1
          more than 7 screens | 0
          at least three screens with a mesh finer than 43 per cm | 1
          no screen with a mesh finer than 61 per cm | 1
          no screen with a mesh finer than 43 per cm | 0
          there is no screen with a mesh finer than 61 per cm | 1
          there is no screen with a mesh finer than 43 per cm | 0
          no design has more than 3 colours | 1
          there is a design with more than 1 colour | 3
          no design has more than 2 colours | 0
          nothing is printed twice | 1
          something is printed twice | 0
          nobody wears heat gloves | 1
          nobody wears gloves | 0
          it is not so that the cloth isn't washed | 1
          it is not so that the cloth is longer than 4 m | 0
          the plan has at least 5 pastes | 1
          the plan has at least 6 pastes | 0
          the plan has exactly 7 screens | 1
          the plan has exactly 6 screens | 0
          the plan has fewer than 6 pastes | 1
          a design has at most 2 colours | 2
          a series has at least 6 placements | 1
          a series has at least 7 placements | 0
          the room has at least 7 sinks | 0
          it happens more than 4 times that a paste is printed | 1
          it happens more than 5 times that a paste is printed | 0
          it happens exactly twice that a design has more than 1 colours and without a key colour | 0
          it happens exactly once that a design has more than 2 colours | 1
          """)
  void countsAndWhatIsNot(String lines, int findings) throws RuleMistakes {
    assertThat(found(lines, "m.")).hasSize(findings);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          either there is a screen called unicorn or the plan has more than 4 pastes | 1
          either there is a screen called unicorn or the plan has more than 5 pastes | 0
          either there is a screen called “heron key” or there is a paste called ink | 2
          either there is no screen called “heron key” or there is a paste called ink or the plan has no notes | 1
          either there is a paste called nope or there is a dye paste | 5
          either the cloth isn't washed or the cloth is longer than 1 m | 1
          either the cloth isn't washed or the cloth is longer than 5 m | 0
          either a series has more than 60 placements or there is a border | 1
          either there is a soak or there is a wash | 2
          either nobody wears heat gloves or nobody wears gloves | 1
          either nobody wears goggles or nobody wears gloves | 0
          either the room is damper than 70 % or the room is cooler than 25 °C | 1
          either the room is cooler than 25 °C or the room is damper than 70 % | 1
          there is a screen either with a mesh finer than 43 per cm or with a frame longer than 52 cm | 5
          there is a screen with a mesh finer than 43 per cm and with a frame longer than 52 cm | 1
          there is a screen either with a mesh finer than 43 per cm and with a frame longer than 52 cm or called “shell sand” | 2
          there is a screen either called “shell sand” or called “shell rust” / - with a mesh finer than 43 per cm | 1
          there is a screen not with a mesh finer than 43 per cm | 4
          there is a screen with a mesh finer than 43 per cm but not called “reed key” | 2
          there is an arrangement that is not turned | 3
          there is an arrangement that isn't mirrored | 3
          there is an arrangement that is mirrored | 0
          there are more than 2 arrangements that are not turned | 1
          there are more than 2 arrangements that are turned | 0
          every screen is one with a mesh finer than 42 per cm | 1
          every screen is one with a mesh finer than 43 per cm | 0
          every screen with a frame longer than 52 cm is one whose frame width is 74 cm | 1
          every screen called unicorn is one with a mesh finer than 42 per cm | 0
          there is a screen whose screen begins with heron | 3
          there is a screen whose screen ends with “key” | 2
          there is a screen whose screen contains rust | 2
          """)
  void oneOfSeveralAndAll(String lines, int findings) throws RuleMistakes {
    assertThat(found(lines, "m.")).hasSize(findings);
  }

  /** Two frames are of 50 cm and three of 54 cm; four threads are of 80 µm and three of 64 µm. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          there is a screen with a frame longer than 19.67 in | 3
          there is a screen with a frame longer than 49.9 cm | 5
          there is a screen whose frame length is more than 49.98 cm | 3
          there is a screen whose frame length is at least 50.02 cm | 5
          there is a screen whose frame length is at least 50.1 cm | 3
          there is a screen whose frame length is 19.69 in | 2
          there is a screen whose frame length is not 19.69 in | 5
          there is a screen whose frame length is 19.8 in | 0
          there is a screen whose thread is less than 65 µm | 3
          there is a screen whose thread is less than 64 µm | 0
          there is a screen whose thread is more than 79 µm | 4
          """)
  void lengthsThatNobodyCanTellApartAreOne(String lines, int findings) throws RuleMistakes {
    assertThat(found(lines, "m.")).hasSize(findings);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          the placements of all series add up to more than 5 | 1
          the placements of all series add up to more than 6 | 0
          the colours of all designs add up to exactly 7 | 1
          the colours of all designs with more than 2 colours add up to exactly 7 | 0
          in all more than 100 g of paste is needed | 1
          in all more than 100 kg of paste is needed | 0
          the longest series is one with more than 5 placements | 1
          the longest series is one with more than 6 placements | 0
          the screen with the finest mesh is one with a frame longer than 52 cm | 1
          the screen with the finest mesh | 3
          the screen with the coarsest mesh | 4
          the screen with the coarsest mesh is one called “reed key” | 0
          the screen with the least frame length among those with a mesh finer than 43 per cm is one called “shell rust” | 1
          the screen with the least frame length among those with a mesh finer than 43 per cm is one called “shell sand” | 0
          the design with the most colours is one called heron | 1
          the design with the fewest colours | 2
          """)
  void sumsAndTheGreatest(String lines, int findings) throws RuleMistakes {
    assertThat(found(lines, "m.")).hasSize(findings);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          there is a screen whose frame width is more than 1.3 times its frame length | 3 | m.
          there is a screen whose frame width is more than 1.4 times its frame length | 0 | m.
          there is a screen whose frame width is 20 cm more than its frame length | 3 | m.
          there is a screen whose frame width is 20 cm less than its frame length | 0 | m.
          there is a screen with a frame longer than the table is wide | 0 | m.
          there is a screen whose frame length is at least 30 % of the table width of the table | 5 | m.
          there is a screen whose frame length is at least half the table width of the table | 0 | m.
          there is a room whose humidity is less than the limit time/waiting-share | 1 | {humidity} is under {limit}.
          there is a room whose humidity is more than the limit time/waiting-share | 0 | m.
          there is a room whose humidity is less than half the limit “time/waiting-share” | 0 | m.
          there is a table whose table length is less than the length of the cloth | 1 | m.
          there is a cloth whose length is less than the table length of the table | 0 | m.
          there is a screen called “heron key” / there is another screen whose mesh is that of the first screen | 2 | {screen} {otherScreen}
          there is a screen called “heron key” / there is another screen whose mesh is more than that of the first screen | 0 | {screen} {otherScreen}
          there is a screen called “shell sand” / there is another screen with the same mesh | 3 | {screen} {otherScreen}
          there is a screen called “shell sand” / there is another screen / - with the same mesh | 3 | {screen} {otherScreen}
          there is a table / - whose table length is more than the table width of the table | 1 | m.
          there is a table / - whose table length is less than the table width of the table | 0 | m.
          there is a screen / there is another screen with the same mesh | 9 | {screen} {otherScreen}
          there is a paste called ink / there is a design of the same paste | 2 | {paste} {design}
          there is a paste called ink / there is a design not of the same paste | 1 | {paste} {design}
          there is a design called heron / there is a series of the same design | 1 | m.
          there is a design called heron / there is a border of the same design | 0 | m.
          there is a design / there are more than 2 screens of the same design | 1 | m.
          there is a design / there are more than 3 screens of the same design | 0 | m.
          there is a screen called “heron key” / there is a paste called ink / there is a design of the same screen as the screen and of the same paste as the paste | 1 | {paste} {design}
          """)
  void oneThingBesideAnother(String lines, int findings, String message) throws RuleMistakes {
    // Of 4 screens with one mesh and 3 with another, 6 and 3 pairs have the same.
    assertThat(found(lines, message)).hasSize(findings);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          there is a mixing / there is a printing of the same paste on the same day | 1 | {step} {otherStep}
          there is a mixing / there is a printing of the same paste | 4 | {step} {otherStep}
          there is a mixing / there is a printing / - of the same paste / - on the same day | 1 | {step} {otherStep}
          there is a mixing / there is a printing more than 10 h after the mixing | 3 | {step} {otherStep}
          there is a mixing / there is a printing less than 10 h after the mixing | 1 | {step} {otherStep}
          there is a soak / there is a rinse after the soak | 1 | m.
          there is a soak / there is a rinse before the soak | 0 | m.
          there is a sewing / there is a printing before the sewing | 3 | {step} {otherStep}
          there is a sewing / there is a printing after the sewing | 1 | {step} {otherStep}
          there is a sewing / there are more than 2 printings before the sewing | 1 | m.
          there is a sewing / there are more than 2 printings after the sewing | 0 | m.
          there is a sewing / there is no printing after the sewing | 0 | m.
          there is a sewing / there is no printing of the paste sand after the sewing | 1 | m.
          there is a printing of the arrangement herons / there is another printing that begins before the first printing ends | 0 | m.
          there are at least 4 days that end later than 9:10 | 1 | m.
          there are at least 5 days that end later than 9:10 | 0 | m.
          there is a printing that begins before 10:00 | 2 | {step}
          there is a printing that ends later than 23:00 | 0 | {step}
          there is a sewing / there is a printing that starts before the sewing starts | 3 | {step} {otherStep}
          there is a printing with the screen “heron key” | 1 | m.
          there is a day whose begins at is less than 9:10 | 4 | m.
          there is a day whose begins at is less than 9:00 | 0 | m.
          """)
  void timesAndOrder(String lines, int findings, String message) throws RuleMistakes {
    assertThat(found(lines, message)).hasSize(findings);
  }

  @Test
  void whatWasFoundIsTold() throws RuleMistakes {
    assertThat(
            found(
                "there is a screen called “heron key” / there is another screen with the same mesh"
                    + " whose frame length is less than the frame length of the first screen",
                "{screen} is as fine as {otherScreen}: {otherMesh}."))
        .containsExactlyInAnyOrder(
            "heron key is as fine as reed key: 61/cm.",
            "heron key is as fine as shell rust: 61/cm.");
    assertThat(
            found(
                "there is a screen whose frame width is less than 17 % of the table width of the table",
                "{screen} is narrow beside {tableWidth}."))
        .containsExactlyInAnyOrder(
            "shell rust is narrow beside 1.6 m.", "shell sand is narrow beside 1.6 m.");
    assertThat(
            found(
                "there are more than 2 screens with a mesh finer than 43 per cm",
                "{count} of {screens} screens are fine."))
        .containsExactly("3 of 7 screens are fine.");
    assertThat(found("the placements of all series add up to more than 5", "{total} placements."))
        .containsExactly("6 placements.");
    assertThat(found("the pastes weigh more than 100 g in all", "{total}."))
        .singleElement()
        .asString()
        .matches("[0-9.]+ (g|kg)\\.");
    assertThat(
            found(
                "there is a screen called “heron key” / there is another screen called “reed green”",
                "{screen}: {thread} beside {otherThread}."))
        .containsExactly("heron key: 64 µm beside 80 µm.");
    assertThat(found("the day begins before 9:01", "Day {day}: {beginsAt} to {endsAt}."))
        .hasSize(4)
        .allSatisfy(one -> assertThat(one).matches("Day \\d: 09:00 to 1\\d:\\d\\d\\."));
    assertThat(found("the longest series", "{arrangement} has {placements}."))
        .containsExactly("herons has 6.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          there are more than 3 scrns | own.dslr:3: “scrns” doesn't begin with a thing that is known here; the nearest is “screens”
          there is another screen | own.dslr:3: “another” wants a line before that finds the first one
          either the plan has no notes | own.dslr:3: “either” wants an “or” on the same line
          there is a screen either with a mesh finer than 43 per cm | own.dslr:3: “either” wants an “or” on the same line
          there is a screen whose mesh is that of the paste | own.dslr:3: no line before this one finds “the paste”
          there is a screen / there is another screen / there is a third screen | own.dslr:5: “there is a third screen” is no sentence
          there is a screen / there is another screen / there is a design with the same width as the screen | own.dslr:5: several lines find “screen”; say “the first screen” or “the other screen”
          there is a paste / there is a screen before the paste | own.dslr:4: only steps, baths and days have times
          the designs of all screens add up to more than 3 | own.dslr:3: nothing here is called “designs”; there are frame length
          the placements of all series add up to 3 | own.dslr:3: “more than”, “less than”, “at least” or “at most” was expected
          there is a room whose humidity is more than the limit time/waiting | own.dslr:3:55: no limit is called “time/waiting”; did you mean
          there is a screen whose frame length is more than the limit time/waiting-share | own.dslr:3: the limit “time/waiting-share” is 60 %, which is another kind of amount
          it happens more than 3 times a paste is printed | own.dslr:3: “it happens more than 3 times that …” was expected
          there are 3 screens | own.dslr:3: say “exactly 3”, “at least” or “more than”
          the plan has no notes or the plan has more than 3 pastes | own.dslr:3: “or” wants an “either”
          there are more than 3 cm screens | own.dslr:3:
          there are fewer than 0 screens | own.dslr:3: there are never so many
          there is a screen whose is 4 | own.dslr:3: a value was expected here; there are designs,
          there is a screen whose frame length is more than its | own.dslr:3: a value was expected here; there are designs,
          the ends at of all printings add up to more than 3 | own.dslr:3: nothing here is called “ends at”; there are
          the printing with the greatest begins at | own.dslr:3: nothing here is called “begins at”; there are
          every screen is one | own.dslr:3: “every … is one with …” was expected
          the longest series is one | own.dslr:3: “… is one with …” was expected
          there are at least 0 screens | own.dslr:3: there are always so many, so this asks for nothing
          there is a screen with a mesh finer than -5 per cm | own.dslr:3: in “with a mesh finer than -5 per cm”, “-5” is below zero
          there is a screen with a frame longer than -40 cm | own.dslr:3: in “with a frame longer than -40 cm”, “-40 cm” is below zero
          there is a screen called “” | own.dslr:3: in “called “””, a name was expected
          there is a design with at least 0 colours | own.dslr:3: everything is so, and this asks for nothing
          a sink is busy for less than 120 % of the time | own.dslr:3: everything is so, and this asks for nothing
          there is a screen whose frame length is more than its mesh | own.dslr:3: “frame length” and “mesh” are of two kinds, which can't be compared
          there is a screen / there is a design whose width is more than the mesh of the screen | own.dslr:4: “width” and “mesh” are of two kinds
          there is a printing whose begins is less than 10:00 | own.dslr:3: nothing here is called “begins”; did you mean “begins at”?
          there are more than 1 tables | own.dslr:3: every plan has one of this
          there is a screen not with a mesh finer than 43 per cm and with a mesh finer than 61 per cm | own.dslr:3: nothing can be all of this at once
          there is a printing that starts late | own.dslr:3: “that starts late” is no sentence
          """)
  void whatIsNotUnderstoodIsTold(String lines, String why) {
    assertThat(told(lines, "m.")).singleElement().asString().startsWith(why);
  }

  @Test
  void aMessageSaysWhatIsFoundWhicheverWayTheRuleIsMet() {
    assertThat(
            told("either there is a screen called a or there is a paste called b", "See {screen}."))
        .singleElement()
        .asString()
        .startsWith("own.dslr:5: {screen} names no value of what the rule found");
    assertThat(told("there is a screen", "See {otherScreen}.")).hasSize(1);
  }
}
