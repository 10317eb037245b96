package strikeoff.rulebook.own;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The sentences in which rules can be written. Its files are in Drools' notation for such mappings:
 * {@code [condition][fact's type]sentence=what it means}.
 *
 * @param sentences in the order of the files
 */
public record Vocabulary(List<Sentence> sentences) {

  /** The files that come with the program, one for each subject. */
  public static final List<String> SUBJECTS =
      List.of("plan", "screens", "pastes", "layout", "day", "order", "fixing", "colour", "care");

  private static final String ROOT = "strikeoff.";

  private static final Pattern LINE = Pattern.compile("\\[condition]\\[([\\w.]+)]([^=]+)=(.*)");

  public Vocabulary {
    sentences = List.copyOf(sentences);
  }

  /** The sentences that come with the program. */
  public static Vocabulary shipped() {
    List<Sentence> all = new ArrayList<>();
    SUBJECTS.forEach(subject -> all.addAll(of(subject).sentences()));
    return new Vocabulary(all);
  }

  /** The sentences of one shipped file. */
  static Vocabulary of(String subject) {
    List<Sentence> all = new ArrayList<>();
    List<RuleMistake> mistakes = new ArrayList<>();
    read(subject + ".dsl", text(subject), all, mistakes);
    if (!mistakes.isEmpty()) {
      throw new IllegalStateException(mistakes.get(0).text());
    }
    return new Vocabulary(all);
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

  /** These sentences and those that a studio adds. */
  Vocabulary with(List<RuleFile> files, List<RuleMistake> mistakes) {
    List<Sentence> all = new ArrayList<>(sentences);
    for (RuleFile file : files) {
      if (file.isVocabulary()) {
        read(file.name(), file.text(), all, mistakes);
      }
    }
    return new Vocabulary(all);
  }

  /** Sentences that say more about a fact. */
  List<Sentence> more(Class<?> type) {
    return sentences.stream().filter(s -> s.isMore() && s.type() == type).toList();
  }

  /** Sentences that a rule's line can begin with. */
  List<Sentence> openings() {
    return sentences.stream().filter(s -> !s.isMore()).toList();
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
    return all;
  }

  /** Figures and gaps tell nothing of which sentence was meant. */
  private static String plain(String text) {
    return text.toLowerCase(Locale.ROOT).replaceAll("\\{[^}]*}|\\S*\\d\\S*", "#");
  }

  private static void read(
      String file, String text, List<Sentence> into, List<RuleMistake> mistakes) {
    List<String> lines = text.lines().toList();
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i).strip();
      if (line.isEmpty() || line.startsWith("#")) {
        continue;
      }
      Matcher match = LINE.matcher(line);
      if (!match.matches()) {
        mistakes.add(
            new RuleMistake(
                file, i + 1, "“[condition][fact]sentence=condition” was expected: " + line));
        continue;
      }
      try {
        Class<?> type = Class.forName(ROOT + match.group(1));
        into.add(Sentence.of(match.group(2).strip(), type, match.group(3).strip()));
      } catch (ClassNotFoundException | LinkageError e) {
        mistakes.add(new RuleMistake(file, i + 1, "no fact is called " + match.group(1)));
      } catch (IllegalArgumentException e) {
        mistakes.add(new RuleMistake(file, i + 1, e.getMessage()));
      }
    }
  }
}
