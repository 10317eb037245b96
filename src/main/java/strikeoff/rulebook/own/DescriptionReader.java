package strikeoff.rulebook.own;

import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import strikeoff.plan.Evidence;
import strikeoff.rulebook.own.LineReader.Got;
import strikeoff.units.Parsed;
import strikeoff.units.Quantities;
import strikeoff.units.Script;
import strikeoff.units.Spelling;

/** Reads what a line says of a thing: sentences of the vocabulary, its values, other things. */
final class DescriptionReader {

  private record Phrase(String[] words, How how) {}

  private static final List<Phrase> AMOUNTS =
      List.of(
          new Phrase(new String[] {"more", "than"}, How.MORE),
          new Phrase(new String[] {"less", "than"}, How.LESS),
          new Phrase(new String[] {"fewer", "than"}, How.LESS),
          new Phrase(new String[] {"at", "least"}, How.AT_LEAST),
          new Phrase(new String[] {"at", "most"}, How.AT_MOST),
          new Phrase(new String[] {"exactly"}, How.IS));

  private final Tokens line;
  private final Vocabulary words;
  private final Things things;
  private final LineReader.Failure failure;

  DescriptionReader(Tokens line, Vocabulary words, Things things, LineReader.Failure failure) {
    this.line = line;
    this.words = words;
    this.things = things;
    this.failure = failure;
  }

