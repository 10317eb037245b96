package strikeoff.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import strikeoff.check.Checker;
import strikeoff.findings.Sources;
import strikeoff.plan.yaml.Stock;
import strikeoff.policy.Default;
import strikeoff.policy.Limit;
import strikeoff.policy.Policy;
import strikeoff.policy.yaml.PolicyReader;
import strikeoff.studio.Studio;

/** Says what a studio's policy files set, and where each value comes from. */
public record PolicyText(int width, Ink ink) {

  public List<String> of(Checker checker) {
    Studio studio = checker.studio();
    List<String> lines = new ArrayList<>();
    lines.add("");
    lines.add(ink.bold("policy"));
    lines.addAll(
        Plain.wrap("  ", "  ", "From the top down: " + String.join(", ", studio.files()), width));
    Policy builtIn = PolicyReader.builtIn();
    Map<String, String> set = new TreeMap<>();
    for (Limit limit : studio.policy().limits().values()) {
      Limit before = builtIn.limits().get(limit.name());
      if (!limit.equals(before)) {
        set.put(
            "limit " + limit.name(),
            limit.value().text()
                + " instead of "
                + before.value().text()
                + " ("
                + Sources.shown(limit.source())
                + ")");
      }
    }
    for (Default<?> standard : studio.policy().defaults().values()) {
      if (!standard.equals(builtIn.defaults().get(standard.name()))) {
        set.put(
            "default " + standard.name(),
            standard.text() + " (" + Sources.shown(standard.source()) + ")");
      }
    }
    studio
        .severities()
        .forEach((rule, s) -> set.put("rule " + rule, s.value().text() + " (" + s.where() + ")"));
    studio
        .off()
        .forEach(
            (rule, s) -> set.put("rule " + rule, "off: " + s.value() + " (" + s.where() + ")"));
    studio
        .accepting()
        .forEach(
            s ->
                set.put(
                    "accept",
                    (s.value().all()
                            ? "all"
                            : s.value().rules().isEmpty()
                                ? "none"
                                : String.join(", ", s.value().rules().stream().sorted().toList()))
                        + " ("
                        + s.where()
                        + ")"));
    stock("", studio.stock().places(), set);
    stock("screen ", studio.stock().screens(), set);
    stock("paste ", studio.stock().pastes(), set);
    set.forEach(
        (what, value) -> lines.addAll(Plain.wrap("  " + what + ": ", "      ", value, width)));
    return lines;
  }

  private static void stock(String what, Map<String, Stock.Held> stock, Map<String, String> set) {
    stock.forEach((name, held) -> set.put(what + name, held.source()));
  }
}
