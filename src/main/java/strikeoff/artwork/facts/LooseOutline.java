package strikeoff.artwork.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.stream.Stream;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.Design;
import strikeoff.plan.Design.Separation;
import strikeoff.units.Length;

/**
 * An outline under which several colours of its design don't run far enough, by their films: the
 * drawing is loose, or was laid out wrong as a whole.
 *
 * @param key paste of the outline
 * @param open how it meets those that leave ground beside it, or only touch it
 * @param hardly how it laps those that it laps by too little
 * @param tolerance how far a frame can be off on this table
 * @param path of the outline's film
 */
public record LooseOutline(
    String design,
    String key,
    List<OpenJoint> open,
    List<OutlineOverEdge> hardly,
    boolean railed,
    Length tolerance,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public LooseOutline {
    open = List.copyOf(open);
    hardly = List.copyOf(hardly);
    related = List.copyOf(related);
  }

  /**
   * Of each outline that misses more than one colour.
   *
   * @param facts what is true of the films otherwise
   * @param unfit true of two colours whose films don't lie as they were drawn: what follows from
   *     that has another cause
   */
  static List<LooseOutline> of(
      Design design,
      List<Evidence> facts,
      BiPredicate<String, String> unfit,
      boolean railed,
      Length tolerance) {
    List<LooseOutline> all = new ArrayList<>();
    for (Separation key : design.separations()) {
      if (!key.key() || key.artwork().isEmpty()) {
        continue;
      }
      List<OpenJoint> open =
          some(facts, OpenJoint.class)
              .filter(j -> j.design().equals(design.name()) && j.over().equals(key.paste()))
              .filter(j -> isFill(design, j.under()) && !unfit.test(j.under(), j.over()))
              .filter(j -> j.gapes() || j.butts())
              .toList();
      List<OutlineOverEdge> hardly =
          some(facts, OutlineOverEdge.class)
              .filter(o -> o.design().equals(design.name()) && o.key().equals(key.paste()))
              .filter(o -> o.opens() && o.choked())
              .filter(o -> !unfit.test(o.colour(), o.key()))
              .filter(
                  o ->
                      some(facts, ColourPastOutline.class)
                          .noneMatch(
                              c ->
                                  c.design().equals(o.design()) && c.isSpread(o.key(), o.colour())))
              .filter(o -> open.stream().noneMatch(j -> j.under().equals(o.colour())))
              .toList();
      if (open.size() + hardly.size() > 1) {
        all.add(
            new LooseOutline(
                design.name(),
                key.paste(),
                open,
                hardly,
                railed,
                tolerance,
                design.separations().stream()
                    .filter(s -> !s.key() && s.artwork().isPresent())
                    .filter(
                        s ->
                            open.stream().anyMatch(j -> j.under().equals(s.paste()))
                                || hardly.stream().anyMatch(o -> o.colour().equals(s.paste())))
                    .map(s -> new Related(Tie.OTHER_FILM, s.path().key("artwork")))
                    .toList(),
                key.path().key("artwork")));
      }
    }
    return all;
  }

  private static boolean isFill(Design design, String paste) {
    return design.separations().stream().anyMatch(s -> s.paste().equals(paste) && !s.key());
  }

  private static <T> Stream<T> some(List<Evidence> facts, Class<T> kind) {
    return facts.stream().filter(kind::isInstance).map(kind::cast);
  }

  /** The colours that don't run far enough under it. */
  public List<String> colours() {
    return Stream.concat(
            open.stream().map(OpenJoint::under), hardly.stream().map(OutlineOverEdge::colour))
        .toList();
  }

  /** True if that is how two colours meet, in any order. */
  public boolean isBetween(String one, String other) {
    return key.equals(one) && colours().contains(other)
        || key.equals(other) && colours().contains(one);
  }
}
