package strikeoff.rulebook.own;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import strikeoff.rulebook.own.Clause.Form;
import strikeoff.rulebook.own.Vocabulary.Use;
import strikeoff.units.Parsed;

/**
 * Reads one line of a rule's conditions. Where words can be read in several ways the first that
 * makes sense to the line's end counts; of what makes none, that is told which came furthest.
 */
final class LineReader {

  /** A sentence that a person can read aloud in one breath, and then some. */
  static final int LONGEST = 300;

  /** So many attempts are made at a line. Each sentence of the documents takes a hundredth. */
  private static final int MOST_ATTEMPTS = 20_000;

  private final Tokens line;
  private final Vocabulary words;
  private final Things things;
  private final DescriptionReader descriptions;
  private final Failure failure = new Failure();

  private LineReader(Tokens line, Vocabulary words, Things things) {
    this.line = line;
    this.words = words;
    this.things = things;
    this.descriptions = new DescriptionReader(line, words, things, failure);
  }

  /** Something that was read, and the word after it. */
  record Got<T>(T value, int end) {}

  /** Why a line makes no sense, as far as it could be read. */
  static final class Failure {
    private int at = -1;
    private Supplier<String> why = () -> "";
    private int attempts;

    /** Of two that come equally far the first counts. */
    void at(int word, Supplier<String> message) {
      if (word > at) {
        at = word;
        why = message;
      }
    }

    /** False once enough has been tried. */
    boolean mayTry() {
      attempts++;
      if (attempts == MOST_ATTEMPTS) {
        at = Integer.MAX_VALUE;
        why = () -> "this line can be read in too many ways; say it in two";
      }
      return attempts < MOST_ATTEMPTS;
    }
  }

  /**
   * Reads a line.
   *
   * @return what it asks for; several where only one of them must be so
   */
  static Parsed<List<Clause>> read(String text, Vocabulary words, Things things) {
    if (text.length() > LONGEST) {
      return Parsed.refused("a sentence has at most " + LONGEST + " letters");
    }
    return new LineReader(Tokens.of(text), words, things).line();
  }

  /** Reads what more is said of what a line before has found, without the dash. */
  static Parsed<List<Asked>> more(String text, Class<?> type, Vocabulary words, Things things) {
    if (text.length() > LONGEST) {
      return Parsed.refused("a sentence has at most " + LONGEST + " letters");
    }
    LineReader reader = new LineReader(Tokens.of(text), words, things);
    Optional<Got<List<Asked>>> got = reader.descriptions.all(0, type, at -> false);
    return got.isPresent()
        ? Parsed.value(got.get().value())
        : Parsed.refused(reader.failure.why.get());
  }

  private Parsed<List<Clause>> line() {
    Optional<List<Clause>> read =
        line.at(0, "either") ? either() : clause(0, at -> false).map(got -> List.of(got.value()));
    return read.isPresent() ? Parsed.value(read.get()) : Parsed.refused(failure.why.get());
  }

  private Optional<List<Clause>> either() {
    List<Clause> ways = new ArrayList<>();
    int at = 1;
    while (true) {
      Optional<Got<Clause>> way = clause(at, i -> line.at(i, "or"));
      if (way.isEmpty()) {
        return Optional.empty();
      }
      ways.add(way.get().value());
      at = way.get().end();
      if (at == line.size()) {
        break;
      }
      at++;
    }
    if (ways.size() == 1) {
      failure.at(line.size(), () -> "“either” wants an “or” on the same line");
      return Optional.empty();
    }
    return Optional.of(ways);
  }

  private Optional<Got<Clause>> clause(int at, Predicate<Integer> stop) {
    for (Supplier<Optional<Got<Clause>>> form :
        List.<Supplier<Optional<Got<Clause>>>>of(
            () -> plain(line, at, stop, new Clause.Some()),
            () -> another(at, stop),
            () -> absent(at, stop),
            () -> counted(at, stop),
            () -> happens(at, stop),
            () -> addsUp(at, stop),
            () -> summed(at, stop),
            () -> extreme(at, stop),
            () -> every(at, stop))) {
      Optional<Got<Clause>> got = form.get();
      if (got.isPresent()) {
        return got;
      }
    }
    failure.at(
        at,
        () ->
            "“"
                + line.from(at)
                + "” is no sentence that is known here; the nearest is “"
                + words.nearest(line.from(at), words.all())
                + "”");
    return Optional.empty();
  }

