package strikeoff.rulebook.own;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import strikeoff.units.Parsed;
import strikeoff.units.Script;
import strikeoff.units.Spelling;

/**
 * A line that is being read, with what is known where it stands. Of all attempts that make no sense
 * that is told which came furthest.
 */
final class WrittenLine {

  /** So many attempts are made at a line. Each sentence of the documents takes a hundredth. */
  private static final int MOST_ATTEMPTS = 20_000;

  private final Tokens line;
  private final Vocabulary words;
  private final Things things;
  private int furthest = -1;
  private Supplier<String> why = () -> "";
  private int attempts;

  WrittenLine(Tokens line, Vocabulary words, Things things) {
    this.line = line;
    this.words = words;
    this.things = things;
  }

  Tokens line() {
    return line;
  }

  Vocabulary words() {
    return words;
  }

  Things things() {
    return things;
  }

  /**
   * An attempt that makes no sense from a word on; of two that come equally far the first counts.
   */
  void fails(int word, Supplier<String> message) {
    if (word > furthest) {
      furthest = word;
      why = message;
    }
  }

  /** Why the line makes no sense. */
  String why() {
    return why.get();
  }

  /** False once enough has been tried. */
  boolean mayTry() {
    attempts++;
    if (attempts == MOST_ATTEMPTS) {
      furthest = Integer.MAX_VALUE;
      why = () -> "this line can be read in too many ways; say it in two";
    }
    return attempts < MOST_ATTEMPTS;
  }

  /** “more than”, “at least” and so on. */
  Optional<Got<How>> how(int at) {
    return How.at(line, at);
  }

  /** An amount of a kind. */
  Optional<Got<Double>> figure(int at, Kind kind) {
    String refused = "";
    for (Kind.Read read : kind.at(line, at)) {
      if (read.value() instanceof Parsed.Value<Object> value) {
        return Optional.of(new Got<>((Double) value.value(), at + read.words()));
      }
      refused = ((Parsed.Refused<Object>) read.value()).message();
    }
    String why = refused.isEmpty() ? "an amount was expected at the end of the line" : refused;
    fails(at, () -> why);
    return Optional.empty();
  }

  /** A value of a type that is named from a word on, by the longest name. */
  Optional<Got<Value>> value(int at, Class<?> type) {
    Optional<Got<Value>> found = Optional.empty();
    for (Map.Entry<String, Value> value : AskableValues.of(type).entrySet()) {
      String[] name = value.getKey().split(" ");
      if (line.at(at, name) && found.stream().allMatch(f -> f.end() < at + name.length)) {
        found = Optional.of(new Got<>(value.getValue(), at + name.length));
      }
    }
    return found;
  }

  /** What there is instead of a value that isn't. */
  static String noValue(String written, Class<?> type, Predicate<Kind> wanted) {
    List<String> known =
        AskableValues.of(type).values().stream()
            .filter(v -> wanted.test(v.kind()))
            .map(Value::words)
            .toList();
    if (written.isBlank()) {
      return "a value was expected here; there are " + String.join(", ", known);
    }
    String meant = Spelling.didYouMean(written, known);
    return "nothing here is called "
        + Script.quoted(written)
        + (meant.isEmpty() ? "; there are " + String.join(", ", known) : meant);
  }

  /** True if some words can be a sentence; why they can't is kept. */
  boolean isRead(Sentence sentence, Sentence.Match match, Tokens read, int at) {
    if (match.refused() >= 0) {
      fails(
          match.refused(),
          () ->
              "in “"
                  + read.slice(at, match.end())
                  + "”, "
                  + match.why()
                  + "; the sentence is “"
                  + sentence.said()
                  + "”");
    }
    return match.refused() < 0;
  }

  /** A thing that is named. */
  record Named(Sentence sentence, Sentence.Match match) {}

  /** Things that are named from a word on, the longest name first. */
  List<Named> nouns(int at, boolean many) {
    List<Named> named = new ArrayList<>();
    for (Vocabulary.Noun noun : words.nouns()) {
      Sentence sentence = many ? noun.many() : noun.one();
      sentence.at(line, at).stream()
          .filter(match -> match.refused() < 0)
          .forEach(match -> named.add(new Named(sentence, match)));
    }
    named.sort(Comparator.comparing(f -> -f.match().end()));
    return named;
  }

  void unknownNoun(int at, boolean many) {
    fails(
        at,
        () -> {
          List<String> all = new ArrayList<>();
          words.nouns().forEach(n -> all.add((many ? n.many() : n.one()).words()));
          Collections.sort(all);
          return "“"
              + line.from(at)
              + "” doesn't begin with a thing that is known here; the nearest is “"
              + words.nearest(line.from(at), all)
              + "”";
        });
  }
}
