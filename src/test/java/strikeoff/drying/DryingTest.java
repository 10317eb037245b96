package strikeoff.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import strikeoff.checks.Draws;
import strikeoff.document.PlanPath;
import strikeoff.plan.Draught;
import strikeoff.plan.DryingTime;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.StrikeOff;
import strikeoff.policy.Policy;
import strikeoff.units.AirSpeed;
import strikeoff.units.Area;
import strikeoff.units.ArealMass;
import strikeoff.units.Mass;
import strikeoff.units.Share;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/** How long films take, and how sure anybody can be of that. */
class DryingTest {

  /** Paste of one pull, and of two, through 43 threads a centimetre of 80 µm. */
  private static final double ONE_PULL = 54.2;

  private static final double TWO_PULLS = 81.3;

  /**
   * Common practice, no source: printers lay the next frame at once on thickened dye, on ordinary
   * cotton and linen, one or two pulls. The model agrees in that it is dry on more than half of all
   * days a minute later; on linen of 110 g/m² after two pulls it is a matter of even chances by the
   * minute, and the practice is the better guide.
   */
  @Test
  void thickenedDyeOnOrdinaryClothTakesTheNextFrameAfterAMinute() {
    for (double mass : new double[] {110, 115, 120, 140, 180, 220}) {
      assertThat(Printed.dye(ONE_PULL, mass).wetAfter(1))
          .as("one pull on %s", mass)
          .isLessThan(0.1);
      assertThat(Printed.dye(TWO_PULLS, mass).wetAfter(1)).as("two on %s", mass).isLessThan(0.5);
    }
    Printed linen = new Printed(Medium.DYE, TWO_PULLS, "linen", 110, 20, 0.5, 0);
    assertThat(linen.wetAfter(1)).isBetween(0.40, 0.55);
    assertThat(linen.wetAfter(1.5)).isLessThan(0.5);
  }

  /**
   * Common practice, no source: paint makes a mess ten minutes after, and is dry in about an hour.
   */
  @Test
  void paintIsSurelyWetAfterTenMinutesAndSeldomAfterSeventy() {
    assertThat(Printed.paint(TWO_PULLS).wetAfter(10)).isGreaterThan(0.9);
    assertThat(Printed.paint(TWO_PULLS).wetAfter(70)).isBetween(0.1, 0.5);
  }

  /** Three pulls of 32/cm on silk of 60 g/m²: 69 cm³/m² at 1.05 g/cm³, 85 % of it, 1.8 times. */
  @Test
  void aFloodOfDyeOnThinSilkStaysWet() {
    Printed silk = new Printed(Medium.DYE, 69 * 1.05 * 0.85 * 1.8, "silk", 60, 20, 0.5, 0);
    assertThat(silk.wetAfter(1)).isGreaterThan(0.9);
    assertThat(silk.wetAfter(20)).isGreaterThan(0.5);
  }

  /** Where all is as expected: 42 g of water, of which 14.7 can be drawn in and 6.4 may stay. */
  @Test
  void paintByHand() {
    // solids 18 g at 1.2 g/cm³ are 15 cm³; at 70 % by volume 6.43 g of water lie between them
    double minutes =
        new Printed(Medium.PAINT, 60, "cotton", 180, 20, 0.5, 0)
                .states(Printed.paint(60).paste(), SteadyDays.of(Printed.POLICY))
                .frameSafe()
                .best()
            / 60.0;
    double soaked = 14.7 * (1 - Math.exp(-minutes / 5));
    assertThat(42 - soaked - 38.6 * minutes / 60).isCloseTo(6.43, offset(0.15));
  }

  /** What a gram of cotton takes in from one face, g: the table of fibres. */
  private static final double GRAM_HOLDS = 0.9;

  /** Worked out apart for dye paste in still air of 20 °C and 50 %, g/(m² h). */
  private static final double PASTE_LOSES = 37.8;

  private static final double[] DEPOSITS = {54, 81, 108, 127};

