package strikeoff.artwork.facts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.FilmPlace;
import strikeoff.evidence.Tie;
import strikeoff.plan.Artwork;
import strikeoff.plan.Artwork.Finest;
import strikeoff.plan.Artwork.Reach;
import strikeoff.plan.Design;
import strikeoff.plan.Design.Separation;
import strikeoff.plan.FilmFit;
import strikeoff.plan.FilmFit.Turned;
import strikeoff.plan.Joint;
import strikeoff.policy.Limits;
import strikeoff.policy.Policy;
import strikeoff.units.Angle;
import strikeoff.units.Length;
import strikeoff.units.Share;

/**
 * How a film lies on the others of its design: of all its films the one by whose move most is
 * gained, or by turning which over or round.
 *
 * @param file the film, as the plan writes it
 * @param paste that it prints
 * @param others films whose edges its own would run along then
 * @param near pastes of all films that come near its own
 * @param facing how much of the edges of areas that they could share runs along each other's as
 *     they lie
 * @param moved the same once it is moved
 * @param turned the same if it were turned
 * @param turn how it is turned then
 * @param over how long those edges are once it is moved
 * @param right how far its middle is moved for that, to the left if it is below zero
 * @param far the same towards the far edge
 * @param scale how large it is made for that, of what it is
 * @param by how far what it prints comes to lie from where it was, at most
 * @param grown how much of that is its size
 * @param skew how far it is turned for that, anticlockwise
 * @param skewed how far its ends lie off for its turn alone
 * @param spread how much the strip between the edges differs from one width, on average
 * @param spreadMoved the same once it is moved
 * @param lap how wide they lap then, where they do so least; ground if it is below zero
 * @param liesOff true if, by the policy, it lies off so far that it was not drawn like that: moved,
 *     clearly more of the edges run along each other, or as much does so clearly more evenly
 * @param turnedOver true if, by the policy, it fits so clearly better turned that one of them is
 * @param seen where on its film it can be seen; empty if the films meet nowhere as they lie
 * @param eitherOne true if it may be one of the others as well: nothing tells which
 * @param tolerance how far a frame can be off on this table
 */
