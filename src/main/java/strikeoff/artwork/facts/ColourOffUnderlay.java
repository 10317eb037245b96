package strikeoff.artwork.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.Design;
import strikeoff.plan.Design.Separation;
import strikeoff.plan.PlacedCells;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.units.Area;
import strikeoff.units.Length;
import strikeoff.units.Share;

/**
 * How much of a transparent colour lies beside all opaque ones that are printed before it, further
 * away than a frame can be off, by the films' cells of about a millimetre; or of several colours
 * that are told together.
 *
 * @param underlays pastes of the opaque ones
 * @param share of what it prints
 * @param area of that, in each print
 * @param negative films of those that print what a negative does
 * @param tolerance how far a frame can be off on this table
 * @param further other colours of the same underlays, told with this one
 * @param path of the first underlay's film
 */
public record ColourOffUnderlay(
    String design,
    String paste,
    List<String> underlays,
    Share share,
    Area area,
    List<PrintAtBorder> negative,
    boolean railed,
    Length tolerance,
    List<ColourOffUnderlay> further,
    List<Related> related,
    PlanPath path)
    implements Evidence.Gathered {

  public ColourOffUnderlay {
    underlays = List.copyOf(underlays);
    negative = List.copyOf(negative);
    further = List.copyOf(further);
    related = List.copyOf(related);
  }

  /**
   * Empty of an outline, of an opaque colour, and where nothing opaque is printed before it.
   *
   * @param borders of the films that are printed before it
   */
  static Optional<ColourOffUnderlay> of(
      PrintPlan plan,
      Design design,
      Separation colour,
      List<PrintAtBorder> borders,
      Policy policy) {
    if (colour.key()
        || colour.artwork().isEmpty()
        || colour.printed().squareCm() == 0
        || !plan.pastes().get(colour.paste()).transparent()) {
      return Optional.empty();
    }
    List<Separation> before =
        design.separations().subList(0, colour.number() - 1).stream()
            .filter(s -> !s.key() && s.artwork().isPresent())
            .filter(s -> !plan.pastes().get(s.paste()).transparent())
            .toList();
    if (before.isEmpty()) {
      return Optional.empty();
    }
    boolean railed = plan.table().railed();
    Length tolerance = policy.registration(railed);
    PlacedCells cells = PlacedCells.of(colour);
    double share = cells.beside(PlacedCells.of(before), tolerance.mm()) / cells.printed();
    return Optional.of(
        new ColourOffUnderlay(
            design.name(),
            colour.paste(),
            before.stream().map(Separation::paste).distinct().toList(),
            new Share(share),
            new Area(share * colour.printed().squareCm()),
            borders.stream()
                .filter(PrintAtBorder::likeNegative)
                .filter(b -> before.stream().anyMatch(s -> s.number() == b.separation()))
                .toList(),
            railed,
            tolerance,
            List.of(),
            List.of(new Related(Tie.OTHER_FILM, path(colour))),
            path(before.get(0))));
  }

  private static PlanPath path(Separation separation) {
    return separation.path().key("artwork");
  }

  @Override
  public Object gathering() {
    return List.of(design, path);
  }

  @Override
  public ColourOffUnderlay and(List<Evidence> others) {
    List<ColourOffUnderlay> more = others.stream().map(ColourOffUnderlay.class::cast).toList();
    return new ColourOffUnderlay(
        design,
        paste,
        underlays,
        share,
        area,
        negative,
        railed,
        tolerance,
        more,
        Stream.concat(Stream.of(this), more.stream()).flatMap(o -> o.related.stream()).toList(),
        path);
  }

  /** This one, and those that are told with it. */
  public List<ColourOffUnderlay> all() {
    return Stream.concat(Stream.of(this), further.stream()).toList();
  }

  /** What lies beside the underlays. */
  public List<String> colours() {
    return all().stream().map(ColourOffUnderlay::paste).toList();
  }

  /** What to write where an underlay's film is a negative. */
  public List<List<Edit>> positives() {
    List<List<Edit>> edits = new ArrayList<>();
    for (PrintAtBorder film : negative) {
      edits.add(List.of(new Edit.Write(film.path().parent().key("prints"), film.otherTone())));
    }
    return edits;
  }
}
