package strikeoff.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import strikeoff.checks.Draws;
import strikeoff.document.PlanPath;
import strikeoff.plan.Design;
import strikeoff.units.Area;
import strikeoff.units.Length;

class MotifProperties {

  private static final Pattern STRIPE =
      Pattern.compile("M(-?[\\d.]+) (-?[\\d.]+)h([\\d.]+)v([\\d.]+)h-[\\d.]+z");

  @Property(tries = 200, seed = Draws.ALIKE)
  void theStripesOfAColourHaveTheAreaItPrints(
      @ForAll @DoubleRange(min = 2, max = 80) double length,
      @ForAll @DoubleRange(min = 2, max = 80) double width,
      @ForAll @Size(min = 1, max = 5) List<@DoubleRange(min = 0.01, max = 1) Double> shares) {
    Design design = design(length, width, shares);
    for (Design.Separation colour : design.separations()) {
      double area = 0;
      Matcher stripe = STRIPE.matcher(Motif.stripes(design, colour));
      while (stripe.find()) {
        double from = Double.parseDouble(stripe.group(1));
        double along = Double.parseDouble(stripe.group(3));
        assertThat(from).isBetween(-0.02, length * 10 + 0.02);
        assertThat(from + along).isLessThanOrEqualTo(length * 10 + 0.03);
        area += along * Double.parseDouble(stripe.group(4)) / 100;
      }
      // Coordinates are rounded to 0.01 mm, on eight stripe ends at most.
      assertThat(area)
          .isCloseTo(colour.printed().squareCm(), within(0.009 * width + 0.02 * length));
    }
  }

  private static Design design(double length, double width, List<Double> shares) {
    PlanPath path = PlanPath.ROOT;
    List<Design.Separation> colours = new ArrayList<>();
    for (double share : shares) {
      colours.add(
          new Design.Separation(
              colours.size() + 1,
              "screen",
              "paste",
              Length.ofCm(0),
              Length.ofCm(0),
              Length.ofCm(length),
              Length.ofCm(width),
              new Area(length * width * share),
              1,
              false,
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              path));
    }
    return new Design("reeds", Length.ofCm(length), Length.ofCm(width), colours, List.of(), path);
  }
}
