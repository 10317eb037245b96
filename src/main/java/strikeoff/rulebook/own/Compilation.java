package strikeoff.rulebook.own;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Takes rule files to compiled rules; runs only when no cache knows them. */
final class Compilation {

  private Compilation() {}

  static CompiledRules of(List<RuleFile> files) throws RuleMistakes {
    List<RuleMistake> mistakes = new ArrayList<>();
    Vocabulary words = Vocabulary.shipped().with(files, mistakes);
    List<DrlSource> sources = new ArrayList<>();
    List<OwnRule> rules = new ArrayList<>();
    for (RuleFile file : files) {
      if (mistakes.size() >= RuleMistakes.MOST) {
        // Told at the file that was left; nobody mends more in one go.
        break;
      }
      if (file.isSentences()) {
        SentenceFile sentences = SentenceFile.of(file, words, mistakes);
        sources.add(sentences.source());
        rules.addAll(sentences.rules());
      } else if (file.isPlain()) {
        PlainFile plain = PlainFile.of(file, mistakes);
        sources.add(plain.source());
        rules.addAll(plain.rules());
      }
    }
    twice(rules, mistakes);
    if (!mistakes.isEmpty()) {
      throw new RuleMistakes(mistakes);
    }
    if (rules.isEmpty()) {
      return new CompiledRules(List.of(), List.of(), Map.of());
    }
    OwnCompiler.Compiled compiled = OwnCompiler.compile(sources);
    return new CompiledRules(rules, compiled.models(), compiled.classes());
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