  /**
   * A gram of cloth more to the square metre takes in at most what it can hold. If it soaks up
   * nothing sooner, just so much more has to evaporate without it: no step is longer than that
   * takes, whatever is laid down, and none is backward.
   */
  @Test
  void aGramOfClothSavesNoMoreThanWhatItHoldsTakesToEvaporate() {
    double longest = GRAM_HOLDS / PASTE_LOSES * 60;
    double second = 1 / 60.0; // times are whole seconds
    Policy steady = SteadyDays.of(Printed.POLICY);
    for (double deposit : DEPOSITS) {
      for (int mass = 50; mass < 250; mass++) {
        Printed print = Printed.dye(deposit, mass);
        Printed heavier = Printed.dye(deposit, mass + 1);
        assertThat(frameSafe(print, steady) - frameSafe(heavier, steady))
            .as("as expected, %s g/m² on %s", deposit, mass)
            .isBetween(-second, longest + second);
        double[] before = onEachDay(print);
        double[] after = onEachDay(heavier);
        double[] most = gramOnEachDay(print);
        for (int day = 0; day < Days.COUNT; day++) {
          if (Double.isFinite(before[day])) {
            assertThat(before[day] - after[day])
                .as("day %s, %s g/m² on %s", day, deposit, mass)
                .isBetween(-second, most[day] + second);
          }
        }
      }
    }
  }

  /**
   * A model with a fixed film of 8 g/m² that a frame may touch takes steps of less than 5 % of the
   * time for each gram of cloth. Ours does not, and that is a miss which stays: the hollows between
   * the yarns grow with the cloth, so that each gram takes away the full 1.4 min, which is more
   * than 5 % of anything below half an hour. Above that it holds where all is as expected.
   */
  @Test
  void stepsOfFivePercentAreMissedWhereTheFilmIsSafeWithinHalfAnHour() {
    Policy steady = SteadyDays.of(Printed.POLICY);
    double longest = GRAM_HOLDS / PASTE_LOSES * 60;
    double worst = 0;
    for (double deposit : DEPOSITS) {
      for (int mass = 50; mass < 250; mass++) {
        double before = frameSafe(Printed.dye(deposit, mass), steady);
        double step = before - frameSafe(Printed.dye(deposit, mass + 1), steady);
        if (before > longest / 0.05) {
          assertThat(step / before).as("%s g/m² on %s", deposit, mass).isLessThan(0.05);
        } else if (before > 1) {
          worst = Math.max(worst, step / before);
        }
      }
    }
    assertThat(worst).as("the miss is gone: ask for 5 % everywhere").isGreaterThan(0.05);
  }

  private static double frameSafe(Printed print, Policy policy) {
    return print.states(print.paste(), policy).frameSafe().best() / 60.0;
  }

  /** Minutes until a frame may be laid on it, by day. */
  private static double[] onEachDay(Printed print) {
    Drying drying = print.drying(Printed.POLICY);
    FilmNeed need = drying.need(print.paste(), new ArealMass(print.deposit()), false);
    double[] rates = drying.rates(need, drying.room());
    return IntStream.range(0, Days.COUNT)
        .mapToDouble(day -> InOneAir.frameSafe(need, day, rates[day]) * 60)
        .toArray();
  }

  /** Minutes in which what a gram of that day's cloth can hold evaporates on that day. */
  private static double[] gramOnEachDay(Printed print) {
    Drying drying = print.drying(Printed.POLICY);
    FilmNeed need = drying.need(print.paste(), new ArealMass(print.deposit()), false);
    double[] rates = drying.rates(need, drying.room());
    double spread = Printed.POLICY.limit("drying/uptake-spread").amount();
    return IntStream.range(0, Days.COUNT)
        .mapToDouble(
            day ->
                GRAM_HOLDS
                    * Math.exp(spread * Days.ANY.deviate(Unknown.UPTAKE, day))
                    / rates[day]
                    * 60)
        .toArray();
  }

  @Property(tries = 60, seed = Draws.ALIKE)
  void noFilmDriesSoonerForMoreOfItOrWorseAir(
      @ForAll @DoubleRange(min = 20, max = 200) double deposit,
      @ForAll @DoubleRange(min = 40, max = 300) double mass,
      @ForAll @DoubleRange(min = 8, max = 35) double celsius,
      @ForAll @DoubleRange(min = 0.2, max = 0.85) double humidity,
      @ForAll @DoubleRange(min = 0, max = 3) double speed,
      @ForAll Medium medium) {
    Printed print = new Printed(medium, deposit, "cotton", mass, celsius, humidity, speed);
    Dried is = print.states().frameSafe();
    notSooner(is, new Printed(medium, deposit * 1.1, "cotton", mass, celsius, humidity, speed));
    notSooner(is, print.in(celsius - 1, humidity, speed));
    notSooner(is, print.in(celsius, humidity + 0.05, speed));
    if (speed > 0.3) {
      notSooner(is, print.in(celsius, humidity, speed - 0.2));
    }
    if (medium == Medium.DYE) {
      notSooner(is, new Printed(medium, deposit, "cotton", mass - 5, celsius, humidity, speed));
    }
  }

