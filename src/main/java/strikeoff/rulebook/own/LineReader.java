package strikeoff.rulebook.own;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import strikeoff.rulebook.own.Clause.Form;
import strikeoff.units.Parsed;

/**
 * Reads one line of a rule's conditions. Where words can be read in several ways the first that
 * makes sense to the line's end counts.
 */
final class LineReader {

  /** A sentence that a person can read aloud in one breath, and then some. */
  static final int LONGEST = 300;

  private final WrittenLine written;
  private final Tokens line;
  private final Vocabulary words;
  private final Things things;
  private final DescriptionReader descriptions;
  private final CountReader counts;
  private final ExtremeReader extremes;

  private LineReader(WrittenLine written) {
    this.written = written;
    this.line = written.line();
    this.words = written.words();
    this.things = written.things();
    this.descriptions = new DescriptionReader(written);
    this.counts = new CountReader(written, this, descriptions);
    this.extremes = new ExtremeReader(written, this, descriptions);
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
    return new LineReader(new WrittenLine(Tokens.of(text), words, things)).line();
  }

  /** Reads what more is said of what a line before has found, without the dash. */
  static Parsed<List<Asked>> more(String text, Class<?> type, Vocabulary words, Things things) {
    if (text.length() > LONGEST) {
      return Parsed.refused("a sentence has at most " + LONGEST + " letters");
    }
    WrittenLine written = new WrittenLine(Tokens.of(text), words, things);
    Optional<Got<List<Asked>>> got = new DescriptionReader(written).all(0, type, at -> false);
    return got.isPresent() ? Parsed.value(got.get().value()) : Parsed.refused(written.why());
  }

  private Parsed<List<Clause>> line() {
    Optional<List<Clause>> read =
        line.at(0, "either") ? either() : clause(0, at -> false).map(got -> List.of(got.value()));
    return read.isPresent() ? Parsed.value(read.get()) : Parsed.refused(written.why());
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
      written.fails(line.size(), () -> "“either” wants an “or” on the same line");
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
            () -> counts.counted(at, stop),
            () -> counts.happens(at, stop),
            () -> counts.addsUp(at, stop),
            () -> counts.summed(at, stop),
            () -> extremes.extreme(at, stop),
            () -> extremes.every(at, stop))) {
      Optional<Got<Clause>> got = form.get();
      if (got.isPresent()) {
        return got;
      }
    }
    written.fails(
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
  Optional<Got<Clause>> plain(Tokens read, int at, Predicate<Integer> stop, Form form) {
    record Attempt(Sentence sentence, Sentence.Match match) {}
    List<Attempt> attempts = new ArrayList<>();
    for (Sentence opening : words.openings()) {
      opening.at(read, at).forEach(match -> attempts.add(new Attempt(opening, match)));
    }
    attempts.sort(Comparator.comparing(r -> -r.match().end()));
    for (Attempt attempt : attempts) {
      if (!written.mayTry()) {
        return Optional.empty();
      }
      if (written.isRead(attempt.sentence(), attempt.match(), read, at)) {
        Optional<Got<Clause>> got =
            completed(attempt.sentence(), attempt.match(), at, stop, List.of(), form);
        if (got.isPresent()) {
          return got;
        }
      }
    }
    return Optional.empty();
  }

  /** The clause of an opening, with what more is said. */
  Optional<Got<Clause>> completed(
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
              List<Asked> asked = new ArrayList<>(sentence.filled(match, things::only));
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
    for (WrittenLine.Named noun : written.nouns(at + 3, false)) {
      Optional<Thing> first = things.before(noun.sentence().type());
      if (first.isEmpty()) {
        written.fails(at + 3, () -> "“another” wants a line before that finds the first one");
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
      return plain(line.with(at, "a"), at, stop, none).or(() -> noThing(at, stop, none));
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

  /** No screen with …. */
  private Optional<Got<Clause>> noThing(int at, Predicate<Integer> stop, Form none) {
    for (WrittenLine.Named noun : written.nouns(at + 1, false)) {
      Optional<Got<Clause>> got =
          completed(noun.sentence(), noun.match(), at, stop, List.of(), none);
      if (got.isPresent()) {
        return got;
      }
    }
    return Optional.empty();
  }

  /** A clause that ends its line. */
  Optional<Got<Clause>> ended(Clause clause, int at, Predicate<Integer> stop) {
    if (at == line.size() || stop.test(at)) {
      return Optional.of(new Got<>(clause, at));
    }
    written.fails(
        at, () -> "nothing was expected after this; “" + line.from(at) + "” is a line of its own");
    return Optional.empty();
  }
}
