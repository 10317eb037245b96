package strikeoff.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import strikeoff.drying.DryingClock.Dried;
import strikeoff.plan.Cloth;
import strikeoff.plan.Colour;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.PlainParts;
import strikeoff.policy.Policy;
import strikeoff.policy.yaml.PolicyReader;
import strikeoff.units.ArealMass;
import strikeoff.units.Length;
import strikeoff.units.Share;
import strikeoff.units.Span;

class DryingClockTest {

  /**
   * Two pulls through a mesh of 43 threads a centimetre, 80 µm thick, lay down twice 51.6 cm³/m² at
   * 1.05 g/cm³, about 108 g/m².
   */
  private static final double TWO_PULLS = 108;

  private static final Policy POLICY = PolicyReader.builtIn();
  private static final Air ROOM = new Air(20, 0.5, 0);
  private static final Air FAN = new Air(20, 0.5, 2);
  private static final long NINE = 9 * 3600;
  private final Drying drying = Drying.of(cloth("cotton"), POLICY);

  /** Common practice, no source: a paint film is frame-safe after about an hour in still air. */
  @Test
  void paintTakesAboutAnHourInStillAir() {
    assertThat(frameSafeMinutes(Medium.PAINT, TWO_PULLS, ROOM)).isCloseTo(60, offset(10.0));
  }

  /** Common practice, no source: dye paste within a minute or two, once the sheen has gone. */
  @Test
  void dyeTakesAboutTwoMinutesInStillAir() {
    assertThat(frameSafeMinutes(Medium.DYE, TWO_PULLS, ROOM)).isCloseTo(2, offset(0.2));
  }

  /**
   * Common practice, no source: the sheen goes within a minute or two, so even the slowest and the
   * fastest credible drying lie near that; whatever the film does in an hour of drying through.
   */
  @Test
  void theSheenOfDyeGoesWithinAMinuteOrTwoInAnyCredibleDrying() {
    FilmNeed need = drying.need(paste(Medium.DYE), new ArealMass(TWO_PULLS));
    Dried dried = clock().frameSafe(Medium.DYE, need, NINE);
    assertThat((dried.earliest() - NINE) / 60.0).isBetween(1.0, 1.7);
    assertThat((dried.latest() - NINE) / 60.0).isBetween(2.0, 2.5);
  }

  /** By hand: 94 % of 95.04 g is soaked up at once; 70 % of the rest evaporates or sinks in. */
  @Test
  void whatSinksInHelpsTheAir() {
    FilmNeed need = drying.need(paste(Medium.DYE), new ArealMass(TWO_PULLS));
    double rate = drying.rate(Medium.DYE, ROOM).best() + 80;
    assertThat((double) clock().frameSafe(Medium.DYE, need, NINE).best() - NINE)
        .isCloseTo(108 * 0.88 * 0.06 * 0.70 / rate * 3600, offset(1.0));
  }

  /**
   * 200 g/m² of dye paste is 176 g of water; cotton of 100 g/m² holds 65 g of it, so 111 g shine on
   * top, of which 70 % go until the sheen has gone.
   */
  @Test
  void dyeTheClothCannotTakeUpStaysWetForLong() {
    Drying thin = Drying.of(cloth("cotton", 100), POLICY);
    FilmNeed need = thin.need(paste(Medium.DYE), new ArealMass(200));
    assertThat(need.frameSafe()).isCloseTo(111 * 0.70, offset(0.01));
  }

  /** 60 g/m² of paint: 42 g water, 8.4 taken up, 33.6 on top, of which 65 % go until touch-dry. */
  @Test
  void needOfPaintByHand() {
    FilmNeed need = drying.need(paste(Medium.PAINT), new ArealMass(60));
    assertThat(need.frameSafe()).isCloseTo(21.84, offset(1e-9));
    // 90 % of 42 is 37.8: 33.6 from the top, 4.2 from the cloth at 80 % of the rate
    assertThat(need.liftSafe()).isCloseTo(33.6 + 4.2 / 0.8, offset(1e-9));
  }

