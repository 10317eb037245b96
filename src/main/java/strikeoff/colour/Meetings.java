package strikeoff.colour;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.OptionalInt;
import strikeoff.plan.Cloth;
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
    return Lab.of(palette.onGround(palette.wet(paste)))
        .difference(Lab.of(palette.onGround(palette.wet(other))));
  }

  /** Whether a paste is named as dark as another or darker. */
  public boolean isDarker(Paste paste, Paste other) {
    return lightness(paste) <= lightness(other);
  }

  /** Whether nobody sees it on the bare ground, which is told once and not for each print. */
  public boolean isLostOnGround(Paste paste) {
    return Lab.of(palette.onGround(palette.wet(paste))).difference(ground) < shows
        || isTooLight(paste, ground);
  }

  /** Whether a covering paste of the same colour would be seen over another one. */
  public boolean showsIfOpaque(Paste paste, Paste other) {
    Coat below = palette.wet(other);
    return Lab.of(palette.onGround(below, palette.opaque(paste)))
            .difference(Lab.of(palette.onGround(below)))
        >= shows;
  }

  /** L* up to which a deeper tone of a paste's colour shows where it is printed over another. */
  public OptionalInt showsDeeper(Paste paste, Paste other) {
    Coat others = palette.wet(other);
    return Tones.deeper(
        paste.colour(),
        tone -> !meet(paste, palette.wet(paste, tone), Lab.of(tone), others, other, true).isLost());
  }

  private Meeting meet(Paste paste, Paste other, boolean over) {
    Coat own = palette.wet(paste);
    return meet(paste, own, Lab.of(paste.colour()), palette.wet(other), other, over);
  }

  private Meeting meet(Paste paste, Coat own, Lab named, Coat others, Paste other, boolean over) {
    Lab without = Lab.of(palette.onGround(others));
    Lab with = Lab.of(over ? palette.onGround(others, own) : palette.onGround(own, others));
    double difference = with.difference(without);
    // Dye on its like goes a little deeper; under a transparent one, a third colour that stands out
    // may well be meant; what lies under an opaque one is hidden.
    double beside = over ? Lab.of(palette.onGround(own)).difference(without) : shows;
    boolean like = beside < apart;
    boolean faint = difference < trace && (like || palette.isTooLight(paste, named, without));
    boolean covered = over ? palette.isTooLight(paste, named, without) : !other.transparent();
    boolean lost = difference < shows || faint || covered || like && !paste.transparent();
    return new Meeting(
        palette.onGround(others),
        over ? palette.onGround(others, own) : palette.onGround(own, others),
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
