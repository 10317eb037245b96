package strikeoff.evidence;

import java.util.List;
import java.util.Map;
import strikeoff.document.PlanPath;

/**
 * A derived fact that a rule may report. Its record components and parameterless methods are the
 * values that a rule's message can name.
 */
public interface Evidence {

  /** The place of the plan that causes it: what the printer would edit. */
  PlanPath path();

  /** Further places that belong to it, for example the earlier print it collides with. */
  default List<Related> related() {
    return List.of();
  }

  /** Where on a film the values lie that a message can name, by their names. */
  default Map<String, FilmPlace> onFilms() {
    return Map.of();
  }

  /** Names of the placements it concerns ({@code herons 3}), to mark them in the drawing. */
  default List<String> marks() {
    return List.of();
  }

  /**
   * A fact that is told together with others of its kind, so that one cause gives one finding: what
   * a rule finds one by one of the same gathering is one finding.
   */
  interface Gathered extends Evidence {

    /** What those have in common that are told together. */
    Object gathering();

    /**
     * This one and others as one fact.
     *
     * @param others of its class and gathering, after it in the order of derivation
     */
    Evidence and(List<Evidence> others);
  }

  /**
   * A further place, and what it has to do with the fact.
   *
   * @param name what it is called, if that is all that is told of it; else empty
   */
  record Related(Tie tie, String name, PlanPath path) {

    public Related(Tie tie, PlanPath path) {
      this(tie, "", path);
    }

    public Related(String name, PlanPath path) {
      this(Tie.CALLED, name, path);
    }
  }
}
