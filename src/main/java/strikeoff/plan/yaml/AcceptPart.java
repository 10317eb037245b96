package strikeoff.plan.yaml;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import strikeoff.plan.Acceptance;
import strikeoff.plan.PlanPath;
import strikeoff.units.Parsed;
import strikeoff.units.Script;
import strikeoff.units.Spelling;
import strikeoff.yaml.Expected;
import strikeoff.yaml.Fields;
import strikeoff.yaml.Item;
import strikeoff.yaml.Reading;
import strikeoff.yaml.Values;

/** Reads which findings the printer accepts, and why. */
final class AcceptPart {

  private static final String RULE = "a rule's name such as seams/ridge-under-squeegee";

  private final Reading reading;
  private final Set<PlanPath> paths;

  /**
   * @param paths every path that stands in the plan
   */
  AcceptPart(Reading reading, Set<PlanPath> paths) {
    this.reading = reading;
    this.paths = paths;
  }

  List<Acceptance> acceptances(Fields root) {
    if (!root.has("accept")) {
      return List.of();
    }
    return root.required("accept", Lists.of("a rule with a reason", this::acceptance));
  }

  private Acceptance acceptance(Item item) {
    Fields f = Fields.of(item, "an accepted finding", reading);
    Acceptance acceptance =
        new Acceptance(
            f.required("rule", Values.scalar(RULE, "", AcceptPart::rule)),
            at(f),
            f.required("because", Values.text("the reason, in a sentence,", 500)),
            f.path());
    f.done();
    return acceptance;
  }

  private static Parsed<String> rule(String text) {
    return text.matches("[a-z0-9-]+/[a-z0-9-]+")
        ? Parsed.value(text)
        : Parsed.refused(RULE + " was expected; " + Script.quoted(text) + " is not one");
  }

  private Optional<String> at(Fields f) {
    Expected<String> place =
        Values.scalar(
            "a place of the plan such as seams.centre",
            "",
            text ->
                paths.contains(new PlanPath(text))
                    ? Parsed.value(text)
                    : Parsed.refused(
                        "no place of this plan is called "
                            + Script.quoted(text)
                            + Spelling.didYouMean(text, sorted())));
    return f.optional("at", place);
  }

  private List<String> sorted() {
    return paths.stream().map(PlanPath::text).sorted().toList();
  }
}
