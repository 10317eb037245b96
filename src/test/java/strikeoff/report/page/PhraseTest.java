package strikeoff.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PhraseTest {

  @Test
  void whatIsToBeWrittenIsSetApart() {
    assertThat(Phrase.of("Write `padded: yes` or `- end of day`."))
        .containsExactly(
            new Phrase("Write ", false),
            new Phrase("padded: yes", true),
            new Phrase(" or ", false),
            new Phrase("- end of day", true),
            new Phrase(".", false));
  }

  @Test
  void aBacktickAloneStaysInItsWords() {
    assertThat(Phrase.of("the name a`b")).containsExactly(new Phrase("the name a`b", false));
    assertThat(Phrase.of("")).isEmpty();
  }
}
