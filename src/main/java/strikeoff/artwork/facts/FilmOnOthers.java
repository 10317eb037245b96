package strikeoff.artwork.facts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.FilmPlace;
import strikeoff.evidence.Tie;
import strikeoff.plan.Artwork.Finest;
import strikeoff.plan.Design;
import strikeoff.plan.Design.Separation;
import strikeoff.plan.FilmFit;
import strikeoff.plan.Joint;
import strikeoff.policy.Limits;
import strikeoff.policy.Policy;
import strikeoff.units.Length;
import strikeoff.units.Share;

/**
 * How a film lies on the others of its design: of all its films the one by whose move most is
 * gained.
 *
 * @param file the film, as the plan writes it
 * @param paste that it prints
 * @param others films whose edges its own would run along then
 * @param facing how much of the edges that they could share runs along each other's as they lie
 * @param moved the same once it is moved
 * @param over how long those edges are
 * @param right how far its middle is moved for that, to the left if it is below zero
 * @param far the same towards the far edge
 * @param scale how large it is made for that, of what it is
 * @param by how far a corner of its rectangle comes to lie from where it was
 * @param spread how much the strip between the edges differs from one width, on average
 * @param spreadMoved the same once it is moved
 * @param lap how wide they lap then, where they do so least; ground if it is below zero
 * @param liesOff true if, by the policy, it lies off so far that it was not drawn like that: moved,
 *     clearly more of the edges run along each other, or as much does so clearly more evenly
 * @param seen where on its film it can be seen; empty if the films meet nowhere as they lie
 * @param tolerance how far a frame can be off on this table
 */
