package strikeoff.rulebook.own;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import strikeoff.day.Resource;
import strikeoff.described.StepKinds;
import strikeoff.plan.Draught;
import strikeoff.plan.Protection;
import strikeoff.policy.Policy;
import strikeoff.policy.yaml.PolicyReader;
import strikeoff.units.Parsed;
import strikeoff.units.Script;
import strikeoff.units.Spelling;

/**
 * Words of which all are known: a rule that asks for another one is never answered, and its gate
 * stands open without anybody seeing it.
 *
 * @param what a word of them is, in words
 * @param meanings what facts call it, by each spelling, in the order of the table
 */
record KnownWords(String what, Map<String, String> meanings) {

  /** So many still read as one sentence. */
  private static final int FEW = 16;

  KnownWords {
    meanings = new LinkedHashMap<>(meanings);
  }

  static KnownWords groups() {
    Map<String, String> words = new LinkedHashMap<>();
    tables().groups().forEach(g -> put(words, g.name(), g.aliases()));
    return new KnownWords("reactive group", words);
  }

  static KnownWords fibres() {
    Map<String, String> words = new LinkedHashMap<>();
    tables().fibres().forEach(f -> put(words, f.name(), f.aliases()));
    return new KnownWords("fibre", words);
  }

  static KnownWords substances() {
    Map<String, String> words = new LinkedHashMap<>();
    tables().substances().forEach(s -> put(words, s.name(), s.aliases()));
    return new KnownWords("substance", words);
  }

  private static Policy tables() {
    return PolicyReader.builtIn();
  }

  static KnownWords media() {
    return new KnownWords("medium", Map.of("dye", "dye", "dye paste", "dye", "paint", "paint"));
  }

  static KnownWords steps() {
    return of("kind of step", StepKinds.all().stream());
  }

  static KnownWords baths() {
    return of("fixing or finishing step", StepKinds.baths().stream());
  }

  static KnownWords fixing() {
    return of("way of fixing dye", StepKinds.fixing().stream());
  }

  static KnownWords airs() {
    return of("moved air", Stream.of(Draught.By.values()).map(Draught.By::text));
  }

  static KnownWords resources() {
    return of("kind of thing in use", Stream.of(Resource.Kind.values()).map(Resource.Kind::text));
  }

  static KnownWords protections() {
    return of("protection", Stream.of(Protection.values()).map(Protection::text));
  }

  static KnownWords placings() {
    return of("kind of arrangement", Stream.of("series", "border", "fill", "anchored", "placed"));
  }

  /** The words of a kind of thing that the program itself tells apart. */
  static KnownWords of(Class<?> kind) {
    Map<String, String> words = new LinkedHashMap<>();
    for (Object one : kind.getEnumConstants()) {
      put(
          words,
          String.valueOf(AskableValues.called((Enum<?>) one)),
          List.of(((Enum<?>) one).name().toLowerCase(Locale.ROOT).replace('_', ' ')));
    }
    return new KnownWords(AskableValues.words(kind.getSimpleName()), words);
  }

  private static KnownWords of(String what, Stream<String> words) {
    Map<String, String> all = new LinkedHashMap<>();
    words.forEach(word -> put(all, word, List.of()));
    return new KnownWords(what, all);
  }

  private static void put(Map<String, String> words, String name, List<String> aliases) {
    words.put(name, name);
    aliases.forEach(alias -> words.putIfAbsent(alias, name));
  }

  private static String fold(String word) {
    return word.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
  }

  /** What facts call it, for any of its spellings. */
  Parsed<String> read(String written) {
    String folded = fold(written);
    for (Map.Entry<String, String> known : meanings.entrySet()) {
      if (fold(known.getKey()).equals(folded)) {
        return Parsed.value(known.getValue());
      }
    }
    String meant = Spelling.didYouMean(written, meanings.keySet());
    List<String> all = names();
    return Parsed.refused(
        "no "
            + what
            + " is called "
            + Script.quoted(written)
            + (meant.isEmpty() && all.size() <= FEW
                ? "; there are " + String.join(", ", all)
                : meant));
  }

  /** What facts call them. */
  List<String> names() {
    return meanings.values().stream().distinct().sorted().toList();
  }

  /** Each name with its other spellings in brackets. */
  List<String> listed() {
    Map<String, List<String>> others = new TreeMap<>();
    meanings.forEach(
        (word, name) -> {
          List<String> spellings = others.computeIfAbsent(name, n -> new ArrayList<>());
          if (!word.equals(name)) {
            spellings.add(word);
          }
        });
    return others.entrySet().stream()
        .map(
            e ->
                e.getKey()
                    + (e.getValue().isEmpty() ? "" : " (" + String.join(", ", e.getValue()) + ")"))
        .toList();
  }

  /** Spellings of several words, which may stand without quotes; the longest first. */
  List<String> phrases() {
    return meanings.keySet().stream()
        .filter(word -> word.contains(" "))
        .sorted((a, b) -> b.length() - a.length())
        .toList();
  }
}
