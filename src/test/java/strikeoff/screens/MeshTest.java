package strikeoff.screens;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import strikeoff.units.Length;
import strikeoff.units.MeshCount;

class MeshTest {

  // An optics laboratory's sheet, heavy twill 190/480-31: opening 16 µm. The plain-weave formula
  // gives
  // 21.9 µm; that it is told apart is what matters here.
  @Test
  void heavyTwillLiesOutsideThePlainWeave() {
    Mesh mesh = mesh(190, 31);
    assertThat(mesh.threadShare().fraction()).isGreaterThan(0.5);
    assertThat(mesh.canBeWoven()).isTrue();
  }

  @Test
  void threadsThickerThanTheirPitchCannotBeWoven() {
    Mesh mesh = mesh(120, 90);
    assertThat(mesh.canBeWoven()).isFalse();
    assertThat(mesh.openArea().fraction()).isZero();
  }

  private static Mesh mesh(double count, double micrometres) {
    return new Mesh(new MeshCount(count), new Length(micrometres / 1000));
  }
}
