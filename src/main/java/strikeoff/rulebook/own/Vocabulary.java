package strikeoff.rulebook.own;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The sentences in which rules can be written, one a line: {@code [condition][fact's type]sentence=
 * what is asked of the fact}. A line that begins with {@code [greatest]} or {@code [least]} calls
 * the things that have most or least of a value, one with {@code [sum]} compares what all have
 * together.
 */
public final class Vocabulary {

  /** The files that come with the program, one for each subject. */
  public static final List<String> SUBJECTS =
      List.of("plan", "screens", "pastes", "layout", "day", "order", "fixing", "colour", "care");

  private static final String ROOT = "strikeoff.";

  private static final Pattern LINE =
      Pattern.compile("\\[(condition|greatest|least|sum)]\\[([\\w.$]+)]([^=]+)=(.*)");
  private static final Pattern NOUN = Pattern.compile("there is an? (.*)");

  /** What a sentence is for. */
  enum Use {
    CONDITION,
    GREATEST,
    LEAST,
    SUM
  }

  /**
   * A thing by its noun.
   *
   * @param one “screen”
   * @param many “screens”
   */
  record Noun(Sentence one, Sentence many) {}

  private static Optional<Vocabulary> shipped = Optional.empty();

  private final Map<Use, List<Sentence>> sentences = new LinkedHashMap<>();
  private final Map<Class<?>, List<Sentence>> more = new HashMap<>();
  private final Map<Class<?>, List<Sentence>> moreOfMany = new HashMap<>();
  private final List<Sentence> openings = new ArrayList<>();
  private final List<Noun> nouns = new ArrayList<>();

  private Vocabulary() {
    for (Use use : Use.values()) {
      sentences.put(use, new ArrayList<>());
    }
  }

  /** The sentences that come with the program. */
  public static synchronized Vocabulary shipped() {
    if (shipped.isEmpty()) {
      Vocabulary all = new Vocabulary();
      SUBJECTS.forEach(subject -> all.read(text(subject)));
      shipped = Optional.of(all);
    }
    return shipped.get();
  }

  /**
   * The sentences of a text.
   *
   * @throws IllegalArgumentException if a line is none, or asks for what there isn't
   */
  public static Vocabulary of(String text) {
    Vocabulary some = new Vocabulary();
    some.read(text);
    return some;
  }

  /** The text of a shipped file. */
  public static String text(String subject) {
    String name = "/strikeoff/rulebook/own/" + subject + ".dsl";
    try (InputStream in = Vocabulary.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("no " + name + " on the class path");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void read(String text) {
    for (String written : text.lines().toList()) {
      String line = written.strip();
      if (!line.isEmpty() && !line.startsWith("#")) {
        Matcher match = LINE.matcher(line);
        if (!match.matches()) {
          throw new IllegalArgumentException(
              "“[condition][fact]sentence=condition” was expected: " + line);
        }
        Use use = Use.valueOf(match.group(1).toUpperCase(Locale.ROOT));
        String condition = match.group(4).strip();
        boolean value = use == Use.GREATEST || use == Use.LEAST;
        add(
            use,
            Sentence.of(
                match.group(3).strip(),
                fact(match.group(2)),
                value ? condition + " > 0" : condition));
      }
    }
  }

  private void add(Use use, Sentence sentence) {
    sentences.get(use).add(sentence);
    if (use != Use.CONDITION) {
      return;
    }
    if (sentence.isMore()) {
      more.computeIfAbsent(sentence.type(), t -> new ArrayList<>()).add(sentence);
      String many = ofMany(sentence.words());
      if (!many.equals(sentence.words())) {
        moreOfMany
            .computeIfAbsent(sentence.type(), t -> new ArrayList<>())
            .add(sentence.inWords(many));
      }
      return;
    }
    openings.add(sentence);
    Matcher noun = NOUN.matcher(sentence.words());
    if (noun.matches()) {
      String one = noun.group(1);
      nouns.add(new Noun(sentence.inWords(one), sentence.inWords(many(one))));
    }
  }

  /** The fact that is called so, seen from the program's own packages. */
  static Class<?> fact(String name) {
    try {
      return Class.forName(ROOT + name);
    } catch (ClassNotFoundException | LinkageError e) {
      throw new IllegalArgumentException("no fact is called " + name, e);
    }
  }

  /** “screens” for “screen”, “pastes of paint” for “paste of paint”. */
  private static String many(String noun) {
    String head = noun.replaceFirst(" (of|that|with) .*", "");
    String rest = noun.substring(head.length());
    return (head.endsWith("s") && !head.endsWith("ss")
            ? head
            : head + (head.matches(".*(ch|sh|x|ss)") ? "es" : "s"))
        + rest;
  }

  /** “that end later than” for “that ends later than”. */
  private static String ofMany(String words) {
    return words
        .replaceFirst("^- that is ", "- that are ")
        .replaceFirst("^- that has ", "- that have ")
        .replaceFirst("^- that (\\w+?(?:ch|sh|x|ss))es ", "- that $1 ")
        .replaceFirst("^- that (\\w+[^s ])s ", "- that $1 ");
  }

  /** All sentences of a use, in the order of the files. */
  List<Sentence> sentences(Use use) {
    return List.copyOf(sentences.get(use));
  }

  /** All sentences that ask for something. */
  public List<Sentence> sentences() {
    return sentences(Use.CONDITION);
  }

  /** Sentences that say more about a fact. */
  List<Sentence> more(Class<?> type) {
    return more.getOrDefault(type, List.of());
  }

  /** The same as they are said of several. */
  List<Sentence> moreOfMany(Class<?> type) {
    return moreOfMany.getOrDefault(type, List.of());
  }

  /** Sentences that a rule's line can begin with. */
  List<Sentence> openings() {
    return openings;
  }

  /** Everything that “there is a …” finds. */
  List<Noun> nouns() {
    return nouns;
  }

  /** What facts of a type are called. */
  List<String> nouns(Class<?> type) {
    return nouns.stream()
        .filter(noun -> noun.one().type() == type)
        .map(noun -> noun.one().words())
        .toList();
  }

  /** The sentence nearest to a text by its letters, put together as it would be written. */
  String nearest(String text, List<String> candidates) {
    String best = "";
    double least = Double.MAX_VALUE;
    String written = plain(text);
    for (String candidate : candidates) {
      String other = plain(candidate);
      int most = Math.max(written.length(), other.length());
      double away = Letters.apart(written, other) / (double) Math.max(1, most);
      if (away < least) {
        least = away;
        best = candidate;
      }
    }
    return best;
  }

  /** What can be said in one line: each opening, alone and with each sentence that says more. */
  List<String> all() {
    List<String> all = new ArrayList<>();
    for (Sentence opening : openings()) {
      all.add(opening.words());
      more(opening.type()).forEach(more -> all.add(opening.words() + " " + more.said()));
    }
    for (Use use : List.of(Use.GREATEST, Use.LEAST, Use.SUM)) {
      sentences.get(use).forEach(sentence -> all.add(sentence.words()));
    }
    for (Noun noun : nouns) {
      all.add("there are more than {number} " + noun.many().words());
    }
    return all;
  }

  /** Figures and gaps tell nothing of which sentence was meant. */
  private static String plain(String text) {
    return text.toLowerCase(Locale.ROOT).replaceAll("\\{[^}]*}|\\S*\\d\\S*", "#");
  }
}
