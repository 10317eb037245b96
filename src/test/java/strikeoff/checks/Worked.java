package strikeoff.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Predicate;
import strikeoff.evidence.Evidence;
import strikeoff.facts.Facts;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.yaml.PlanReader;
import strikeoff.plan.yaml.PlanReading;
import strikeoff.policy.Policy;
import strikeoff.policy.yaml.PolicyReader;

/** A plan from text with all its facts, for tests that look at facts as a rule sees them. */
public record Worked(PrintPlan plan, Facts facts) {

  public static final Policy POLICY = PolicyReader.builtIn();

  private static final String START =
      """
      plan: test
      cloth: {fibre: cotton, mass: 180 g/m², length: 2 m, width: 1 m, washed: yes}
      table: {length: 2.4 m, width: 1.4 m}
      screens:
        reeds: {frame: 50 x 44 cm, image: 31 x 24 cm, mesh: 43/cm, thread: 80 µm}
      """;

  public static Worked of(String text) {
    PlanReading reading = PlanReader.read("test.yaml", text, POLICY);
    assertThat(reading).as("%s", reading).isInstanceOf(PlanReading.Readable.class);
    PrintPlan plan = ((PlanReading.Readable) reading).plan();
    return new Worked(plan, Facts.derive(plan, POLICY));
  }

  /** Reeds in one colour on two metres of cotton, with pastes, placements and run as given. */
  public static Worked reeds(String rest) {
    return of(START + rest);
  }

  /** Three reeds of the given green paste, printed and dried, and then the given steps. */
  public static Worked reeds(String green, String steps) {
    return reeds(
        """
        pastes:
          green: {%s}
        designs:
          reeds: {size: 30 x 22 cm, separations: [{screen: reeds, paste: green, covers: 40 %%}]}
        placements:
          reeds: {design: reeds, series: 3, pitch: 60 cm, start: 10 cm, across: 30 cm}
        run:
        %s"""
            .formatted(green, steps.indent(2)));
  }

  /** All facts of a kind. */
  public <T extends Evidence> List<T> all(Class<T> kind) {
    return facts.evidence().stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  /** The facts of a kind that are so. */
  public <T extends Evidence> List<T> all(Class<T> kind, Predicate<T> so) {
    return all(kind).stream().filter(so).toList();
  }

  /** The only fact of a kind that is so. */
  public <T extends Evidence> T the(Class<T> kind, Predicate<T> so) {
    List<T> all = all(kind, so);
    assertThat(all).as(kind.getSimpleName()).hasSize(1);
    return all.get(0);
  }

  /** The only fact of a kind. */
  public <T extends Evidence> T the(Class<T> kind) {
    List<T> all = all(kind);
    assertThat(all).as(kind.getSimpleName()).hasSize(1);
    return all.get(0);
  }
}
