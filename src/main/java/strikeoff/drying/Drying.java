package strikeoff.drying;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.stream.DoubleStream;
import strikeoff.drying.Dried.Points;
import strikeoff.plan.Cloth;
import strikeoff.plan.Draught;
import strikeoff.plan.Paste;
import strikeoff.plan.Room;
import strikeoff.policy.Policy;
import strikeoff.units.ArealMass;
import strikeoff.units.Share;

/**
 * Drying on one cloth in one room under one policy: what a film must lose on each of the {@link
 * Days}, and how fast it goes in a given air.
 *
 * <p>A film's water is its deposit times the paste's share of water. The yarns soak up the mobile
 * part of it, as far as they can hold it; the two ends meet smoothly, U = (x⁻³ + C⁻³)^(−⅓). The
 * rest evaporates.
 *
 * <ul>
 *   <li>Paint is frame-safe when the film on the cloth is so solid that nothing comes off: water
 *       left D v (1/Φ − 1) with v the volume of solids in a gram of paint and Φ their share of the
 *       film.
 *   <li>Dye paste is frame-safe when no more of it is left outside the yarns than the hollows of
 *       the printed face hold: a frame rests on the crowns of the yarns and touches nothing below.
 *   <li>Lift-safe is reached when the cloth holds no more water, above what it holds in that air,
 *       than a share of its mass; dry through when it feels dry to the hand, the last water leaving
 *       ever more slowly.
 * </ul>
 *
 * Every input is a limit {@code drying/…} with its spread.
 */
public final class Drying {

  private final Policy policy;
  private final Cloth cloth;
  private final Tried tried;
  private final Air room;
  private final Evaporation evaporation;
  private final double holds;
  private final Points points;

  /** By identity: films of one separation share what they need. */
  private final Map<FilmNeed, Map<Air, Times>> inOneAir;

  private final Map<FilmNeed, Map<Air, Rates>> rates;

  private final Followed followed;

  private Drying(Policy policy, Cloth cloth, Room room, Points points) {
    this.policy = policy;
    this.points = points;
    this.cloth = cloth;
    this.tried = Tried.of(policy);
    this.room = tried.of(room);
    this.evaporation = new Evaporation(policy);
    double holds = 0;
    for (Map.Entry<String, Share> fibre : cloth.fibres().entrySet()) {
      holds += fibre.getValue().fraction() * policy.fibre(fibre.getKey()).uptake().fraction();
    }
    this.holds = holds;
    this.inOneAir = new IdentityHashMap<>();
    this.rates = new IdentityHashMap<>();
    this.followed = new Followed();
  }

  /** What was worked out for the other holds here too: only other days of it are told. */
  private Drying(Drying other) {
    this.policy = other.policy;
    this.cloth = other.cloth;
    this.tried = other.tried;
    this.room = other.room;
    this.evaporation = other.evaporation;
    this.holds = other.holds;
    this.points = new Points(other.points.slow(), other.points.slow(), other.points.slow());
    this.inOneAir = other.inOneAir;
    this.rates = other.rates;
    this.followed = other.followed;
  }

  public static Drying of(Cloth cloth, Room room, Policy policy) {
    Points points = new Points(point(quick(policy)), point(0.5), point(slow(policy)));
    return new Drying(policy, cloth, room, points);
  }

  /** The same where each day that is told is as slow as slow drying. */
  public Drying slowly() {
    return new Drying(this);
  }

  /** For how many days that differ each time is reckoned. */
  public static final int DAYS = 101;

  /** Share of days that are quicker than what is called quick drying. */
  public static double quick(Policy policy) {
    return 1 - policy.drying().wetStop().fraction();
  }

  /** Share of days that are quicker than what is called slow drying. */
  public static double slow(Policy policy) {
    return 1 - policy.drying().wetAdvice().fraction();
  }

  /** Where in the sorted days stand those that are told. */
  Points points() {
    return points;
  }

  /** Seconds; a film that takes longer never dries. */
  long longest() {
    double seconds = policy.drying().never().seconds();
    return (long) Math.min(seconds, Dried.NO_TIME - 1.0);
  }

  /** How long films took that were followed through changing air. */
  Followed followed() {
    return followed;
  }

  /** The room's own air. */
  public Air room() {
    return room;
  }

  /** The room's air where something else moves it. */
  public Air moved(Draught draught) {
    return tried.moved(room, draught);
  }

  /** Water that leaves a film of that need on each day, g/(m² h). */
  double[] rates(FilmNeed need, Air air) {
    return allRates(need, air).each;
  }

  /** True if a film of that need never takes water from the air. */
  boolean onlyDries(FilmNeed need, Air air) {
    return allRates(need, air).onlyDries;
  }

  private Rates allRates(FilmNeed need, Air air) {
    Map<Air, Rates> known = rates.computeIfAbsent(need, n -> new HashMap<>());
    Rates found = known.get(air);
    if (found == null) {
      double[] each = evaporation.rates(need.amounts().days(), air, need.amounts().activity());
      found =
          new Rates(
              need.pace() == 1 ? each : DoubleStream.of(each).map(r -> r * need.pace()).toArray());
      known.put(air, found);
    }
    return found;
  }

  /** By day, g/(m² h). */
  private static final class Rates {
    final double[] each;
    final boolean onlyDries;

    Rates(double[] each) {
      this.each = each;
      this.onlyDries = DoubleStream.of(each).allMatch(rate -> rate >= 0);
    }
  }

  /** When a film is in each state if the air stays as it is. */
  Times inOneAir(FilmNeed need, Air air, long longest) {
    Map<Air, Times> known = inOneAir.computeIfAbsent(need, n -> new HashMap<>());
    Times times = known.get(air);
    if (times == null) {
      double[] rates = rates(need, air);
      times = Times.of(longest, day -> InOneAir.hours(need, day, rates[day]));
      known.put(air, times);
    }
    return times;
  }

  /** Index of the day that a share of all days undercut. */
  static int point(double share) {
    return (int) Math.round(Math.min(1, Math.max(0, share)) * (Days.COUNT - 1));
  }

  /**
   * What a film of that paste must lose.
   *
   * @param deposit paste that all its pulls lay down, as expected
   * @param weighed true if that was weighed on a strike-off rather than estimated
   */
  public FilmNeed need(Paste paste, ArealMass deposit, boolean weighed) {
    Laid laid = laid(paste, deposit, weighed);
    Laid piece = paste.strikeOff().map(s -> laid(paste, s.deposit(), true)).orElse(laid);
    return new Measured(this, evaporation, tried, policy).need(paste, laid, piece);
  }

  private Laid laid(Paste paste, ArealMass deposit, boolean weighed) {
    return new Laid(policy, cloth, holds, paste, deposit.gramsPerSquareMetre(), weighed);
  }
}
