package strikeoff.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import strikeoff.checks.Draws;
import strikeoff.plan.Colour;

class ColourProperties {

  @Property(seed = Draws.ALIKE)
  void aDifferenceIsTheSameBothWays(
      @ForAll("colours") Colour one, @ForAll("colours") Colour other) {
    Lab p = Lab.of(one);
    Lab q = Lab.of(other);
    assertThat(p.difference(q)).isCloseTo(q.difference(p), within(1e-9));
  }

  @Property(seed = Draws.ALIKE)
  void aDifferenceIsZeroOnlyAtEquality(
      @ForAll("colours") Colour one, @ForAll("colours") Colour other) {
    Lab p = Lab.of(one);
    assertThat(p.difference(p)).isZero();
    if (!one.hex().equals(other.hex())) {
      assertThat(p.difference(Lab.of(other))).isPositive();
    }
  }

  @Property(seed = Draws.ALIKE)
  void neighbouringColoursDiffer(@ForAll("colours") Colour colour) {
    Colour next = new Colour(colour.red() ^ 1, colour.green(), colour.blue(), "");
    assertThat(Lab.of(colour).difference(Lab.of(next))).isPositive();
  }

  @Property(seed = Draws.ALIKE)
  void decodingAndEncodingGivesTheColourBack(@ForAll("colours") Colour colour) {
    assertThat(Reflectance.of(colour).colour().hex()).isEqualTo(colour.hex());
  }

  @Property(seed = Draws.ALIKE)
  void absorptionAndReflectanceUndoEachOther(@ForAll("reflectances") double reflectance) {
    assertThat(KubelkaMunk.reflectance(KubelkaMunk.absorption(reflectance)))
        .isCloseTo(reflectance, within(1e-9));
  }

  @Property(seed = Draws.ALIKE)
  void onWhiteAPasteLooksAsItIsNamed(@ForAll("colours") Colour paste) {
    Reflectance look = Coat.transparent(Reflectance.of(paste)).over(Reflectance.WHITE);
    assertThat(look.colour().hex()).isEqualTo(paste.hex());
  }

  @Property(seed = Draws.ALIKE)
  void anOverprintIsNeverLighterThanEitherLayerOnWhite(
      @ForAll("colours") Colour lower, @ForAll("colours") Colour upper) {
    Reflectance below = Reflectance.of(lower);
    Reflectance above = Reflectance.of(upper);
    Reflectance both =
        Coat.transparent(above).over(Coat.transparent(below).over(Reflectance.WHITE));
    assertNoLighter(both, below);
    assertNoLighter(both, above);
  }

  @Property(seed = Draws.ALIKE)
  void theOrderOfTransparentLayersChangesNothing(
      @ForAll("colours") Colour ground,
      @ForAll("colours") Colour one,
      @ForAll("colours") Colour other) {
    Coat p = Coat.transparent(Reflectance.of(one));
    Coat q = Coat.transparent(Reflectance.of(other));
    Reflectance cloth = Reflectance.of(ground);
    assertThat(p.over(q.over(cloth)).colour()).isEqualTo(q.over(p.over(cloth)).colour());
  }

  @Property(seed = Draws.ALIKE)
  void aSofterCoatIsNeverDarker(@ForAll("colours") Colour ground, @ForAll("colours") Colour paste) {
    Coat coat = Coat.transparent(Reflectance.of(paste));
    Reflectance cloth = Reflectance.of(ground);
    assertNoLighter(coat.over(cloth), coat.times(0.7).over(cloth));
  }

  /**
   * Its colour is named as it looks on white, which shows in its gaps; the film itself is darker.
   */
  @Property(seed = Draws.ALIKE)
  void anOpaqueCoatLiesBetweenItsFilmAndWhatItHides(
      @ForAll("colours") Colour under, @ForAll("colours") Colour paint) {
    Reflectance below = Reflectance.of(under);
    Reflectance cover = Reflectance.of(paint);
    double gaps = Math.min(0.1, Math.min(cover.red(), Math.min(cover.green(), cover.blue())));
    double film = (cover.green() - gaps) / (1 - gaps);
    double seen = Coat.opaque(cover, 0.9).over(below).green();
    assertThat(seen)
        .isBetween(Math.min(below.green(), film) - 1e-12, Math.max(below.green(), film) + 1e-12);
    assertThat(Math.abs(seen - film)).isLessThanOrEqualTo(Math.abs(seen - below.green()) + 1e-12);
    assertThat(Coat.opaque(cover, 0.9).over(Reflectance.WHITE).green())
        .isCloseTo(cover.green(), within(1e-9));
  }

  private static void assertNoLighter(Reflectance one, Reflectance other) {
    double slack = KubelkaMunk.DARKEST + 1e-12;
    assertThat(one.red()).isLessThanOrEqualTo(other.red() + slack);
    assertThat(one.green()).isLessThanOrEqualTo(other.green() + slack);
    assertThat(one.blue()).isLessThanOrEqualTo(other.blue() + slack);
  }

  @Provide
  Arbitrary<Colour> colours() {
    Arbitrary<Integer> level = Arbitraries.integers().between(0, 255);
    return Combinators.combine(level, level, level).as((r, g, b) -> new Colour(r, g, b, ""));
  }

  @Provide
  Arbitrary<Double> reflectances() {
    return Arbitraries.doubles().between(0.001, 1).ofScale(4);
  }
}
