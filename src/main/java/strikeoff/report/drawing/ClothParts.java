package strikeoff.report.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strikeoff.colour.Swatches;
import strikeoff.day.Impression;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.day.facts.Timeline;
import strikeoff.layout.Footprint;
import strikeoff.layout.Layout;
import strikeoff.layout.Placement;
import strikeoff.plan.Cloth;
import strikeoff.plan.Design;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Seam;
import strikeoff.plan.Step;
import strikeoff.units.MeasureKind;
import strikeoff.units.UnitSystem;

/** The layers of the cloth drawing, in cloth millimetres with y turned so that near lies below. */
final class ClothParts {

  private static final double TICK = 500;

  /** Eighteen inches: half a yard. */
  private static final double TICK_IN_INCHES = 457.2;

  private final PrintPlan plan;
  private final Layout layout;
  private final Timeline timeline;
  private final Swatches swatches;
  private final ColourSigns signs;
  private final double letter;
  private final double width;
  private final double length;

  ClothParts(
      PrintPlan plan,
      Layout layout,
      Timeline timeline,
      Swatches swatches,
      ColourSigns signs,
      double letter) {
    this.swatches = swatches;
    this.signs = signs;
    this.plan = plan;
    this.layout = layout;
    this.timeline = timeline;
    this.letter = letter;
    this.width = plan.cloth().width().mm();
    this.length = plan.cloth().length().mm();
  }

  /** One symbol for each colour of each design, the hatching, and the shapes of the marks. */
  List<Svg> symbols() {
    List<Svg> symbols = new ArrayList<>();
    symbols.add(
        Svg.of("pattern")
            .with("id", "hatch")
            .with("width", letter * 0.7)
            .with("height", letter * 0.7)
            .with("patternUnits", "userSpaceOnUse")
            .with("patternTransform", "rotate(45)")
            .add(Svg.line(0, 0, 0, letter * 0.7).with("class", "hatch")));
    symbols.addAll(signs.drawn());
    symbols.addAll(MarkShapes.symbols());
    return symbols;
  }

  /** Everything on the cloth, the layers from below to above. */
  Svg cloth(List<Mark> marks) {
    return Svg.of("g")
        .add(ground())
        .add(seams())
        .add(prints())
        .add(new Outlines(layout, timeline, swatches.motifs(), signs, width, letter).layer(many()))
        .add(tables())
        .add(frames())
        .add(rulers())
        .add(marks(marks));
  }

  private Svg ground() {
    Cloth cloth = plan.cloth();
    Svg layer = Svg.group("ground");
    layer.add(
        Svg.rect(0, 0, length, width)
            .with("fill", cloth.ground().hex())
            .with("class", cloth.closed() ? "cut closed" : "cut"));
    double selvedge = cloth.selvedge().mm();
    double near = selvedge + cloth.nearAllowance().mm();
    double far = selvedge + cloth.farAllowance().mm();
    allowance(layer, 0, 0, length, far);
    allowance(layer, 0, width - near, length, near);
    allowance(layer, 0, far, cloth.startAllowance().mm(), width - near - far);
    double end = cloth.endAllowance().mm();
    allowance(layer, length - end, far, end, width - near - far);
    if (selvedge > 0) {
      layer.add(Svg.line(0, selvedge, length, selvedge).with("class", "selvedge"));
      layer.add(Svg.line(0, width - selvedge, length, width - selvedge).with("class", "selvedge"));
    }
    return layer;
  }

  private static void allowance(Svg layer, double x, double y, double along, double across) {
    if (along > 0 && across > 0) {
      layer.add(Svg.rect(x, y, along, across).with("class", "allowance"));
    }
  }

  private Svg seams() {
    Svg layer = Svg.group("seams");
    for (Seam seam : plan.seams().values()) {
      double at = seam.at().mm();
      double allowance = seam.allowance().mm();
      allowance(layer, at - allowance, 0, 2 * allowance, width);
      Optional<Moment> sewn = sewn(seam);
      Svg line = Svg.line(at, 0, at, width).with("class", sewn.isPresent() ? "seam sewn" : "seam");
      sewn.ifPresent(when -> line.with("data-a", when.seconds() / 60.0));
      layer.add(line);
      layer.add(
          Svg.text(
                  at,
                  -letter * 0.5,
                  FittedWords.shortened(seam.name(), 24)
                      + (sewn.isPresent() ? " seam" : " seam, not sewn"))
              .with("text-anchor", "middle"));
    }
    return layer;
  }

  /** When it is closed: before the print day, by a step, or never. */
  private Optional<Moment> sewn(Seam seam) {
    if (seam.sewnBefore()) {
      return Optional.of(new Moment(0));
    }
    Set<Integer> steps = new LinkedHashSet<>();
    for (Step step : plan.run()) {
      if (step instanceof Step.Sew sew && sew.seam().equals(seam.name())) {
        steps.add(step.number());
      }
    }
    return timeline.tasks().stream()
        .filter(t -> t.kind() == Task.Kind.SEW && steps.contains(t.step()))
        .map(Task::end)
        .findFirst();
  }

