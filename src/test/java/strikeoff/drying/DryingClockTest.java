package strikeoff.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import strikeoff.checks.Draws;
import strikeoff.drying.DryingClock.States;
import strikeoff.plan.Medium;
import strikeoff.plan.Until.Dryness;
import strikeoff.policy.Policy;
import strikeoff.units.ArealMass;

class DryingClockTest {

  /** All days alike. */
  private static final Policy STEADY = SteadyDays.of(Printed.POLICY);

  private static final Air FAN = new Air(20, 0.5, 2);
  private static final long NINE = 9 * 3600;
  private final Drying drying = Printed.paint(108).drying(STEADY);

  private static DryingClock clock(Drying drying) {
    return new DryingClock(drying, NINE);
  }

  private FilmNeed need(Drying drying, Medium medium, double deposit) {
    return drying.need(
        new Printed(medium, deposit, "cotton", 180, 20, 0.5, 0).paste(),
        new ArealMass(deposit),
        false);
  }

  /** Half an hour in the room's air, the rest before the fan. */
  @Test
  void aMovedAirShortensWhatIsLeft() {
    FilmNeed need = need(drying, Medium.PAINT, 108);
    DryingClock fanned = clock(drying);
    fanned.change(NINE + 1800, FAN);
    long alone = clock(drying).states(need, NINE).frameSafe().best();
    long withFan = fanned.states(need, NINE).frameSafe().best();
    double room = drying.rates(need, drying.room())[0];
    double fan = drying.rates(need, FAN)[0];
    double hours = (withFan - NINE) / 3600.0;
    assertThat(need.above(0, hours, room * 0.5 + fan * (hours - 0.5))).isCloseTo(0, offset(0.05));
    assertThat(withFan).isLessThan(alone);
  }

  /** The last water leaves through the skin and ever more slowly; by hand for a film in one air. */
  @Test
  void theClothIsLiftedWhenItHoldsTwelveHundredthsAndDryAtThree() {
    FilmNeed need = need(drying, Medium.DYE, 108);
    States states = clock(drying).states(need, NINE);
    double rate = drying.rates(need, drying.room())[0];
    // 108 g/m² hold 97.2 g of water, of which 0.12 · 180 = 21.6 g may stay
    assertThat(hoursAfterNine(states.liftSafe().best()))
        .isCloseTo((97.2 - 21.6) / rate, offset(0.001));
    assertThat((states.fixSafe().best() - states.liftSafe().best()) / 3600.0)
        .isCloseTo(21.6 / rate * Math.log(4), offset(0.001));
  }

  @Test
  void inAirTooHumidItNeverDries() {
    Drying damp = Printed.paint(60).in(20, 1, 0).drying(STEADY);
    States paint = clock(damp).states(need(damp, Medium.PAINT, 60), NINE);
    assertThat(paint.frameSafe().best()).isEqualTo(DryingClock.NEVER);
    assertThat(paint.frameSafe().chanceAfter(NINE + 1_000_000)).isEqualTo(1);
    // dye paste still sinks in, but the cloth stays wet
    States dye = clock(damp).states(need(damp, Medium.DYE, 60), NINE);
    assertThat(dye.frameSafe().latest()).isLessThan(NINE + 600);
    assertThat(dye.liftSafe().best()).isEqualTo(DryingClock.NEVER);
  }

  /** Heat on a wet film spoils it; a day's rest before heat is advice, and no part of drying. */
  @Test
  void paintIsFixSafeWhenItIsDryThroughAndLaterThanItIsLifted() {
    FilmNeed need = need(drying, Medium.PAINT, 108);
    States states = clock(drying).states(need, NINE);
    double rate = drying.rates(need, drying.room())[0];
    // 108 g/m² hold 75.6 g of water, of which 21.6 g may stay when it is lifted and 5.4 g when dry
    assertThat(hoursAfterNine(states.liftSafe().best()))
        .isCloseTo((75.6 - 21.6) / rate, offset(0.001));
    assertThat(hoursAfterNine(states.fixSafe().best()))
        .isCloseTo((75.6 - 21.6 + 21.6 * Math.log(21.6 / 5.4)) / rate, offset(0.001));
  }

