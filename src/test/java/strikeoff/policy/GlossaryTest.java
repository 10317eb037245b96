package strikeoff.policy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import strikeoff.plan.yaml.PlanSchema;
import strikeoff.plan.yaml.Stock;
import strikeoff.policy.yaml.PolicyReader;

/** One file explains the words; everything else is filled from it or leads to it. */
class GlossaryTest {

  @Test
  void holdsTheWordsThatStoppedPeople() {
    assertThat(Glossary.all())
        .containsKeys(
            "frame-safe",
            "lift-safe",
            "fix-safe",
            "deposit",
            "lay",
            "set",
            "station",
            "key",
            "trap",
            "liquor ratio")
        .allSatisfy((word, meaning) -> assertThat(meaning).as(word).matches("[A-Z].*\\."));
    assertThat(List.copyOf(Glossary.all().keySet())).as("in alphabetical order").isSorted();
  }

  @Test
  void takesAWordHoweverItIsWritten() {
    assertThat(Glossary.word("Frame safe")).contains("frame-safe");
    assertThat(Glossary.word("half drop")).contains("half-drop");
    assertThat(Glossary.word("l*")).contains("L*");
    assertThat(Glossary.word("ciede2000")).contains("CIEDE2000");
    assertThat(Glossary.word("drying/frame-on-wet-film")).isEmpty();
  }

  @Test
  void theSchemaSaysWhatItsWordsMean() {
    String schema = PlanSchema.text(PolicyReader.builtIn(), Stock.NONE);
    assertThat(schema).doesNotContain("@word");
    for (String word : new String[] {"deposit", "frame-safe", "lift-safe", "trap", "key"}) {
      assertThat(schema).contains(Glossary.all().get(word));
    }
  }

  @Test
  void theReadmeLeadsToIt() throws IOException {
    assertThat(Files.readString(Path.of("README.md"))).contains("(rules/GLOSSARY.md)");
  }
}
