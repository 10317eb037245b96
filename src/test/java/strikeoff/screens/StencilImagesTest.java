package strikeoff.screens;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import strikeoff.plan.yaml.PlanReader;
import strikeoff.plan.yaml.PlanReading;
import strikeoff.policy.yaml.PolicyReader;
import strikeoff.speech.ScreenSpeech;
import strikeoff.units.Measures;

/**
 * One stencil holds one image; the images are the plan's, worked out in the comment beside each.
 */
class StencilImagesTest {

  @Test
  void anotherCoverIsAnotherImage() {
    StencilImages images =
        images("[{screen: a, paste: p, covers: 30 %}, {screen: a, paste: q, covers: 10 %}]").get(0);
    assertThat(images.images()).isEqualTo(2);
    assertThat(images.path().text()).isEqualTo("designs.d.separations[1]");
    // 30 % and 10 % of 20 cm · 20 cm
    assertThat(images.each().stream().map(use -> ScreenSpeech.text(use, Measures.METRIC)))
        .containsExactly(
            "separation 1 of d (20 cm by 20 cm, 120 cm² of it printed)",
            "separation 2 of d (20 cm by 20 cm, 40 cm² of it printed)");
  }

  @Test
  void anotherSizeIsAnotherImage() {
    // 30 % of 400 cm² and 40 % of 300 cm² are the same 120 cm²
    assertThat(
            images(
                "[{screen: a, paste: p, covers: 30 %},"
                    + " {screen: a, paste: q, covers: 40 %, size: 15 x 20 cm}]"))
        .extracting(StencilImages::images)
        .containsExactly(2);
  }

  @Test
  void theSameImageInTwoPastesIsOne() {
    // 120 cm² is 30 % of 400 cm²
    assertThat(
            images(
                "[{screen: a, paste: p, covers: 30 %}, {screen: a, paste: q, area: 120 cm²},"
                    + " {screen: b, paste: q, covers: 5 %}]"))
        .extracting(StencilImages::images)
        .containsExactly(1, 1);
  }

  private static List<StencilImages> images(String separations) {
    String screen = "{frame: 44 x 44 cm, image: 20 x 20 cm, mesh: 43/cm}";
    String paste = "{medium: paint, colour: red}";
    String text =
        """
        plan: p
        cloth: {length: 1 m, width: 1 m}
        screens: {a: %s, b: %s}
        pastes: {p: %s, q: %s}
        designs: {d: {size: 20 x 20 cm, separations: %s}}
        placements: {l: {design: d, at: "5 cm, 5 cm"}}
        """
            .formatted(screen, screen, paste, paste, separations);
    PlanReading read = PlanReader.read("plan.yaml", text, PolicyReader.builtIn());
    return StencilImages.of(((PlanReading.Readable) read).plan());
  }
}
