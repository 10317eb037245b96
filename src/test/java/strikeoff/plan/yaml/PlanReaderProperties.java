package strikeoff.plan.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import strikeoff.artwork.DemoFilms;
import strikeoff.checks.Draws;

/** Whatever becomes of a good plan, reading it ends in a plan or in words. */
class PlanReaderProperties {

  private static final String DEMO = demo();
  private static final List<String> WORDS =
      List.of(
          "",
          " ",
          "\n",
          "\t",
          ":",
          "#",
          "\"",
          "'",
          "{",
          "}",
          "[",
          "]",
          ",",
          "- ",
          "&a ",
          "*a",
          "!",
          "0",
          "-1",
          "9",
          "999999999",
          "1e9",
          "NaN",
          "null",
          "~",
          "yes",
          "cm",
          " %",
          "herons",
          "shells",
          "around: [shells]",
          "\u00a0",
          "\ufeff",
          "\u0000",
          "\ud83e\udeb6",
          "---\n",
          "<<: ");

  @Property(tries = 300, seed = Draws.ALIKE)
  void mutatedPlansAreReadOrRefused(@ForAll("edits") List<Edit> edits) {
    String text = DEMO;
    for (Edit e : edits) {
      text = e.of(text);
    }
    // An edit may cut a surrogate pair, which no bytes can hold; a file could not either.
    text = new String(bytes(text), StandardCharsets.UTF_8);
    PlanReading once = Snippets.read(text);
    PlanReading again = DemoFilms.read("plan.yaml", text, Snippets.POLICY);
    assertThat(again.getClass()).isEqualTo(once.getClass());
    if (once instanceof PlanReading.Unreadable u) {
      assertThat(u.problems()).isNotEmpty().allMatch(p -> !p.message().isBlank());
      assertThat(u.problems())
          .allSatisfy(
              p -> {
                assertThat(p.position().line()).isLessThanOrEqualTo(u.lines().size());
                assertThat(p.position().column())
                    .isLessThanOrEqualTo(u.lines().get(p.position().line() - 1).length() + 1);
              });
      assertThat(((PlanReading.Unreadable) again).problems()).isEqualTo(u.problems());
    } else {
      assertThat(again).isEqualTo(once);
    }
  }

  @Property(tries = 200, seed = Draws.ALIKE)
  void swappedLinesAreReadOrRefused(@ForAll("lines") int first, @ForAll("lines") int second) {
    List<String> lines = new ArrayList<>(DEMO.lines().toList());
    String one = lines.get(first % lines.size());
    lines.set(first % lines.size(), lines.get(second % lines.size()));
    lines.set(second % lines.size(), one);
    assertThat(Snippets.read(String.join("\n", lines))).isNotNull();
  }

  @Provide
  Arbitrary<Integer> lines() {
    return Arbitraries.integers().between(0, 500);
  }

  @Provide
  Arbitrary<List<Edit>> edits() {
    return Combinators.combine(
            Arbitraries.integers().between(0, DEMO.length()),
            Arbitraries.integers().between(0, 12),
            Arbitraries.of(WORDS))
        .as(Edit::new)
        .list()
        .ofMinSize(1)
        .ofMaxSize(4);
  }

  /** Some characters replaced by a word. */
  record Edit(int at, int length, String word) {
    String of(String text) {
      int from = Math.min(at, text.length());
      int to = Math.min(from + length, text.length());
      return text.substring(0, from) + word + text.substring(to);
    }
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static String demo() {
    try {
      return Files.readString(Path.of("plans/estuary-curtains.yaml"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
