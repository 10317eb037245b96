package strikeoff.plan.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import strikeoff.artwork.DemoFilms;
import strikeoff.document.Problem;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.policy.yaml.PolicyReader;

/** A sound plan to spoil, one line at a time. */
final class Snippets {

  static final Policy POLICY = PolicyReader.builtIn();

  static final String SOUND =
      """
      plan: Shells on a runner
      cloth:
        fibre: cotton
        length: 3 m
        width: 60 cm
        ground: "#efe6d3"
      seams:
        centre: {at: 1.5 m}
      table: {length: 2.4 m, width: 1.2 m}
      crew: [Wren, Tam]
      screens:
        shell: {frame: 30 x 30 cm, image: 12 x 10 cm, mesh: 43/cm}
        key: {frame: 30 x 30 cm, image: 12 x 10 cm, mesh: 61/cm}
      pastes:
        sand: {medium: dye, group: DCT, colour: "#d9b77e", amount: 100 g}
        ink: {medium: dye, group: DCT, colour: "#2b3440", amount: 100 g}
      designs:
        shell:
          size: 10 x 8 cm
          separations:
            - {screen: shell, paste: sand, covers: 50 %}
            - {screen: key, paste: ink, covers: 10 %, key: yes}
      placements:
        row: {design: shell, series: 6, pitch: 40 cm, start: 10 cm, across: 20 cm}
        pearls: {design: shell, anchor: row, offset: "12 cm, 5 cm", which: 1-3}
      run:
        - mix: all
        - print: row
          only: 1-3, 5
        - print: pearls
        - sew: centre
        - dry: until fix-safe
        - fix: soak
          bath: {soda ash: 200 g, water: 5 L}
          for: 60 min
        - rinse: 20 °C
        - wash: 60 °C
      accept:
        - {rule: cloth/shrinks, at: cloth, because: It is a runner.}
      """;

  private Snippets() {}

  /** The sound plan with one piece of text replaced; the piece must stand in it once. */
  static String with(String old, String fresh) {
    int at = SOUND.indexOf(old);
    assertThat(at).as(old).isNotNegative();
    assertThat(SOUND.indexOf(old, at + 1)).as("a second " + old).isNegative();
    return SOUND.replace(old, fresh);
  }

  static PlanReading read(String text) {
    return DemoFilms.read("plan.yaml", text, POLICY);
  }

  static PrintPlan plan(String text) {
    PlanReading reading = read(text);
    assertThat(problems(reading)).isEmpty();
    return ((PlanReading.Readable) reading).plan();
  }

  /** As {@code 5:3 words}. */
  static List<String> problems(PlanReading reading) {
    List<String> told = new ArrayList<>();
    if (reading instanceof PlanReading.Unreadable u) {
      for (Problem p : u.problems()) {
        told.add(p.position() + " " + p.message());
      }
    }
    return told;
  }

  static List<String> problems(String text) {
    return problems(read(text));
  }
}
