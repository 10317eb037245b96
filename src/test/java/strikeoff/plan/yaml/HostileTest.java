package strikeoff.plan.yaml;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNoException;

import java.nio.charset.Charset;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import strikeoff.document.Bounds;

/** Files that nobody wrote as plans, or wrote to do harm, end in words and soon. */
class HostileTest {

  static Stream<Arguments> texts() {
    return Stream.of(
        text("", "1:1 the file is empty; a plan was expected"),
        text("# nothing but a comment\n", "1:1 the file is empty; a plan was expected"),
        text("plan: a\nplan: b\n", "2:1 “plan” stands here a second time; the first is at 1:1"),
        text(
            "plan: a\n---\nplan: b\n",
            "3:1 a second document begins; a file holds one plan, so leave out the lines “---”"),
        text(
            "plan: &a x\n",
            "1:7 “&” names an anchor, which plans do not have; quote the value or leave it out"),
        text(
            "plan: &a x\nnotes: *a\n",
            "1:7 “&” names an anchor, which plans do not have; quote the value or leave it out",
            "2:8 “*” refers to an anchor, which plans do not have; write the value out or quote it"),
        text(
            "plan: *a\n",
            "1:7 “*” refers to an anchor, which plans do not have; write the value out or quote it"),
        text(
            "plan: !!str x\n",
            "1:7 “!” gives a tag, which plans do not have; quote the value or leave it out"),
        text(
            "plan: !!javax.script.ScriptEngineManager [x]\n",
            "1:7 “!” gives a tag, which plans do not have; quote the value or leave it out",
            "1:7 the plan's title was expected, and a list stands here"),
        text(
            "cloth:\n  <<: {a: b}\n",
            "2:3 “<<” would merge another mapping, which plans do not do; write it out"),
        text("plan: a\u0007b\n", "1:8 the invisible character U+0007 stands here; delete it"),
        text(
            "plan: a\u0007\u202e\u0007b\n",
            "1:8 3 invisible characters in a row stand here, the first is U+0007; delete them"),
        text("plan: a\u202eb\n", "1:8 the invisible character U+202E stands here; delete it"),
        text("plan: \"a\\u0007b\"\n", "1:7 this value holds an invisible character; leave it out"),
        text("plan: \"a\\ud800b\"\n", "1:7 this value holds an invisible character; leave it out"),
        text("plan: a\n\tnotes: b\n", "2:1 a tab stands here; indent with spaces"),
        text(
            "plan: a: b\n",
            "1:8 a second “: ” stands in this line; put the value in quotes: \"a: b\""),
        text(
            "plan: \"a\ncloth: b\n",
            "1:7 the quotation mark that opens here is never closed",
            "2:8 the cloth with its keys was expected, and a single value stands here"),
        text("plan: @a\n", "1:7 a value cannot begin with “@”; put it in quotes"),
        text("plan: `a`\n", "1:7 a value cannot begin with “`”; put it in quotes"),
        text(
            "plan: \"a\\qb\"\n",
            "1:9 a backslash in double quotes starts a special sign; use single quotes"),
        text(
            "cloth: {ground: #fff, washed: yes}\nplan: x\n",
            "1:17 “#” starts a comment here; put the colour in quotes: \"#fff\""),
        text(
            "crew: [Wren, Tam\nplan: x\n",
            "1:7 “[” opens here and is never closed; “]” is missing"),
        text(
            "cloth:\n  length: 3 m\n width: 60 cm\n",
            "3:2 this line is indented by 1 space, and 2 would fit what stands above"),
        text(
            "cloth:\n  length: 3 m\n  width\n  mass: 3 g/m²\n",
            "3:3 a length such as 40 cm was expected, and nothing stands here",
            "3:8 a colon is missing after “width”"),
        text(
            "? [a, b]\n: c\n",
            "1:4 a key must be a single word or a few; a list or a mapping stands here",
            "2:1 this line is indented like none of the lines above it"),
        text(
            "k".repeat(200) + ": x\n",
            "1:1 “" + "k".repeat(40) + "…” is longer than the 80 letters a key may have"),
        text(
            "[".repeat(60) + "]".repeat(60),
            "1:41 lists and mappings are nested deeper than 40 levels"));
  }

  private static Arguments text(String text, String... told) {
    return Arguments.of(text, List.of(told));
  }

  @ParameterizedTest
  @MethodSource("texts")
  void isToldAtItsPlace(String text, List<String> told) {
    // These are no whole plans; what they lack is told as well.
    assertThat(Snippets.problems(text).stream().filter(p -> !p.contains("” is missing: ")))
        .containsExactlyElementsOf(told);
  }

  @Test
  void moreImpressionsThanAreLaidAreToldAndNotLeftOut() {
    String many = "      - {screen: key, paste: ink, covers: 10 %, key: yes}\n";
    String plan = Snippets.with(many, many.repeat(29)).replace("series: 6,", "series: 2000,");
    assertThat(Snippets.problems(plan))
        .containsExactly(
            "52:3 with this the plan comes to some 60000 impressions; more than 50000 cannot be"
                + " checked. Is the pitch right?");
  }

