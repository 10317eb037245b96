package strikeoff.rulebook.own;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is taken from a studio's folder of rules, and what is refused with all its mistakes. */
class RuleFolderTest {

  private static final int MOST = 256 * 1024;

  @TempDir private Path folder;

  private void write(String name, String text) throws IOException {
    write(name, text.getBytes(StandardCharsets.UTF_8));
  }

  private void write(String name, byte[] bytes) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.write(file, bytes);
  }

  private List<RuleFile> read() throws RuleMistakes {
    return RuleFolder.read(folder, "rules", List.of("paste", "drying"));
  }

  private List<String> told() {
    RuleMistakes wrong = catchThrowableOfType(RuleMistakes.class, this::read);
    return wrong.all().stream().map(RuleMistake::text).toList();
  }

  @Test
  void takesRuleFilesByNameAndNothingElse() throws IOException, RuleMistakes {
    write("house/late.dslr", "late");
    write("beginners/mesh.drl", "mesh");
    write("beginners/words.dsl", "words");
    write("beginners/notes.txt", "notes");
    write("beginners/plan.yaml", "plan");
    Files.createDirectories(folder.resolve("house/odd.drl"));
    assertThat(read())
        .containsExactly(
            new RuleFile("rules/beginners/mesh.drl", "beginners", "mesh"),
            new RuleFile("rules/beginners/words.dsl", "beginners", "words"),
            new RuleFile("rules/house/late.dslr", "house", "late"));
    assertThat(read()).extracting(RuleFile::isPlain).containsExactly(true, false, false);
    assertThat(read()).extracting(RuleFile::isVocabulary).containsExactly(false, true, false);
    assertThat(read()).extracting(RuleFile::isSentences).containsExactly(false, false, true);
  }

  @Test
  void aMarkAtTheBeginningThatEditorsLeaveIsNoPartOfTheText() throws IOException, RuleMistakes {
    write("house/late.dslr", "\uFEFFrule");
    assertThat(read()).extracting(RuleFile::text).containsExactly("rule");
  }

  @Test
  void aFolderThatCannotBePartOfAnIdIsToldForRulesAndNotForSentences() throws IOException {
    write("First Class/a.dslr", "");
    write("First Class/b.dsl", "");
    write("paste/c.drl", "");
    write("paste/d.dsl", "");
    assertThat(told())
        .containsExactly(
            "rules/First Class/a.dslr: rules are called by their folder, whose name is one word of"
                + " small letters a to z; “First Class” is none",
            "rules/paste/c.drl: the folder “paste” is called like a family of the built-in rules;"
                + " give it another name");
  }

  @Test
  void aFileIsTakenUpToItsMostAndRefusedBeyond() throws IOException, RuleMistakes {
    write("house/large.drl", "x".repeat(MOST));
    assertThat(read().get(0).text()).hasSize(MOST);
    write("house/large.drl", "x".repeat(MOST + 1));
    assertThat(told())
        .containsExactly(
            "rules/house/large.drl: this file can't be read: it is larger than 256 KiB");
  }

  @Test
  void whatIsNoTextIsRefused() throws IOException {
    write("house/late.drl", new byte[] {'r', (byte) 0xe9, 'e'});
    assertThat(told()).containsExactly("rules/house/late.drl: this file isn't in UTF-8");
  }

  @Test
  void anEmptyOrMissingFolderIsAMistake() throws IOException {
    assertThat(told()).containsExactly("rules: no .dslr or .drl file in this folder");
    Files.delete(folder);
    assertThat(told()).containsExactly("rules: no such folder");
    Files.createDirectories(folder);
  }

  @Test
  void aLinkThatLeadsNowhereIsNoRuleLeftOut() throws IOException {
    write("house/rule.drl", "");
    Files.createSymbolicLink(folder.resolve("house/gone.drl"), folder.resolve("nowhere"));
    assertThat(told())
        .containsExactly(
            "rules/house/gone.drl: this file can't be read: it is a pipe, a device, or a link that"
                + " leads nowhere");
  }

  @Test
  void fiveHundredFilesAreTakenAndOneMoreIsNot() throws IOException, RuleMistakes {
    for (int i = 0; i < 500; i++) {
      write("house/rule" + i + ".drl", "");
    }
    assertThat(read()).hasSize(500);
    write("house/last.drl", "");
    assertThat(told()).containsExactly("rules: more than 500 rule files");
  }
}
