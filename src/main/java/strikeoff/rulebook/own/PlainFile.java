package strikeoff.rulebook.own;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import strikeoff.rulebook.RuleText;

/** A file of rules in the form that the built-in ones have. */
record PlainFile(DrlSource source, List<OwnRule> rules) {

  private static final Pattern RULE = Pattern.compile("^\\s*rule\\s+\"([^\"]*)\".*");
  private static final Pattern PACKAGE = Pattern.compile("^\\s*package\\s+([\\w.]+).*");
  private static final List<String> SAID =
      List.of("severity", "summary", "because", "message", "remedy", "source");

  static PlainFile of(RuleFile file, List<RuleMistake> mistakes) {
    List<String> lines = file.text().lines().toList();
    List<OwnRule> rules = new ArrayList<>();
    boolean inPackage = false;
    for (int i = 0; i < lines.size(); i++) {
      Matcher place = PACKAGE.matcher(lines.get(i));
      if (place.matches()) {
        inPackage = place.group(1).equals("rules." + file.family());
      }
      Matcher rule = RULE.matcher(lines.get(i));
      if (rule.matches()) {
        rules.add(rule(file, lines, i, rule.group(1), mistakes));
      }
    }
    Optional<DrlOutline> outline = DrlOutline.of(file.text());
    if (outline.isPresent()) {
      inPackage = outline.get().family().equals("rules." + file.family());
      compared(file, rules, outline.get(), mistakes);
    }
    if (!inPackage) {
      mistakes.add(
          new RuleMistake(
              file.name(), 1, "“package rules." + file.family() + "” was expected at the top"));
    }
    if (rules.isEmpty()) {
      mistakes.add(new RuleMistake(file.name(), 0, "no rule “" + file.family() + "/…” is here"));
    }
    List<Integer> own = IntStream.rangeClosed(1, lines.size()).boxed().toList();
    return new PlainFile(new DrlSource(file, file.text(), own), rules);
  }

  /** What the parser sees is what counts; the lines are only found by their look. */
  private static void compared(
      RuleFile file, List<OwnRule> found, DrlOutline outline, List<RuleMistake> mistakes) {
    for (OwnRule rule : found) {
      if (!outline.rules().contains(rule.id())) {
        mistakes.add(
            new RuleMistake(
                file.name(),
                rule.line(),
                "“" + rule.id() + "” stands in a comment or a text; take it out"));
      }
    }
    Set<String> ids = found.stream().map(OwnRule::id).collect(Collectors.toSet());
    for (String rule : outline.rules()) {
      if (!ids.contains(rule)) {
        mistakes.add(
            new RuleMistake(
                file.name(),
                0,
                "the rule “"
                    + rule
                    + "” was expected on a line that begins with rule \""
                    + file.family()
                    + "/what-is-wrong\""));
      }
    }
    for (String clock : outline.clocks()) {
      mistakes.add(
          new RuleMistake(
              file.name(), 0, "a rule can't ask a clock; “" + clock + "” would have it do so"));
    }
  }

  private static OwnRule rule(
      RuleFile file, List<String> lines, int from, String id, List<RuleMistake> mistakes) {
    int to = from;
    while (to < lines.size() && !lines.get(to).strip().equals("end")) {
      to++;
    }
    List<String> text = lines.subList(from, Math.min(to + 1, lines.size()));
    String whole = String.join("\n", text);
    if (!id.matches(file.family() + "/" + RuleText.FAULT)) {
      mistakes.add(
          new RuleMistake(
              file.name(),
              from + 1,
              "a rule of this folder is called “"
                  + file.family()
                  + "/what-is-wrong”, in small letters; “"
                  + id
                  + "” isn't"));
    }
    for (String key : SAID) {
      if (!whole.contains("@" + key + "(")) {
        mistakes.add(new RuleMistake(file.name(), from + 1, "the rule has no @" + key + "(\"…\")"));
      }
    }
    return new OwnRule(id, file.name(), from + 1, text, RuleText.limits(whole));
  }
}
