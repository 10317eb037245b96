package strikeoff.rulebook.own;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import strikeoff.findings.BarredAcceptance;
import strikeoff.findings.IdleAcceptance;
import strikeoff.plan.Evidence;

/** The sentences that are shipped: each can be written, means something, and is documented. */
class VocabularyTest {

  private static final Path PAGE = Path.of("rules/SENTENCES.md");

  private static final Vocabulary WORDS = Vocabulary.shipped();

  @Test
  void everyFactThatRulesAreGivenCanBeSpokenOf() {
    Set<String> named = new HashSet<>();
    WORDS.openings().forEach(s -> named.add(s.type().getName()));
    List<String> silent = new ArrayList<>();
    for (JavaClass type :
        new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("strikeoff")) {
      boolean fact =
          type.getModifiers().contains(JavaModifier.PUBLIC)
              && !type.isInterface()
              && type.isAssignableTo(Evidence.class);
      // Acceptances are judged when all else has been, and by built-in rules only.
      boolean acceptance =
          type.isEquivalentTo(IdleAcceptance.class) || type.isEquivalentTo(BarredAcceptance.class);
      if (fact && !acceptance && !named.contains(type.getName())) {
        silent.add(type.getName());
      }
    }
    assertThat(silent).as("facts without a sentence in a .dsl file").isEmpty();
  }

  /** All in one go: a compiler takes its time to start. */
  @Test
  void everySentenceCompilesWithTheValuesOfItsExample() throws RuleMistakes {
    StringBuilder rules = new StringBuilder();
    Set<Class<?>> described = new HashSet<>();
    for (Sentence opening : WORDS.openings()) {
      rules.append("rule \"").append(letters(described.size() * 1000 + rules.length()));
      rules.append("\"\nwhen\n  ").append(opening.example()).append('\n');
      if (described.add(opening.type())) {
        WORDS.more(opening.type()).forEach(s -> rules.append("  - " + s.example() + "\n"));
        Whose.examples(opening.type()).forEach(s -> rules.append("  - " + s + "\n"));
      }
      rules.append("then\n  say risk: m.\n  because: b.\n  mend: r.\nend\n");
    }
    OwnRules compiled =
        OwnRules.of(
            List.of(new RuleFile("rules/all/all.dslr", "all", rules.toString())), RuleCache.NONE);
    assertThat(compiled.rules()).hasSameSizeAs(WORDS.openings());
    assertThat(compiled.models().stream().mapToInt(m -> m.getRules().size()).sum())
        .isEqualTo(WORDS.openings().size());
  }

  /** A name of letters for a number. */
  private static String letters(int number) {
    StringBuilder name = new StringBuilder("r");
    for (int left = number; left > 0; left /= 26) {
      name.append((char) ('a' + left % 26));
    }
    return name.toString();
  }

  /** Run with {@code -Dsentences=write} to write the page anew. */
  @Test
  void thePageOfSentencesIsThatOfTheVocabulary() throws IOException {
    String page = page();
    if ("write".equals(System.getProperty("sentences"))) {
      Files.writeString(PAGE, page);
    }
    assertThat(Files.readString(PAGE)).isEqualTo(page);
  }

  private static String page() {
    StringBuilder page =
        new StringBuilder(
            """
            # Sentences for a studio's own rules

            This page is made from the vocabulary that is shipped with the program. How to write a rule of them is told
            in [OWN-RULES.md](OWN-RULES.md). What stands in a gap is written as here, with its unit; names of two words
            stand in quotes. A line begins with one of the sentences in bold; those below it may follow on the same
            line, joined by "and", or on lines of their own that begin with "-".

            Besides, every value of a thing can be asked for: `whose VALUE is AMOUNT`, with `is not`, `is more than`,
            `is less than`, `is at least`, `is at most`, and for lists `whose VALUES include NAME` or
            `do not include`. The values are listed under each thing, and are also what stands in braces when a rule
            says what it found, written in one word: `frame length` as `{frameLength}`. A sentence that begins with
            "there is a" may also be said with "there is no".
            """);
    for (String subject : Vocabulary.SUBJECTS) {
      Stream<String> lines = Vocabulary.text(subject).lines();
      page.append("\n## ").append(lines.findFirst().orElse("").substring(2)).append('\n');
      Set<Class<?>> types = new LinkedHashSet<>();
      Vocabulary.of(subject).sentences().forEach(s -> types.add(s.type()));
      for (Class<?> type : types) {
        page.append('\n');
        for (Sentence s : Vocabulary.of(subject).sentences()) {
          if (s.type() == type) {
            page.append(s.isMore() ? "  - " : "- **");
            page.append(s.example()).append(s.isMore() ? "\n" : "**\n");
          }
        }
        List<String> values = new ArrayList<>(Whose.values(type).keySet());
        page.append("  - values: ").append(String.join(", ", values)).append('\n');
      }
    }
    return page.toString();
  }
}