  /** “more than”, “at least” and so on. */
  static Optional<Got<How>> how(Tokens line, int at) {
    return AMOUNTS.stream()
        .filter(phrase -> line.at(at, phrase.words()))
        .findFirst()
        .map(phrase -> new Got<>(phrase.how(), at + phrase.words().length));
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
    for (Got<Asked> one : one(line, begins, type, stop)) {
      if (!failure.mayTry()) {
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
    failure.at(
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
          } else {
            readings.add(
                new Got<>(together(sentence.filled(match.gaps(), things::only)), match.end()));
          }
        }
      }
    }
    whose(at, type).ifPresent(readings::add);
    same(at, type).ifPresent(readings::add);
    inTime(at, type).ifPresent(readings::add);
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
      failure.at(end, () -> "“either” wants an “or” on the same line");
      return Optional.empty();
    }
    return Optional.of(new Got<>(new Asked.Either(ways), from));
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

  String noValue(String written, Class<?> type, Predicate<Kind> wanted) {
    List<String> known =
        AskableValues.of(type).values().stream()
            .filter(v -> wanted.test(v.kind()))
            .map(Value::words)
            .toList();
    String meant = Spelling.didYouMean(written, known);
    return "nothing here is called "
        + Script.quoted(written)
        + (meant.isEmpty() ? "; there are " + String.join(", ", known) : meant);
  }

  /** Whose mesh is more than 61/cm, whose pastes include “rust”. */
  private Optional<Got<Asked>> whose(int at, Class<?> type) {
    if (!line.at(at, "whose")) {
      return Optional.empty();
    }
    Optional<Got<Value>> named = value(at + 1, type);
    if (named.isEmpty()) {
      unknownValue(at + 1, type);
      return Optional.empty();
    }
    Value value = named.get().value();
    int then = named.get().end();
    for (How how : How.values()) {
      for (String form : how.words()) {
        for (String phrase : List.of(form, form.replaceFirst("^is", "are"))) {
          String[] said = phrase.split(" ");
          if (line.at(then, said)) {
            return asked(value, how, at, then + said.length);
          }
        }
      }
    }
    failure.at(
        then,
        () ->
            "“"
                + line.slice(at, line.size())
                + "” is no sentence that is known here; the nearest"
                + " is “"
                + value.exampleOfAsking()
                + "”");
    return Optional.empty();
  }

  private void unknownValue(int at, Class<?> type) {
    int to = at;
    while (to < line.size() && !isVerb(to)) {
      to++;
    }
    String written = line.slice(at, to);
    failure.at(at, () -> noValue(written, type, kind -> true));
  }

  private boolean isVerb(int at) {
    for (How how : How.values()) {
      for (String form : how.words()) {
        if (line.at(at, form.split(" ")[0]) || line.at(at, "are")) {
          return true;
        }
      }
    }
    return false;
  }

  private Optional<Got<Asked>> asked(Value value, How how, int at, int from) {
    boolean can =
        how.asksMany() == value.many()
            && (!how.asksMore() || value.kind().isOrdered())
            && (!how.asksLetters() || value.kind().isText());
    if (!can) {
      failure.at(
          from,
          () ->
              Script.quoted(value.words())
                  + " can't be asked so; write “"
                  + value.exampleOfAsking()
                  + "”");
      return Optional.empty();
    }
    Optional<Got<Than>> than = value(value, how, from);
    return than.map(t -> new Got<>(new Asked.Compared(value, how, t.value()), t.end()));
  }

  /** What a value is compared with: a figure, or the value of something. */
  private Optional<Got<Than>> value(Value mine, How how, int at) {
    if (mine.kind().isOrdered()) {
      Optional<Got<Than>> other = reckoned(mine, at);
      if (other.isPresent()) {
        return other;
      }
    } else if (!how.asksLetters()) {
      Optional<Got<Than>> other = plainValue(mine, at, 1, 0);
      if (other.isPresent()) {
        return other;
      }
    }
    List<Kind.Read> reads =
        at >= line.size()
            ? List.of()
            : how.asksLetters()
                ? List.of(Kind.name(line, at, Optional.empty()))
                : mine.kind().isText()
                    ? List.of(Kind.name(line, at, mine.known()))
                    : mine.kind().at(line, at);
    for (Kind.Read read : reads) {
      if (read.value() instanceof Parsed.Value<Object> value) {
        ofAnotherKind(reads, at, read.words());
        return Optional.of(new Got<>(new Than.Figure(value.value()), at + read.words()));
      }
    }
    failure.at(
        at,
        () ->
            reads.isEmpty()
                ? "“" + mine.exampleOfAsking() + "” was expected"
                : ((Parsed.Refused<Object>) reads.get(reads.size() - 1).value()).message());
    return Optional.empty();
  }

  /** A number that has a unit where none belongs: should no sentence begin with the unit. */
  private void ofAnotherKind(List<Kind.Read> reads, int at, int words) {
    for (Kind.Read longer : reads) {
      if (longer.words() == words + 1
          && longer.value() instanceof Parsed.Refused<Object> refused
          && Quantities.parseAny(line.slice(at, at + words + 1)) instanceof Parsed.Value) {
        failure.at(at + words + 1, refused::message);
      }
    }
  }

  /** 10 cm more than twice the width of the table. */
  private Optional<Got<Than>> reckoned(Value mine, int at) {
    for (Kind.Read read :
        mine.kind() == Kind.CLOCK ? List.<Kind.Read>of() : mine.kind().at(line, at)) {
      int then = at + read.words();
      boolean more = line.at(then, "more", "than");
      if (read.value() instanceof Parsed.Value<Object> amount
          && (more || line.at(then, "less", "than"))) {
        double figure = (Double) amount.value();
        return multiplied(mine, then + 2, more ? figure : -figure);
      }
    }
    return multiplied(mine, at, 0);
  }

  private Optional<Got<Than>> multiplied(Value mine, int at, double more) {
    if (line.at(at, "twice")) {
      return plainValue(mine, at + 1, 2, more);
    }
    if (line.at(at, "half")) {
      return plainValue(mine, at + 1, 0.5, more);
    }
    for (Kind.Read read : Kind.NUMBER.at(line, at)) {
      if (read.value() instanceof Parsed.Value<Object> times
          && line.at(at + read.words(), "times")) {
        return plainValue(mine, at + read.words() + 1, (Double) times.value(), more);
      }
    }
    for (Kind.Read read : Kind.SHARE.at(line, at)) {
      if (read.value() instanceof Parsed.Value<Object> share && line.at(at + read.words(), "of")) {
        return plainValue(mine, at + read.words() + 1, (Double) share.value(), more);
      }
    }
    return plainValue(mine, at, 1, more);
  }

  /** Its width, that of the first, the width of the table. */
  private Optional<Got<Than>> plainValue(Value mine, int at, double times, double more) {
    if (line.at(at, "that", "of")) {
      return thing(at + 2)
          .flatMap(
              other ->
                  Optional.ofNullable(AskableValues.of(other.value().type()).get(mine.words()))
                      .filter(mine::goesWith)
                      .map(
                          theirs ->
                              new Got<Than>(
                                  new Than.OfThing(Optional.of(other.value()), theirs, times, more),
                                  other.end())));
    }
    if (line.at(at, "its")) {
      Class<?> type = mine.steps().get(0).getDeclaringClass();
      Optional<Got<Value>> own = value(at + 1, type).filter(v -> mine.goesWith(v.value()));
      if (own.isEmpty()) {
        failure.at(at + 1, () -> noValue(line.from(at + 1), type, k -> true));
      }
      return own.map(
          v -> new Got<>(new Than.OfThing(Optional.empty(), v.value(), times, more), v.end()));
    }
    if (!line.at(at, "the")) {
      return Optional.empty();
    }
    int of = at + 1;
    while (of < line.size() && !line.at(of, "of", "the")) {
      of++;
    }
    if (of >= line.size()) {
      return Optional.empty();
    }
    int end = of;
    return thing(of + 1)
        .flatMap(
            other -> {
              Optional<Got<Value>> theirs =
                  value(at + 1, other.value().type())
                      .filter(v -> v.end() == end && mine.goesWith(v.value()));
              if (theirs.isEmpty()) {
                failure.at(
                    at + 1,
                    () -> noValue(line.slice(at + 1, end), other.value().type(), k -> true));
              }
              return theirs.map(
                  v ->
                      new Got<>(
                          new Than.OfThing(Optional.of(other.value()), v.value(), times, more),
                          other.end()));
            });
  }

  /** A thing that a line before has found, or that each plan has: the table, the first screen. */
  private Optional<Got<Thing>> thing(int at) {
    if (!line.at(at, "the") || at + 1 >= line.size()) {
      return Optional.empty();
    }
    boolean first = line.at(at + 1, "first");
    boolean other =
        line.at(at + 1, "other") || line.at(at + 1, "second") || line.at(at + 1, "last");
    int from = first || other ? at + 2 : at + 1;
    for (int end = Math.min(line.size(), from + 4); end > from; end--) {
      String noun = line.slice(from, end).toLowerCase(java.util.Locale.ROOT);
      List<Thing> called =
          things.all().stream().filter(thing -> thing.isCalled(noun, words)).toList();
      if (!called.isEmpty()) {
        int to = end;
        return chosen(called, first, other, at, to).map(thing -> new Got<>(thing, to));
      }
      for (Class<?> only : Things.ONE_ONLY) {
        if (!first && !other && words.nouns(only).contains(noun)) {
          return Optional.of(new Got<>(things.only(only), end));
        }
      }
    }
    if (first || other) {
      List<Thing> all = things.all();
      if (all.size() > 1 || first && !all.isEmpty()) {
        return Optional.of(new Got<>(first ? all.get(0) : all.get(all.size() - 1), from));
      }
    }
    failure.at(
        at + 1,
        () ->
            "no line before this one finds “"
                + line.slice(at, Math.min(line.size(), at + 4))
                + "”");
    return Optional.empty();
  }

  private Optional<Thing> chosen(List<Thing> called, boolean first, boolean other, int at, int to) {
    if (first) {
      return Optional.of(called.get(0));
    }
    if (other || called.size() == 1) {
      return Optional.of(called.get(called.size() - 1));
    }
    String noun = line.slice(at + 1, to);
    failure.at(
        at + 1,
        () ->
            "several lines find “"
                + noun
                + "”; say “the first "
                + noun
                + "” or “the other "
                + noun
                + "”");
    return Optional.empty();
  }

  /** Of the same paste, on the same day as the first. */
  private Optional<Got<Asked>> same(int at, Class<?> type) {
    boolean leads =
        line.at(at, "of")
            || line.at(at, "on")
            || line.at(at, "with")
            || line.at(at, "in")
            || line.at(at, "by")
            || line.at(at, "for");
    if (!leads || !line.at(at + 1, "the", "same")) {
      return Optional.empty();
    }
    int from = at + 3;
    for (int end = Math.min(line.size(), from + 4); end > from; end--) {
      String name = line.slice(from, end).toLowerCase(java.util.Locale.ROOT);
      Optional<Value> mine = named(type, name);
      if (mine.isEmpty()) {
        continue;
      }
      if (line.at(end, "as")) {
        int to = end;
        return thing(end + 1)
            .flatMap(
                other ->
                    named(other.value().type(), name)
                        .map(
                            theirs ->
                                new Got<>(
                                    new Asked.Shared(mine.get(), other.value(), theirs),
                                    Math.max(to, other.end()))));
      }
      for (Thing other : things.nearestFirst()) {
        Optional<Value> theirs = named(other.type(), name);
        if (theirs.isPresent()) {
          return Optional.of(new Got<>(new Asked.Shared(mine.get(), other, theirs.get()), end));
        }
      }
      failure.at(
          from, () -> "no line before this one finds anything with the value “" + name + "”");
      return Optional.empty();
    }
    failure.at(from, () -> noValue(line.from(from), type, k -> true));
    return Optional.empty();
  }

  /** The value that tells a thing's name, or the list of them: paste, pastes. */
  private static Optional<Value> named(Class<?> type, String name) {
    Map<String, Value> values = AskableValues.of(type);
    return Optional.ofNullable(values.get(name))
        .filter(
            v ->
                !v.many()
                    && (v.kind().isText()
                        || !values.containsKey(name + "s")
                        || v.kind() == Kind.NUMBER))
        .or(() -> Optional.ofNullable(values.get(name + "s")).filter(Value::many));
  }

  /** More than 30 min after the mixing, that begins before the first one ends. */
  private Optional<Got<Asked>> inTime(int at, Class<?> type) {
    int from = at;
    String own = "";
    if (line.at(from, "that") && from + 1 < line.size()) {
      String verb = line.get(from + 1).text();
      if (!verb.matches("(?i)(begin|end)s?")) {
        return Optional.empty();
      }
      own = verb.toLowerCase(java.util.Locale.ROOT).replaceFirst("s$", "") + "s";
      from += 2;
    }
    How how = How.AT_LEAST;
    double minutes = 0;
    Optional<Got<How>> compared = how(line, from);
    if (compared.isPresent()) {
      how = compared.get().value();
      Optional<Kind.Read> read =
          Kind.TIME.at(line, compared.get().end()).stream()
              .filter(r -> r.value() instanceof Parsed.Value)
              .findFirst();
      if (read.isEmpty()) {
        return Optional.empty();
      }
      minutes = (Double) read.get().value().toOptional().orElseThrow();
      from = compared.get().end() + read.get().words();
    }
    boolean after = line.at(from, "after");
    if (!after && !line.at(from, "before")) {
      return Optional.empty();
    }
    Optional<Got<Thing>> other = thing(from + 1);
    if (other.isEmpty()) {
      return Optional.empty();
    }
    int end = other.get().end();
    String theirs = after ? "ends" : "begins";
    if (line.at(end, "begins") || line.at(end, "ends")) {
      theirs = line.get(end).text().toLowerCase(java.util.Locale.ROOT);
      end++;
    }
    Optional<Method> mine =
        AskableValues.moment(type, own.isEmpty() ? (after ? "begins" : "ends") : own);
    Optional<Method> its = AskableValues.moment(other.get().value().type(), theirs);
    if (mine.isEmpty() || its.isEmpty()) {
      int place = from;
      failure.at(
          place,
          () ->
              "only steps, baths and days have times, so nothing else comes before or after them");
      return Optional.empty();
    }
    return Optional.of(
        new Got<>(
            new Asked.InTime(mine.get(), after, how, minutes, other.get().value(), its.get()),
            end));
  }
}