public record FilmOnOthers(
    String design,
    String file,
    String paste,
    List<String> others,
    Share facing,
    Share moved,
    Length over,
    Length right,
    Length far,
    Share scale,
    Length by,
    Length spread,
    Length spreadMoved,
    Length lap,
    boolean liesOff,
    Optional<FilmPlace> seen,
    boolean railed,
    Length tolerance,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public FilmOnOthers {
    others = List.copyOf(others);
    related = List.copyOf(related);
  }

  /** One film over another, which it would fit if it were moved. */
  private record Pair(Separation film, Separation other, Joint joint, FilmFit fit) {

    /** Where they gape, touch or lap least. */
    Optional<FilmPlace> seen() {
      return joint
          .gap()
          .or(joint::butt)
          .or(joint::lap)
          .map(Finest::place)
          .filter(place -> film.fillsRectangleOf(other));
    }

    double facing() {
      return fit.facing().mm();
    }

    double moved() {
      return fit.facingMoved().mm();
    }

    /** What fits, the more the more evenly it does. */
    double gained() {
      return moved() / (1 + fit.spreadMoved().mm());
    }

    double had() {
      return facing() / (1 + fit.spread().mm());
    }
  }

  /** Pairs of one film that one move of it mends; the first one says which move. */
  private record Move(List<Pair> pairs, double gain) {

    /** By how much a corner of the film is moved out. */
    Length grows() {
      Pair first = pairs.get(0);
      double half = Math.hypot(first.film.length().mm(), first.film.width().mm()) / 2;
      return new Length((first.fit.scale().fraction() - 1) * half);
    }
  }

  /** Empty for a design none of whose films has edges near another's. */
  static Optional<FilmOnOthers> of(Design design, boolean railed, Policy policy) {
    Length tolerance = policy.registration(railed);
    List<Move> moves = new ArrayList<>();
    for (Separation film : design.separations()) {
      List<Pair> pairs = pairs(design, film);
      double had = pairs.stream().mapToDouble(Pair::had).sum();
      for (Pair first : pairs) {
        List<Pair> alike = new ArrayList<>(List.of(first));
        pairs.stream()
            .filter(p -> p != first && apart(p, first).mm() <= tolerance.mm())
            .forEach(alike::add);
        moves.add(new Move(alike, alike.stream().mapToDouble(Pair::gained).sum() - had));
      }
    }
    // Of two films either may be moved: one that came out smaller is more likely than one that came
    // out larger, and an outline is drawn round the other.
    return moves.stream()
        .max(
            Comparator.comparingDouble(Move::gain)
                .thenComparing(move -> move.grows().above(tolerance.mm()))
                .thenComparing(move -> move.pairs().get(0).film().key()))
        .map(move -> of(design, move.pairs(), railed, tolerance, policy.artwork()));
  }

  private static List<Pair> pairs(Design design, Separation film) {
    List<Pair> pairs = new ArrayList<>();
    for (Joint joint : design.joints()) {
      boolean one = joint.one() == film.number();
      if (joint.fit().isPresent() && (one || joint.other() == film.number())) {
        FilmFit fit = joint.fit().get();
        pairs.add(
            new Pair(
                film,
                design.separation(one ? joint.other() : joint.one()),
                joint,
                one ? fit : fit.ofOther()));
      }
    }
    return pairs;
  }

  private static Length apart(Pair one, Pair another) {
    return one.fit.apart(another.fit, one.film.length(), one.film.width());
  }

  private static FilmOnOthers of(
      Design design, List<Pair> pairs, boolean railed, Length tolerance, Limits.Artwork limits) {
    Separation film = pairs.get(0).film();
    FilmFit first = pairs.get(0).fit();
    double edge = pairs.stream().mapToDouble(p -> p.fit().edge().mm()).sum();
    double facing = pairs.stream().mapToDouble(Pair::facing).sum();
    double moved = pairs.stream().mapToDouble(Pair::moved).sum();
    double spread = pairs.stream().mapToDouble(p -> p.facing() * p.fit().spread().mm()).sum();
    double spreadMoved =
        pairs.stream().mapToDouble(p -> p.moved() * p.fit().spreadMoved().mm()).sum();
    double evenly = facing == 0 ? 0 : spread / facing;
    double evenlyMoved = moved == 0 ? 0 : spreadMoved / moved;
    Length by = first.by(film.length(), film.width());
    double lap = pairs.stream().mapToDouble(p -> p.fit().lap().mm()).min().orElse(0);
    double times = limits.movedBetter().value();
    boolean liesOff =
        by.mm() > tolerance.mm()
            && lap - by.mm() < tolerance.mm()
            && moved >= limits.edgesMet().fraction() * edge
            && moved >= limits.edgesLeast().mm()
            && evenlyMoved <= limits.stripEven().mm()
            && (moved >= times * facing || evenly >= times * evenlyMoved);
    return new FilmOnOthers(
        design.name(),
        film.artwork().orElseThrow().file(),
        film.paste(),
        pairs.stream().map(p -> p.other().artwork().orElseThrow().file()).distinct().toList(),
        new Share(edge == 0 ? 0 : facing / edge),
        new Share(edge == 0 ? 0 : moved / edge),
        new Length(moved),
        first.right(),
        first.far(),
        first.scale(),
        by,
        new Length(evenly),
        new Length(evenlyMoved),
        new Length(lap),
        liesOff,
        pairs.stream().flatMap(p -> p.seen().stream()).findFirst(),
        railed,
        tolerance,
        pairs.stream()
            .map(p -> new Related(Tie.OTHER_FILM, p.other().path().key("artwork")))
            .toList(),
        film.path().key("artwork"));
  }

  @Override
  public Map<String, FilmPlace> onFilms() {
    return seen.map(place -> Map.of("byText", place)).orElse(Map.of());
  }

  /** True if it is the film of one of two colours. */
  public boolean isOf(String one, String other) {
    return paste.equals(one) || paste.equals(other);
  }

  /** True if it is made larger or smaller by so much that a frame can't be off by it. */
  public boolean otherSize() {
    return by.mm() - Math.hypot(right.mm(), far.mm()) > tolerance.mm();
  }
}
