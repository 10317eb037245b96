package strikeoff.plan.yaml;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import strikeoff.policy.Fibre;
import strikeoff.policy.Policy;
import strikeoff.policy.ReactiveGroup;
import strikeoff.policy.Substance;
import strikeoff.units.Parsed;
import strikeoff.units.Script;
import strikeoff.units.Spelling;
import strikeoff.yaml.Expected;
import strikeoff.yaml.Values;

/** Finds what the policy's tables know by any of its names, whatever the case. */
final class Lookup {

  /** So many names still read as one sentence. */
  private static final int FEW = 12;

  private Lookup() {}

  static Parsed<String> fibre(String written, Policy policy) {
    Map<String, String> known = new LinkedHashMap<>();
    for (Fibre f : policy.fibres()) {
      known.put(fold(f.name()), f.name());
      f.aliases().forEach(a -> known.put(fold(a), f.name()));
    }
    List<String> several =
        Arrays.stream(fold(written).split("[^a-z]+"))
            .filter(known::containsKey)
            .map(known::get)
            .distinct()
            .toList();
    return several.size() > 1 && !known.containsKey(fold(written))
        ? Parsed.refused(
            Script.quoted(written)
                + " is a blend; give its shares such as {"
                + several.get(0)
                + ": 65 %, "
                + several.get(1)
                + ": 35 %}")
        : find(written, known, "fibre");
  }

  static Parsed<String> substance(String written, Policy policy) {
    Map<String, String> known = new LinkedHashMap<>();
    for (Substance s : policy.substances()) {
      known.put(fold(s.name()), s.name());
      s.aliases().forEach(a -> known.put(fold(a), s.name()));
    }
    return find(written, known, "substance");
  }

  static Expected<String> group(Policy policy) {
    Map<String, String> known = new LinkedHashMap<>();
    for (ReactiveGroup g : policy.groups()) {
      known.put(fold(g.name()), g.name());
      g.aliases().forEach(a -> known.put(fold(a), g.name()));
    }
    return Values.scalar(
        "the dye's reactive group such as dichlorotriazine",
        policy.groups().get(0).name(),
        text -> find(text, known, "reactive group"));
  }

  private static Parsed<String> find(String written, Map<String, String> known, String what) {
    String found = known.get(fold(written));
    return found != null
        ? Parsed.value(found)
        : Parsed.refused(
            "no " + what + " is known as " + Script.quoted(written) + hint(written, known));
  }

  /** The word that was meant; else all there are, where they are few enough to read. */
  private static String hint(String written, Map<String, String> known) {
    String meant = Spelling.didYouMean(written, known.keySet());
    List<String> all = known.values().stream().distinct().toList();
    return meant.isEmpty() && all.size() <= FEW ? "; known are " + String.join(", ", all) : meant;
  }

  private static String fold(String name) {
    return name.toLowerCase(Locale.ROOT);
  }
}
