package strikeoff.rulebook.own;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drools.model.Rule;

/**
 * A studio's own rules, ready to run.
 *
 * @param rules what stands in the files
 * @param models what the engine runs, one for each alternative of a rule
 */
public record OwnRules(List<OwnRule> rules, List<Rule> models) {

  /** More than anybody keeps an eye on. */
  private static final int MOST_RULES = 2000;

  public static final OwnRules NONE = new OwnRules(List.of(), List.of());

  public OwnRules {
    rules = List.copyOf(rules);
    models = List.copyOf(models);
  }

  /**
   * Reads rules.
   *
   * @throws RuleMistakes with every mistake that shows
   */
  public static OwnRules of(List<RuleFile> files) throws RuleMistakes {
    return files.isEmpty() ? NONE : of(files, Vocabulary.shipped());
  }

  /** The same in other sentences than those that come with the program. */
  public static OwnRules of(List<RuleFile> files, Vocabulary words) throws RuleMistakes {
    List<RuleMistake> mistakes = new ArrayList<>();
    List<OwnRule> rules = new ArrayList<>();
    List<SentenceRule> read = new ArrayList<>();
    int ways = 0;
    for (RuleFile file : files) {
      if (mistakes.size() >= RuleMistakes.MOST) {
        // Told at the file that was left; nobody mends more in one go.
        break;
      }
      SentenceFile one = SentenceFile.of(file, words, mistakes);
      rules.addAll(one.rules());
      read.addAll(one.read());
      ways += one.read().stream().mapToInt(rule -> rule.ways().size()).sum();
      if (ways > MOST_RULES) {
        mistakes.add(
            new RuleMistake(
                file.name(),
                0,
                "more than "
                    + MOST_RULES
                    + " rules up to here, each way of “either … or …” counted; no more are read"));
        break;
      }
    }
    twice(rules, mistakes);
    if (!mistakes.isEmpty()) {
      throw new RuleMistakes(mistakes);
    }
    return new OwnRules(rules, read.stream().flatMap(rule -> rule.models().stream()).toList());
  }

  public Optional<OwnRule> rule(String id) {
    return rules.stream().filter(r -> r.id().equals(id)).findFirst();
  }

  /** The id of the rule that something the engine runs belongs to. */
  public static String idOf(String model) {
    int way = model.indexOf(' ');
    return way < 0 ? model : model.substring(0, way);
  }

  private static void twice(List<OwnRule> rules, List<RuleMistake> mistakes) {
    Map<String, OwnRule> first = new LinkedHashMap<>();
    for (OwnRule rule : rules) {
      OwnRule other = first.putIfAbsent(rule.id(), rule);
      if (other != null) {
        mistakes.add(
            new RuleMistake(
                rule.file(),
                rule.line(),
                "a rule is called "
                    + rule.id()
                    + " already, at "
                    + other.file()
                    + ":"
                    + other.line()));
      }
    }
  }
}
