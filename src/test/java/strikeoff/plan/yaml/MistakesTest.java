package strikeoff.plan.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Each mistake is told at its place, in words that help, and nothing else is told. */
class MistakesTest {

  static Stream<Arguments> mistakes() {
    return Stream.of(
        // Keys
        mistake(
            "fibre: cotton",
            "fiber: cotton",
            "3:3 “fiber” is not known here; did you mean “fibre”?"),
        mistake(
            "  length: 3 m\n", "", "2:1 “length” is missing: a length such as 40 cm belongs here"),
        mistake("seams:", "seam:", "7:1 “seam” is not known here; did you mean “seams”?"),
        mistake(
            "for: 60 min", "four: 60 min", "35:5 “four” is not known here; did you mean “for”?"),
        // Words of every day
        mistake(
            "fibre: cotton",
            "fibre: polyester cotton",
            "3:10 “polyester cotton” is a blend; give its shares such as {polyester: 65 %, cotton:"
                + " 35 %}"),
        mistake(
            "ground: \"#efe6d3\"",
            "colour: white",
            "6:3 “colour” is not known here; did you mean “ground”?"),
        mistake(
            "ground: \"#efe6d3\"",
            "ground: cream",
            "6:11 a colour such as \"#b5653a\" or teal was expected; “cream” is not one; “cornsilk”"
                + " comes near it"),
        mistake(
            "dry: until fix-safe",
            "dry: overnight",
            "32:10 a time such as 40 min, or until frame-safe, lift-safe or fix-safe, was expected;"
                + " give the night as 12 h, or make “end of day” a step of its own"),
        // Kinds
        mistake(
            "plan: Shells on a runner",
            "plan: [Shells]",
            "1:7 the plan's title was expected, and a list stands here"),
        mistake(
            "table: {length: 2.4 m, width: 1.2 m}",
            "table: 2.4 m",
            "9:8 the table with its keys was expected, and a single value stands here"),
        mistake(
            "  length: 3 m",
            "  length: 35 min",
            "4:11 a length such as 40 cm was expected; “35 min” is a time"),
        mistake(
            "  width: 60 cm",
            "  width: 60",
            "5:10 “60” has no unit; a length such as 40 cm was expected"),
        mistake(
            "  width: 60 cm",
            "  width: {cm: 60}",
            "5:10 a length such as 40 cm was expected, and a mapping of keys stands here"),
        mistake(
            "  width: 60 cm",
            "  width: 0 cm",
            "5:10 a length such as 40 cm was expected, more than nothing"),
        mistake("key: yes", "key: maybe", "22:54 yes or no was expected; “maybe” is neither"),
        // Nothing where something belongs
        mistake(
            "ground: \"#efe6d3\"",
            "ground: #efe6d3",
            "6:3 a colour such as \"#b5653a\" or teal was expected, and nothing stands here; what"
                + " follows “#” is a comment unless it stands in quotes"),
        mistake(
            "  width: 60 cm",
            "  width:",
            "5:3 a length such as 40 cm was expected, and nothing stands here"),
        mistake(
            "  width: 60 cm",
            "  width: ~",
            "5:3 a length such as 40 cm was expected, and nothing stands here"),
        // Colours
        mistake(
            "\"#efe6d3\"",
            "taupee",
            "6:11 a colour such as \"#b5653a\" or teal was expected; “taupee” is not one"),
        mistake(
            "\"#efe6d3\"",
            "whtie",
            "6:11 a colour such as \"#b5653a\" or teal was expected; “whtie” is not one; did you mean “white”?"),
        mistake(
            "\"#efe6d3\"",
            "efe6d3",
            "6:11 a colour such as \"#b5653a\" or teal was expected; “efe6d3” is not one; did you mean “#efe6d3”?"),
        mistake(
            "\"#efe6d3\"",
            "\"#efe6d\"",
            "6:11 a colour such as \"#b5653a\" or teal was expected; “#efe6d” is not one: three or six"
                + " hexadecimal digits follow the #"),
        // Names
        mistake(
            "screen: key", "screen: kee", "22:18 no screen is called “kee”; did you mean “key”?"),
        mistake(
            "anchor: row",
            "anchor: rows",
            "25:35 no placement is called “rows”; did you mean “row”?"),
        mistake(
            "- print: row",
            "- print: rwo",
            "28:12 no placement is called “rwo”; did you mean “row”?"),
        mistake(
            "sew: centre",
            "sew: center",
            "31:10 no seam is called “center”; did you mean “centre”?"),
        mistake(
            "fibre: cotton",
            "fibre: coton",
            "3:10 no fibre is known as “coton”; did you mean “cotton”?"),
        mistake(
            "soda ash: 200 g",
            "sodaash: 200 g",
            "34:12 no substance is known as “sodaash”; did you mean “soda ash”?"),
        mistake(
            "group: DCT, colour: \"#d9b77e\"",
            "group: DTC, colour: \"#d9b77e\"",
            "15:30 no reactive group is known as “DTC”; did you mean “DCT”?"),
        // Impossible values
        mistake(
            "covers: 50 %",
            "covers: 150 %", "21:46 “150 %” is more than the whole; at most 100 % is possible"),
        mistake(
            "covers: 50 %",
            "covers: 0 %", "21:46 a share such as 50 % was expected, more than nothing"),
        mistake(
            "covers: 50 %",
            "area: 90 cm²", "21:44 90 cm² is more than the whole rectangle of 80 cm²"),
        mistake(
            "mesh: 43/cm",
            "mesh: 43/cm, thread: 300 µm",
            "12:70 a thread of 300 µm leaves no opening at 43/cm, where threads are 233 µm apart"),
        mistake(
            "mesh: 43/cm",
            "mesh: 43/cm, rail: 15 cm",
            "12:68 rails of 15 cm leave no inside of the frame"),
        mistake(
            "only: 1-3, 5", "only: 9", "29:11 there is no number 9 of row, which has at most 6"),
        mistake("only: 1-3, 5", "only: 1-3, 2", "29:11 number 2 is named twice"),
        mistake(
            "only: 1-3, 5",
            "only: 3-1",
            "29:11 “3-1” counts from 3 to 1; numbers begin at 1 and rise"),
        mistake("which: 1-3", "which: 5-7", "25:3 “which” names number 7, and row has only 6"),
        mistake(
            "series: 6",
            "series: 6.5",
            "24:32 the number of copies was expected; “6.5” is not one"),
        mistake(
            "series: 6",
            "series: 100001",
            "24:32 the number of copies was expected, at most 10000; this is 100001"),
        mistake(
            "{design: shell, series: 6, pitch: 40 cm, start: 10 cm, across: 20 cm}",
            "{design: shell, fill: grid, pitch: 1 x 1 mm, around: pearls}",
            "24:3 placements wait for each other in a circle: row → pearls → row"),
        mistake(
            "at: 1.5 m", "at: 4 m", "8:16 4 m lies past the end of the cloth, which is 3 m long"),
        mistake(
            "  width: 60 cm",
            "  width: 60 cm\n  allowances: {start: 2 m, end: 1 m}",
            "2:1 the allowances at start and end leave nothing of the length 3 m"),
        mistake(
            "fibre: cotton",
            "fibre: {cotton: 60 %, linen: 30 %}",
            "3:10 the shares of the fibres add up to 90 %, not to 100 %"),
        mistake(
            "fibre: cotton",
            "washed: yes\n  shrinkage: {length: 3 %, width: 0 %}",
            "4:14 washed: yes in line 3 says that it shrinks no more, and shrinkage in line 4 says that it"
                + " does; leave one of them out"),
        mistake(
            "crew: [Wren, Tam]", "crew: [Wren, Wren]", "10:7 two people of the crew have one name"),
        mistake(
            "crew: [Wren, Tam]",
            "crew: 0",
            "10:7 the number of people was expected, at least 1; this is 0"),
        mistake(
            "crew: [Wren, Tam]",
            "equipment: {sinks: -1}",
            "10:20 the number of sinks was expected, at least 0; this is -1"),
        mistake(
            "crew: [Wren, Tam]",
            "equipment: {hairdryers: 1}",
            "10:13 “hairdryers” is not known here; did you mean “hair dryers”?"),
        mistake(
            "crew: [Wren, Tam]",
            "hours: 17:00-09:00",
            "10:8 opening hours such as 09:00-17:00 were expected; “17:00-09:00” close before they open"),
        mistake(
            "crew: [Wren, Tam]",
            "hours: 9-13, 12:30-17",
            "10:8 opening hours such as 09:00-17:00 were expected; “9-13, 12:30-17” leave no break"
                + " before 12:30-17; write the stretches of a day in order, with the breaks between"
                + " them left out"),
        mistake(
            "crew: [Wren, Tam]",
            "hours: 9-12, lunch, 13-17",
            "10:8 opening hours such as 09:00-17:00 were expected; “9-12, lunch, 13-17” are none"),
        mistake(
            "crew: [Wren, Tam]",
            "hours: 9 to 25",
            "10:8 opening hours such as 09:00-17:00 were expected; “9 to 25” hold a time that no clock shows"),
        mistake(
            "crew: [Wren, Tam]",
            "room: {humidity: 120 %}",
            "10:18 “120 %” is more than the whole; at most 100 % is possible"),
        mistake(
            "crew: [Wren, Tam]",
            "room: {temperature: -270 °C}",
            "10:21 “-270 °C” is beyond what a print room can be, -40 °C to 100 °C"),
        mistake(
            "crew: [Wren, Tam]",
            "room: {air: breezy}",
            "10:13 still, fan, hair-dryer or an air speed such as 0.3 m/s was expected; “breezy” is not known"),
        // Water and reasons
        mistake(
            "- rinse: 20 °C",
            "- rinse: -20 °C",
            "36:12 -20 °C is colder than ice: water freezes at 0 °C"),
        mistake(
            "because: It is a runner.",
            "because: \"\\u200b\\u2060.\"",
            "39:47 the reason, in a sentence, was expected; nobody can read one here"),
        // Pastes, steps, acceptances
        mistake(
            "medium: dye, group: DCT, colour: \"#d9b77e\"",
            "medium: paint, group: DCT, colour: \"#d9b77e\"",
            "15:32 paint has no reactive group; leave it out, or say medium: dye"),
        mistake(
            "medium: dye, group: DCT, colour: \"#d9b77e\"",
            "medium: dye, colour: \"#d9b77e\"",
            "15:3 “group” is missing: the dye's reactive group such as dichlorotriazine belongs here"),
        mistake(
            "- rinse: 20 °C",
            "- rinze: 20 °C",
            "36:5 a step says what is done with one of mix, print, dry, wash screen, move on, sew, fix, rinse, wash,"
                + " heat-set, end of day; did you mean “rinse”?"),
        mistake(
            "- rinse: 20 °C",
            "- end of the day",
            "36:5 a step such as print: herons, or end of day, was expected; did you mean “end of day”?"),
        mistake(
            "- rinse: 20 °C",
            "- rinse: 20 °C\n    wash: 60 °C",
            "37:11 a step does one thing; make “wash” a step of its own"),
        mistake(
            "soda ash: 200 g, water: 5 L",
            "soda ash: 200 g",
            "34:11 the bath holds no water; give its volume such as water: 5 L"),
        mistake(
            "- fix: soak",
            "- fix: steam",
            "34:11 a steam has no bath; leave it out, or say fix: soak"),
        mistake(
            "- fix: soak",
            "- fix: batch",
            "34:11 a batch has no bath; leave it out, or say fix: soak. Only silicate is brushed on"
                + " before it lies: bath: {sodium silicate: 1 L}"),
        mistake(
            "only: 1-3, 5",
            "dry between colours: {for: 20 min, until: lift-safe, air: fan}",
            "29:32 a wait has either a time or a state to wait for; leave one of them out"),
        mistake(
            "only: 1-3, 5",
            "dry between colours: {air: fan}",
            "29:5 “for” is missing: a time such as 35 min belongs here"),
        mistake(
            "only: 1-3, 5",
            "dry between colours: {until: 20 min, air: fan}",
            "29:34 frame-safe, lift-safe or fix-safe was expected; “20 min” is not known"),
        mistake(
            "only: 1-3, 5",
            "dry between colours: {for: 20 min, blown: fan}",
            "29:40 “blown” is not known here; known are until, for, air"),
        mistake(
            "only: 1-3, 5",
            "by: [Wren, Tam]\n    dry between colours: {for: 20 min, air: hair-dryer}",
            "30:26 several who print at the same time have no hand free for a hair-dryer between"
                + " colours; take a fan, or name one person"),
        mistake(
            "print: row\n    only: 1-3, 5",
            "print: {row: 2, pearl: all}",
            "28:21 no placement is called “pearl”; did you mean “pearls”?"),
        mistake(
            "print: row\n    only: 1-3, 5",
            "print: {row: 1-9}",
            "28:12 there is no number 7 of row, which has at most 6"),
        mistake(
            "print: row",
            "print: {row: 1-3}",
            "29:5 each placement has its numbers after “print:” already; leave only out"),
        mistake(
            "only: 1-3, 5",
            "air: hair-dryer",
            "29:10 whoever prints has no hand free for a hair-dryer; take a fan, or dry by a step or a"
                + " wait of its own"),
        mistake(
            "only: 1-3, 5",
            "begins: at once",
            "29:13 when free or when done was expected; “at once” is not known"),
        mistake(
            "only: 1-3, 5",
            "begins: when free\n    wash between colours: yes",
            "30:27 people who print beside another step go on without a break; leave out begins"),
        mistake(
            "only: 1-3, 5",
            "begins: when free\n    every other: yes\n    dry between passes: 5 min",
            "31:25 people who print beside another step make no passes to dry between; leave out"
                + " begins"),
        mistake(
            "only: 1-3, 5",
            "begins: when free\n    dry between colours: {for: 20 min, air: hair-dryer}",
            "30:26 people who print beside another step have no hand free for a hair-dryer between"
                + " colours; take a fan, or leave out begins"),
        mistake(
            "only: 1-3, 5",
            "by: [Wren, Tam]\n    wash between colours: yes",
            "30:27 several who print at the same time go on without a break; name one person, or"
                + " under washes somebody who does not print"),
        mistake(
            "only: 1-3, 5",
            "order: by station\n    wash between colours: yes",
            "30:27 by station every screen is laid again at the next station; print by colour"),
        mistake(
            "only: 1-3, 5",
            "dry between passes: 30 min",
            "29:25 there are two passes only with every other: yes"),
        mistake(
            "until fix-safe",
            "until liftsafe",
            "32:10 a time such as 40 min, or until frame-safe, lift-safe or fix-safe, was expected;"
                + " “liftsafe” is not known; did you mean “lift-safe”?"),
        mistake(
            "only: 1-3, 5",
            "colours: [ochre]",
            "29:14 the design shell has no further separation “ochre”; its pastes are ink, sand"),
        mistake(
            "- dry: until fix-safe",
            "- wash screen: kye",
            "32:18 no screen is called “kye”; did you mean “key”?"),
        mistake(
            "only: 1-3, 5",
            "by: Wern",
            "29:9 no person of the crew is called “Wern”; did you mean “Wren”?"),
        mistake(
            "at: cloth, ",
            "at: clot, ",
            "39:31 no place of this plan is called “clot”; did you mean “cloth”?"),
        mistake(
            "because: It is a runner.",
            "becuase: It is a runner.",
            "39:38 “becuase” is not known here; did you mean “because”?"),
        // Placements
        mistake(
            "series: 6, pitch: 40 cm, start: 10 cm, ",
            "",
            "24:3 one of series, border, fill, anchor or at is missing: how the design is placed"),
        mistake(
            "which: 1-3",
            "at: \"1 cm, 1 cm\"",
            "25:67 a placement has “anchor” or “at”, not both; make two placements of it"),
        mistake(
            "offset: \"12 cm, 5 cm\"",
            "offset: 12 cm",
            "25:48 a place such as 12 cm, 5 cm (along the cloth, then across it) was expected; “12 cm” is not one"),
        mistake(
            "size: 10 x 8 cm",
            "size: 10 cm",
            "19:11 a size such as 54 x 74 cm (along the cloth x across it) was expected; “10 cm” is not one"));
  }

