package strikeoff.rulebook.own;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strikeoff.units.Parsed;

/**
 * One sentence of the vocabulary.
 *
 * @param words with gaps in braces; one that begins with {@code "- "} says more about what a
 *     sentence before it is about
 * @param type what it is about
 * @param conditions what it asks, all of it
 * @param parts its words and gaps, one by one
 */
record Sentence(String words, Class<?> type, List<Template> conditions, List<Part> parts) {

  private static final Pattern GAP = Pattern.compile("\\{([a-z]+)[0-9]?}");
  private static final Pattern CONDITION =
      Pattern.compile("([\\w.()]+)\\s+(==|!=|>=|<=|>|<|not contains|contains)\\s+(.+)");

  /** A word, or a gap if there is a kind. */
  record Part(String word, Optional<Kind> gap) {}

  /**
   * What is asked of a value.
   *
   * @param gap the number of the gap that it is compared with; -1 for none
   * @param than what it is compared with otherwise
   * @param of whose value that is, for what each plan has one of
   */
  record Template(
      Value value, How how, int gap, Optional<Object> than, Optional<Value> of, Class<?> owner) {

    private Asked filled(
        List<Object> gaps, Map<Integer, How> hows, Function<Class<?>, Thing> only) {
      if (of.isPresent()) {
        Thing other = only.apply(owner);
        return new Asked.Compared(value, how, new Than.OfThing(Optional.of(other), of.get(), 1, 0));
      }
      Object figure = gap < 0 ? than.orElseThrow() : gaps.get(gap);
      return new Asked.Compared(value, hows.getOrDefault(gap, how), new Than.Figure(figure));
    }
  }

  Sentence {
    conditions = List.copyOf(conditions);
    parts = List.copyOf(parts);
  }

  /**
   * @param condition {@code value > {gap}}, several joined by commas, perhaps in brackets after the
   *     fact's name; nothing if the words ask for no more than such a fact
   * @throws IllegalArgumentException if a gap has no known kind, or a value isn't there
   */
  static Sentence of(String words, Class<?> type, String condition) {
    List<Part> parts = new ArrayList<>();
    List<String> gaps = new ArrayList<>();
    for (String word : words.replaceFirst("^- ", "").split("\\s+")) {
      Matcher gap = GAP.matcher(word);
      if (gap.matches()) {
        gaps.add(word);
        parts.add(
            new Part(
                word,
                Optional.of(
                    Kind.of(gap.group(1))
                        .orElseThrow(
                            () -> new IllegalArgumentException("no gap is called " + word)))));
      } else {
        parts.add(new Part(word, Optional.empty()));
      }
    }
    List<Template> conditions = new ArrayList<>();
    String asked = condition.replaceFirst("^[A-Z]\\w*\\((.*)\\)$", "$1").strip();
    for (String one : asked.isEmpty() ? new String[0] : asked.split(",\\s*")) {
      conditions.add(template(one.strip(), type, gaps));
    }
    return new Sentence(words, type, conditions, parts);
  }

  private static Template template(String condition, Class<?> type, List<String> gaps) {
    Matcher form = CONDITION.matcher(condition);
    if (!form.matches()) {
      throw new IllegalArgumentException("“value > {gap}” was expected: " + condition);
    }
    Value value = AskableValues.at(type, form.group(1));
    How how = How.of(form.group(2));
    String than = form.group(3);
    int gap = gaps.indexOf(than);
    if (gap >= 0) {
      return new Template(value, how, gap, Optional.empty(), Optional.empty(), type);
    }
    if (than.matches("\".*\"")) {
      return fixed(value, how, than.substring(1, than.length() - 1), type);
    }
    if (than.equals("true") || than.equals("false")) {
      return fixed(value, how, Boolean.valueOf(than), type);
    }
    if (than.matches("-?[0-9.]+")) {
      return fixed(value, how, Double.valueOf(than), type);
    }
    int dot = than.lastIndexOf('.');
    if (dot < 0) {
      throw new IllegalArgumentException("no gap and no value is called " + than);
    }
    Class<?> owner = Vocabulary.fact(than.substring(0, dot));
    return new Template(
        value,
        how,
        -1,
        Optional.empty(),
        Optional.of(AskableValues.at(owner, than.substring(dot + 1))),
        owner);
  }

  private static Template fixed(Value value, How how, Object than, Class<?> type) {
    return new Template(value, how, -1, Optional.of(than), Optional.empty(), type);
  }

