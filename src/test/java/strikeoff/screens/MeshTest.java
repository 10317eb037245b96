package strikeoff.screens;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.units.Length;
import strikeoff.units.MeshCount;

class MeshTest {

  // Values follow from P = 10000/n, w = P − d, α = (w/P)², V = α·t with t = 1.5 d; the pairings of
  // count and thread are trade usual. Tolerance: half of the last digit printed.
  @ParameterizedTest
  @CsvSource({
    "32, 100, 212.5, 46.2, 69.4",
    "36, 90, 187.8, 45.7, 61.7",
    "43, 80, 152.6, 43.0, 51.6",
    "48, 70, 138.3, 44.1, 46.3",
    "55, 64, 117.8, 42.0, 40.3",
    "61, 64, 99.9, 37.2, 35.7",
    "68, 55, 92.1, 39.2, 32.3",
    "77, 55, 74.9, 33.2, 27.4",
    "77, 48, 81.9, 39.7, 28.6",
    "90, 48, 63.1, 32.3, 23.2",
    "100, 40, 60.0, 36.0, 21.6",
    "120, 34, 49.3, 35.0, 17.9",
    "120, 31, 52.3, 39.4, 18.3"
  })
  void tableOfUsualMeshes(double count, double micrometres, double opening, double open, double v) {
    Mesh mesh = mesh(count, micrometres);
    assertThat(mesh.opening().mm() * 1000).isCloseTo(opening, within(0.051));
    assertThat(mesh.openArea().percent()).isCloseTo(open, within(0.051));
    assertThat(mesh.theoreticalVolume().best()).isCloseTo(v, within(0.051));
  }

  // Mesh weaver's specification page, meshes 90/225: opening ±1 µm, open area ±1 point, volume
  // ±1 cm³/m², thickness as measured. The page's figures follow 225 threads to the inch.
  @ParameterizedTest
  @CsvSource({"40, 59, 73, 42, 25", "48, 72, 65, 33, 24", "54, 84, 59, 27, 23"})
  void weaversPage(double micrometres, double thickness, double opening, double open, double v) {
    Mesh mesh = mesh(225 / 2.54, micrometres);
    assertThat(mesh.opening().mm() * 1000).isCloseTo(opening, within(1.0));
    assertThat(mesh.openArea().percent()).isCloseTo(open, within(1.0));
    assertThat(mesh.openArea().fraction() * thickness).isCloseTo(v, within(1.0));
    assertThat(mesh.thicknessMm().low() * 1000).isLessThanOrEqualTo(thickness);
    assertThat(mesh.thicknessMm().high() * 1000).isGreaterThanOrEqualTo(thickness);
  }

  // Optics-laboratory data sheet, plain weave 59/150: pitch 169 µm, opening 118 µm, open 49 %.
  @Test
  void opticsLaboratorySheet() {
    Mesh mesh = mesh(150 / 2.54, 51);
    assertThat(mesh.pitch().mm() * 1000).isCloseTo(169, within(1.0));
    assertThat(mesh.opening().mm() * 1000).isCloseTo(118, within(1.0));
    assertThat(mesh.openArea().percent()).isCloseTo(49, within(1.0));
  }

  // Screen-print trade article, June 2009: 305 to the inch with 40 µm, thickness 63 µm, open 25 %.
  // Catalogues print smaller openings than the formula: 3 points allowed.
  @Test
  void tradeArticle() {
    Mesh mesh = mesh(305 / 2.54, 40);
    assertThat(mesh.openArea().percent()).isCloseTo(25, within(3.0));
    assertThat(mesh.thicknessMm().low() * 1000).isLessThanOrEqualTo(63);
    assertThat(mesh.thicknessMm().high() * 1000).isGreaterThanOrEqualTo(63);
  }

  // The same optics sheet, heavy twill 190/480-31: opening 16 µm. The plain-weave formula gives
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
