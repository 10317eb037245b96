package strikeoff.speech;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NumberingTest {

  @Test
  void numbersThatFollowEachOtherAreARun() {
    assertThat(Numbering.runs(List.of(1, 2, 3, 4))).isEqualTo("1–4");
    assertThat(Numbering.runs(List.of(1, 2, 7, 8, 9))).isEqualTo("1, 2, 7–9");
    assertThat(Numbering.runs(List.of())).isEmpty();
  }

  @Test
  void anOrderOfPrintingIsKept() {
    assertThat(Numbering.runs(List.of(1, 3, 5, 2, 4))).isEqualTo("1, 3, 5, 2, 4");
  }

  @Test
  void inShortTheyAreSortedAndSaidOnce() {
    assertThat(Numbering.brief(List.of(4, 1, 2, 3, 4, 7, 9, 10))).isEqualTo("1–4, 7, 9, 10");
  }

  @Test
  void onlyMoreThanSixRunsAreCutShort() {
    assertThat(Numbering.brief(List.of(1, 3, 5, 7, 9, 11))).isEqualTo("1, 3, 5, 7, 9, 11");
    assertThat(Numbering.brief(List.of(1, 3, 5, 7, 9, 11, 13, 15)))
        .isEqualTo("1, 3, 5, 7, 9, 11, and more");
  }
}
