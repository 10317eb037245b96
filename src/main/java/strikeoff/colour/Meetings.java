package strikeoff.colour;

import java.util.Collection;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.OptionalInt;
import strikeoff.document.Bounds;
import strikeoff.document.GivenUp;
import strikeoff.plan.Cloth;
import strikeoff.plan.Colour;
import strikeoff.plan.Paste;
import strikeoff.policy.Policy;

/** How pastes look over and under each other on one cloth. */
public final class Meetings {

  private final Palette palette;
  private final Lab ground;
  private final double shows;
  private final double trace;
  private final double apart;

  /** Of each paste with each other; a plan has each of its pastes once. */
  private final Map<Paste, Map<Paste, Meeting>> over = new IdentityHashMap<>();

  private final Map<Paste, Map<Paste, Meeting>> under = new IdentityHashMap<>();

  private final Map<Paste, Alone> alone = new IdentityHashMap<>();

  /** Deeper tones over another paste that are still looked at. */
  private long tones = Bounds.PAIRS;

  public Meetings(Cloth cloth, Policy policy) {
    palette = new Palette(cloth, policy);
    ground = Lab.of(cloth.ground());
    shows = policy.order().showsFrom().amount();
    apart = policy.order().toldApart().amount();
    trace = policy.order().trace().value();
  }

  private final Map<String, Double> lightness = new HashMap<>();

  /** A paste printed over another. */
  public Meeting over(Paste paste, Paste other) {
    return over.computeIfAbsent(paste, p -> new IdentityHashMap<>())
        .computeIfAbsent(other, o -> meet(paste, other, true));
  }

  /** A paste that another one is printed over. */
  public Meeting under(Paste paste, Paste other) {
    return under
        .computeIfAbsent(paste, p -> new IdentityHashMap<>())
        .computeIfAbsent(other, o -> meet(paste, other, false));
  }

  /** CIEDE2000 between two pastes side by side on the bare ground, wet. */
  public double beside(Paste paste, Paste other) {
    return alone(paste).lab().difference(alone(other).lab());
  }

  /** Whether a paste is named as dark as another or darker. */
  public boolean isDarker(Paste paste, Paste other) {
    return lightness(paste) <= lightness(other);
  }

  /** Whether nobody sees it on the bare ground, which is told once and not for each print. */
  public boolean isLostOnGround(Paste paste) {
    return alone(paste).lab().difference(ground) < shows || isTooLight(paste, ground);
  }

  /** Whether a covering paste of the same colour would be seen over another one. */
  public boolean showsIfOpaque(Paste paste, Paste other) {
    Alone below = alone(other);
    return Lab.of(palette.onGround(below.coat(), palette.opaque(paste))).difference(below.lab())
        >= shows;
  }

  /**
   * L* up to which a deeper tone of a paste's colour shows where it is printed over any of others;
   * empty as well once so many tones were looked at as no plan needs that can be printed.
   */
  public OptionalInt showsDeeper(Paste paste, Collection<Paste> others) {
    OptionalInt most = Tones.deeper(paste.colour(), tone -> showsOver(others, paste, tone));
    return tones < 0 ? OptionalInt.empty() : most;
  }

  private boolean showsOver(Collection<Paste> others, Paste paste, Reflectance tone) {
    GivenUp.ifAsked();
    tones -= others.size();
    Alone deeper = alone(palette.wet(paste, tone));
    Lab named = Lab.of(tone);
    return tones >= 0
        && others.stream().noneMatch(o -> meet(paste, deeper, named, o, true).isLost());
  }

  /** A coat, and its look alone on the ground. */
  private record Alone(Coat coat, Colour look, Lab lab) {}

  private Alone alone(Coat coat) {
    Colour look = palette.onGround(coat);
    return new Alone(coat, look, Lab.of(look));
  }

  private Alone alone(Paste paste) {
    return alone.computeIfAbsent(paste, p -> alone(palette.wet(p)));
  }

  private Meeting meet(Paste paste, Paste other, boolean over) {
    return meet(paste, alone(paste), Lab.of(paste.colour()), other, over);
  }

  private Meeting meet(Paste paste, Alone own, Lab named, Paste other, boolean over) {
    Alone others = alone(other);
    Lab without = others.lab();
    Colour look =
        over
            ? palette.onGround(others.coat(), own.coat())
            : palette.onGround(own.coat(), others.coat());
    Lab with = Lab.of(look);
    double difference = with.difference(without);
    // Dye on its like goes a little deeper; under a transparent one, a third colour that stands out
    // may well be meant; what lies under an opaque one is hidden.
    double beside = over ? own.lab().difference(without) : shows;
    boolean like = beside < apart;
    boolean faint = difference < trace && (like || palette.isTooLight(paste, named, without));
    boolean covered = over ? palette.isTooLight(paste, named, without) : !other.transparent();
    boolean lost = difference < shows || faint || covered || like && !paste.transparent();
    return new Meeting(
        others.look(),
        look,
        difference,
        with.difference(named),
        lost,
        over && palette.isDulled(paste, named, without),
        beside < shows);
  }

  private boolean isTooLight(Paste paste, Lab under) {
    return palette.isTooLight(paste, Lab.of(paste.colour()), under);
  }

  private double lightness(Paste paste) {
    return lightness.computeIfAbsent(paste.name(), name -> Lab.of(paste.colour()).lightness());
  }
}