  /**
   * So little water that the cloth may be lifted at once: the last of it leaves ever more slowly.
   */
  @Test
  void aThinFilmIsDryThroughSoonerThanClothThatIsJustLiftSafe() {
    FilmNeed need = need(drying, Medium.DYE, 20);
    States states = clock(drying).states(need, NINE);
    double rate = drying.rates(need, drying.room())[0];
    assertThat(states.liftSafe().best()).isEqualTo(states.frameSafe().best());
    assertThat(hoursAfterNine(states.fixSafe().best()))
        .isCloseTo(21.6 * Math.log(18 / 5.4) / rate, offset(0.001));
  }

  private static double hoursAfterNine(long second) {
    return (second - NINE) / 3600.0;
  }

  /** An air that changes again in the same second dries nothing, wherever the film begins. */
  @Test
  void anAirThatLastsNoTimeIsNone() {
    FilmNeed need = need(drying, Medium.PAINT, 108);
    DryingClock plain = clock(drying);
    DryingClock fanned = clock(drying);
    fanned.change(NINE + 600, FAN);
    fanned.change(NINE + 600, drying.room());
    assertThat(fanned.states(need, NINE)).isEqualTo(plain.states(need, NINE));
    assertThat(fanned.lastChange()).isEqualTo(NINE + 600);
    plain.change(NINE + 900, FAN);
    fanned.change(NINE + 900, drying.room());
    fanned.change(NINE + 900, FAN);
    assertThat(fanned.states(need, NINE)).isEqualTo(plain.states(need, NINE));
    assertThat(fanned.states(need, NINE + 900)).isEqualTo(plain.states(need, NINE + 900));
    assertThat(fanned.states(need, NINE)).isNotEqualTo(clock(drying).states(need, NINE));
  }

  @Test
  void whoFeelsAFilmKnowsThatItIsSafeFromThenOn() {
    Drying unsure = Printed.paint(108).drying(Printed.POLICY);
    Dried dried = clock(unsure).states(need(unsure, Medium.PAINT, 108), NINE).frameSafe();
    Dried felt = dried.felt(dried.best());
    assertThat(felt.earliest()).isEqualTo(dried.earliest());
    assertThat(felt.latest()).isEqualTo(dried.best());
    assertThat(dried.chanceAfter(dried.best())).isBetween(0.4, 0.5);
    assertThat(felt.chanceAfter(dried.best())).isZero();
    assertThat(felt.chanceAfter(dried.best() - 1)).isBetween(0.5, 0.52);
  }

  @Property(tries = 200, seed = Draws.ALIKE)
  void statesFollowEachOtherAndTimeRunsForward(
      @ForAll @DoubleRange(min = 0, max = 300) double deposit,
      @ForAll @IntRange(min = 0, max = 7200) int later,
      @ForAll Medium medium) {
    Drying unsure = Printed.paint(108).drying(Printed.POLICY);
    DryingClock clock = clock(unsure);
    clock.change(NINE + 1000, FAN);
    clock.change(NINE + 2000, unsure.room());
    FilmNeed need = need(unsure, medium, deposit);
    States states = clock.states(need, NINE);
    for (Dried dried : List.of(states.frameSafe(), states.liftSafe(), states.fixSafe())) {
      assertThat(List.of(NINE, dried.earliest(), dried.best(), dried.latest())).isSorted();
    }
    assertThat(
            List.of(states.frameSafe().best(), states.liftSafe().best(), states.fixSafe().best()))
        .isSorted();
    // a film printed later is never dry earlier
    assertThat(clock.states(need, NINE + later).frameSafe().best())
        .isGreaterThanOrEqualTo(states.frameSafe().best());
    assertThat(clock.states(need, NINE + later).fixSafe().latest())
        .isGreaterThanOrEqualTo(states.fixSafe().latest());
  }

