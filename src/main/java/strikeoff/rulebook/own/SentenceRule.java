package strikeoff.rulebook.own;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drools.model.Rule;
import strikeoff.described.WholePlan;
import strikeoff.findings.RuleInfo;
import strikeoff.policy.Limit;
import strikeoff.units.Parsed;
import strikeoff.units.Script;

/** Reads one rule that is written in sentences. */
final class SentenceRule {

  /** As {@link KnownWords} says it. */
  private static final Pattern UNKNOWN = Pattern.compile("no [a-z ]+ is called “([^”]*)”");

  /** What can stand in an id, with dashes for the spaces. */
  private static final Pattern NAME = Pattern.compile("[a-zA-Z0-9]+([ -]+[a-zA-Z0-9]+)*");

  /** A family and the name in small letters. */
  private static final int LONGEST_NAME = 80;

  /** More than anybody follows. */
  private static final int MOST_LINES = 100;

  /** More than anybody has in mind who writes either and or. */
  private static final int MOST_WAYS = 32;

  private final RuleFile file;
  private final Vocabulary words;
  private final List<RuleMistake> mistakes;
  private final int line;
  private final String name;
  private final Things things = new Things();

  /** Each line, and of it what may hold instead of one another. */
  private final List<List<Clause>> lines = new ArrayList<>();

  /** What the last line has found: lines with a dash speak of it, and of others beside it. */
  private Optional<Thing> latest = Optional.empty();

  private final List<Integer> linesAt = new ArrayList<>();
  private final Saying saying;
  private int conditionLines;

  /** True once a condition was not understood: what it finds is then not known either. */
  private boolean unsure;

  /** True while the line that lines with a dash would belong to was not understood. */
  private boolean lost;

  SentenceRule(RuleFile file, Vocabulary words, List<RuleMistake> mistakes, int line, String name) {
    this.file = file;
    this.words = words;
    this.mistakes = mistakes;
    this.line = line;
    this.name = name;
    this.saying = new Saying(file, words, mistakes, line);
  }

  /** As {@code beginners/fine-mesh}. */
  String id() {
    return file.family() + "/" + name.toLowerCase(Locale.ROOT).replaceAll("[ -]+", "-");
  }

  void condition(int at, String text) {
    conditionLines++;
    if (conditionLines > MOST_LINES) {
      if (conditionLines == MOST_LINES + 1) {
        unsure = true;
        wrong(at, "a rule has at most " + MOST_LINES + " lines of conditions");
      }
      return;
    }
    if (text.startsWith("-")) {
      more(at, text.substring(1).strip());
      return;
    }
    latest.ifPresent(things::found);
    latest = Optional.empty();
    Parsed<List<Clause>> read = LineReader.read(text, words, things);
    lost = read instanceof Parsed.Refused;
    if (read instanceof Parsed.Refused<List<Clause>> refused) {
      unsure = true;
      misread(at, refused.message());
      return;
    }
    List<Clause> ways = read.toOptional().orElseThrow();
    lines.add(ways);
    linesAt.add(at);
    if (ways.size() == 1 && ways.get(0).finds()) {
      latest = Optional.of(ways.get(0).thing());
    }
    followed(at, ways);
  }

  private void more(int at, String text) {
    if (lost) {
      return;
    }
    if (lines.isEmpty()) {
      wrong(at, "a line that begins with “-” says more about the line before it");
      return;
    }
    List<Clause> ways = lines.get(lines.size() - 1);
    if (ways.size() > 1) {
      wrong(at, "of “either … or …” nothing more can be said below; say it on the line itself");
      return;
    }
    Clause before = ways.get(0);
    if (before.form() instanceof Clause.Sum) {
      wrong(at, "of a sum nothing more can be said below; say it before “add up to”");
      return;
    }
    Parsed<List<Asked>> more = LineReader.more(text, before.type(), words, things);
    if (more instanceof Parsed.Refused<List<Asked>> refused) {
      unsure = true;
      misread(at, refused.message());
    } else {
      Clause further = before.and(more.toOptional().orElseThrow());
      lines.set(lines.size() - 1, List.of(further));
      followed(at, List.of(further));
    }
  }

