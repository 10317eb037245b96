package strikeoff.rulebook.own;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import strikeoff.rulebook.own.Vocabulary.Use;

/** Reads lines that ask for what has most or least of something, or ask it of every thing. */
final class ExtremeReader extends PhraseReader {

  private final LineReader lines;
  private final DescriptionReader descriptions;

  private static final List<String> GREATEST =
      List.of("greatest", "most", "largest", "highest", "longest", "widest");
  private static final List<String> LEAST =
      List.of("least", "fewest", "smallest", "lowest", "shortest", "narrowest");

  ExtremeReader(WrittenLine written, LineReader lines, DescriptionReader descriptions) {
    super(written);
    this.lines = lines;
    this.descriptions = descriptions;
  }

  /** The finest screen …, the series with the most placements …. */
  Optional<Got<Clause>> extreme(int at, Predicate<Integer> stop) {
    for (Use use : List.of(Use.GREATEST, Use.LEAST)) {
      for (Sentence sentence : words.sentences(use)) {
        for (Sentence.Match match : sentence.at(line, at)) {
          // What comes last is the value that is greatest or least.
          List<Asked> asked = sentence.filled(match, things::only);
          Asked.Compared last = (Asked.Compared) asked.get(asked.size() - 1);
          Optional<Got<Clause>> got =
              extreme(
                  sentence.type(),
                  asked.subList(0, asked.size() - 1),
                  last.value(),
                  use == Use.GREATEST,
                  at,
                  match.end(),
                  stop);
          if (got.isPresent()) {
            return got;
          }
        }
      }
    }
    if (!line.at(at, "the")) {
      return Optional.empty();
    }
    for (WrittenLine.Named noun : written.nouns(at + 1, false)) {
      int with = noun.match().end();
      if (!line.at(with, "with", "the") || with + 2 >= line.size()) {
        continue;
      }
      String how = line.get(with + 2).text();
      boolean greatest = GREATEST.contains(how);
      if (!greatest && !LEAST.contains(how)) {
        written.fails(with + 2, () -> "“the greatest” or “the least” was expected");
        continue;
      }
      Class<?> type = noun.sentence().type();
      Optional<Got<Value>> value = written.value(with + 3, type);
      if (value.isEmpty() || !value.get().value().isAmount()) {
        written.fails(
            with + 3, () -> WrittenLine.noValue(line.from(with + 3), type, Kind::isAmount));
        continue;
      }
      Optional<Got<Clause>> got =
          extreme(
              type,
              noun.sentence().filled(noun.match(), things::only),
              value.get().value(),
              greatest,
              at,
              value.get().end(),
              stop);
      if (got.isPresent()) {
        return got;
      }
    }
    return Optional.empty();
  }

  private Optional<Got<Clause>> extreme(
      Class<?> type,
      List<Asked> base,
      Value value,
      boolean greatest,
      int at,
      int from,
      Predicate<Integer> stop) {
    List<Asked> among = new ArrayList<>(base);
    int then = from;
    if (line.at(then, "among", "those")) {
      Optional<Got<List<Asked>>> those =
          descriptions.all(then + 2, type, i -> isOne(i) || stop.test(i));
      if (those.isEmpty()) {
        return Optional.empty();
      }
      among.addAll(those.get().value());
      then = those.get().end();
    }
    List<Asked> asked = new ArrayList<>();
    if (isOne(then)) {
      Optional<Got<List<Asked>>> one = descriptions.all(then + 2, type, stop);
      if (one.isEmpty() || one.get().value().isEmpty()) {
        written.fails(then + 2, () -> "“… is one with …” was expected");
        return Optional.empty();
      }
      asked.addAll(one.get().value());
      then = one.get().end();
    }
    return lines.ended(
        new Clause(
            things.next(type, line.slice(at, from)),
            asked,
            new Clause.Extreme(value, greatest, among)),
        then,
        stop);
  }

  private boolean isOne(int at) {
    return line.at(at, "is", "one");
  }

  /** Every screen with … is one whose …. */
  Optional<Got<Clause>> every(int at, Predicate<Integer> stop) {
    if (!line.at(at, "every")) {
      return Optional.empty();
    }
    for (WrittenLine.Named noun : written.nouns(at + 1, false)) {
      Class<?> type = noun.sentence().type();
      Optional<Got<List<Asked>>> some = descriptions.all(noun.match().end(), type, this::isOne);
      if (some.isEmpty()) {
        continue;
      }
      int is = some.get().end();
      if (!isOne(is)) {
        written.fails(is, () -> "“every … is one with …” was expected");
        continue;
      }
      Optional<Got<List<Asked>>> all = descriptions.all(is + 2, type, stop);
      if (all.isEmpty() || all.get().value().isEmpty()) {
        written.fails(is + 2, () -> "“every … is one with …” was expected");
        continue;
      }
      List<Asked> asked = new ArrayList<>(noun.sentence().filled(noun.match(), things::only));
      asked.addAll(some.get().value());
      return Optional.of(
          new Got<>(
              new Clause(
                  things.next(type, line.slice(at, is)),
                  asked,
                  new Clause.Every(all.get().value())),
              all.get().end()));
    }
    written.unknownNoun(at + 1, false);
    return Optional.empty();
  }
}
