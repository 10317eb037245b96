package strikeoff.screens;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import strikeoff.checks.Worked;

/** Every screen and every separation of a plan is looked at; sizes are worked out by hand. */
class ScreensOfAPlanTest {

  private final Worked worked =
      Worked.of(
          """
          plan: test
          cloth: {fibre: cotton, mass: 180 g/m², length: 2 m, width: 1 m, washed: yes}
          screens:
            reeds:
              {frame: 50 x 44 cm, image: 31 x 24 cm, mesh: 43/cm, thread: 80 µm, squeegee: 22 cm}
            herons:
              {frame: 44 x 30 cm, image: 31 x 20 cm, mesh: 43/cm, thread: 80 µm, squeegee: 40 cm}
          pastes:
            green: {medium: dye, group: DCT, colour: green}
            blue: {medium: paint, colour: blue}
          designs:
            reeds:
              size: 35 x 30 cm
              separations:
                - {screen: reeds, paste: green, covers: 40 %, detail: 0.3 mm}
                - {screen: reeds, paste: blue, covers: 10 %}
                - {screen: reeds, paste: blue, covers: 5 %}
            shells:
              size: 20 x 15 cm
              separations:
                - {screen: herons, paste: green, covers: 40 %}
          placements:
            reeds: {design: reeds, at: "10 cm, 30 cm"}
          """);

  @Test
  void eachScreenHasItsFrameItsWeaveAndItsSqueegee() {
    assertThat(worked.all(FrameMargin.class))
        .extracting(FrameMargin::screen)
        .containsExactly("reeds", "herons");
    assertThat(worked.all(SqueegeeFit.class)).hasSize(2);
    MeshWeave weave = worked.all(MeshWeave.class).get(0);
    assertThat(weave.threadMicrometres()).isCloseTo(80, within(1e-9));
    // half of 10 mm / 43
    assertThat(weave.thickestMicrometres()).isCloseTo(116.279, within(1e-3));
  }

  @Test
  void aSqueegeeMayBeTooShortOrTooLong() {
    SqueegeeFit brief = worked.all(SqueegeeFit.class).get(0);
    assertThat(brief.shortBy().cm()).isCloseTo(2, within(1e-9));
    // pulled across 44 cm less two rails of 4 cm it is less too long than in 22
    SqueegeeFit wide = worked.all(SqueegeeFit.class).get(1);
    assertThat(wide.insideSpan().cm()).isCloseTo(36, within(1e-9));
    assertThat(wide.longBy().cm()).isCloseTo(4, within(1e-9));
  }

  @Test
  void aFrameTooNarrowTellsTheOneNeeded() {
    // the blade of 40 cm lies along, paste at the sides: 20 + 2 · well margin + 2 · 4 cm of rail
    double margin = Worked.POLICY.limit("screens/well-margin").amount() / 10;
    FrameMargin narrow = worked.all(FrameMargin.class).get(1);
    assertThat(narrow.side().cm()).isCloseTo(2.5, within(1e-9));
    assertThat(narrow.well().cm()).isCloseTo(1, within(1e-9));
    assertThat(narrow.frameWidthNeeded().cm())
        .isCloseTo(Math.max(30, 20 + 2 * margin + 8), within(1e-9));
  }

  @Test
  void aScreenIsAskedAboutEachMediumOfItsPastes() {
    assertThat(worked.all(MeshForPaste.class)).hasSize(3);
  }

  @Test
  void aSeparationLargerThanTheImageLacksTheDifference() {
    assertThat(worked.all(SeparationOnScreen.class)).hasSize(4);
    SeparationOnScreen large = worked.all(SeparationOnScreen.class).get(0);
    assertThat(large.lacksLength().cm()).isCloseTo(4, within(1e-9));
    assertThat(large.lacksWidth().cm()).isCloseTo(6, within(1e-9));
    assertThat(large.lacks().cm()).isCloseTo(6, within(1e-9));
    assertThat(large.related()).hasSize(1);
    SeparationOnScreen small = worked.all(SeparationOnScreen.class).get(3);
    assertThat(small.lacksLength().cm()).isZero();
    assertThat(small.lacksWidth().cm()).isZero();
    DetailOnMesh detail = worked.the(DetailOnMesh.class);
    assertThat(detail.related()).hasSize(1);
    assertThat(detail.separation()).isEqualTo(1);
  }

  @Test
  void threeImagesOnOneScreenAreTwoScreensTooFew() {
    StencilImages images = worked.the(StencilImages.class, s -> s.images() > 1);
    assertThat(images.images()).isEqualTo(3);
    assertThat(images.more()).isEqualTo(2);
    assertThat(images.related())
        .extracting(r -> r.path().text())
        .containsExactly("designs.reeds.separations[0]", "designs.reeds.separations[2]");
  }
}