  private static void notSooner(Dried than, Printed other) {
    Dried later = other.states().frameSafe();
    assertThat(later.earliest()).isGreaterThanOrEqualTo(than.earliest() - 1);
    assertThat(later.best()).isGreaterThanOrEqualTo(than.best() - 1);
    assertThat(later.latest()).isGreaterThanOrEqualTo(than.latest() - 1);
  }

  /** Simulated apart with 2,000 draws: 30, 58 and 113 min in still air, for instance. */
  @Test
  void theSpreadOfPaintIsThatOfItsInputs() {
    spread(Printed.paint(108).states().frameSafe(), 30, 58, 113);
    spread(Printed.paint(108).in(20, 0.5, 1).states().frameSafe(), 12, 21, 36);
    spread(Printed.paint(108).in(20, 0.5, 2).states().frameSafe(), 9, 15, 27);
    spread(Printed.paint(108).in(18, 0.75, 0).states().frameSafe(), 67, 133, 274);
    spread(Printed.paint(54).states().frameSafe(), 16, 29, 57);
  }

  /**
   * Worked out apart: paint may be lifted after 83 min, dye after 2 h, and dye is dry in 2 h 45.
   */
  @Test
  void theClothIsLiftedAndDryAsWorkedOutApart() {
    Policy steady = SteadyDays.of(Printed.POLICY);
    Printed paint = Printed.paint(108);
    assertThat(paint.states(paint.paste(), steady).liftSafe().best() / 60.0)
        .isCloseTo(83, offset(0.05 * 83));
    Printed dye = Printed.dye(108, 180);
    DryingClock.States states = dye.states(dye.paste(), steady);
    assertThat(states.liftSafe().best() / 60.0).isCloseTo(120, offset(0.05 * 120));
    assertThat(states.fixSafe().best() / 60.0).isCloseTo(165, offset(0.05 * 165));
  }

  /** A hundred and one days instead of thousands: within a fifth at the ends. */
  private static void spread(Dried dried, double quick, double ordinary, double slow) {
    assertThat(dried.earliest() / 60.0).isCloseTo(quick, offset(0.2 * quick));
    assertThat(dried.best() / 60.0).isCloseTo(ordinary, offset(0.06 * ordinary));
    assertThat(dried.latest() / 60.0).isCloseTo(slow, offset(0.2 * slow));
  }

  /**
   * Paint of 108 g/m² that took 40 min at 22 °C and 45 % in still air, carried over to other air.
   * Worked out apart by weighting 2,000 draws: 31, 42, 57 in the same air, where here the time that
   * was taken stands for an ordinary day as it is; 51, 73, 103 at 20 °C and 65 %; 73, 105, 147 at
   * 16 °C and 70 %; 11, 17, 26 before a fan.
   */
  @Test
  void aTimeTakenInOneAirIsCarriedOverToAnother() {
    DryingTime taken =
        new DryingTime(
            new Span(40),
            Optional.of(Draught.STILL),
            Optional.of(new Temperature(22)),
            Optional.of(new Share(0.45)));
    Dried same = Printed.paint(108).in(22, 0.45, 0).states(timed(taken)).frameSafe();
    assertThat(same.best()).isEqualTo(40 * 60);
    carried(same, 31, 57);
    Dried free = Printed.paint(108).in(22, 0.45, 0).states().frameSafe();
    assertThat((double) same.latest() / same.earliest())
        .isLessThan(0.65 * free.latest() / free.earliest());
    Dried damp = Printed.paint(108).in(20, 0.65, 0).states(timed(taken)).frameSafe();
    assertThat(damp.best() / 60.0).isCloseTo(73, offset(0.12 * 73));
    carried(damp, 51, 103);
    Dried cool = Printed.paint(108).in(16, 0.70, 0).states(timed(taken)).frameSafe();
    assertThat(cool.best() / 60.0).isCloseTo(105, offset(0.12 * 105));
    carried(cool, 73, 147);
    Dried fan = Printed.paint(108).in(22, 0.45, 1).states(timed(taken)).frameSafe();
    assertThat(fan.best() / 60.0).isCloseTo(17, offset(0.15 * 17));
    carried(fan, 11, 26);
  }

  private static void carried(Dried dried, double quick, double slow) {
    assertThat(dried.earliest() / 60.0).isCloseTo(quick, offset(0.25 * quick));
    assertThat(dried.latest() / 60.0).isCloseTo(slow, offset(0.25 * slow));
  }

  private static Paste timed(DryingTime frameSafe) {
    return Printed.measured(
        Printed.paint(108).paste(), Optional.of(frameSafe), Optional.empty(), Optional.empty());
  }

