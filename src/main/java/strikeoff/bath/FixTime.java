package strikeoff.bath;

import java.util.List;
import java.util.Optional;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.units.Concentration;
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
 * @param treatments what brings it to the full share: alternatives, each of which may take several
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
    List<List<Treatment>> treatments,
    List<List<Edit>> edits,
    PlanPath path)
    implements Evidence {

  /** A bath's soda ash, and the least of it. */
  public record Thin(Concentration soda, Concentration least) {}

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
}
