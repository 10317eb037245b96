package strikeoff.bath;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.units.Concentration;
import strikeoff.units.Measures;
import strikeoff.units.Numbers;
import strikeoff.units.Phrase;
import strikeoff.units.Span;

/**
 * How much dye is fixed by the last soak, batch or steam before the cloth is rinsed, and by those
 * before it.
 *
 * @param warmth that step's
 * @param shares of all dye pastes on the cloth, those whose colour is most off first
 * @param seen the CIELAB difference from which on a colour is told to be off
 * @param alkaline true if there is alkali to fix with; without it, other facts tell
 * @param brief true for a soak alone that hardly wets the print through
 * @param least the shortest time that sources give for a soak
 * @param soakStep number of the soak whose alkali works; 0 if it comes with the pastes
 * @param thin the strength of a bath that is weaker than any that dyers give, and the least that
 *     they give, where nothing else is amiss: with enough soda all colours would come out as meant
 * @param mending what brings it to the full share, as an instruction without a full stop
 * @param edits the same as edits, each of which does it alone
 * @param path of the time
 */
public record FixTime(
    Warmth warmth,
    List<FixedShare> shares,
    double seen,
    boolean alkaline,
    boolean brief,
    Span least,
    int soakStep,
    Optional<Thin> thin,
    String mending,
    List<List<Edit>> edits,
    PlanPath path)
    implements Evidence {

  /** A bath's soda ash, and the least of it. */
  public record Thin(Concentration soda, Concentration least) {}

  /** More names than that are told by their number. */
  private static final int LISTED = 6;

  public FixTime {
    shares = List.copyOf(shares);
    edits = List.copyOf(edits);
  }

  /** The likeliest share of the paste of which least is fixed. */
  public double fixed() {
    return shares.stream().mapToDouble(s -> s.share().best()).min().orElse(0);
  }

  /** The least that may be fixed of the paste of which least is fixed. */
  public double atWorst() {
    return shares.stream().mapToDouble(s -> s.share().low()).min().orElse(0);
  }

  /** The share of the paste of which least is fixed that is as likely missed as passed. */
  public double median() {
    return shares.stream().mapToDouble(FixedShare::median).min().orElse(0);
  }

  /** The same in words, as in {@code as likely as not it is less than 10 %}. */
  public String likely() {
    return "as likely as not it is less than " + Numbers.fixed(100 * median(), 0) + " %";
  }

  /** How far the colour is off that is most off, as a CIELAB difference. */
  public double change() {
    return shares.get(0).change();
  }

  /** True if nothing but time, temperature and alkali decides how much is fixed. */
  public boolean judged() {
    return alkaline && !brief && warmth.timeKnown() && warmth.windowsMeet();
  }

  /** True if nothing is amiss but the strength of the bath. */
  public boolean forSodaAlone() {
    return thin.isPresent();
  }

  /** What keeps the dye from binding, as a sentence without a full stop. */
  public String lack(Measures units) {
    if (thin.isPresent()) {
      return "The bath holds "
          + thin.get().soda().text(units)
          + " of soda ash, where "
          + thin.get().least().text(units)
          + " is the least";
    }
    return "The "
        + warmth.how()
        + " lasts "
        + warmth.lasts().text()
        + " at "
        + warmth.temperature().text(units)
        + ", and "
        + warmth.neededGroup()
        + " needs "
        + warmth.needed()
        + " there";
  }

  /** Which pastes come out paler, by how much and how they look, and which ones don't. */
  public String told() {
    Map<String, List<FixedShare>> paler = new LinkedHashMap<>();
    List<String> fine = new ArrayList<>();
    for (FixedShare share : shares) {
      if (share.change() >= seen || share == shares.get(0)) {
        paler.computeIfAbsent(share.spoken(), s -> new ArrayList<>()).add(share);
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
}
