package strikeoff.plan.yaml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Arrangement.Edge;
import strikeoff.plan.Arrangement.Lattice;
import strikeoff.plan.Cloth;
import strikeoff.plan.Design;
import strikeoff.units.Angle;
import strikeoff.units.Length;
import strikeoff.units.Pair;
import strikeoff.yaml.Expected;
import strikeoff.yaml.Fields;
import strikeoff.yaml.Item;
import strikeoff.yaml.QuantityKinds;
import strikeoff.yaml.ValueKinds;

/** Reads how designs are placed on the cloth. */
final class PlacementPart {

  private static final List<String> WAYS = List.of("series", "border", "fill", "anchor", "at");
  private static final Map<String, Edge> EDGES = new LinkedHashMap<>();
  private static final Map<String, Lattice> LATTICES = new LinkedHashMap<>();

  static {
    EDGES.put("near", Edge.NEAR);
    EDGES.put("far", Edge.FAR);
    LATTICES.put("grid", Lattice.GRID);
    LATTICES.put("brick", Lattice.BRICK);
    LATTICES.put("half-drop", Lattice.HALF_DROP);
  }

  private final Draft draft;
  private final Cloth cloth;
  private final Map<String, Design> designs;
  private final FreeCloth free;

  /** Fills that don't say what to keep clear of. */
  private final Set<String> lonely = new LinkedHashSet<>();

  PlacementPart(Draft draft, Cloth cloth, Map<String, Design> designs) {
    this.draft = draft;
    this.cloth = cloth;
    this.designs = designs;
    this.free = new FreeCloth(draft.assumptions(), cloth);
  }

  Map<String, Arrangement> placements(Fields root) {
    Optional<Fields> f = root.namedUnder("placements", "the placements");
    if (f.isEmpty()) {
      return Map.of();
    }
    int before = draft.reading().problems().count();
    Map<String, Arrangement> placements = f.get().each(this::placement);
    if (draft.reading().problems().count() > before) {
      return placements;
    }
    return new Relations(
            draft.bounds(),
            f.get(),
            designs,
            new FillClearances(placements, draft.assumptions()).fillIn(lonely))
        .check();
  }

  private Arrangement placement(Item item) {
    Fields f = Everyday.called("placement", Fields.of(item, "a placement", draft.reading()));
    if (f.names().stream().noneMatch(WAYS::contains)) {
      // A fill has a count of its own.
      Everyday.called("placement of no kind", f);
    }
    String name = item.name();
    String design =
        f.required(
            "design", ValueKinds.nameIn("a design's name", "design", draft.names().designs()));
    Angle turn = f.optional("turn", QuantityKinds.quantity(Angle.class)).orElse(new Angle(0));
    boolean mirrored = f.optional("mirrored", ValueKinds.yesNo()).orElse(false);
    List<String> over =
        f.optional("over", ValueKinds.oneOrMore(placement("a placement's name"))).orElse(List.of());
    if (over.contains(name)) {
      f.wrong("over", "a placement can't be printed over itself");
    }
    List<String> ways = WAYS.stream().filter(f::has).toList();
    Common c = new Common(name, design, turn, mirrored, over, f);
    Arrangement arrangement = way(ways.isEmpty() ? "" : ways.get(0), c);
    if (ways.size() > 1) {
      ways.forEach(f::has);
      f.wrong(
          ways.get(1),
          "a placement has “"
              + ways.get(0)
              + "” or “"
              + ways.get(1)
              + "”, not both; make two placements of it");
    } else if (ways.isEmpty()) {
      f.wrong("one of series, border, fill, anchor or at is missing: how the design is placed");
    }
    if (!ways.isEmpty()) {
      f.done();
    }
    return arrangement;
  }

  /** What every arrangement has. */
  private record Common(
      String name, String design, Angle turn, boolean mirrored, List<String> over, Fields f) {}

  private Arrangement way(String way, Common c) {
    return switch (way) {
      case "series" -> series(c);
      case "border" -> border(c);
      case "fill" -> fill(c);
      case "anchor" -> anchored(c);
      default -> placed(c, way.isEmpty());
    };
  }

