package strikeoff.screens;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.Design;
import strikeoff.plan.PrintPlan;

/**
 * A screen, and how many different images separations ask of it: its one stencil holds one.
 *
 * @param screen its name
 * @param images how many different images; they differ if their length, their width, the area that
 *     takes paste or what their films show does
 * @param each the first separation of each image, with its size and its printed area; empty if
 *     there is only one
 * @param related the other separations with an image of their own
 * @param path of the second image's first separation, or of the only one's
 */
public record StencilImages(
    String screen, int images, List<Use> each, List<Related> related, PlanPath path)
    implements Evidence {

  /** Sizes are kept to a micrometre and areas to that times a metre: finer is rounding. */
  private static final double GRAIN = 1e3;

  public StencilImages {
    each = List.copyOf(each);
    related = List.copyOf(related);
  }

  /** How many further screens it takes. */
  public int more() {
    return images - 1;
  }

  /** One fact for each screen that prints. */
  static List<StencilImages> of(PrintPlan plan) {
    Map<String, Map<List<Object>, Use>> byScreen = new LinkedHashMap<>();
    for (Design design : plan.designs().values()) {
      for (Design.Separation separation : design.separations()) {
        byScreen
            .computeIfAbsent(separation.screen(), s -> new LinkedHashMap<>())
            .putIfAbsent(image(separation), new Use(design.name(), separation));
      }
    }
    List<StencilImages> facts = new ArrayList<>();
    byScreen.forEach((screen, uses) -> facts.add(of(screen, uses)));
    return facts;
  }

  private static StencilImages of(String screen, Map<List<Object>, Use> uses) {
    List<Use> each = List.copyOf(uses.values());
    if (each.size() == 1) {
      return new StencilImages(screen, 1, List.of(), List.of(), each.get(0).separation().path());
    }
    List<Related> related = new ArrayList<>();
    for (int i = 0; i < each.size(); i++) {
      if (i != 1) {
        related.add(new Related(Tie.ANOTHER_IMAGE, each.get(i).separation().path()));
      }
    }
    return new StencilImages(screen, each.size(), each, related, each.get(1).separation().path());
  }

  /** What a stencil is cut to: length, width and printed area, and what its film shows. */
  private static List<Object> image(Design.Separation separation) {
    return List.of(
        Math.round(separation.length().mm() * GRAIN),
        Math.round(separation.width().mm() * GRAIN),
        Math.round(separation.printed().squareCm() * GRAIN),
        separation.artwork().map(artwork -> List.of(artwork.tones(), artwork.reach())));
  }

  /** A separation, and the design that it belongs to. */
  public record Use(String design, Design.Separation separation) {}
}
