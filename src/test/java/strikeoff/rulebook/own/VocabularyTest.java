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
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.drools.core.impl.RuleBaseFactory;
import org.drools.model.DSL;
import org.drools.model.Rule;
import org.drools.model.impl.ModelImpl;
import org.drools.modelcompiler.KieBaseBuilder;
import org.junit.jupiter.api.Test;
import strikeoff.evidence.Evidence;
import strikeoff.findings.AcceptEntry;
import strikeoff.rulebook.Reporter;

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
      boolean acceptance = type.isEquivalentTo(AcceptEntry.class);
      if (fact && !acceptance && !named.contains(type.getName())) {
        silent.add(type.getName());
      }
    }
    assertThat(silent).as("facts without a sentence in a .dsl file").isEmpty();
  }

  /** Each is read with the values of its example, and the engine takes what it means. */
  @Test
  void everySentenceCanBeSaidWithTheValuesOfItsExample() {
    List<Rule> rules = new ArrayList<>();
    Set<Class<?>> described = new HashSet<>();
    for (Sentence opening : WORDS.openings()) {
      Clause clause = ClauseTest.clause(opening.example());
      assertThat(clause.type()).as(opening.words()).isEqualTo(opening.type());
      if (described.add(opening.type())) {
        List<String> more = new ArrayList<>(DescriptionReader.examples(opening.type()));
        WORDS.more(opening.type()).forEach(s -> more.add(s.example()));
        WORDS.moreOfMany(opening.type()).forEach(s -> more.add(s.example()));
        for (String one : more) {
          clause =
              clause.and(
                  LineReader.more(one, opening.type(), WORDS, new Things())
                      .toOptional()
                      .orElseThrow(() -> new AssertionError(opening.type() + ": " + one)));
        }
      }
      List<Thing> unnamed =
          clause.everything().stream().flatMap(a -> a.things().stream()).distinct().toList();
      rules.add(EngineRule.of("all/" + letters(rules.size()), 1, unnamed, List.of(clause)));
    }
    for (Vocabulary.Noun noun : WORDS.nouns()) {
      ClauseTest.clause("there are more than 3 " + noun.many().example());
      ClauseTest.clause("there is no " + noun.one().example());
    }
    for (Vocabulary.Use use :
        List.of(Vocabulary.Use.GREATEST, Vocabulary.Use.LEAST, Vocabulary.Use.SUM)) {
      assertThat(WORDS.sentences(use)).isNotEmpty();
      WORDS.sentences(use).forEach(s -> ClauseTest.clause(s.example()));
    }
    ModelImpl model = new ModelImpl("rules.all");
    rules.forEach(model::addRule);
    model.addGlobal(DSL.globalOf(Reporter.class, "rules.all", Reporter.GLOBAL));
    assertThat(
            KieBaseBuilder.createKieBaseFromModel(
                    model, RuleBaseFactory.newKnowledgeBaseConfiguration())
                .getKiePackage("rules.all")
                .getRules())
        .hasSameSizeAs(WORDS.openings());
  }

  /** What is known of a value is known of one that there is. */
  @Test
  void theListOfKnownValuesNamesFactsAndTheirValues() {
    Set<String> there = new HashSet<>();
    for (Sentence opening : WORDS.openings()) {
      Sayable.names(List.of(opening.type()))
          .forEach(value -> there.add(opening.type().getSimpleName() + " " + value));
    }
    KnownValues list = KnownValues.list();
    assertThat(list.kinds().keySet()).filteredOn(k -> !k.startsWith("*")).isSubsetOf(there);
    assertThat(list.most().keySet()).isSubsetOf(there);
    assertThat(list.meanings())
        .allSatisfy(
            m -> assertThat(there).contains(m.fact() + " " + m.asked().replaceAll(" .*", "")));
    assertThat(list.meanings()).extracting(KnownValues.Meaning::holds).isNotEmpty();
  }

  /** Each in a rule of its own, as somebody copies it out of the page. */
  @Test
  void everySentenceOfThePageIsRead() throws IOException {
    Pattern listed = Pattern.compile("- \\*\\*(.*)\\*\\*|  - (?!values: |in braces alone: )(.*)");
    StringBuilder rules = new StringBuilder();
    String first = "";
    int number = 0;
    for (String line : Files.readAllLines(PAGE)) {
      Matcher sentence = listed.matcher(line);
      if (line.isEmpty()) {
        first = "";
      }
      if (sentence.matches()) {
        String opening = sentence.group(1);
        first = first.isEmpty() ? opening : first;
        rules.append("rule \"").append(letters(number++)).append("\"\nwhen\n");
        rules.append(opening == null ? first + "\n- " + sentence.group(2) : opening);
        rules.append("\nthen\nsay risk: m.\nbecause: b.\nmend: r.\nend\n");
      }
    }
    assertThat(number).isGreaterThan(200);
    List<RuleMistake> mistakes = new ArrayList<>();
    SentenceFile.of(new RuleFile("all.dslr", "shown", rules.toString()), WORDS, mistakes);
    assertThat(mistakes).isEmpty();
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
            stand in quotes. Names are those of a plan; other words are listed at the end, and a rule that asks for
            a word that isn't there is refused. A line begins with one of the sentences in bold; those below it may follow on the same
            line, joined by "and", or on lines of their own that begin with "-".

            Besides, every value of a thing can be asked for: `whose VALUE is AMOUNT`, with `is not`, `is more than`,
            `is less than`, `is at least`, `is at most`, and for lists `whose VALUES include NAME` or
            `do not include`. The values are listed under each thing, and are also what stands in braces when a rule
            says what it found, written in one word: `frame length` as `{frameLength}`. Texts that tell figures in the
            plan's units can stand in braces alone. What "there is a …" finds can also be missing, counted, added up, and be
            the greatest or the least, any sentence can be denied, and values be compared with those of other things:
            [OWN-RULES.md](OWN-RULES.md) shows how.
            """);
    for (String subject : Vocabulary.SUBJECTS) {
      Stream<String> lines = Vocabulary.text(subject).lines();
      page.append("\n## ").append(lines.findFirst().orElse("").substring(2)).append('\n');
      Vocabulary words = Vocabulary.of(Vocabulary.text(subject));
      Set<Class<?>> types = new LinkedHashSet<>();
      words.sentences().forEach(s -> types.add(s.type()));
      for (Class<?> type : types) {
        page.append('\n');
        for (Sentence s : words.sentences()) {
          if (s.type() == type) {
            page.append(s.isMore() ? "  - " : "- **");
            page.append(s.example()).append(s.isMore() ? "\n" : "**\n");
          }
        }
        for (Vocabulary.Use use :
            List.of(Vocabulary.Use.GREATEST, Vocabulary.Use.LEAST, Vocabulary.Use.SUM)) {
          for (Sentence s : words.sentences(use)) {
            if (s.type() == type) {
              page.append("- **").append(s.example()).append("**");
              page.append(use == Vocabulary.Use.SUM ? "\n" : ", alone or “is one …”\n");
            }
          }
        }
        List<String> values = new ArrayList<>(AskableValues.of(type).keySet());
        if (!values.isEmpty()) {
          page.append("  - values: ").append(String.join(", ", values)).append('\n');
        }
        List<String> told = AskableValues.told(type);
        if (!told.isEmpty()) {
          page.append("  - in braces alone: ").append(String.join(", ", told)).append('\n');
        }
      }
    }
    page.append("\n## Words that are known\n\n");
    page.append("With other spellings in brackets; capital letters count for nothing.\n\n");
    for (Kind kind : Kind.values()) {
      kind.known()
          .ifPresent(
              words ->
                  page.append("- a ")
                      .append(words.what())
                      .append(", in a gap {")
                      .append(kind.name().toLowerCase(Locale.ROOT))
                      .append("}: ")
                      .append(String.join(", ", words.listed()))
                      .append('\n'));
    }
    return page.toString();
  }
}