  private Arrangement series(Common c) {
    Fields f = c.f();
    return new Arrangement.Series(
        c.name(),
        c.design(),
        f.required(
            "series", ValueKinds.count("the number of copies", 1, draft.bounds().placements())),
        f.required("pitch", QuantityKinds.aboveZero(Length.class)),
        free.start(f, "start", "start of the series"),
        f.required("across", QuantityKinds.quantity(Length.class)),
        c.turn(),
        c.mirrored(),
        c.over(),
        f.path());
  }

  private Arrangement border(Common c) {
    Fields f = c.f();
    Edge edge = f.required("border", ValueKinds.word("near or far", EDGES));
    Arrangement.Border border =
        new Arrangement.Border(
            c.name(),
            c.design(),
            edge,
            free.start(f, "from", "start of the border"),
            free.end(f, "to", "end of the border"),
            repeat(c),
            free.inset(f, edge),
            c.turn(),
            c.mirrored(),
            c.over(),
            f.path());
    rises(f, "from", "to", border.from(), border.to());
    return border;
  }

  private Length repeat(Common c) {
    Expected<Length> length = QuantityKinds.aboveZero(Length.class);
    Design design = designs.get(c.design());
    Length one = design == null ? length.standIn() : design.lengthTurned(c.turn());
    return draft
        .assumptions()
        .orDerived(
            c.f(),
            "repeat",
            length,
            one,
            one::text,
            "repeat of the border",
            "the length of the design as it lies");
  }

  private Arrangement fill(Common c) {
    Fields f = c.f();
    Lattice lattice = f.required("fill", ValueKinds.word("grid, brick or half-drop", LATTICES));
    Pair pitch = f.required("pitch", QuantityKinds.size());
    if (!f.has("around")) {
      lonely.add(c.name());
    }
    Arrangement.Fill fill =
        new Arrangement.Fill(
            c.name(),
            c.design(),
            lattice,
            pitch.along(),
            pitch.across(),
            free.start(f, "from", "start of the filled stretch"),
            free.end(f, "to", "end of the filled stretch"),
            free.near(f),
            free.far(f),
            draft
                .assumptions()
                .or(
                    f,
                    "clear",
                    QuantityKinds.quantity(Length.class),
                    draft.assumptions().standard().fill().clear(),
                    "margin to keep clear"),
            f.optional("around", ValueKinds.oneOrMore(placement("a placement's name")))
                .orElse(List.of()),
            f.optional(
                "count", ValueKinds.count("the number of repeats", 0, draft.bounds().placements())),
            c.turn(),
            c.mirrored(),
            c.over(),
            f.path());
    rises(f, "from", "to", fill.from(), fill.to());
    rises(f, "near", "far", fill.near(), fill.far());
    return fill;
  }

  private Expected<String> placement(String what) {
    return ValueKinds.nameIn(what, "placement", draft.names().placements());
  }

  private Arrangement anchored(Common c) {
    Fields f = c.f();
    Pair offset = f.required("offset", Points.place());
    return new Arrangement.Anchored(
        c.name(),
        c.design(),
        f.required("anchor", placement("a placement's name")),
        f.optional("which", PlacementNumbers.list(draft.bounds().placements())).orElse(List.of()),
        offset.along(),
        offset.across(),
        c.turn(),
        c.mirrored(),
        c.over(),
        f.path());
  }

  private Arrangement placed(Common c, boolean nowhere) {
    Fields f = c.f();
    List<Arrangement.Point> points = new ArrayList<>();
    if (!nowhere) {
      for (Pair p : f.required("at", Points.places())) {
        points.add(new Arrangement.Point(p.along(), p.across()));
      }
    }
    return new Arrangement.Placed(
        c.name(), c.design(), points, c.turn(), c.mirrored(), c.over(), f.path());
  }

  private static void rises(Fields f, String low, String high, Length from, Length to) {
    if (f.sound(low, high) && from.mm() >= to.mm()) {
      f.wrong(
          f.has(high) ? high : low,
          "“" + high + "” (" + to + ") must lie beyond “" + low + "” (" + from + ")");
    }
  }
}
