package strikeoff.report.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import strikeoff.colour.MotifLook;
import strikeoff.colour.Swatches;
import strikeoff.plan.Artwork;
import strikeoff.plan.Colour;
import strikeoff.plan.Design;
import strikeoff.plan.Design.Separation;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Traced;

/**
 * A sign for each colour of each design: what its film prints, as it comes out on this cloth, also
 * over the colours before it; stripes where no film tells.
 */
public final class ColourSigns {

  /** Of all films of a page: some 300 KB. Those that come after have stripes. */
  private static final int MOST_CORNERS = 60_000;

  /** Where colours lie over each other: corners of both of them, in mm. */
  private static final double GRID = 0.1;

  private static final PrecisionModel ON_GRID = new PrecisionModel(1 / GRID);

  /** More colours than that have no overlaps that anybody can tell apart. */
  private static final int MOST_OVER_EACH_OTHER = 5;

  private final PrintPlan plan;
  private final Swatches swatches;
  private final Map<String, Sign> signs = new LinkedHashMap<>();
  private final Map<String, Geometry> shapes = new HashMap<>();

  /** Of colours that others lie over. */
  private final Set<String> clips = new HashSet<>();

  /**
   * One colour's.
   *
   * @param id that drawings use it by
   * @param pictured true if it shows what its film prints
   */
  private record Sign(String id, boolean pictured, Svg drawn) {}

  private ColourSigns(PrintPlan plan, Swatches swatches) {
    this.plan = plan;
    this.swatches = swatches;
  }

  /**
   * @param pictures false to have stripes in place of all films
   */
  public static ColourSigns of(PrintPlan plan, Swatches swatches, boolean pictures) {
    ColourSigns all = new ColourSigns(plan, swatches);
    int left = pictures ? MOST_CORNERS : 0;
    for (Design design : plan.designs().values()) {
      List<Separation> before = new ArrayList<>();
      for (Separation colour : design.separations()) {
        Optional<Traced> traced = colour.artwork().flatMap(Artwork::traced);
        int corners = traced.map(Traced::corners).orElse(0);
        boolean fits = traced.isPresent() && corners <= left;
        left -= fits ? corners : 0;
        String id = "s" + all.signs.size();
        Svg drawn =
            fits
                ? all.picture(id, design, colour, traced.get(), before)
                : Svg.path(Motif.stripes(design, colour)).with("fill", all.look(colour).hex());
        all.signs.put(key(design.name(), colour.number()), new Sign(id, fits, drawn));
        if (fits) {
          before.add(colour);
        }
      }
    }
    return all;
  }

  /** What drawings use them by. */
  String id(String design, int separation) {
    return signs.get(key(design, separation)).id();
  }

  /** A pictured colour as it comes out where it lies over no other one. */
  Svg alone(Design design, Separation colour) {
    return Svg.use(alone(id(design.name(), colour.number()))).with("fill", look(colour).hex());
  }

  private static String alone(String id) {
    return id + "a";
  }

  private static String clip(String id) {
    return id + "c";
  }

  /** True if a colour's sign shows what its film prints. */
  public boolean pictures(String design, int separation) {
    return signs.get(key(design, separation)).pictured();
  }

  /** True if any colour of a design is. */
  boolean picture(String design) {
    return plan.designs().get(design).separations().stream()
        .anyMatch(colour -> pictures(design, colour.number()));
  }

  /** How they are to be read. */
  public String words() {
    boolean some = signs.values().stream().anyMatch(Sign::pictured);
    boolean all = signs.values().stream().allMatch(Sign::pictured);
    String stripes = "are as wide as each colour's share of its area; they are no picture of it.";
    if (!some) {
      return "The stripes in a motif " + stripes;
    }
    return "Motifs are drawn from their films, each colour as it comes out wet on this cloth, over"
        + " others as estimated."
        + (all ? "" : " Where there are stripes instead, these " + stripes);
  }

  /** The signs themselves, to stand where drawings find them. */
  List<Svg> drawn() {
    List<Svg> drawn = new ArrayList<>();
    for (Sign sign : signs.values()) {
      drawn.add(sign.drawn().with("id", sign.id()));
      String clip = clip(sign.id());
      if (clips.contains(clip)) {
        drawn.add(Svg.of("clipPath").with("id", clip).add(Svg.use(alone(sign.id()))));
      }
    }
    return drawn;
  }

