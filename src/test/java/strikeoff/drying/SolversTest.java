package strikeoff.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strikeoff.checks.Draws;
import strikeoff.drying.Evaporation.When;
import strikeoff.plan.DryingTime;
import strikeoff.plan.Medium;
import strikeoff.units.ArealMass;
import strikeoff.units.Span;

/** Steps and rounds of the methods decide nothing: with more of them the figures stay. */
class SolversTest {

  /** Newton's steps end where no more water is left than a frame may touch. */
  @Property(tries = 200, seed = Draws.ALIKE)
  void aFilmIsFrameSafeWhenNothingStandsAboveWhatAFrameMayTouch(
      @ForAll @DoubleRange(min = 10, max = 300) double deposit,
      @ForAll @DoubleRange(min = 40, max = 400) double mass,
      @ForAll @DoubleRange(min = 0.5, max = 400) double rate,
      @ForAll @IntRange(min = 0, max = 100) int day,
      @ForAll Medium medium) {
    FilmNeed need = need(new Printed(medium, deposit, "cotton", mass, 20, 0.5, 0));
    double hours = InOneAir.frameSafe(need, day, rate);
    double above = need.above(day, hours, rate * hours);
    if (hours == 0) {
      assertThat(above).isNotPositive();
    } else {
      // within a tenth of a second
      assertThat(above).isCloseTo(0, offset(need.falling(day, hours, rate) * 0.1 / 3600));
    }
  }

  /** What a strike-off tells is the same in four parts and in thirty-two, within what is seen. */
  @ParameterizedTest
  @ValueSource(doubles = {0.4, 0.7, 1, 1.6, 3})
  void fourRoundsTellWhatThirtyTwoTell(double timesExpected) {
    for (double deposit : new double[] {54, 81, 108}) {
      double seen = Printed.POLICY.limit("drying/seen-spread").amount();
      double measured = timesExpected * Printed.paint(deposit).frameSafe();
      double[] four = after(deposit, measured, seen, 4);
      double[] many = after(deposit, measured, seen, 32);
      for (int day : new int[] {10, 50, 90}) {
        assertThat(four[day]).as("day %s", day).isCloseTo(many[day], withPercentage(100 * seen));
      }
    }
  }

  /** Minutes till paint is frame-safe, sorted, once it took so many on a strike-off. */
  private static double[] after(double deposit, double minutes, double spread, int rounds) {
    Printed print = Printed.paint(deposit);
    Evaporation evaporation = new Evaporation(Printed.POLICY);
    Laid laid = new Laid(Printed.POLICY, print.cloth(), 0.9, print.paste(), deposit, false);
    Days days =
        Days.ANY.after(
            d ->
                Arrays.stream(times(laid, evaporation, d, When.STRIKE_OFF))
                    .map(Math::log)
                    .toArray(),
            Math.log(minutes),
            spread,
            rounds);
    double[] times = times(laid, evaporation, days, When.PRINTING);
    Arrays.sort(times);
    return times;
  }

  private static double[] times(Laid laid, Evaporation evaporation, Days days, When when) {
    FilmNeed need = new FilmNeed(laid.amounts(days, when));
    Air air = new Air(20, 0.5, 0);
    return IntStream.range(0, Days.COUNT)
        .mapToDouble(
            day -> {
              double rate = evaporation.onDay(days, day, air, laid.activity(), when).rate();
              return 60 * InOneAir.frameSafe(need, day, rate);
            })
        .toArray();
  }

  /** Halving ends at the time that was taken, whatever it was. */
  @ParameterizedTest
  @ValueSource(doubles = {70, 90, 240, 1500})
  void theClothIsLiftedOnAnOrdinaryDayAfterTheTimeThatWasTaken(double minutes) {
    Printed print = Printed.paint(81);
    DryingTime taken = DryingTime.inTheRoom(new Span(minutes));
    Dried lifted =
        print
            .states(
                Printed.measured(
                    print.paste(), Optional.empty(), Optional.of(taken), Optional.empty()))
            .liftSafe();
    assertThat(lifted.best()).isCloseTo(Math.round(60 * minutes), offset(1L));
  }

  private static FilmNeed need(Printed print) {
    return print.drying(Printed.POLICY).need(print.paste(), new ArealMass(print.deposit()), false);
  }
}
