package strikeoff.rulebook.own;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OwnRulesTest {

  @TempDir private Path folder;

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
  void compilesASentenceAndKeepsItForTheNextRun() throws RuleMistakes, IOException {
    RuleCache cache = new RuleCache(Optional.of(folder.resolve("cache")));
    OwnRules first = OwnRules.of(List.of(sentences(MESH)), cache);
    assertThat(first.fromCache()).isFalse();
    assertThat(first.rules()).extracting(OwnRule::id).containsExactly("bench/fine-mesh");
    assertThat(first.models()).isNotEmpty();
    assertThat(OwnRules.of(List.of(sentences(MESH)), cache).fromCache()).isTrue();
    assertThat(OwnRules.of(List.of(sentences(MESH + "\n# more\n")), cache).fromCache()).isFalse();
    try (Stream<Path> kept = Files.list(folder.resolve("cache"))) {
      for (Path one : kept.toList()) {
        byte[] bytes = Files.readAllBytes(one);
        bytes[bytes.length / 2] ^= 1;
        Files.write(one, bytes);
      }
    }
    assertThat(OwnRules.of(List.of(sentences(MESH)), cache).fromCache())
        .as("a damaged cache is compiled anew")
        .isFalse();
    assertThat(OwnRules.of(List.of(sentences(MESH)), cache).fromCache()).isTrue();
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
                                .replace("mend:", "mendd:"))),
                    RuleCache.NONE));
    assertThat(wrong.all())
        .extracting(RuleMistake::text)
        .containsExactly(
            "rules/bench/mesh.dslr:1: the rule doesn't say what to do about it: “mend: …” belongs"
                + " after “then”",
            "rules/bench/mesh.dslr:3: “there is a scren with a mesh finner than 90 per cm” is no"
                + " sentence that is known here; the nearest is “there is a screen with a mesh"
                + " finer than {number} per cm”");
  }
}
