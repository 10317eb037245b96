package strikeoff.speech;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import strikeoff.bath.FixTemperature;
import strikeoff.bath.FixTime;
import strikeoff.bath.FixedShare;
import strikeoff.bath.Treatment;
import strikeoff.units.Measures;
import strikeoff.units.Numbers;
import strikeoff.units.Phrase;
import strikeoff.units.Range;

/** Says how long and how warm dye wants to be fixed, and what comes of less. */
public final class FixSpeech {

  /** More names than that are told by their number. */
  private static final int LISTED = 6;

  private FixSpeech() {}

  /** What brings it to the full share, as an instruction without a full stop. */
  public static String mending(FixTime time, Measures units) {
    return Phrase.capital(
        time.treatments().stream()
            .map(
                all ->
                    all.stream().map(one -> text(one, units)).collect(Collectors.joining(", and ")))
            .collect(Collectors.joining(", or ")));
  }

  private static String text(Treatment treatment, Measures units) {
    if (treatment instanceof Treatment.AddSoda soda) {
      return "add " + soda.mass().enough(units) + " of soda ash";
    }
    if (treatment instanceof Treatment.SteamLonger steam) {
      return "steam it " + steam.more().text() + " longer";
    }
    if (treatment instanceof Treatment.LeaveLonger leave) {
      return "leave it " + leave.more().text() + " longer";
    }
    if (treatment instanceof Treatment.KeepAt keep) {
      return "keep it at " + keep.temperature().enough(units) + " for " + keep.lasts().text();
    }
    return "steam it for "
        + ((Treatment.Steam) treatment).lasts().text()
        + ", with baking soda in the paste in place of all other alkali";
  }

  /** From where on it is fixed. */
  public static String enough(FixTemperature temperature, Measures units) {
    return temperature.enough().enough(units);
  }

  /** What to do where it is too cold, as an instruction without a full stop. */
  public static String warming(FixTemperature temperature, Measures units) {
    return !temperature.batched()
        ? "Warm the bath to " + enough(temperature, units) + ", cover it and stand it in warm water"
        : "Keep it at "
            + enough(temperature, units)
            + " or warmer: in an airing cupboard, or under a blanket with a hot-water bottle";
  }

  /** What spares the dye where it is too hot, likewise. */
  public static String cooling(FixTemperature temperature, Measures units) {
    return temperature.isTooWarmForCloth()
        ? Phrase.capital(steam(temperature)) + ": " + clothStands(temperature, units)
        : "Let it cool to between "
            + temperature.warmth().coolest().enough(units)
            + " and "
            + temperature.warmest().most(units);
  }

  private static String steam(FixTemperature temperature) {
    return "steam the print for "
        + temperature.steamed().text()
        + ", with baking soda in the paste";
  }

  private static String clothStands(FixTemperature temperature, Measures units) {
    return temperature.fibre()
        + " stands water of "
        + temperature.stands().most(units)
        + " at the most";
  }

  /** The same where no batch is kept so warm, or where it is far too cold. */
  public static String warmingOrSteam(FixTemperature temperature, Measures units) {
    String steam = steam(temperature);
    if (temperature.isTooWarmForCloth()) {
      return Phrase.capital(steam) + ": " + clothStands(temperature, units);
    }
    return temperature.tooWarmToKeep()
        ? Phrase.capital(steam)
            + ": nobody keeps a batch at "
            + temperature.warmth().coolest().enough(units)
        : warming(temperature, units) + "; or " + steam;
  }

  /** The same in words, as in {@code as likely as not it is less than 10 %}. */
  public static String likely(FixTime time) {
    return "as likely as not it is less than " + Numbers.fixed(100 * time.median(), 0) + " %";
  }

  /** What keeps the dye from binding, as a sentence without a full stop. */
  public static String lack(FixTime time, Measures units) {
    if (time.thin().isPresent()) {
      return "The bath holds "
          + time.thin().get().soda().text(units)
          + " of soda ash, where "
          + time.thin().get().least().text(units)
          + " is the least";
    }
    return "The "
        + time.warmth().how()
        + " lasts "
        + time.warmth().lasts().text()
        + " at "
        + time.warmth().temperature().text(units)
        + ", and "
        + time.warmth().neededGroup()
        + " needs "
        + HeatSpeech.needed(time.warmth())
        + " there";
  }

  /** Which pastes come out paler, by how much and how they look, and which ones don't. */
  public static String told(FixTime time) {
    Map<String, List<FixedShare>> paler = new LinkedHashMap<>();
    List<String> fine = new ArrayList<>();
    for (FixedShare share : time.shares()) {
      if (share.change() >= time.seen() || share == time.shares().get(0)) {
        paler.computeIfAbsent(spoken(share), s -> new ArrayList<>()).add(share);
      } else {
        fine.add(share.paste());
      }
    }
    String said =
        paler.entrySet().stream()
            .limit(LISTED)
            .map(e -> "of the dye of " + names(e.getValue()) + ", " + e.getKey() + looks(e))
            .collect(Collectors.joining("; "));
    return Phrase.capital(said)
        + (paler.size() > LISTED ? "; of others more" : "")
        + (fine.isEmpty()
            ? ""
            : "; " + listed(fine) + (fine.size() == 1 ? " comes" : " come") + " out as meant");
  }

  private static String looks(Map.Entry<String, List<FixedShare>> same) {
    String paler =
        same.getValue().stream()
            .limit(LISTED)
            .filter(s -> !s.full().hex().equals(s.now().hex()))
            .map(s -> s.full().hex() + " comes out as " + s.now().hex())
            .collect(Collectors.joining(", "));
    return " gets fixed" + (paler.isEmpty() ? "" : ": " + paler);
  }

  private static String names(List<FixedShare> shares) {
    return listed(shares.stream().map(FixedShare::paste).toList());
  }

  private static String listed(List<String> names) {
    if (names.size() > LISTED) {
      return String.join(", ", names.subList(0, LISTED))
          + " and "
          + (names.size() - LISTED)
          + " more";
    }
    return Phrase.list(names);
  }

  /** In words, as in {@code about 42 % (11 to 55 %)}. */
  public static String spoken(FixedShare share) {
    return spoken(share.share());
  }

  /** The share that still lived, likewise. */
  public static String living(FixedShare share) {
    return spoken(share.alive());
  }

  private static String spoken(Range share) {
    String best = percent(share.best());
    String low = percent(share.low());
    String high = percent(share.high());
    return low.equals(high)
        ? "about " + best + " %"
        : "about " + best + " % (" + low + " to " + high + " %)";
  }

  private static String percent(double share) {
    return Numbers.fixed(100 * share, 0);
  }
}
