package strikeoff.speech;

import strikeoff.day.Reached;
import strikeoff.day.facts.BeforeSafe;
import strikeoff.day.facts.ClothTakenUp;
import strikeoff.day.facts.DryingAir;
import strikeoff.day.facts.FilmsInRoom;
import strikeoff.day.facts.WetContact;
import strikeoff.units.Measures;
import strikeoff.units.Phrase;
import strikeoff.units.Span;

/** Says how dry films are, and whose they are. */
public final class DryingSpeech {

  private DryingSpeech() {}

  /** What is done with the cloth. */
  public static String done(ClothTakenUp up) {
    return switch (up.kind()) {
      case MOVE -> "moved on";
      case SEW -> "sewn";
      case FIX -> "put to fixing";
      case RINSE -> "rinsed";
      case WASH -> "washed";
      default -> "heat-set";
    };
  }

  /** How dry the air must be for the films that never dry in it; empty if there are none. */
  public static String dryTo(FilmsInRoom room) {
    return room.films() == 0
        ? ""
        : room.dryTo().map(share -> "to " + share.text() + " or less").orElse("as far as it goes");
  }

  /** {@code 8 films}, or {@code 1 film}. */
  public static String counted(DryingAir air) {
    return air.films() == 1 ? "1 film" : air.films() + " films";
  }

  /** As people say it: {@code about 53 min too early (9 min if it dries fast, …)}. */
  public static String text(BeforeSafe safe) {
    if (safe.ordinary().seconds() <= 0) {
      return "in time on an ordinary day, " + said(safe.slow()) + " too early if it dries slowly";
    }
    if (few(safe.slow())) {
      return "about when it is safe";
    }
    if (few(safe.ordinary())) {
      return "about when it is safe on an ordinary day, "
          + said(safe.slow())
          + " too early if it dries slowly";
    }
    return "about "
        + said(safe.ordinary())
        + " too early ("
        + (safe.quick().seconds() > 0 ? said(safe.quick()) : "in time")
        + " if it dries fast, "
        + said(safe.slow())
        + " if slowly)";
  }

  /** Nobody times a frame to the second. */
  private static boolean few(Span span) {
    return span.seconds() < A_FEW;
  }

  /** No more exactly than anybody could keep to. */
  private static String said(Span span) {
    if (span.seconds() >= Reached.NEVER.seconds() / 2.0) {
      return "for ever";
    }
    if (few(span)) {
      return "a few seconds";
    }
    return span.minutes() < 1
        ? Span.ofSeconds(Math.ceil(span.seconds() / A_FEW) * A_FEW).text()
        : new Span(Math.rint(span.minutes())).text();
  }

  private static final double A_FEW = 10;

  /** {@code 5 films}, or {@code 1 film}. */
  public static String counted(FilmsInRoom room) {
    return room.films() == 1 ? "1 film" : room.films() + " films";
  }

  /** {@code 5 films are}, or {@code 1 film is}. */
  public static String filmsAre(ClothTakenUp up) {
    return up.films() == 1 ? "1 film is" : up.films() + " films are";
  }

  /** Whose the film is that is none of its own motif. */
  public static String whose(WetContact contact) {
    return contact.beneath() ? "of a motif under it," : "of a neighbour";
  }

  /**
   * How much wet film lies there. Without artwork nobody knows where in an image it prints: up to
   * all of the image that lies there, and up to all that it prints.
   */
  public static String film(WetContact contact, Measures units) {
    return (contact.known() ? "" : "up to ")
        + (contact.onRails().isPresent()
            ? ArtworkSpeech.toTenths(contact.most(), units)
            : contact.most().text(units));
  }

  /** What of it the rails press, where films tell; the rest lies under the mesh. */
  public static String onRails(WetContact contact, Measures units) {
    return contact
        .onRails()
        .filter(rails -> rails.squareCm() >= TENTH)
        .map(rails -> ", " + ArtworkSpeech.toTenths(rails, units) + " of it under rails")
        .orElse("");
  }

  private static final double TENTH = 0.1;

  /** {@code 5 times}, {@code twice} or {@code once}. */
  public static String times(WetContact contact) {
    return Phrase.times(contact.pairs());
  }
}