  /** An opening of the vocabulary and what more is said. */
  private Optional<Got<Clause>> plain(Tokens read, int at, Predicate<Integer> stop, Form form) {
    record Reading(Sentence sentence, Sentence.Match match) {}
    List<Reading> readings = new ArrayList<>();
    for (Sentence opening : words.openings()) {
      opening.at(read, at).forEach(match -> readings.add(new Reading(opening, match)));
    }
    readings.sort(Comparator.comparing(r -> -r.match().end()));
    for (Reading reading : readings) {
      if (!failure.mayTry()) {
        return Optional.empty();
      }
      if (isRead(reading.sentence(), reading.match(), read, at)) {
        Optional<Got<Clause>> got =
            completed(reading.sentence(), reading.match(), at, stop, List.of(), form);
        if (got.isPresent()) {
          return got;
        }
      }
    }
    return Optional.empty();
  }

  private boolean isRead(Sentence sentence, Sentence.Match match, Tokens read, int at) {
    if (match.refused() >= 0) {
      failure.at(
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

  private Optional<Got<Clause>> completed(
      Sentence sentence,
      Sentence.Match match,
      int at,
      Predicate<Integer> stop,
      List<Asked> besides,
      Form form) {
    return descriptions
        .all(match.end(), sentence.type(), stop)
        .map(
            more -> {
              List<Asked> asked = new ArrayList<>(sentence.filled(match.gaps(), things::only));
              asked.addAll(besides);
              asked.addAll(more.value());
              Thing thing = things.next(sentence.type(), line.slice(at, match.end()));
              return new Got<>(new Clause(thing, asked, form), more.end());
            });
  }

  /** There is another …. */
  private Optional<Got<Clause>> another(int at, Predicate<Integer> stop) {
    if (!line.at(at, "there", "is", "another")) {
      return Optional.empty();
    }
    for (Found noun : nouns(at + 3, false)) {
      Optional<Thing> first = things.before(noun.sentence().type());
      if (first.isEmpty()) {
        failure.at(at + 3, () -> "“another” wants a line before that finds the first one");
        continue;
      }
      Optional<Got<Clause>> got =
          completed(
              noun.sentence(),
              noun.match(),
              at,
              stop,
              List.of(new Asked.Another(first.get())),
              new Clause.Some());
      if (got.isPresent()) {
        return got;
      }
    }
    return Optional.empty();
  }

  /** There is no …, no … is …, nobody …, it is not so that …. */
  private Optional<Got<Clause>> absent(int at, Predicate<Integer> stop) {
    Clause.None none = new Clause.None();
    if (line.at(at, "there", "is", "no")) {
      return plain(line.with(at + 2, "a"), at, stop, none);
    }
    if (line.at(at, "no")) {
      return plain(line.with(at, "a"), at, stop, none);
    }
    if (line.at(at, "nothing")) {
      return plain(line.with(at, "something"), at, stop, none);
    }
    if (line.at(at, "nobody")) {
      return plain(line.with(at, "somebody"), at, stop, none);
    }
    return line.at(at, "it", "is", "not", "so", "that")
        ? plain(line, at + 5, stop, none)
        : Optional.empty();
  }

  /** There are more than three …. */
  private Optional<Got<Clause>> counted(int at, Predicate<Integer> stop) {
    if (!line.at(at, "there", "are") && !line.at(at, "there", "is")) {
      return Optional.empty();
    }
    Optional<Got<Clause.Count>> count = count(at + 2);
    if (count.isEmpty()) {
      return Optional.empty();
    }
    int from = count.get().end();
    List<Found> all = new ArrayList<>(nouns(from, true));
    all.addAll(nouns(from, false));
    for (Found noun : all) {
      Optional<Got<Clause>> got =
          completed(noun.sentence(), noun.match(), at, stop, List.of(), count.get().value());
      if (got.isPresent()) {
        return got;
      }
    }
    unknownNoun(from, true);
    return Optional.empty();
  }

  /** It happens more than twice that …. */
  private Optional<Got<Clause>> happens(int at, Predicate<Integer> stop) {
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
      failure.at(from, () -> "“it happens more than 3 times that …” was expected");
      return Optional.empty();
    }
    Form form = count.get().value();
    return plain(line, from + 1, stop, form);
  }

  private Optional<Got<Clause.Count>> count(int at) {
    Optional<Got<How>> how = how(at);
    int from = how.map(Got::end).orElse(at);
    if (how.isEmpty()) {
      return Optional.empty();
    }
    if (line.at(from, "once") || line.at(from, "twice")) {
      return Optional.of(
          new Got<>(new Clause.Count(how.get().value(), line.at(from, "once") ? 1 : 2), from + 1));
    }
    return figure(from, Kind.NUMBER)
        .map(n -> new Got<>(new Clause.Count(how.get().value(), n.value()), n.end()));
  }

  private Optional<Got<How>> how(int at) {
    return DescriptionReader.how(line, at);
  }

  private Optional<Got<Double>> figure(int at, Kind kind) {
    String refused = "";
    for (Kind.Read read : kind.at(line, at)) {
      if (read.value() instanceof Parsed.Value<Object> value) {
        return Optional.of(new Got<>((Double) value.value(), at + read.words()));
      }
      refused = ((Parsed.Refused<Object>) read.value()).message();
    }
    String why = refused.isEmpty() ? "an amount was expected at the end of the line" : refused;
    failure.at(at, () -> why);
    return Optional.empty();
  }

  /** The placements of all series add up to more than 20. */
  private Optional<Got<Clause>> addsUp(int at, Predicate<Integer> stop) {
    int of = at;
    while (of < line.size() && !line.at(of, "of", "all")) {
      of++;
    }
    if (!line.at(at, "the") || of >= line.size()) {
      return Optional.empty();
    }
    int from = of + 2;
    String name = line.slice(at + 1, of);
    for (Found noun : nouns(from, true)) {
      Class<?> type = noun.sentence().type();
      Optional<Got<Value>> value = descriptions.value(at + 1, type);
      if (value.isEmpty() || value.get().end() != of || !isAmount(value.get().value())) {
        failure.at(at + 1, () -> descriptions.noValue(name, type, Kind::isOrdered));
        continue;
      }
      Optional<Got<List<Asked>>> more =
          descriptions.all(noun.match().end(), type, i -> isAddUp(i) || stop.test(i));
      if (more.isEmpty()) {
        continue;
      }
      int then = more.get().end();
      if (!isAddUp(then)) {
        failure.at(then, () -> "“… add up to more than …” was expected");
        continue;
      }
      Optional<Got<How>> how = how(then + 3);
      if (how.isEmpty()) {
        failure.at(
            then + 3, () -> "“more than”, “less than”, “at least” or “at most” was expected");
        continue;
      }
      Value summed = value.get().value();
      Optional<Got<Double>> amount = figure(how.get().end(), summed.kind());
      if (amount.isEmpty()) {
        continue;
      }
      List<Asked> asked =
          new ArrayList<>(noun.sentence().filled(noun.match().gaps(), things::only));
      asked.addAll(more.get().value());
      return ended(
          new Clause(
              things.next(type, line.slice(at, from)),
              asked,
              new Clause.Sum(summed, how.get().value(), amount.get().value())),
          amount.get().end(),
          stop);
    }
    unknownNoun(from, true);
    return Optional.empty();
  }

  private static boolean isAmount(Value value) {
    return value.kind().isOrdered() && value.kind() != Kind.CLOCK;
  }

  private boolean isAddUp(int at) {
    return line.at(at, "add", "up", "to") || line.at(at, "adds", "up", "to");
  }

  /** A sentence of the vocabulary that tells of all together. */
  private Optional<Got<Clause>> summed(int at, Predicate<Integer> stop) {
    for (Sentence sentence : words.sentences(Use.SUM)) {
      for (Sentence.Match match : sentence.at(line, at)) {
        if (isRead(sentence, match, line, at)) {
          List<Asked> asked = sentence.filled(match.gaps(), things::only);
          Asked.Compared last = (Asked.Compared) asked.get(asked.size() - 1);
          double amount = (Double) ((Than.Figure) last.than()).figure();
          return ended(
              new Clause(
                  things.next(sentence.type(), line.slice(at, match.end())),
                  asked.subList(0, asked.size() - 1),
                  new Clause.Sum(last.value(), last.how(), amount)),
              match.end(),
              stop);
        }
      }
    }
    return Optional.empty();
  }

  private Optional<Got<Clause>> ended(Clause clause, int at, Predicate<Integer> stop) {
    if (at == line.size() || stop.test(at)) {
      return Optional.of(new Got<>(clause, at));
    }
    failure.at(
        at, () -> "nothing was expected after this; “" + line.from(at) + "” is a line of its own");
    return Optional.empty();
  }

  /** The finest screen …, the series with the most placements …. */
  private Optional<Got<Clause>> extreme(int at, Predicate<Integer> stop) {
    for (Use use : List.of(Use.GREATEST, Use.LEAST)) {
      for (Sentence sentence : words.sentences(use)) {
        for (Sentence.Match match : sentence.at(line, at)) {
          // What comes last is the value that is greatest or least.
          List<Asked> asked = sentence.filled(match.gaps(), things::only);
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
    for (Found noun : nouns(at + 1, false)) {
      int with = noun.match().end();
      if (!line.at(with, "with", "the") || with + 2 >= line.size()) {
        continue;
      }
      String how = line.get(with + 2).text();
      boolean greatest = GREATEST.contains(how);
      if (!greatest && !LEAST.contains(how)) {
        failure.at(with + 2, () -> "“the greatest” or “the least” was expected");
        continue;
      }
      Class<?> type = noun.sentence().type();
      Optional<Got<Value>> value = descriptions.value(with + 3, type);
      if (value.isEmpty() || !isAmount(value.get().value())) {
        failure.at(
            with + 3, () -> descriptions.noValue(line.from(with + 3), type, Kind::isOrdered));
        continue;
      }
      Optional<Got<Clause>> got =
          extreme(
              type,
              noun.sentence().filled(noun.match().gaps(), things::only),
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

  private static final List<String> GREATEST =
      List.of("greatest", "most", "largest", "highest", "longest", "widest");
  private static final List<String> LEAST =
      List.of("least", "fewest", "smallest", "lowest", "shortest", "narrowest");

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
      if (one.isEmpty()) {
        return Optional.empty();
      }
      asked.addAll(one.get().value());
      then = one.get().end();
    }
    return ended(
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
  private Optional<Got<Clause>> every(int at, Predicate<Integer> stop) {
    if (!line.at(at, "every")) {
      return Optional.empty();
    }
    for (Found noun : nouns(at + 1, false)) {
      Class<?> type = noun.sentence().type();
      Optional<Got<List<Asked>>> some = descriptions.all(noun.match().end(), type, this::isOne);
      if (some.isEmpty()) {
        continue;
      }
      int is = some.get().end();
      if (!isOne(is)) {
        failure.at(is, () -> "“every … is one with …” was expected");
        continue;
      }
      Optional<Got<List<Asked>>> all = descriptions.all(is + 2, type, stop);
      if (all.isEmpty()) {
        continue;
      }
      List<Asked> asked =
          new ArrayList<>(noun.sentence().filled(noun.match().gaps(), things::only));
      asked.addAll(some.get().value());
      return Optional.of(
          new Got<>(
              new Clause(
                  things.next(type, line.slice(at, is)),
                  asked,
                  new Clause.Every(all.get().value())),
              all.get().end()));
    }
    unknownNoun(at + 1, false);
    return Optional.empty();
  }

  private record Found(Sentence sentence, Sentence.Match match) {}

  /** Things that are named from a word on, the longest name first. */
  private List<Found> nouns(int at, boolean many) {
    List<Found> found = new ArrayList<>();
    for (Vocabulary.Noun noun : words.nouns()) {
      Sentence sentence = many ? noun.many() : noun.one();
      sentence.at(line, at).stream()
          .filter(match -> match.refused() < 0)
          .forEach(match -> found.add(new Found(sentence, match)));
    }
    found.sort(Comparator.comparing(f -> -f.match().end()));
    return found;
  }

  private void unknownNoun(int at, boolean many) {
    failure.at(
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
