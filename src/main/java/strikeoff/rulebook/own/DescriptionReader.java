package strikeoff.rulebook.own;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import strikeoff.evidence.Evidence;

/** Reads what a line says of a thing: sentences of the vocabulary, its values, other things. */
final class DescriptionReader extends PhraseReader {

  private final ComparisonReader comparisons;
  private final RelationReader relations;

  DescriptionReader(WrittenLine written) {
    super(written);
    this.relations = new RelationReader(written);
    this.comparisons = new ComparisonReader(written, relations);
  }

  /**
   * All that is said of a thing to the end of the line, or up to a word where something else
   * begins.
   */
  Optional<Got<List<Asked>>> all(int from, Class<?> type, Predicate<Integer> stop) {
    int at = from;
    if (at < line.size() && (line.at(at, "and") || line.at(at, "but"))) {
      at++;
    }
    if (at >= line.size() || stop.test(at)) {
      return Optional.of(new Got<>(List.of(), at));
    }
    int begins = at;
    if (line.at(begins, "or")) {
      written.fails(begins + 1, () -> "“or” wants an “either” before the first of what it parts");
      return Optional.empty();
    }
    for (Got<Asked> one : one(line, begins, type, stop)) {
      if (!written.mayTry()) {
        return Optional.empty();
      }
      Optional<Got<List<Asked>>> rest = all(one.end(), type, stop);
      if (rest.isPresent()) {
        List<Asked> asked = new ArrayList<>();
        asked.add(one.value());
        asked.addAll(rest.get().value());
        return Optional.of(new Got<>(asked, rest.get().end()));
      }
    }
    written.fails(
        begins,
        () -> {
          List<String> known = new ArrayList<>();
          words.more(type).forEach(s -> known.add(s.said()));
          known.addAll(examples(type));
          return "“"
              + line.from(begins)
              + "” is no sentence that is known here; the nearest is “"
              + words.nearest(line.from(begins), known)
              + "”";
        });
    return Optional.empty();
  }

  /** What a writer could say of the values of a type. */
  static List<String> examples(Class<?> type) {
    return Evidence.class.isAssignableFrom(type)
        ? AskableValues.of(type).values().stream().map(Value::exampleOfAsking).toList()
        : List.of();
  }

  /** Readings of one description, the longest first. */
  private List<Got<Asked>> one(Tokens read, int at, Class<?> type, Predicate<Integer> stop) {
    if (read.at(at, "either")) {
      return either(at, type, stop).stream().toList();
    }
    if (read.at(at, "not")) {
      return not(one(read, at + 1, type, stop), 0);
    }
    List<Got<Asked>> readings = new ArrayList<>();
    for (List<Sentence> some : List.of(words.more(type), words.moreOfMany(type))) {
      for (Sentence sentence : some) {
        for (Sentence.Match match : sentence.at(read, at)) {
          if (match.refused() >= 0) {
            written.fails(
                match.refused(),
                () ->
                    "in “"
                        + read.slice(at, match.end())
                        + "”, "
                        + match.why()
                        + "; the sentence is “"
                        + sentence.said()
                        + "”");
          } else {
            readings.add(new Got<>(together(sentence.filled(match, things::only)), match.end()));
          }
        }
      }
    }
    comparisons.whose(at, type).ifPresent(readings::add);
    relations.same(at, type).ifPresent(readings::add);
    relations.inTime(at, type).ifPresent(readings::add);
    readings.sort(Comparator.comparing(r -> -r.end()));
    if (readings.isEmpty() && read.at(at, "that") && at + 1 < read.size()) {
      return denied(read, at, type, stop);
    }
    return readings;
  }

  /** That isn't turned, that is not turned, that aren't turned. */
  private List<Got<Asked>> denied(Tokens read, int at, Class<?> type, Predicate<Integer> stop) {
    String verb = read.get(at + 1).text();
    if (verb.equalsIgnoreCase("isn't") || verb.equalsIgnoreCase("aren't")) {
      return not(one(read.with(at + 1, verb.substring(0, verb.length() - 3)), at, type, stop), 0);
    }
    return (verb.equalsIgnoreCase("is") || verb.equalsIgnoreCase("are")) && read.at(at + 2, "not")
        ? not(one(read.without(at + 2), at, type, stop), 1)
        : List.of();
  }

  private static List<Got<Asked>> not(List<Got<Asked>> readings, int further) {
    return readings.stream()
        .map(r -> new Got<Asked>(new Asked.Not(List.of(r.value())), r.end() + further))
        .toList();
  }

  private static Asked together(List<Asked> all) {
    return all.size() == 1 ? all.get(0) : new Asked.Either(List.of(all));
  }

  private Optional<Got<Asked>> either(int at, Class<?> type, Predicate<Integer> stop) {
    List<List<Asked>> ways = new ArrayList<>();
    int from = at + 1;
    while (true) {
      Optional<Got<List<Asked>>> way = all(from, type, i -> line.at(i, "or") || stop.test(i));
      if (way.isEmpty() || way.get().value().isEmpty()) {
        return Optional.empty();
      }
      ways.add(way.get().value());
      from = way.get().end();
      if (!line.at(from, "or")) {
        break;
      }
      from++;
    }
    if (ways.size() == 1) {
      int end = from;
      written.fails(end, () -> "“either” wants an “or” on the same line");
      return Optional.empty();
    }
    return Optional.of(new Got<>(new Asked.Either(ways), from));
  }
}