  @Test
  void aMovedAirShortensWhatIsLeft() {
    FilmNeed need = drying.need(paste(Medium.PAINT), new ArealMass(TWO_PULLS));
    DryingClock still = clock();
    DryingClock fanned = clock();
    fanned.change(NINE + 1800, FAN);
    long alone = still.frameSafe(Medium.PAINT, need, NINE).best();
    long withFan = fanned.frameSafe(Medium.PAINT, need, NINE).best();
    double room = drying.rate(Medium.PAINT, ROOM).best();
    double fan = drying.rate(Medium.PAINT, FAN).best();
    // half an hour at the room's rate, the rest at the fan's
    double byHand = 1800 + (need.frameSafe() - room * 0.5) / fan * 3600;
    assertThat((double) withFan - NINE).isCloseTo(byHand, offset(1.0));
    assertThat(withFan).isLessThan(alone);
  }

  @Test
  void inAirTooHumidItNeverDries() {
    DryingClock damp = new DryingClock(drying, new Air(20, 1, 0), NINE, new Span(43200));
    FilmNeed paint = drying.need(paste(Medium.PAINT), new ArealMass(60));
    assertThat(damp.frameSafe(Medium.PAINT, paint, NINE).best()).isEqualTo(DryingClock.NEVER);
    // the sheen of a dye paste still sinks in, but the cloth stays wet
    FilmNeed dye = drying.need(paste(Medium.DYE), new ArealMass(60));
    assertThat(damp.frameSafe(Medium.DYE, dye, NINE).latest()).isLessThan(NINE + 600);
    assertThat(damp.liftSafe(Medium.DYE, dye, NINE).best()).isEqualTo(DryingClock.NEVER);
  }

  @Test
  void aMeasuredTimeIsExactAndStandsInTheRoomsAir() {
    FilmNeed need =
        new FilmNeed(34, 0, 40, Optional.of(new Span(45)), Optional.of(new Span(90)), new Span(0));
    DryingClock clock = clock();
    assertThat(clock.frameSafe(Medium.PAINT, need, NINE))
        .isEqualTo(new Dried(NINE + 2700, NINE + 2700, NINE + 2700));
    clock.change(NINE + 600, FAN);
    Dried fanned = clock.frameSafe(Medium.PAINT, need, NINE);
    assertThat(fanned.best()).isBetween(NINE + 601, NINE + 2600);
    assertThat(fanned.earliest()).isEqualTo(fanned.latest());
  }

  @Test
  void paintCuresADayHoweverDryItIs() {
    FilmNeed need = drying.need(paste(Medium.PAINT), new ArealMass(60));
    assertThat(clock().fixSafe(Medium.PAINT, need, NINE).best()).isEqualTo(NINE + 86400);
  }

  @Property
  void statesFollowEachOtherAndTimeRunsForward(
      @ForAll @IntRange(min = 0, max = 300) int deposit,
      @ForAll @IntRange(min = 0, max = 7200) int later,
      @ForAll Medium medium) {
    DryingClock clock = clock();
    clock.change(NINE + 1000, FAN);
    clock.change(NINE + 2000, ROOM);
    FilmNeed need = drying.need(paste(medium), new ArealMass(deposit));
    Dried frame = clock.frameSafe(medium, need, NINE);
    Dried lift = clock.liftSafe(medium, need, NINE);
    Dried fix = clock.fixSafe(medium, need, NINE);
    assertThat(List.of(NINE, frame.earliest(), frame.best(), frame.latest())).isSorted();
    assertThat(List.of(frame.best(), lift.best(), fix.best())).isSorted();
    assertThat(List.of(lift.earliest(), lift.best(), lift.latest())).isSorted();
    // a film printed later is never dry earlier
    assertThat(clock.frameSafe(medium, need, NINE + later).best())
        .isGreaterThanOrEqualTo(frame.best());
  }

  private double frameSafeMinutes(Medium medium, double deposit, Air air) {
    FilmNeed need = drying.need(paste(medium), new ArealMass(deposit));
    return (new DryingClock(drying, air, NINE, new Span(43200)).frameSafe(medium, need, NINE).best()
            - NINE)
        / 60.0;
  }

  private DryingClock clock() {
    return new DryingClock(drying, ROOM, NINE, new Span(43200));
  }

  private static Cloth cloth(String fibre) {
    return cloth(fibre, 180);
  }

  private static Cloth cloth(String fibre, double mass) {
    return PlainParts.cloth(
        Map.of(fibre, new Share(1)),
        new ArealMass(mass),
        new Length(4000),
        new Length(1400),
        false,
        new Colour(255, 255, 255, "white"));
  }

  private static Paste paste(Medium medium) {
    return PlainParts.paste("ink", medium, new Colour(0, 0, 0, "black"), medium == Medium.DYE);
  }
}