  /** A time that the model would never give is believed all the same. */
  @Test
  void whatWasTakenStandsHoweverUnlikely() {
    Printed thin = Printed.dye(ONE_PULL, 180); // safe at once, says the model
    Paste slow = twelveMinutes(thin);
    assertThat(thin.states(slow).frameSafe().best()).isEqualTo(12 * 60);
    Printed fog = Printed.paint(60).in(20, 1, 0); // never, says the model
    Paste dried = twelveMinutes(fog);
    assertThat(fog.states(dried).frameSafe().best()).isEqualTo(12 * 60);
  }

  private static Paste twelveMinutes(Printed print) {
    Optional<DryingTime> taken = Optional.of(DryingTime.inTheRoom(new Span(12)));
    return Printed.measured(print.paste(), taken, Optional.empty(), Optional.empty());
  }

  /**
   * A piece of 20 by 30 cm took on 4.4 g and lost 1.5 g in 35 min: 73 g/m² laid down, and 25 g/m²
   * or 43 g/(m² h) evaporated. So the film's rate is known to some percent, and its time with it.
   */
  @Test
  void weightsOfAStrikeOffNarrowItFurther() {
    StrikeOff piece =
        new StrikeOff(
            new Area(600),
            new Mass(9.0),
            new Mass(13.4),
            new Mass(11.9),
            DryingTime.inTheRoom(new Span(35)),
            2,
            new PlanPath("pastes.ink.strike-off"));
    assertThat(piece.deposit().gramsPerSquareMetre()).isCloseTo(73.3, offset(0.1));
    assertThat(piece.evaporated().gramsPerSquareMetre()).isCloseTo(25, offset(0.1));
    Printed print = Printed.paint(piece.deposit().gramsPerSquareMetre());
    Paste weighed =
        Printed.measured(print.paste(), Optional.empty(), Optional.empty(), Optional.of(piece));
    Dried free = print.states().frameSafe();
    Dried known = print.states(weighed).frameSafe();
    assertThat(known.best() / 60.0).isCloseTo(35, offset(3.0));
    assertThat((double) known.latest() / known.earliest())
        .isLessThan(0.6 * free.latest() / free.earliest());
    Drying drying = print.drying(Printed.POLICY);
    double[] rates = drying.rates(drying.need(weighed, piece.deposit(), true), drying.room());
    double[] sorted = rates.clone();
    java.util.Arrays.sort(sorted);
    assertThat(sorted[50]).isCloseTo(43, offset(3.0));
  }

  /** A fan of a stated speed is known better than one that is only called a fan. */
  @Test
  void aSpeedThatWasMeasuredIsWorthMoreThanAWord() {
    Drying drying = Printed.paint(81).drying(Printed.POLICY);
    FilmNeed need = drying.need(Printed.paint(81).paste(), piece(81), false);
    assertThat(spreadIn(drying, need, new Draught(Draught.By.FAN, new AirSpeed(1))))
        .isGreaterThan(spreadIn(drying, need, new Draught(Draught.By.STATED, new AirSpeed(1))));
  }

  private static ArealMass piece(double grams) {
    return new ArealMass(grams);
  }

  private static double spreadIn(Drying drying, FilmNeed need, Draught draught) {
    DryingClock clock = Printed.clock(drying);
    clock.change(0, drying.moved(draught));
    Dried dried = clock.states(need, 0).frameSafe();
    return (double) dried.latest() / dried.earliest();
  }

  /** The same at every run and on every machine: times of two films as they were, to the second. */
  @Test
  void theDaysAreTheSameAtEveryRun() {
    Dried paint = Printed.paint(108).states().frameSafe();
    assertThat(List.of(paint.earliest(), paint.best(), paint.latest()))
        .containsExactly(1495L, 3561L, 5997L);
    Dried dye = Printed.dye(108, 115).states().frameSafe();
    assertThat(List.of(dye.earliest(), dye.best(), dye.latest())).containsExactly(25L, 154L, 4019L);
  }

  @Test
  void deviatesAreThoseOfTheTables() {
    // Abramowitz and Stegun, tables 26.1 and 26.5
    assertThat(Days.normal(0.9)).isCloseTo(1.2815516, offset(4.5e-4));
    assertThat(Days.normal(0.025)).isCloseTo(-1.959964, offset(4.5e-4));
    assertThat(Days.normal(0.5)).isZero();
    assertThat(Days.below(1)).isCloseTo(0.8413447, offset(1e-7));
    assertThat(Days.below(-2)).isCloseTo(0.0227501, offset(1e-7));
  }
}
