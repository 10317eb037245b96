package strikeoff.day;

import java.util.List;
import strikeoff.checks.Worked;
import strikeoff.day.facts.Timeline;
import strikeoff.layout.Layout;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.speech.DaySpeech;
import strikeoff.units.Measures;

/**
 * A tiny plan to work by hand what plans/README.md says of the clock. Loading takes 15 min, an
 * impression 50 s: its frame touches the cloth after 20 s. A move, a washing and a mixing take 10
 * min, and a screen dries in 30 min. Blue, ink and rust are mixed before, gold and sand are not.
 */
public final class TinyDay {

  private static final String PLAN =
      """
      plan: test
      cloth: {length: 4 m, width: 1 m, washed: yes}
      table: {length: 1.2 m, width: 1.4 m}
      crew: %s
      seams: {centre: {at: 2 m}}
      screens:
        a: {frame: 44 x 44 cm, image: 20 x 20 cm, mesh: 43/cm}
        b: {frame: 44 x 44 cm, image: 20 x 20 cm, mesh: 43/cm}
        s: {frame: 44 x 44 cm, image: 20 x 20 cm, mesh: 43/cm}
        d: {frame: 44 x 44 cm, image: 20 x 20 cm, mesh: 43/cm}
        wide: {frame: 44 x 95 cm, image: 20 x 20 cm, mesh: 43/cm}
      pastes:
        blue: {medium: paint, colour: blue, mixed before: 1 h, frame-safe: 10 min}
        ink: {medium: paint, colour: black, mixed before: 1 h}
        gold: {medium: paint, colour: gold}
        sand: {medium: paint, colour: tan}
        rust: {medium: dye, group: DCT, colour: sienna, mixed before: 1 h}
      designs:
        heron:
          size: 20 x 20 cm
          separations:
            - {screen: a, paste: blue, covers: 40 %%}
            - {screen: b, paste: ink, covers: 10 %%}
        dot: {size: 20 x 20 cm, separations: [{screen: a, paste: ink, covers: 40 %%}]}
        star: {size: 20 x 20 cm, separations: [{screen: b, paste: gold, covers: 40 %%}]}
        shell: {size: 20 x 20 cm, separations: [{screen: s, paste: sand, covers: 40 %%}]}
        leaf: {size: 20 x 20 cm, separations: [{screen: d, paste: rust, covers: 40 %%}]}
        banner: {size: 20 x 20 cm, separations: [{screen: wide, paste: blue, covers: 40 %%}]}
      placements:
        near: {design: heron, at: "20 cm, 20 cm"}
        pair: {design: heron, at: ["20 cm, 20 cm", "300 cm, 20 cm"]}
        far: {design: heron, at: "80 cm, 20 cm"}
        edge: {design: heron, at: "95 cm, 20 cm"}
        two: {design: heron, at: ["20 cm, 20 cm", "80 cm, 20 cm"]}
        loose: {design: heron, at: ["60 cm, 60 cm", "20 cm, 60 cm", "40 cm, 60 cm"]}
        side: {design: heron, at: ["95 cm, 78 cm", "95 cm, 50 cm"]}
        leaves: {design: leaf, at: "20 cm, 60 cm"}
        dots: {design: dot, at: "80 cm, 60 cm"}
        stars: {design: star, at: "20 cm, 60 cm"}
        shells: {design: shell, at: "60 cm, 60 cm"}
        banners: {design: banner, at: ["20 cm, 40 cm", "80 cm, 40 cm"]}
      run:
      %s""";

  private TinyDay() {}

  public static Timeline of(String crew, String run) {
    return of(crew, run, Worked.POLICY);
  }

  public static Timeline of(String crew, String run, Policy policy) {
    PrintPlan plan = Worked.of(PLAN.formatted(crew, run.indent(2))).plan();
    return Timeline.of(plan, Layout.of(plan, policy), policy);
  }

  static List<String> prints(Timeline day) {
    return day.tasks().stream()
        .filter(t -> t.kind() == Task.Kind.PRINT)
        .map(t -> DaySpeech.text(t.doing(), Measures.METRIC) + " " + clock(t.start()))
        .toList();
  }

  public static List<String> of(Timeline day, Task.Kind kind) {
    return day.tasks().stream()
        .filter(t -> t.kind() == kind)
        .map(
            t ->
                DaySpeech.text(t.doing(), Measures.METRIC)
                    + " "
                    + clock(t.start())
                    + "-"
                    + clock(t.end()))
        .toList();
  }

  /** What is done of a kind, and by whom. */
  static List<String> hands(Timeline day, Task.Kind kind) {
    return day.tasks().stream()
        .filter(t -> t.kind() == kind)
        .map(t -> DaySpeech.text(t.doing(), Measures.METRIC) + ": " + String.join(", ", t.people()))
        .toList();
  }

  static String clock(Moment moment) {
    long second = moment.seconds() % 60;
    return moment.clock() + (second == 0 ? "" : ":" + (second < 10 ? "0" : "") + second);
  }
}
