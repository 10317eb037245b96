package strikeoff.rulebook.own;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import strikeoff.rulebook.own.Clause.Form;
import strikeoff.rulebook.own.Vocabulary.Use;

/**
 * Reads lines that tell how many there are, how often something happens and how much it is in all.
 */
final class CountReader extends PhraseReader {

  private final LineReader lines;
  private final DescriptionReader descriptions;

  CountReader(WrittenLine written, LineReader lines, DescriptionReader descriptions) {
    super(written);
    this.lines = lines;
    this.descriptions = descriptions;
  }

  /** There are more than three …, more than three …. */
  Optional<Got<Clause>> counted(int at, Predicate<Integer> stop) {
    boolean said = line.at(at, "there", "are") || line.at(at, "there", "is");
    Optional<Got<Clause.Count>> count = count(said ? at + 2 : at);
    if (count.isEmpty()) {
      if (said
          && at + 2 < line.size()
          && Kind.NUMBER.read(line.get(at + 2).text()).toOptional().isPresent()) {
        written.fails(
            at + 2,
            () -> "say “exactly " + line.get(at + 2).text() + "”, “at least” or “more than”");
      }
      return Optional.empty();
    }
    int from = count.get().end();
    List<WrittenLine.Named> all = new ArrayList<>(written.nouns(from, true));
    all.addAll(written.nouns(from, false));
    for (WrittenLine.Named noun : all) {
      Optional<Got<Clause>> got =
          lines.completed(noun.sentence(), noun.match(), at, stop, List.of(), count.get().value());
      if (got.isPresent()) {
        return got;
      }
    }
    written.unknownNoun(from, true);
    return Optional.empty();
  }

  /** It happens more than twice that …. */
  Optional<Got<Clause>> happens(int at, Predicate<Integer> stop) {
    if (!line.at(at, "it", "happens")) {
      return Optional.empty();
    }
    Optional<Got<Clause.Count>> count = count(at + 2);
    if (count.isEmpty()) {
      return Optional.empty();
    }
    int from = count.get().end();
    from += line.at(from, "times") || line.at(from, "time") ? 1 : 0;
    if (!line.at(from, "that")) {
      written.fails(from, () -> "“it happens more than 3 times that …” was expected");
      return Optional.empty();
    }
    Form form = count.get().value();
    return lines.plain(line, from + 1, stop, form);
  }

  private Optional<Got<Clause.Count>> count(int at) {
    Optional<Got<How>> how = written.how(at);
    int from = how.map(Got::end).orElse(at);
    if (how.isEmpty()) {
      return Optional.empty();
    }
    if (line.at(from, "once") || line.at(from, "twice")) {
      return Optional.of(
          new Got<>(new Clause.Count(how.get().value(), line.at(from, "once") ? 1 : 2), from + 1));
    }
    return written
        .figure(from, Kind.NUMBER)
        .map(n -> new Got<>(new Clause.Count(how.get().value(), n.value()), n.end()));
  }

  /** The placements of all series add up to more than 20. */
  Optional<Got<Clause>> addsUp(int at, Predicate<Integer> stop) {
    int of = at;
    while (of < line.size() && !line.at(of, "of", "all")) {
      of++;
    }
    if (!line.at(at, "the") || of >= line.size()) {
      return Optional.empty();
    }
    int from = of + 2;
    String name = line.slice(at + 1, of);
    List<WrittenLine.Named> all = written.nouns(from, true);
    for (WrittenLine.Named noun : all) {
      Class<?> type = noun.sentence().type();
      Optional<Got<Value>> value = written.value(at + 1, type);
      if (value.isEmpty() || value.get().end() != of || !value.get().value().isAmount()) {
        written.fails(at + 1, () -> WrittenLine.noValue(name, type, Kind::isAmount));
        continue;
      }
      Optional<Got<List<Asked>>> more =
          descriptions.all(noun.match().end(), type, i -> isAddUp(i) || stop.test(i));
      if (more.isEmpty()) {
        continue;
      }
      int then = more.get().end();
      if (!isAddUp(then)) {
        written.fails(then, () -> "“… add up to more than …” was expected");
        continue;
      }
      Optional<Got<How>> how = written.how(then + 3);
      if (how.isEmpty()) {
        written.fails(
            then + 3, () -> "“more than”, “less than”, “at least” or “at most” was expected");
        continue;
      }
      Value summed = value.get().value();
      Optional<Got<Double>> amount = written.figure(how.get().end(), summed.kind());
      if (amount.isEmpty()) {
        continue;
      }
      List<Asked> asked = new ArrayList<>(noun.sentence().filled(noun.match(), things::only));
      asked.addAll(more.get().value());
      return lines.ended(
          new Clause(
              things.next(type, line.slice(at, from)),
              asked,
              new Clause.Sum(summed, how.get().value(), amount.get().value(), summed.kind())),
          amount.get().end(),
          stop);
    }
    if (all.isEmpty()) {
      written.unknownNoun(from, true);
    }
    return Optional.empty();
  }

  private boolean isAddUp(int at) {
    return line.at(at, "add", "up", "to") || line.at(at, "adds", "up", "to");
  }

  /** A sentence of the vocabulary that tells of all together. */
  Optional<Got<Clause>> summed(int at, Predicate<Integer> stop) {
    for (Sentence sentence : words.sentences(Use.SUM)) {
      for (Sentence.Match match : sentence.at(line, at)) {
        if (written.isRead(sentence, match, line, at)) {
          List<Asked> asked = sentence.filled(match, things::only);
          Asked.Compared last = (Asked.Compared) asked.get(asked.size() - 1);
          double amount = (Double) ((Than.Figure) last.than()).figure();
          return lines.ended(
              new Clause(
                  things.next(sentence.type(), line.slice(at, match.end())),
                  asked.subList(0, asked.size() - 1),
                  new Clause.Sum(last.value(), last.how(), amount, sentence.kind())),
              match.end(),
              stop);
        }
      }
    }
    return Optional.empty();
  }
}
