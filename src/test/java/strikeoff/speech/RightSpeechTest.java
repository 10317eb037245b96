package strikeoff.speech;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is told to be right. */
class RightSpeechTest {

  /** Of an acceptance that is in order nobody is told. */
  @Test
  void ofEachFamilyThatJudgesThePrintThereIsASentence() throws IOException {
    List<String> mute = new ArrayList<>();
    for (String line : Files.readAllLines(Path.of("rules/families.yaml"))) {
      if (line.startsWith("  - ") && RightSpeech.of(line.substring(4)).isEmpty()) {
        mute.add(line.substring(4));
      }
    }
    assertThat(mute).containsExactly("acceptance");
    assertThat(RightSpeech.of("a studio's own")).isEmpty();
  }
}
