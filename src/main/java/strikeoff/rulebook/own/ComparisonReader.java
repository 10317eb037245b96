package strikeoff.rulebook.own;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.policy.Limit;
import strikeoff.policy.yaml.PolicyReader;
import strikeoff.units.Parsed;
import strikeoff.units.Quantities;
import strikeoff.units.Script;
import strikeoff.units.Spelling;

/** Reads what is asked of a thing's values: whose mesh is more than that of the first screen. */
final class ComparisonReader {

  private static final Value LIMIT = AskableValues.at(Limit.class, "amount");

  private final WrittenLine written;
  private final Tokens line;
  private final RelationReader relations;

  ComparisonReader(WrittenLine written, RelationReader relations) {
    this.written = written;
    this.line = written.line();
    this.relations = relations;
  }

  /** Whose mesh is more than 61/cm, whose pastes include “rust”. */
  Optional<Got<Asked>> whose(int at, Class<?> type) {
    if (!line.at(at, "whose")) {
      return Optional.empty();
    }
    Optional<Got<Value>> named = written.value(at + 1, type);
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
            return asked(value, how, type, then + said.length);
          }
        }
      }
    }
    written.fails(
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
    int to = line.at(at, "is") || line.at(at, "are") ? at : Math.min(at + 1, line.size());
    while (to < line.size() && !isVerb(to)) {
      to++;
    }
    String called = line.slice(at, to);
    written.fails(at, () -> WrittenLine.noValue(called, type, kind -> true));
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

  private Optional<Got<Asked>> asked(Value value, How how, Class<?> type, int from) {
    boolean can =
        how.asksMany() == value.many()
            && (!how.asksMore() || value.kind().isOrdered())
            && (!how.asksLetters() || value.kind().isText());
    if (!can) {
      written.fails(
          from,
          () ->
              Script.quoted(value.words())
                  + " can't be asked so; write “"
                  + value.exampleOfAsking()
                  + "”");
      return Optional.empty();
    }
    Optional<Got<Than>> than = value(value, how, type, from);
    return than.map(t -> new Got<>(new Asked.Compared(value, how, t.value()), t.end()));
  }

  /** What a value is compared with: a figure, or the value of something. */
  private Optional<Got<Than>> value(Value mine, How how, Class<?> type, int at) {
    if (mine.kind().isOrdered()) {
      Optional<Got<Than>> other = reckoned(mine, type, at);
      if (other.isPresent()) {
        return other;
      }
    } else if (!how.asksLetters()) {
      Optional<Got<Than>> other = plainValue(mine, type, at, 1, 0);
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
    written.fails(
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
        written.fails(at + words + 1, refused::message);
      }
    }
  }

  /** 10 cm more than twice the width of the table. */
  private Optional<Got<Than>> reckoned(Value mine, Class<?> type, int at) {
    for (Kind.Read read :
        mine.kind() == Kind.CLOCK ? List.<Kind.Read>of() : mine.kind().at(line, at)) {
      int then = at + read.words();
      boolean more = line.at(then, "more", "than");
      if (read.value() instanceof Parsed.Value<Object> amount
          && (more || line.at(then, "less", "than"))) {
        double figure = (Double) amount.value();
        return multiplied(mine, type, then + 2, more ? figure : -figure);
      }
    }
    return multiplied(mine, type, at, 0);
  }

  private Optional<Got<Than>> multiplied(Value mine, Class<?> type, int at, double more) {
    if (line.at(at, "twice")) {
      return plainValue(mine, type, at + 1, 2, more);
    }
    if (line.at(at, "half")) {
      return plainValue(mine, type, at + 1, 0.5, more);
    }
    for (Kind.Read read : Kind.NUMBER.at(line, at)) {
      if (read.value() instanceof Parsed.Value<Object> times
          && line.at(at + read.words(), "times")) {
        return plainValue(mine, type, at + read.words() + 1, (Double) times.value(), more);
      }
    }
    for (Kind.Read read : Kind.SHARE.at(line, at)) {
      if (read.value() instanceof Parsed.Value<Object> share && line.at(at + read.words(), "of")) {
        return plainValue(mine, type, at + read.words() + 1, (Double) share.value(), more);
      }
    }
    return plainValue(mine, type, at, 1, more);
  }

  /** Its width, that of the first, the width of the table. */
  private Optional<Got<Than>> plainValue(
      Value mine, Class<?> type, int at, double times, double more) {
    if (line.at(at, "that", "of")) {
      return relations
          .thing(at + 2)
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
      Optional<Got<Value>> own = comparable(mine, at + 1, written.value(at + 1, type));
      if (own.isEmpty()) {
        written.fails(at + 1, () -> WrittenLine.noValue(line.from(at + 1), type, k -> true));
      }
      return own.map(
          v -> new Got<>(new Than.OfThing(Optional.empty(), v.value(), times, more), v.end()));
    }
    if (line.at(at, "the", "limit")) {
      return limit(mine, at + 2)
          .map(
              limit ->
                  new Got<>(
                      new Than.OfThing(Optional.of(limit.value()), LIMIT, times, more),
                      limit.end()));
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
    return relations
        .thing(of + 1)
        .flatMap(
            other -> {
              Optional<Got<Value>> theirs =
                  comparable(
                      mine,
                      at + 1,
                      written.value(at + 1, other.value().type()).filter(v -> v.end() == end));
              if (theirs.isEmpty()) {
                written.fails(
                    at + 1,
                    () ->
                        WrittenLine.noValue(
                            line.slice(at + 1, end), other.value().type(), k -> true));
              }
              return theirs.map(
                  v ->
                      new Got<>(
                          new Than.OfThing(Optional.of(other.value()), v.value(), times, more),
                          other.end()));
            });
  }

  /** The value, unless the other one is no more or less than it. */
  private Optional<Got<Value>> comparable(Value mine, int at, Optional<Got<Value>> other) {
    if (other.isPresent() && !mine.goesWith(other.get().value())) {
      written.fails(
          at,
          () ->
              "“"
                  + mine.words()
                  + "” and “"
                  + other.get().value().words()
                  + "” are of two kinds, which can't be compared");
      return Optional.empty();
    }
    return other;
  }

  /** A limit of the policy, by its name. */
  private Optional<Got<Thing>> limit(Value mine, int at) {
    if (at >= line.size()) {
      return Optional.empty();
    }
    String name = line.get(at).text().replaceAll("^[\"“]|[\"”]$", "");
    Map<String, Limit> limits = PolicyReader.builtIn().limits();
    Limit limit = limits.get(name);
    if (limit == null) {
      written.fails(
          at,
          () ->
              "no limit is called "
                  + Script.quoted(name)
                  + Spelling.didYouMean(name, limits.keySet()));
      return Optional.empty();
    }
    Kind kind = Kind.of(limit.value().getClass()).orElse(Kind.NUMBER);
    if (kind != mine.kind() && kind != Kind.NUMBER && mine.kind() != Kind.NUMBER) {
      written.fails(
          at,
          () ->
              "the limit “"
                  + name
                  + "” is "
                  + limit.value().text()
                  + ", which is another kind of amount");
      return Optional.empty();
    }
    return Optional.of(new Got<>(written.things().limit(name), at + 1));
  }
}
