package strikeoff.rulebook.own;

import java.lang.reflect.Method;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import strikeoff.units.Parsed;

/** Reads of which other thing a line speaks, and what both have to do with each other. */
final class RelationReader extends PhraseReader {

  RelationReader(WrittenLine written) {
    super(written);
  }

  /** A thing that a line before has found, or that each plan has: the table, the first screen. */
  Optional<Got<Thing>> thing(int at) {
    if (!line.at(at, "the") || at + 1 >= line.size()) {
      return Optional.empty();
    }
    boolean first = line.at(at + 1, "first");
    boolean other =
        line.at(at + 1, "other") || line.at(at + 1, "second") || line.at(at + 1, "last");
    int from = first || other ? at + 2 : at + 1;
    for (int end = Math.min(line.size(), from + 4); end > from; end--) {
      String noun = line.slice(from, end).toLowerCase(Locale.ROOT);
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
    written.fails(
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
    written.fails(
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
  Optional<Got<Asked>> same(int at, Class<?> type) {
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
      String name = line.slice(from, end).toLowerCase(Locale.ROOT);
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
      written.fails(
          from, () -> "no line before this one finds anything with the value “" + name + "”");
      return Optional.empty();
    }
    written.fails(from, () -> WrittenLine.noValue(line.from(from), type, k -> true));
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
  Optional<Got<Asked>> inTime(int at, Class<?> type) {
    int from = at;
    String own = "";
    if (line.at(from, "that") && from + 1 < line.size()) {
      String verb = line.get(from + 1).text();
      if (!verb.matches("(?i)(begin|start|end)s?")) {
        return Optional.empty();
      }
      own = moment(verb);
      from += 2;
    }
    How how = How.AT_LEAST;
    double minutes = 0;
    Optional<Got<How>> compared = written.how(from);
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
    if (line.at(end, "begins") || line.at(end, "starts") || line.at(end, "ends")) {
      theirs = moment(line.get(end).text());
      end++;
    }
    Optional<Method> mine =
        AskableValues.moment(type, own.isEmpty() ? (after ? "begins" : "ends") : own);
    Optional<Method> its = AskableValues.moment(other.get().value().type(), theirs);
    if (mine.isEmpty() || its.isEmpty()) {
      int place = from;
      written.fails(
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

  /** What facts call the moment of a verb. */
  private static String moment(String verb) {
    return verb.toLowerCase(Locale.ROOT).startsWith("end") ? "ends" : "begins";
  }
}
