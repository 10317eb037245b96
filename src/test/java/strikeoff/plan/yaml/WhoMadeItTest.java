package strikeoff.plan.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whose a plan is that can't be read: it goes back to somebody too. */
class WhoMadeItTest {

  private static String by(String text) {
    assertThat(Snippets.read(text)).isInstanceOf(PlanReading.Unreadable.class);
    return ((PlanReading.Unreadable) Snippets.read(text)).by();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "plan: A\nby: Uma B.\ncloth: {length: 2 g}\n",
        "plan: A\nby: \"Uma B.\" # of the class\n",
        "plan: A\nby: >-\n  Uma\n  B.\ncloth: 3\n",
        "{plan: A, by: Uma B., cloth: none}\n",
        // Slips, and what nobody understands.
        "plan: A\nby: Uma B.\ncloth\n  length: 2 m\n",
        "plan: A\nby: Uma B.\ncloth: {length: 2 m, width: [1\n",
        "plan: A\nby: Uma B.\nnotes: \u0007\n"
      })
  void isRead(String text) {
    assertThat(by(text)).isEqualTo("Uma B.");
  }

  @Test
  void isNotWhoDoesAStepNorALineOfANote() {
    assertThat(by("plan: A\nnotes: |\n  by: nobody\nrun:\n  - mix: all\n    by: Wren\n")).isEmpty();
    assertThat(by("plan: A\nnotes: |\nby: [Uma, Otis]\n")).isEmpty();
    assertThat(by("")).isEmpty();
  }
}