  /** Changes of air that change nothing: the long way round gives what the short one does. */
  @Property(tries = 100, seed = Draws.ALIKE)
  void airThatIsSetAnewIsTheSameAir(
      @ForAll @DoubleRange(min = 1, max = 200) double deposit, @ForAll Medium medium) {
    Drying unsure = Printed.paint(108).drying(Printed.POLICY);
    FilmNeed need = need(unsure, medium, deposit);
    DryingClock parts = clock(unsure);
    Air room = unsure.room();
    // Another air by name alone, or it would count as no change.
    Air same = new Air(room.celsius() + 1e-9, room.humidity(), room.speed(), room.known());
    for (int minute = 1; minute < 400; minute += 7) {
      parts.change(NINE + minute * 60, minute % 2 == 0 ? room : same);
    }
    States whole = clock(unsure).states(need, NINE);
    States inParts = parts.states(need, NINE);
    assertThat(inParts.frameSafe().best()).isCloseTo(whole.frameSafe().best(), offset(1L));
    assertThat(inParts.liftSafe().latest()).isCloseTo(whole.liftSafe().latest(), offset(1L));
    assertThat(inParts.fixSafe().latest()).isCloseTo(whole.fixSafe().latest(), offset(1L));
  }

  /** A fan that comes and goes; of films that need the same only the last is asked. */
  @Property(tries = 200, seed = Draws.ALIKE)
  void whatBeganEarlierIsAheadInWhateverAir(
      @ForAll @DoubleRange(min = 1, max = 300) double deposit,
      @ForAll Medium medium,
      @ForAll @DoubleRange(min = 0.2, max = 1) double humidity,
      @ForAll @Size(min = 1, max = 8) List<@IntRange(min = 1, max = 3000) Integer> parts,
      @ForAll @IntRange(min = 0, max = 7200) int first,
      @ForAll @IntRange(min = 1, max = 7200) int later) {
    Drying unsure = Printed.paint(108).in(20, humidity, 0).drying(Printed.POLICY);
    FilmNeed need = need(unsure, medium, deposit);
    DryingClock clock = comesAndGoes(unsure, parts);
    for (Dryness state : Dryness.values()) {
      long at = clock.state(need, NINE + first + later, state).best();
      if (NINE + first >= clock.aheadSince(need, at)) {
        assertThat(clock.state(need, NINE + first, state).best()).isLessThanOrEqualTo(at);
      }
    }
  }

  /** Whatever was followed before: other films in the same airs, at other hours and for longer. */
  @Property(tries = 100, seed = Draws.ALIKE)
  void whatIsKnownOfOthersIsWhatWouldBeWorkedOut(
      @ForAll @DoubleRange(min = 20, max = 300) double deposit,
      @ForAll Medium medium,
      @ForAll @Size(min = 1, max = 8) List<@IntRange(min = 1, max = 3000) Integer> parts,
      @ForAll @Size(min = 1, max = 6) List<@IntRange(min = 0, max = 9000) Integer> begins) {
    Drying known = Printed.paint(108).drying(Printed.POLICY);
    FilmNeed need = need(known, medium, deposit);
    for (int many = 1; many <= parts.size(); many++) {
      DryingClock clock = comesAndGoes(known, parts.subList(0, many));
      for (int begin : begins) {
        Drying fresh = Printed.paint(108).drying(Printed.POLICY);
        assertThat(clock.states(need, NINE + begin))
            .isEqualTo(
                comesAndGoes(fresh, parts.subList(0, many))
                    .states(need(fresh, medium, deposit), NINE + begin));
      }
    }
  }

  private static DryingClock comesAndGoes(Drying drying, List<Integer> parts) {
    DryingClock clock = clock(drying);
    long second = NINE;
    for (int i = 0; i < parts.size(); i++) {
      second += parts.get(i);
      clock.change(second, i % 2 == 0 ? FAN : drying.room());
    }
    return clock;
  }
}