  /** So much at once is followed by nobody, and not by the engine either. */
  private void followed(int at, List<Clause> ways) {
    boolean toMany =
        ways.stream()
            .flatMap(clause -> clause.everything().stream())
            .anyMatch(asked -> asked.things().size() > EngineRule.MOST_OTHERS);
    if (toMany) {
      unsure = true;
      wrong(at, "this speaks of more than two other things at once; say it in several lines");
    }
  }

  /** A line after “then”. */
  void consequence(int at, String written) {
    saying.line(at, written);
  }

  /** Closes the rule: tells what it lacks. */
  RuleInfo done() {
    if (!name.isEmpty() && !NAME.matcher(name).matches()) {
      wrong(
          line,
          "a rule's name becomes its id: a few words of the letters a to z and figures; this one is "
              + Script.quoted(name));
    } else if (name.length() > LONGEST_NAME) {
      wrong(line, "a rule's name has at most " + LONGEST_NAME + " letters");
    }
    if (lines.isEmpty() && !unsure) {
      wrong(line, "the rule has no sentence after “when”");
    }
    List<List<Clause>> ways = ways();
    if (ways.size() > MOST_WAYS) {
      unsure = true;
      wrong(
          line,
          "“either … or …” leaves more than " + MOST_WAYS + " ways; make several rules of it");
    }
    if (!unsure) {
      Answerable.never(lines).forEach((which, why) -> wrong(linesAt.get(which), why));
    }
    saying.complete();
    if (unsure) {
      saying.fillableByAnything();
    } else {
      saying.fillable(ways.stream().map(SentenceRule::types).distinct().toList());
    }
    return saying.info(id(), name, limits());
  }

  private static List<Class<?>> types(List<Clause> way) {
    List<Class<?>> types = new ArrayList<>();
    way.stream().filter(Clause::finds).forEach(clause -> types.add(clause.type()));
    if (types.isEmpty()) {
      types.add(WholePlan.class);
    }
    unnamed(way).forEach(thing -> types.add(thing.type()));
    for (Clause clause : way) {
      if (clause.form() instanceof Clause.Count) {
        types.add(Counted.class);
      } else if (clause.form() instanceof Clause.Sum) {
        types.add(Total.class);
      }
    }
    return types;
  }

  /** Names of the limits that it compares with. */
  private List<String> limits() {
    return lines.stream()
        .flatMap(line -> unnamed(line).stream())
        .filter(thing -> thing.type() == Limit.class)
        .map(Thing::opening)
        .distinct()
        .toList();
  }

  /** What each plan has and conditions speak of, though no line finds it. */
  private static List<Thing> unnamed(List<Clause> way) {
    return way.stream()
        .flatMap(clause -> clause.everything().stream())
        .flatMap(asked -> asked.things().stream())
        .filter(thing -> thing.number() < 0)
        .distinct()
        .toList();
  }

  /** Each way in which the rule can be met. */
  List<List<Clause>> ways() {
    List<List<Clause>> ways = List.of(List.of());
    for (List<Clause> line : lines) {
      List<List<Clause>> longer = new ArrayList<>();
      for (List<Clause> way : ways) {
        for (Clause clause : line) {
          List<Clause> all = new ArrayList<>(way);
          all.add(clause);
          longer.add(all);
        }
      }
      ways = longer.size() > MOST_WAYS ? longer.subList(0, MOST_WAYS + 1) : longer;
    }
    return ways;
  }

  /** What the engine runs, for each way in which the rule can be met. */
  List<Rule> models() {
    List<Rule> models = new ArrayList<>();
    for (List<Clause> way : ways()) {
      models.add(EngineRule.of(id(), models.size() + 1, unnamed(way), way));
    }
    return models;
  }

  /** A word that isn't known is told where it stands in its line. */
  private void misread(int at, String message) {
    Matcher unknown = UNKNOWN.matcher(message);
    int column = 0;
    if (unknown.find()) {
      String written = file.text().lines().skip(at - 1L).findFirst().orElse("");
      column = written.indexOf(unknown.group(1)) + 1;
    }
    mistakes.add(new RuleMistake(file.name(), at, column, message));
  }

  private void wrong(int at, String message) {
    mistakes.add(new RuleMistake(file.name(), at, message));
  }
}
