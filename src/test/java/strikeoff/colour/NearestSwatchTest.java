package strikeoff.colour;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import strikeoff.checks.Draws;
import strikeoff.plan.Colour;
import strikeoff.plan.Medium;

/** The search from the look's lightness outwards finds what comparing with all of them finds. */
class NearestSwatchTest {

  @Property(tries = 1000, seed = Draws.ALIKE)
  void findsWhatComparingWithAllFinds(
      @ForAll @Size(min = 1, max = 40)
          List<@Size(value = 3) List<@DoubleRange(min = -1, max = 1) Double>> colours,
      @ForAll @Size(value = 3) List<@DoubleRange(min = -1, max = 1) Double> look) {
    List<Swatch> swatches = new ArrayList<>();
    colours.forEach(c -> swatches.add(swatch("paste " + swatches.size(), lab(c))));
    Swatch nearest = null;
    for (Swatch swatch : swatches) {
      boolean counts = !swatch.paste().equals("paste 1");
      boolean nearer =
          nearest == null
              || swatch.onGroundLab().difference(lab(look))
                  < nearest.onGroundLab().difference(lab(look));
      nearest = counts && nearer ? swatch : nearest;
    }
    assertThat(new NearestSwatch(swatches).to(lab(look), s -> !s.paste().equals("paste 1")))
        .map(NearestSwatch.Found::swatch)
        .isEqualTo(Optional.ofNullable(nearest));
  }

  @Example
  void ofSeveralAsNearTheFirstListedIsTold() {
    Lab grey = new Lab(60, 0, 0);
    List<Swatch> swatches =
        List.of(swatch("far", new Lab(20, 0, 0)), swatch("one", grey), swatch("same", grey));
    assertThat(new NearestSwatch(swatches).to(new Lab(61, 0, 0), s -> true).orElseThrow().swatch())
        .isEqualTo(swatches.get(1));
  }

  /** Lightness in steps, so that it coincides often. */
  private static Lab lab(List<Double> parts) {
    return new Lab(
        50 + 50 * Math.rint(parts.get(0) * 12) / 12, 90 * parts.get(1), 90 * parts.get(2));
  }

  private static Swatch swatch(String paste, Lab lab) {
    Colour any = new Colour(1, 2, 3, "#010203");
    return new Swatch(paste, Medium.DYE, true, any, lab, any, any, lab, List.of("a"));
  }
}