  private Svg picture(
      String id, Design design, Separation colour, Traced traced, List<Separation> before) {
    Svg path =
        Svg.path(TracedPath.of(traced))
            .with("id", alone(id))
            .with("transform", placed(left(colour), top(design, colour), traced.step()));
    Svg picture = Svg.of("g").with("fill", look(colour).hex()).add(path);
    if (!before.isEmpty()) {
      List<Layer> under = before.stream().map(b -> layer(design, b)).toList();
      for (Patch patch : over(design, layer(design, colour), under)) {
        picture.add(clipped(id, design, patch, before));
      }
    }
    return picture;
  }

  /** The same path once more, as far as it lies in those of others: a browser cuts it. */
  private Svg clipped(String id, Design design, Patch patch, List<Separation> before) {
    Svg drawn = Svg.use(alone(id)).with("fill", patch.look().hex());
    for (Separation lower : before) {
      if ((patch.over() >> lower.number() - 1 & 1) == 1) {
        String clip = clip(id(design.name(), lower.number()));
        clips.add(clip);
        drawn = Svg.of("g").with("clip-path", "url(#" + clip + ")").add(drawn);
      }
    }
    return drawn;
  }

  private static String placed(double x, double y, double step) {
    String scale = "scale(" + Svg.number(step) + ")";
    return x == 0 && y == 0 ? scale : "translate(" + Svg.pair(x, y) + ")" + scale;
  }

  /** How a colour comes out on the bare ground. */
  private Colour look(Separation colour) {
    return swatches.of(colour.paste()).onGround();
  }

  /** A colour, and where it prints in its design, in mm from the left and downwards. */
  record Layer(Separation colour, Geometry shape) {}

  /**
   * A piece of cloth that comes out in one colour.
   *
   * @param over which separations lie there, the n-th one standing for 2 to the power of n - 1
   */
  record Patch(int over, Geometry shape, Colour look) {
    Svg drawn() {
      return Svg.path(TracedPath.of(shape, GRID))
          .with("fill", look.hex())
          .with("transform", placed(0, 0, GRID));
    }
  }

  /** A pictured colour as its film has it. */
  Layer layer(Design design, Separation colour) {
    return new Layer(
        colour,
        shapes.computeIfAbsent(
            key(design.name(), colour.number()),
            key ->
                TracedPath.shape(
                    colour.artwork().flatMap(Artwork::traced).orElseThrow(),
                    left(colour),
                    top(design, colour))));
  }

  /** A colour by itself, and over it where it lies on others. */
  List<Patch> patches(Design design, Layer own, List<Layer> before) {
    List<Patch> patches = new ArrayList<>();
    patches.add(new Patch(bit(own), own.shape(), look(own.colour())));
    patches.addAll(over(design, own, before));
    return patches;
  }

  /** Where a colour lies over others: over two before over three, which are drawn over those. */
  private List<Patch> over(Design design, Layer own, List<Layer> before) {
    Optional<MotifLook> look =
        swatches.motifs().stream().filter(m -> m.design().equals(design.name())).findFirst();
    if (look.isEmpty() || look.get().looks().isEmpty() || before.size() >= MOST_OVER_EACH_OTHER) {
      return List.of();
    }
    Map<Integer, Geometry> sets = new LinkedHashMap<>(Map.of(bit(own), own.shape()));
    for (Layer lower : before) {
      for (int set : List.copyOf(sets.keySet())) {
        Geometry both = overlaid(sets.get(set), lower.shape(), OverlayNG.INTERSECTION);
        if (both.getArea() > 0) {
          sets.put(set | bit(lower), both);
        }
      }
    }
    return sets.entrySet().stream()
        .filter(set -> set.getKey() != bit(own))
        .sorted(Comparator.comparingInt(set -> Integer.bitCount(set.getKey())))
        .map(set -> new Patch(set.getKey(), set.getValue(), look.get().looks().get(set.getKey())))
        .toList();
  }

  private static int bit(Layer layer) {
    return 1 << layer.colour().number() - 1;
  }

  /** One of OverlayNG's operations, its corners on the grid. */
  static Geometry overlaid(Geometry one, Geometry other, int operation) {
    OverlayNG overlay = new OverlayNG(one, other, ON_GRID, operation);
    // Where edges only touch nothing is printed.
    overlay.setStrictMode(true);
    return overlay.getResult();
  }

  private static double left(Separation colour) {
    return colour.x().mm();
  }

  private static double top(Design design, Separation colour) {
    return design.width().mm() - colour.y().mm() - colour.width().mm();
  }

  private static String key(String design, int separation) {
    return separation + " of " + design;
  }
}
