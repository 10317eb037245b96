package strikeoff.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PhrasePartTest {

  @Test
  void whatIsToBeWrittenIsSetApart() {
    assertThat(PhrasePart.of("Write `padded: yes` or `- end of day`."))
        .containsExactly(
            new PhrasePart("Write ", false),
            new PhrasePart("padded: yes", true),
            new PhrasePart(" or ", false),
            new PhrasePart("- end of day", true),
            new PhrasePart(".", false));
  }

  @Test
  void aBacktickAloneStaysInItsWords() {
    assertThat(PhrasePart.of("the name a`b"))
        .containsExactly(new PhrasePart("the name a`b", false));
    assertThat(PhrasePart.of("")).isEmpty();
  }
}