  private static Arguments mistake(String old, String fresh, String... told) {
    return Arguments.of(old, fresh, List.of(told));
  }

  @ParameterizedTest
  @MethodSource("mistakes")
  void eachIsToldAtItsPlace(String old, String fresh, List<String> told) {
    assertThat(Snippets.problems(Snippets.with(old, fresh))).containsExactlyElementsOf(told);
  }

  @Test
  void theSoundPlanIsSound() {
    assertThat(Snippets.problems(Snippets.SOUND)).isEmpty();
  }

  @Test
  void allMistakesOfAFileAreToldAtOnce() {
    String text =
        Snippets.SOUND
            .replace("fibre: cotton", "fibre: coton")
            .replace("mesh: 43/cm", "mesh: 43")
            .replace("amount: 100 g}\n  ink", "amount: 100 cm}\n  ink")
            .replace("pitch: 40 cm", "pitch: -40 cm")
            .replace("sew: centre", "sew: middle")
            .replace("because", "why")
            .replace("wash: 60 °C", "wash: hot");
    assertThat(Snippets.problems(text))
        .extracting(p -> p.substring(0, p.indexOf(' ')))
        .containsExactly("3:10", "12:55", "15:62", "24:42", "31:10", "37:11", "39:5", "39:38");
  }

  @Test
  void anEmptyMappingTellsEverythingThatMustBeThere() {
    assertThat(Snippets.problems("{}"))
        .containsExactly(
            "1:1 “cloth” is missing: the cloth with its length and width belongs here",
            "1:1 “plan” is missing: the plan's title belongs here");
  }

