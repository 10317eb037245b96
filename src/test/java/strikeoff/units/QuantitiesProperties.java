package strikeoff.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import strikeoff.checks.Draws;

class QuantitiesProperties {

  private static final List<Class<? extends Quantity>> KINDS =
      List.of(
          Length.class,
          Area.class,
          Mass.class,
          Volume.class,
          Span.class,
          Temperature.class,
          Share.class,
          ArealMass.class,
          Concentration.class,
          MeshCount.class,
          AirSpeed.class,
          Angle.class,
          Ratio.class);

  @Property(tries = 300, seed = Draws.ALIKE)
  void whatTheToolWritesItReads(@ForAll @IntRange(min = 0, max = 90_000) int amount) {
    for (Class<? extends Quantity> kind : KINDS) {
      Dimension dimension = Dimension.of(kind);
      double base = Math.min(amount / 10.0, dimension.largest() / 2);
      Quantity written = dimension.make(base);
      Parsed<? extends Quantity> read = Quantities.parse(written.text(), kind);
      assertThat(read).as(written.text()).isInstanceOf(Parsed.Value.class);
      // Written values are rounded; writing and reading the rounded one again changes nothing.
      Quantity rounded = read.toOptional().orElseThrow();
      Quantity again = Quantities.parse(rounded.text(), kind).toOptional().orElseThrow();
      assertThat(again.base()).as(rounded.text()).isCloseTo(rounded.base(), within(1e-9));
      assertThat(rounded.base()).isCloseTo(base, within(Math.max(0.5, base * 0.03)));
    }
  }

  @Property(tries = 200, seed = Draws.ALIKE)
  void inchesAndCentimetresAgree(@ForAll @DoubleRange(min = 0, max = 300) double inches) {
    String text = Numbers.plain(inches, 3);
    double cm = Quantities.parse(text + " in", Length.class).toOptional().orElseThrow().cm();
    assertThat(cm).isCloseTo(Double.parseDouble(text) * 2.54, within(1e-9));
  }

  @Property(tries = 200, seed = Draws.ALIKE)
  void fahrenheitAndCelsiusAgree(@ForAll @IntRange(min = -40, max = 400) int degrees) {
    double celsius =
        Quantities.parse(degrees + " °F", Temperature.class).toOptional().orElseThrow().celsius();
    assertThat(celsius).isCloseTo((degrees - 32) / 1.8, within(1e-9));
  }

  @Property(tries = 1000, seed = Draws.ALIKE)
  void anythingIsReadOrRefused(@ForAll("scribbles") String text) {
    for (Class<? extends Quantity> kind : KINDS) {
      Parsed<? extends Quantity> parsed = Quantities.parse(text, kind);
      if (parsed instanceof Parsed.Refused<?> r) {
        assertThat(r.message()).isNotBlank().hasSizeLessThan(300).doesNotContain("\n");
      }
    }
    assertThat(Quantities.parseAmount(text)).isNotNull();
    assertThat(Pair.size(text)).isNotNull();
    assertThat(Pair.place(text)).isNotNull();
  }

  @Provide
  Arbitrary<String> scribbles() {
    Arbitrary<String> bits =
        Arbitraries.of(
            "1",
            "0",
            ".",
            ",",
            "/",
            " ",
            "-",
            "x",
            "cm",
            "in",
            "g",
            "/m²",
            "°",
            "C",
            "½",
            "e9",
            "h",
            "min",
            "cup",
            "µ",
            "%",
            ":",
            "\u2009",
            "\u0000",
            "US ",
            "9999999999",
            "\ud800");
    return Arbitraries.oneOf(
        bits.list().ofMaxSize(8).map(l -> String.join("", l)),
        Arbitraries.strings().ofMaxLength(30));
  }
}