  /** The same condition in other words. */
  Sentence inWords(String other) {
    List<Part> changed = new ArrayList<>();
    for (String word : other.replaceFirst("^- ", "").split("\\s+")) {
      changed.add(
          parts.stream()
              .filter(p -> p.gap().isPresent() && p.word().equals(word))
              .findFirst()
              .orElse(new Part(word, Optional.empty())));
    }
    return new Sentence(other, type, conditions, changed);
  }

  /** The kind of its last gap, which is what it compares with. */
  Kind kind() {
    Kind last = Kind.NUMBER;
    for (Part part : parts) {
      last = part.gap().orElse(last);
    }
    return last;
  }

  boolean isMore() {
    return words.startsWith("- ");
  }

  /** The words that a line must have. */
  String said() {
    return isMore() ? words.substring(2) : words;
  }

  /** The words with a value in each gap. */
  String example() {
    return GAP.matcher(said())
        .replaceAll(gap -> Matcher.quoteReplacement(Kind.of(gap.group(1)).orElseThrow().example()));
  }

  /** The condition for what stands in its gaps. */
  List<Asked> filled(Match match, Function<Class<?>, Thing> only) {
    return conditions.stream().map(c -> c.filled(match.gaps(), match.hows(), only)).toList();
  }

  /**
   * A reading of some words of a line as this sentence.
   *
   * @param end the word after it
   * @param gaps what stands in its gaps
   * @param hows how gaps are compared, by their numbers, where the line says “at least” for the
   *     sentence's “more than”
   * @param refused the word that can't stand where it does, and why; -1 if all can
   */
  record Match(int end, List<Object> gaps, Map<Integer, How> hows, int refused, String why) {

    private Match with(int gap, How how) {
      Map<Integer, How> more = new HashMap<>(hows);
      more.put(gap, how);
      return new Match(end, gaps, more, refused, why);
    }
  }

  /** True if “more than” stands there, or the like, and a gap after it. */
  private boolean leadsAmount(int part) {
    return part + 2 < parts.size()
        && parts.get(part + 2).gap().isPresent()
        && How.isAmount(parts.get(part).word(), parts.get(part + 1).word());
  }

  /** True if the word follows a gap that says one. */
  private boolean isOne(int part, List<Object> gaps) {
    return part > 0
        && parts.get(part - 1).gap().filter(kind -> kind == Kind.NUMBER).isPresent()
        && gaps.get(gaps.size() - 1).equals(1.0);
  }

  /** “colour” for “colours”. */
  private static String one(String many) {
    return many.endsWith("s") ? many.substring(0, many.length() - 1) : many;
  }

  /** All readings of a line from a word on; the longest first. */
  List<Match> at(Tokens line, int from) {
    if (from >= line.size()
        || parts.get(0).gap().isEmpty()
            && !leadsAmount(0)
            && !line.get(from).is(parts.get(0).word())) {
      return List.of();
    }
    List<Match> found = new ArrayList<>();
    match(line, from, 0, new ArrayList<>(), new Match(from, List.of(), Map.of(), -1, ""), found);
    found.sort((a, b) -> b.end() - a.end());
    return found;
  }

  private void match(
      Tokens line, int at, int part, List<Object> gaps, Match sofar, List<Match> found) {
    if (part == parts.size()) {
      found.add(new Match(at, List.copyOf(gaps), sofar.hows(), sofar.refused(), sofar.why()));
      return;
    }
    if (at >= line.size() || part > 0 && line.get(at - 1).comma()) {
      return;
    }
    Part next = parts.get(part);
    if (leadsAmount(part)) {
      How.at(line, at)
          .ifPresent(
              how ->
                  match(
                      line,
                      how.end(),
                      part + 2,
                      gaps,
                      sofar.with(gaps.size(), how.value()),
                      found));
      return;
    }
    if (next.gap().isEmpty()) {
      if (line.get(at).is(next.word()) || isOne(part, gaps) && line.get(at).is(one(next.word()))) {
        match(line, at + 1, part + 1, gaps, sofar, found);
      }
      return;
    }
    for (Kind.Read read : next.gap().get().at(line, at)) {
      List<Object> filled = new ArrayList<>(gaps);
      Match then = sofar;
      if (read.value() instanceof Parsed.Refused<Object> no) {
        filled.add(0.0);
        then =
            sofar.refused() >= 0 ? sofar : new Match(at, List.of(), sofar.hows(), at, no.message());
      } else {
        filled.add(read.value().toOptional().orElseThrow());
      }
      match(line, at + read.words(), part + 1, filled, then, found);
    }
  }
}