  @Test
  void aPlanThatIsNoMappingSaysSo() {
    assertThat(Snippets.problems("- a\n- b\n"))
        .containsExactly("1:1 a plan with its keys was expected, and a list stands here");
  }

  @Test
  void longCirclesAreNamedMemberByMember() {
    String text =
        Snippets.with(
            "  row: {design: shell, series: 6, pitch: 40 cm, start: 10 cm, across: 20 cm}\n",
            """
              a: {design: shell, anchor: b, offset: [1 cm, 1 cm]}
              b: {design: shell, anchor: c, offset: [1 cm, 1 cm]}
              c: {design: shell, anchor: a, offset: [1 cm, 1 cm]}
              row: {design: shell, anchor: c, offset: [1 cm, 1 cm]}
            """
                .indent(0));
    assertThat(Snippets.problems(text))
        .containsExactly("24:3 placements wait for each other in a circle: a → b → c → a");
  }

  @Test
  void aPitchOfAMillimetreEndsInWords() {
    String text =
        Snippets.with(
            "series: 6, pitch: 40 cm, start: 10 cm, across: 20 cm", "fill: grid, pitch: 1 x 1 mm");
    assertThat(Snippets.problems(text))
        .singleElement()
        .asString()
        .startsWith("24:3 with this the plan comes to some ")
        .endsWith("more than 10000 cannot be checked. Is the pitch right?");
  }
}