  @Test
  void bytesThatAreNoText() {
    assertThat(bytes("plan: caf\u00e9\n".getBytes(ISO_8859_1)))
        .contains(
            "1:10 the byte 0xE9 is no UTF-8 (Windows-1252 has “é” for it); save the file as UTF-8"
                + " and try again");
    assertThat(bytes(Snippets.SOUND.getBytes(UTF_16)))
        .containsExactly("1:1 the file is UTF-16; save it as UTF-8 and try again");
    assertThat(bytes("plan: a".getBytes(UTF_16LE)))
        .containsExactly("1:1 the file is UTF-16; save it as UTF-8 and try again");
    for (String code : List.of("UTF-32LE", "UTF-32BE", "X-UTF-32LE-BOM", "X-UTF-32BE-BOM")) {
      assertThat(bytes(Snippets.SOUND.getBytes(Charset.forName(code))))
          .as(code)
          .containsExactly("1:1 the file is UTF-32; save it as UTF-8 and try again");
    }
    assertThat(bytes("plan: a\0".getBytes(UTF_8)))
        .containsExactly(
            "1:8 a zero byte stands here; the file may be no text at all, save it as UTF-8");
    assertThat(bytes(new byte[] {(byte) 0xC3})).anyMatch(p -> p.startsWith("1:1 the byte 0xC3"));
  }

  @Test
  void aByteOrderMarkOfUtf8DoesNoHarm() {
    assertThat(bytes(("\ufeff" + Snippets.SOUND).getBytes(UTF_8))).isEmpty();
  }

  @Test
  void carriageReturnsCountAsOneLineBreak() {
    String text = Snippets.with("width: 60 cm", "width: 60").replace("\n", "\r\n");
    assertThat(Snippets.problems(text))
        .containsExactly("5:10 “60” has no unit; a length such as 40 cm was expected");
  }

  @Test
  void columnsCountAsEditorsCountThem() {
    String text = Snippets.with("crew: [Wren, Tam]", "crew: [\"\ud83e\udeb6\", 7, {}]");
    assertThat(Snippets.problems(text))
        .containsExactly(
            "10:17 the name of a person was expected, and a mapping of keys stands here");
  }

  @Test
  void harmfulSizesEndSoon() {
    soon("x: " + "[".repeat(500_000));
    soon("x: " + "{a: ".repeat(200_000));
    soon("- a\n".repeat(250_000));
    soon("a: b\n".repeat(200_000));
    soon("plan: " + "9".repeat(1_000_000));
    soon("\"" + "\\u0007".repeat(100_000) + "\"");
    soon("\u0007".repeat(500_000));
    soon("a: &a [x]\n" + "b: [*a, *a, *a, *a, *a, *a, *a]\n".repeat(10_000));
    StringBuilder keys = new StringBuilder();
    for (int i = 0; i < 49_000; i++) {
      keys.append("key").append(i).append(": x\n");
    }
    soon(keys.toString());
    soon(Snippets.SOUND.replace("only: 1-3, 5", "only: " + "1-9999, ".repeat(1000) + "1"));
    soon(Snippets.SOUND.replace("run:\n", "run:\n" + "  - print: row\n".repeat(20_000)));
    StringBuilder chain =
        new StringBuilder("placements:\n  p0: {design: shell, at: [1 cm, 1 cm]}\n");
    for (int i = 1; i < 9_000; i++) {
      chain.append(
          "  p" + i + ": {design: shell, anchor: p" + (i - 1) + ", offset: [1 cm, 1 cm]}\n");
    }
    soon(Snippets.SOUND.replace("placements:\n", chain));
  }

  private static void soon(String text) {
    Assertions.assertTimeoutPreemptively(
        Duration.ofSeconds(10),
        () -> {
          List<String> told = bytes(text.getBytes(UTF_8));
          assertThat(told).as(text.substring(0, 20)).isNotEmpty().hasSizeLessThanOrEqualTo(101);
          assertThat(told).allSatisfy(t -> assertThat(t).hasSizeLessThan(2000));
        });
  }

  @Test
  void endlessLinesAndRunsSaySo() {
    assertThat(
            Snippets.problems("plan: x\nnotes: " + "y".repeat(9_990) + "\nz" + "z".repeat(20_000)))
        .containsExactly(
            "3:10001 the line is longer than 10000 characters; no plan written by hand is");
    assertThat(
            Snippets.problems(Snippets.with("run:\n", "run:\n" + "  - print: row\n".repeat(1_001))))
        .contains("26:1 the run has 1009 steps; more than 1000 cannot be checked");
  }

  @Test
  void filesBeyondAMebibyteAreNotEvenParsed() {
    byte[] large = new byte[Bounds.USUAL.bytes() + 1];
    assertThat(bytes(large))
        .containsExactly("1:1 the file is larger than 1024 KiB; no plan written by hand is");
  }

  @Test
  void moreProblemsThanAnybodyMendsAreCounted() {
    StringBuilder text = new StringBuilder(Snippets.SOUND);
    for (int i = 0; i < 150; i++) {
      text.append("more").append(i).append(": x\n");
    }
    assertThat(Snippets.problems(text.toString()))
        .hasSize(101)
        .last()
        .asString()
        .endsWith("and 50 more; mend these first, then check again");
  }

  @Test
  void randomBytesNeverThrow() {
    java.util.Random random = new java.util.Random(1);
    for (int i = 0; i < 500; i++) {
      byte[] noise = new byte[random.nextInt(200)];
      random.nextBytes(noise);
      assertThatNoException().isThrownBy(() -> bytes(noise));
    }
  }

  private static List<String> bytes(byte[] bytes) {
    return Snippets.problems(PlanReader.read("plan.yaml", bytes, Snippets.POLICY));
  }
}
