package strikeoff.sequence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import strikeoff.checks.Worked;
import strikeoff.speech.SequenceSpeech;

/** Outlines beside the fills that they are drawn round. */
class KeyLikeFillTest {

  private static List<KeyLikeFill> outline(String fill, String line, String paste) {
    return Worked.reeds(
            """
            pastes:
              rust: {medium: dye, group: DCT, colour: "%s", amount: 200 g}
              ink: {medium: dye, group: DCT, colour: "%s", amount: 200 g}
            designs:
              reeds:
                size: 30 x 22 cm
                separations:
                  - {screen: reeds, paste: rust, covers: 40 %%}
                  - {screen: reeds, paste: %s, covers: 10 %%, key: yes}
            placements:
              reeds: {design: reeds, series: 3, pitch: 60 cm, start: 10 cm, across: 30 cm}
            """
                .formatted(fill, line, paste))
        .all(KeyLikeFill.class);
  }

  /** CIEDE2000 of #c07a45 and #b8733f is 2.55, by an implementation of its own. */
  @Test
  void aLineThatHardlyDiffersIsToldWithBothDifferences() {
    KeyLikeFill like = outline("#c07a45", "#b8733f", "ink").get(0);
    assertThat(like.beside().value()).isEqualTo(2.5);
    assertThat(like.over().value()).isGreaterThan(like.beside().value());
    assertThat(like.share().fraction()).isEqualTo(1);
    assertThat(SequenceSpeech.fill(like)).isEqualTo("rust");
  }

  @Test
  void aDarkLineAndOneFromTheSamePotAreNot() {
    assertThat(outline("#c07a45", "#2b3440", "ink")).isEmpty();
    assertThat(outline("#c07a45", "#2b3440", "rust")).isEmpty();
  }
}
