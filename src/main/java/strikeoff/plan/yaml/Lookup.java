package strikeoff.plan.yaml;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import strikeoff.policy.Fibre;
import strikeoff.policy.Policy;
import strikeoff.policy.ReactiveGroup;
import strikeoff.policy.Substance;
import strikeoff.units.Parsed;
import strikeoff.units.Script;
import strikeoff.units.Spelling;
import strikeoff.yaml.Expected;
import strikeoff.yaml.ValueKinds;

/** Finds what the policy's tables know by any of its names, whatever the case. */
final class Lookup {

  /** So many names still read as one sentence. */
  private static final int FEW = 12;

  /** Classes of dye that are printed by hand too, and that nothing here is known about. */
  private static final Set<String> OTHER_DYES =
      Set.of(
          "acid",
          "direct",
          "disperse",
          "vat",
          "basic",
          "cationic",
          "sulphur",
          "sulfur",
          "azoic",
          "metal complex",
          "mordant",
          "natural",
          "indigo",
          "all purpose",
          "pigment");

  /**
   * Thickeners of other dyes; reactive dye binds to them, or nothing is known of their strength.
   */
  private static final Set<String> OTHER_THICKENERS =
      Set.of(
          "guar",
          "guar gum",
          "gum arabic",
          "gum tragacanth",
          "tragacanth",
          "locust bean gum",
          "starch",
          "corn starch",
          "cellulose gum",
          "carboxymethyl cellulose",
          "cmc",
          "methyl cellulose",
          "xanthan",
          "xanthan gum",
          "gum senegal",
          "emulsion");

  private static final String JUDGED =
      "only thickened reactive dye and pigment paint are judged here";

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
    return OTHER_THICKENERS.contains(plain(written))
        ? Parsed.refused(
            Script.quoted(written)
                + " isn't known: "
                + JUDGED
                + ", and of thickeners for dye alginate alone, since reactive dye binds to most others")
        : find(written, known, "substance");
  }

  static Expected<String> group(Policy policy) {
    Map<String, String> known = new LinkedHashMap<>();
    for (ReactiveGroup g : policy.groups()) {
      known.put(g.name(), g.name());
      g.aliases().forEach(a -> known.put(a, g.name()));
    }
    return ValueKinds.scalar(
        "the dye's reactive group such as dichlorotriazine",
        policy.groups().get(0).name(),
        text ->
            OTHER_DYES.contains(plain(text).replaceFirst(" dyes?$", ""))
                ? Parsed.refused(Script.quoted(text) + " is no reactive group: " + JUDGED)
                : find(text, known, "reactive group"));
  }

  /** As {@code dichlorotriazine (DCT)}, so that whoever knows it by the short name finds it. */
  private static String withOthers(String name, Map<String, String> known) {
    List<String> others =
        known.entrySet().stream()
            .filter(e -> e.getValue().equals(name) && !e.getKey().equals(name))
            .map(Map.Entry::getKey)
            .toList();
    return others.isEmpty() ? name : name + " (" + String.join(", ", others) + ")";
  }

  private static Parsed<String> find(String written, Map<String, String> known, String what) {
    return known.entrySet().stream()
        .filter(e -> fold(e.getKey()).equals(fold(written)))
        .findFirst()
        .map(e -> Parsed.value(e.getValue()))
        .orElseGet(
            () ->
                Parsed.refused(
                    "no "
                        + what
                        + " is known as "
                        + Script.quoted(written)
                        + hint(written, known)));
  }

  /** The word that was meant; else all there are, where they are few enough to read. */
  private static String hint(String written, Map<String, String> known) {
    String meant = Spelling.didYouMean(written, known.keySet());
    List<String> all = known.values().stream().distinct().toList();
    return meant.isEmpty() && all.size() <= FEW
        ? "; known are "
            + all.stream().map(n -> withOthers(n, known)).collect(Collectors.joining(", "))
        : meant;
  }

  /** Typed with hyphens or without. */
  private static String plain(String name) {
    return fold(name).strip().replaceAll("[-_ ]+", " ");
  }

  private static String fold(String name) {
    return name.toLowerCase(Locale.ROOT);
  }
}