public record FilmOnOthers(
    String design,
    String file,
    String paste,
    List<String> others,
    List<String> near,
    Share facing,
    Share moved,
    Share turned,
    Turn turn,
    Length over,
    Length right,
    Length far,
    Share scale,
    Length by,
    Length grown,
    Angle skew,
    Length skewed,
    Length spread,
    Length spreadMoved,
    Length lap,
    boolean liesOff,
    boolean turnedOver,
    Optional<FilmPlace> seen,
    boolean eitherOne,
    boolean railed,
    Length tolerance,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public FilmOnOthers {
    others = List.copyOf(others);
    near = List.copyOf(near);
    related = List.copyOf(related);
  }

  /** How a film can lie wrong way round. */
  public enum Turn {
    /** Left for right. */
    OVER {
      @Override
      Turned of(FilmFit fit) {
        return fit.over();
      }
    },
    /** Top for bottom. */
    UPENDED {
      @Override
      Turned of(FilmFit fit) {
        return fit.upended();
      }
    },
    /** By 180°. */
    ROUND {
      @Override
      Turned of(FilmFit fit) {
        return fit.round();
      }
    };

    abstract Turned of(FilmFit fit);
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

    boolean isOf(int number) {
      return film.number() == number || other.number() == number;
    }

    Reach reach() {
      return film.artwork().flatMap(Artwork::reach).orElseThrow();
    }

    /** Where both print, on the film's rectangle; where the film does if that is nowhere. */
    Reach meeting() {
      Reach mine = reach();
      Reach its = other.artwork().flatMap(Artwork::reach).orElseThrow();
      Length x = other.x().minus(film.x());
      Length y = other.y().minus(film.y());
      Reach both =
          new Reach(
              new Length(Math.max(mine.left().mm(), its.left().plus(x).mm())),
              new Length(Math.min(mine.right().mm(), its.right().plus(x).mm())),
              new Length(Math.max(mine.near().mm(), its.near().plus(y).mm())),
              new Length(Math.min(mine.far().mm(), its.far().plus(y).mm())));
      return both.left().mm() < both.right().mm() && both.near().mm() < both.far().mm()
          ? both
          : mine;
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

    double turned(Turn turn) {
      return turn.of(fit).facing().mm() / (1 + turn.of(fit).spread().mm());
    }

    /** True if most of what meets at all does so clearly more evenly once it is turned. */
    boolean isTurned(Turn turn, Limits.Artwork limits) {
      Turned turned = turn.of(fit);
      return turned.half().mm() <= limits.stripEven().mm()
          && turned.facing().mm() >= limits.edgesShared().fraction() * fit.edge().mm()
          && turned.facing().mm() * fit.half().mm()
              >= limits.turnedBetter().value() * facing() * turned.half().mm();
    }

    double gain() {
      return gained() - had();
    }

    /** True if it doesn't fit as it lies, and clearly would elsewhere. */
    boolean isLoose(Length tolerance, Limits.Artwork limits) {
      return fit.by(reach(), film.length(), film.width()).mm() > tolerance.mm()
          && fit.halfMoved().mm() <= limits.stripEven().mm()
          && moved() * fit.half().mm()
              >= limits.movedBetter().value() * facing() * fit.halfMoved().mm();
    }
  }

  /**
   * A film that is moved, or turned over.
   *
   * @param pairs those of its pairs that the move mends; the first one says which move
   * @param all its pairs
   * @param loose what others would gain that fit better elsewhere, and that the move leaves as they
   *     are
   * @param lost what its pairs have that fit as they lie, and that the move undoes
   */
  private record Move(List<Pair> pairs, List<Pair> all, double loose, double lost) {

    /**
     * How far the move by itself mends all: the film that lies off is the one that fits none of
     * those which fit each other.
     */
    double mends() {
      return pairs.stream().mapToDouble(Pair::gain).sum() - lost - loose;
    }

    double had() {
      return all.stream().mapToDouble(Pair::had).sum();
    }

    double turned() {
      return turned(turn());
    }

    /** What more fits once it is turned. */
    double turnMends() {
      return turned() - had();
    }

    private double turned(Turn turn) {
      return all.stream().mapToDouble(p -> p.turned(turn)).sum();
    }

    /** The turn by which it fits best. */
    Turn turn() {
      return Stream.of(Turn.values()).max(Comparator.comparingDouble(this::turned)).orElseThrow();
    }

    /** True if several others ask for the same turn. */
    boolean isTurned(Limits.Artwork limits) {
      return all.stream().filter(p -> p.isTurned(turn(), limits)).count() > 1;
    }

    double moved() {
      return pairs.stream().mapToDouble(Pair::gained).sum();
    }

    /** True if it is only moved, to a place like no other, where one edge goes all round. */
    boolean isRound(Limits.Artwork limits) {
      FilmFit fit = first().fit;
      double all =
          Math.max(limits.edgesLeastRound().mm(), limits.edgesRound().fraction() * fit.edge().mm());
      return first().moved() >= all
          && fit.scale().fraction() == 1
          && fit.skew().degrees() == 0
          && fit.elsewhere().mm() < NEARLY * first().moved();
    }

    /**
     * True if several others ask for the same move, each by a good part of an edge: colours without
     * an outline meet on a side or two.
     */
    boolean isAgreed(Length tolerance, Limits.Artwork limits) {
      return pairs.size() > 1
          && pairs.stream()
              .allMatch(
                  p ->
                      p.isLoose(tolerance, limits)
                          && p.moved() >= limits.edgesShared().fraction() * p.fit().edge().mm());
    }

    private Pair first() {
      return pairs.get(0);
    }

    Length by() {
      return first().fit.by(reach(), first().film.length(), first().film.width());
    }

    Length grown() {
      return first().fit.grown(reach(), first().film.length(), first().film.width());
    }

    Length skewed() {
      return first().fit.skewed(reach());
    }

    private Reach reach() {
      return first().reach();
    }
  }

  /** What gains nearly as much as what gains most may be it as well. */
  private static final double NEARLY = 0.9;

  /** Empty for a design none of whose films has edges near another's. */
  static Optional<FilmOnOthers> of(Design design, boolean railed, Policy policy) {
    Length tolerance = policy.registration(railed);
    List<Pair> each =
        design.separations().stream().flatMap(film -> pairs(design, film).stream()).toList();
    List<Move> moves = new ArrayList<>();
    for (Separation film : design.separations()) {
      List<Pair> pairs = each.stream().filter(p -> p.film().number() == film.number()).toList();
      double loose =
          each.stream()
                  .filter(p -> !p.isOf(film.number()))
                  .filter(p -> p.isLoose(tolerance, policy.artwork()))
                  .mapToDouble(Pair::gain)
                  .sum()
              / 2;
      for (Pair first : pairs) {
        List<Pair> alike = new ArrayList<>(List.of(first));
        pairs.stream()
            .filter(p -> p != first && apart(p, first).mm() <= tolerance.mm())
            .forEach(alike::add);
        double lost =
            pairs.stream()
                .filter(p -> !alike.contains(p) && !p.isLoose(tolerance, policy.artwork()))
                .mapToDouble(Pair::had)
                .sum();
        moves.add(new Move(alike, pairs, loose, lost));
      }
    }
    List<FilmOnOthers> all =
        moves.stream().map(m -> of(design, m, railed, tolerance, policy.artwork())).toList();
    double most =
        IntStream.range(0, all.size())
            .filter(i -> all.get(i).liesOff)
            .mapToDouble(i -> moves.get(i).mends())
            .max()
            .orElse(0);
    // Of two films either may be moved: one that came out smaller is more likely than one that came
    // out larger, and an outline is drawn round the other.
    Optional<Integer> told =
        IntStream.range(0, all.size())
            .boxed()
            .max(
                Comparator.comparing((Integer i) -> all.get(i).turnedOver)
                    .thenComparing(i -> all.get(i).turnedOver ? moves.get(i).turnMends() : 0)
                    .thenComparing(
                        i -> all.get(i).liesOff && moves.get(i).mends() >= most - slack(most))
                    .thenComparing(
                        i -> all.get(i).liesOff && all.get(i).grown.above(tolerance.mm()))
                    .thenComparing(i -> all.get(i).unfit() && moves.get(i).first().film().key())
                    .thenComparing(i -> moves.get(i).mends()));
    return told.map(
        i ->
            all.get(i)
                .with(
                    IntStream.range(0, all.size())
                        .anyMatch(
                            j ->
                                !all.get(j).path.equals(all.get(i).path)
                                    && (all.get(i).turnedOver
                                        ? all.get(j).turnedOver
                                            && moves.get(j).turnMends()
                                                >= NEARLY * moves.get(i).turnMends()
                                        : all.get(j).liesOff
                                            && moves.get(j).mends() >= most - slack(most)))));
  }

  /** What mends less by so much may be it as well. */
  private static double slack(double most) {
    return (1 - NEARLY) * Math.abs(most);
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

  /** How far two moves of a film differ where it meets the other film of the one. */
  private static Length apart(Pair one, Pair another) {
    return one.fit.apart(another.fit, one.meeting(), one.film.length(), one.film.width());
  }

  private static FilmOnOthers of(
      Design design, Move move, boolean railed, Length tolerance, Limits.Artwork limits) {
    List<Pair> pairs = move.pairs();
    Separation film = move.first().film();
    FilmFit first = move.first().fit();
    double edge = pairs.stream().mapToDouble(p -> p.fit().edge().mm()).sum();
    double facing = pairs.stream().mapToDouble(Pair::facing).sum();
    double moved = pairs.stream().mapToDouble(Pair::moved).sum();
    Turn turn = move.turn();
    double turned = pairs.stream().mapToDouble(p -> turn.of(p.fit()).facing().mm()).sum();
    double evenly = mean(pairs, Pair::facing, p -> p.fit().spread());
    double evenlyMoved = mean(pairs, Pair::moved, p -> p.fit().spreadMoved());
    double evenlyTurned =
        mean(pairs, p -> turn.of(p.fit()).facing().mm(), p -> turn.of(p.fit()).spread());
    double lap = pairs.stream().mapToDouble(p -> p.fit().lap().mm()).min().orElse(0);
    double by = move.by().mm();
    double times = limits.movedBetter().value();
    double enough = limits.edgesMet().fraction() * edge;
    boolean turnedOver =
        (move.isTurned(limits) || turned >= enough && evenlyTurned <= limits.stripEven().mm())
            && facing >= limits.edgesNear().fraction() * turned
            && move.turned() >= limits.turnedBetter().value() * move.had()
            && NEARLY * move.turned() >= move.moved();
    double half = mean(pairs, Pair::facing, p -> p.fit().half());
    double halfMoved = mean(pairs, Pair::moved, p -> p.fit().halfMoved());
    // What comes near nothing as it lies was drawn apart: it may be moved on, not made to meet.
    boolean isNear = facing >= limits.edgesNear().fraction() * moved;
    boolean liesOff =
        !turnedOver
            && by > tolerance.mm()
            && lap - by < tolerance.mm()
            && (move.isAgreed(tolerance, limits)
                || move.first().moved() >= limits.edgesMet().fraction() * first.edge().mm()
                    && evenlyMoved <= limits.stripEven().mm())
            && (moved >= limits.edgesLeast().mm() || move.isRound(limits))
            && (isNear || lap > 0 && Math.abs(move.grown().mm()) <= tolerance.mm())
            && moved * Math.max(half / halfMoved, evenly / evenlyMoved) >= times * facing;
    List<Pair> told =
        turnedOver ? move.all().stream().filter(p -> p.turned(turn) > p.had()).toList() : pairs;
    double toldEdge = told.stream().mapToDouble(p -> p.fit().edge().mm()).sum();
    return new FilmOnOthers(
        design.name(),
        film.artwork().orElseThrow().file(),
        film.paste(),
        told.stream().map(p -> p.other().artwork().orElseThrow().file()).distinct().toList(),
        move.all().stream().map(p -> p.other().paste()).distinct().toList(),
        share(told.stream().mapToDouble(Pair::facing).sum(), toldEdge),
        share(moved, edge),
        share(told.stream().mapToDouble(p -> turn.of(p.fit()).facing().mm()).sum(), toldEdge),
        turn,
        new Length(moved),
        first.right(),
        first.far(),
        first.scale(),
        move.by(),
        move.grown(),
        first.skew(),
        move.skewed(),
        new Length(evenly),
        new Length(evenlyMoved),
        new Length(lap),
        liesOff,
        turnedOver,
        told.stream().flatMap(p -> p.seen().stream()).findFirst(),
        false,
        railed,
        tolerance,
        told.stream()
            .map(p -> new Related(Tie.OTHER_FILM, p.other().path().key("artwork")))
            .toList(),
        film.path().key("artwork"));
  }

  private FilmOnOthers with(boolean either) {
    return new FilmOnOthers(
        design,
        file,
        paste,
        others,
        near,
        facing,
        moved,
        turned,
        turn,
        over,
        right,
        far,
        scale,
        by,
        grown,
        skew,
        skewed,
        spread,
        spreadMoved,
        lap,
        liesOff,
        turnedOver,
        seen,
        either,
        railed,
        tolerance,
        related,
        path);
  }

  @Override
  public Map<String, FilmPlace> onFilms() {
    return seen.map(place -> Map.of("byText", place)).orElse(Map.of());
  }

  /** True if it is the film of one of two colours. */
  public boolean isOf(String one, String other) {
    return paste.equals(one) || paste.equals(other);
  }

  /** True if it lies so that nothing that follows from it is worth telling. */
  public boolean unfit() {
    return liesOff || turnedOver;
  }

  /** True if how two colours lap follows from how it lies. */
  public boolean upsets(String one, String other) {
    return unfit() && isOf(one, other);
  }

  /** True if what stays bare between two colours may be what it was to print. */
  public boolean leavesBare(String one, String other) {
    return upsets(one, other) || unfit() && near.contains(one) && near.contains(other);
  }

  /** True if its size is a good part of how far it is off. */
  public boolean otherSize() {
    return 2 * Math.abs(grown.mm()) > tolerance.mm();
  }

  /** True if its turn is. */
  public boolean isSkewed() {
    return 2 * skewed.mm() > tolerance.mm();
  }

  /** Lines may run along the others' edges besides. */
  private static Share share(double some, double edge) {
    return new Share(Math.min(1, some / edge));
  }

  /** Weighted by how much of an edge it is of. */
  private static double mean(
      List<Pair> pairs, ToDoubleFunction<Pair> over, Function<Pair, Length> value) {
    double all = pairs.stream().mapToDouble(over).sum();
    double sum = pairs.stream().mapToDouble(p -> over.applyAsDouble(p) * value.apply(p).mm()).sum();
    return all == 0 ? 0 : sum / all;
  }
}
