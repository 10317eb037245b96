package strikeoff.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Arrangement.Edge;
import strikeoff.plan.Arrangement.Lattice;
import strikeoff.plan.Arrangement.Point;
import strikeoff.plan.Cloth;
import strikeoff.plan.Design;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.PlainParts;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Screen;
import strikeoff.plan.Seam;
import strikeoff.plan.Table;
import strikeoff.policy.Policy;
import strikeoff.policy.yaml.PolicyReader;
import strikeoff.units.Angle;
import strikeoff.units.Area;
import strikeoff.units.Length;
import strikeoff.units.Measures;
import strikeoff.units.MeshCount;
import strikeoff.units.Share;

/** A plan for layout tests, made bit by bit; all lengths in centimetres. */
final class Sheet {

  private static final Policy POLICY = PolicyReader.builtIn();

  private final Map<String, Seam> seams = new LinkedHashMap<>();
  private final Map<String, Screen> screens = new LinkedHashMap<>();
  private final Map<String, Paste> pastes = new LinkedHashMap<>();
  private final Map<String, Design> designs = new LinkedHashMap<>();
  private final Map<String, Arrangement> arrangements = new LinkedHashMap<>();
  private Cloth cloth;
  private Table table =
      new Table(cm(280), cm(160), true, Optional.empty(), Optional.empty(), path("table"));
  private Angle turn = new Angle(0);
  private boolean mirrored;

  private Sheet(Cloth cloth) {
    this.cloth = cloth;
    pastes.put("ink", paste("ink"));
  }

  static Sheet open(double length, double width) {
    return new Sheet(cloth(length, width, false));
  }

  static Sheet tube(double circumference, double width) {
    return new Sheet(cloth(circumference, width, true));
  }

  /** A design of one separation that fills it, in a frame 10 cm wider all round. */
  Sheet design(String name, double length, double width) {
    return design(name, length, width, 0, 0, length, width);
  }

  /** A design of one separation that fills a part of it. */
  Sheet design(String name, double length, double width, double x, double y, double l, double w) {
    screens.put(
        name,
        new Screen(
            name,
            cm(l + 20),
            cm(w + 20),
            cm(4),
            cm(l),
            cm(w),
            new MeshCount(43),
            new Length(0.08),
            Optional.empty(),
            path("screens." + name)));
    Design.Separation separation =
        new Design.Separation(
            1,
            name,
            "ink",
            cm(x),
            cm(y),
            cm(l),
            cm(w),
            new Area(l * w / 2),
            1,
            false,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            path("designs." + name + ".separations[0]"));
    designs.put(
        name,
        new Design(
            name, cm(length), cm(width), List.of(separation), List.of(), path("designs." + name)));
    return this;
  }

  /** What is added from here on lies turned. */
  Sheet turned(double degrees) {
    turn = new Angle(degrees);
    return this;
  }

  /** What is added from here on is mirrored. */
  Sheet mirrored() {
    mirrored = true;
    return this;
  }

  /** What is added from here on lies as it was drawn. */
  Sheet asDrawn() {
    mirrored = false;
    turn = new Angle(0);
    return this;
  }

  Sheet series(String name, String design, int n, double pitch, double start, double across) {
    return add(
        new Arrangement.Series(
            name, design, n, cm(pitch), cm(start), cm(across), turn, mirrored, at(name)));
  }

  Sheet border(
      String name, String design, Edge edge, double from, double to, double repeat, double inset) {
    return add(
        new Arrangement.Border(
            name, design, edge, cm(from), cm(to), cm(repeat), cm(inset), turn, mirrored, at(name)));
  }

  /**
   * @param box from, to, near, far
   * @param count expected number, 0 to leave it open
   */
  Sheet fill(
      String name,
      String design,
      Lattice lattice,
      double[] pitch,
      double[] box,
      double clear,
      int count,
      String... around) {
    return add(
        new Arrangement.Fill(
            name,
            design,
            lattice,
            cm(pitch[0]),
            cm(pitch[1]),
            cm(box[0]),
            cm(box[1]),
            cm(box[2]),
            cm(box[3]),
            cm(clear),
            List.of(around),
            count == 0 ? Optional.empty() : Optional.of(count),
            turn,
            mirrored,
            at(name)));
  }