  /**
   * The table under the cloth, one place at a time; hidden but while the run is stepped through.
   */
  private Svg tables() {
    Svg layer = Svg.group("tables");
    double top = width + plan.table().nearEdgeOf(plan.cloth()).mm() - plan.table().width().mm();
    for (TablePlaces.Place place : TablePlaces.of(timeline)) {
      layer.add(
          Svg.rect(
                  place.x(),
                  Math.max(top, -letter),
                  plan.table().length().mm(),
                  Math.min(plan.table().width().mm(), width + 2 * letter))
              .with("class", "table")
              .with("data-a", place.from().seconds() / 60.0)
              .with("data-z", place.to().seconds() / 60.0));
    }
    return layer;
  }

  private boolean many() {
    return Math.max(timeline.impressions().size(), layout.placements().size()) > ManyPrints.MOST;
  }

  /** Impressions in the order they are laid; those never printed are not drawn. */
  private Svg prints() {
    Svg layer = Svg.group("prints");
    if (many()) {
      ManyPrints.of(timeline.impressions(), width).forEach(layer::add);
      return layer;
    }
    for (Impression impression : timeline.impressions()) {
      Footprint print = impression.footprint();
      String id = signs.id(print.placement().design(), print.separation().number());
      layer.add(
          placed(Svg.use(id), print.placement())
              .with("data-p", print.placement().id())
              .with("data-a", impression.lifted().seconds() / 60.0)
              .with("data-f", impression.film().frameSafe().best().seconds() / 60.0)
              .with("data-l", impression.film().liftSafe().best().seconds() / 60.0));
    }
    return layer;
  }

  private Svg placed(Svg use, Placement placement) {
    Design design = plan.designs().get(placement.design());
    // Turned about its own centre, which is that of what one sees.
    var middle = placement.outline().getEnvelopeInternal().centre();
    double left = middle.x - design.length().mm() / 2;
    double top = width - middle.y - design.width().mm() / 2;
    double turn = placement.turn().degrees();
    if (turn == 0 && !placement.mirrored()) {
      return use.with("x", left).with("y", top);
    }
    double middleX = left + design.length().mm() / 2;
    double middleY = top + design.width().mm() / 2;
    String turned =
        turn == 0 ? "" : "rotate(" + Svg.number(-turn) + " " + Svg.pair(middleX, middleY) + ")";
    String moved =
        placement.mirrored()
            ? "translate(" + Svg.pair(left + design.length().mm(), top) + ")scale(-1 1)"
            : "translate(" + Svg.pair(left, top) + ")";
    return use.with("transform", turned + moved);
  }

  /** Each frame's outside once a placement, however many colours use that size. */
  private Svg frames() {
    Set<String> drawn = new LinkedHashSet<>();
    for (Footprint footprint : layout.footprints()) {
      drawn.add(Outlines.path(footprint.frame(), width));
    }
    return Svg.group("frames").add(Svg.path(String.join("", drawn)));
  }

  private Svg rulers() {
    Svg layer = Svg.group("ruler");
    boolean metric = plan.measures().of(MeasureKind.LENGTH) == UnitSystem.METRIC;
    double step = metric ? TICK : TICK_IN_INCHES;
    double unit = metric ? 1000 : 25.4;
    String symbol = metric ? " m" : " in";
    while (length / step > 60) {
      step *= 2;
    }
    for (double x = 0; x <= length + 1e-6; x += step) {
      layer.add(Svg.line(x, width, x, width + letter * 0.4));
      layer.add(
          Svg.text(x, width + letter * 1.5, Svg.number(x / unit) + (x == 0 ? symbol : ""))
              .with("text-anchor", "middle"));
    }
    for (double y = 0; y <= width + 1e-6; y += step) {
      layer.add(Svg.line(-letter * 0.4, width - y, 0, width - y));
      layer.add(
          Svg.text(-letter * 0.6, width - y + letter * 0.35, Svg.number(y / unit))
              .with("text-anchor", "end"));
    }
    return layer;
  }

  private Svg marks(List<Mark> marks) {
    Map<String, Placement> byName = new LinkedHashMap<>();
    layout.placements().forEach(p -> byName.put(p.name(), p));
    Map<Integer, Integer> taken = new LinkedHashMap<>();
    Svg layer = Svg.group("marks");
    for (Mark mark : marks) {
      for (String name : mark.placements()) {
        Placement placement = byName.get(name);
        if (placement == null) {
          continue;
        }
        int before = taken.merge(placement.id(), 1, Integer::sum) - 1;
        var box = placement.outline().getEnvelopeInternal();
        layer.add(
            MarkShapes.mark(
                mark,
                box.centre().x + before * letter * 1.7,
                width - box.centre().y - before * letter * 0.5));
      }
    }
    return layer;
  }
}
