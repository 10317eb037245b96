package strikeoff.plan.yaml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strikeoff.document.PlanPath;
import strikeoff.plan.Acceptance;
import strikeoff.units.Parsed;
import strikeoff.units.Script;
import strikeoff.units.Spelling;
import strikeoff.yaml.Fields;
import strikeoff.yaml.Item;
import strikeoff.yaml.Problems;
import strikeoff.yaml.Reading;
import strikeoff.yaml.ValueKinds;

/** Reads which findings the printer accepts, and why. */
final class AcceptPart {

  private static final String REASON = "the reason, in a sentence,";
  private static final String RULE = "a rule's name such as seams/ridge-under-squeegee";

  private final Reading reading;
  private final Set<PlanPath> paths;
  private final Map<String, PlanPath> bySpoken = new LinkedHashMap<>();
  private final List<String> likely = new ArrayList<>();

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
    return root.required(
        "accept", Lists.of("a rule with a reason", this::acceptance, "rule", "because"));
  }

  private Acceptance acceptance(Item item) {
    Fields f = Fields.of(item, "an accepted finding", reading);
    Acceptance acceptance =
        new Acceptance(
            f.required("rule", ValueKinds.scalar(RULE, "", AcceptPart::rule)),
            at(f),
            f.required("because", ValueKinds.scalar(REASON, "", AcceptPart::reason)),
            f.path());
    f.done();
    return acceptance;
  }

  /** What nobody can read is no reason. */
  private static Parsed<String> reason(String text) {
    return text.codePoints().noneMatch(Character::isLetter)
        ? Parsed.refused(REASON + " was expected; nobody can read one here")
        : ValueKinds.ofLength(text, 500);
  }

  private static Parsed<String> rule(String text) {
    return text.matches("[a-z0-9-]+/[a-z0-9-]+")
        ? Parsed.value(text)
        : Parsed.refused(RULE + " was expected; " + Script.quoted(text) + " is not one");
  }

  private Optional<String> at(Fields f) {
    return f.optional(
        "at",
        ValueKinds.scalar("a place of the plan such as step 3 or seams.centre", "", this::place));
  }

  /** As people write it, or as programs do. */
  private Parsed<String> place(String text) {
    if (paths.contains(new PlanPath(text))) {
      return Parsed.value(text);
    }
    PlanPath path = spoken().get(text);
    return path != null
        ? Parsed.value(path.text())
        : Parsed.refused("no place of this plan is called " + Script.quoted(text) + meant(text));
  }

  /** Nothing once so much is wrong that no more is told: a long plan has many places. */
  private String meant(String text) {
    if (reading.problems().count() >= Problems.MOST) {
      return "";
    }
    if (likely.isEmpty()) {
      // Nobody means what is accepted, and of that there may be most.
      spoken()
          .forEach(
              (name, path) -> {
                if (!path.text().startsWith("accept")) {
                  likely.add(name);
                }
              });
    }
    return Spelling.didYouMean(text, likely);
  }

  /**
   * Every place by what people call it; in order, so that the nearest one is the same each time.
   */
  private Map<String, PlanPath> spoken() {
    if (bySpoken.isEmpty()) {
      paths.stream().sorted().forEach(path -> bySpoken.putIfAbsent(path.spoken(), path));
    }
    return bySpoken;
  }
}