  Sheet anchored(
      String name, String design, String anchor, double dx, double dy, Integer... which) {
    return add(
        new Arrangement.Anchored(
            name, design, anchor, List.of(which), cm(dx), cm(dy), turn, mirrored, at(name)));
  }

  /** Corners as x, y, x, y … */
  Sheet placed(String name, String design, double... corners) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < corners.length; i += 2) {
      points.add(new Point(cm(corners[i]), cm(corners[i + 1])));
    }
    return add(new Arrangement.Placed(name, design, points, turn, mirrored, at(name)));
  }

  Sheet seam(String name, double at, boolean padded) {
    seams.put(name, new Seam(name, cm(at), cm(1.5), padded, false, path("seams." + name)));
    return this;
  }

  /** Allowances at start, end, near and far; selvedges. */
  Sheet margins(double start, double end, double near, double far, double selvedge) {
    Cloth c = cloth;
    cloth =
        new Cloth(
            c.fibres(),
            c.mass(),
            c.width(),
            c.length(),
            c.closed(),
            null,
            c.washed(),
            c.shrinkLength(),
            c.shrinkWidth(),
            cm(start),
            cm(end),
            cm(near),
            cm(far),
            cm(selvedge),
            c.path());
    return this;
  }

  /** Unwashed, with the shares that the first wash takes. */
  Sheet unwashed(double length, double width) {
    Cloth c = cloth;
    cloth =
        new Cloth(
            c.fibres(),
            c.mass(),
            c.width(),
            c.length(),
            c.closed(),
            null,
            false,
            new Share(length),
            new Share(width),
            c.startAllowance(),
            c.endAllowance(),
            c.nearAllowance(),
            c.farAllowance(),
            c.selvedge(),
            c.path());
    return this;
  }

  Sheet table(double length, double width) {
    table =
        new Table(cm(length), cm(width), true, Optional.empty(), Optional.empty(), path("table"));
    return this;
  }

  /** Lays the near edge of the cloth there, from the table's. */
  Sheet clothAt(double across) {
    table =
        new Table(
            table.length(),
            table.width(),
            true,
            Optional.of(cm(across)),
            table.stations(),
            table.path());
    return this;
  }

  Sheet stations(int count, double length, double width, double gap, double clearance) {
    Table.Stations stations =
        new Table.Stations(
            count, cm(length), cm(width), cm(gap), cm(clearance), false, path("table.stations"));
    table =
        new Table(
            table.length(),
            table.width(),
            true,
            table.clothAt(),
            Optional.of(stations),
            path("table"));
    return this;
  }

  /** Blade of a design's screen. */
  Sheet squeegee(String screen, double blade) {
    Screen s = screens.get(screen);
    screens.put(
        screen,
        new Screen(
            s.name(),
            s.frameLength(),
            s.frameWidth(),
            s.rail(),
            s.imageLength(),
            s.imageWidth(),
            s.mesh(),
            s.thread(),
            Optional.of(cm(blade)),
            s.path()));
    return this;
  }

  PrintPlan plan() {
    return new PrintPlan(
        "test",
        "",
        cloth,
        seams,
        table,
        null,
        null,
        null,
        null,
        null,
        screens,
        pastes,
        designs,
        arrangements,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        Measures.METRIC,
        "");
  }

  Layout layout() {
    return Layout.of(plan(), POLICY);
  }

  private Sheet add(Arrangement arrangement) {
    arrangements.put(arrangement.name(), arrangement);
    return this;
  }

  private static Cloth cloth(double length, double width, boolean closed) {
    return PlainParts.cotton(cm(length), cm(width), closed, null);
  }

  private static Paste paste(String name) {
    return PlainParts.paste(name, Medium.DYE, null, true);
  }

  private static Length cm(double cm) {
    return Length.ofCm(cm);
  }

  private static PlanPath at(String name) {
    return path("placements." + name);
  }

  private static PlanPath path(String text) {
    return new PlanPath(text);
  }
}
