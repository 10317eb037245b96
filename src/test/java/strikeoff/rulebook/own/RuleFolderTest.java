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
    write("beginners/mesh.dslr", "mesh");
    write("beginners/notes.txt", "notes");
    write("beginners/plan.yaml", "plan");
    write("house/.old.dslr", "old");
    write("house/._late.dslr", new byte[] {0, 5, 22, 7, (byte) 0xb0});
    write(".house/late.dslr", "late");
    write("house/soon.DSLR", "soon");
    assertThat(read())
        .containsExactly(
            new RuleFile("rules/beginners/mesh.dslr", "beginners", "mesh"),
            new RuleFile("rules/house/late.dslr", "house", "late"),
            new RuleFile("rules/house/soon.DSLR", "house", "soon"));
  }

  @Test
  void whatIsMeantAsRulesAndIsNotCalledSoIsNotPassedOver() throws IOException {
    write("house/late.dslr", "late");
    write("house/soon.dslr.txt", "soon");
    write("house/CODE.DRL", "package rules.house");
    Files.createDirectories(folder.resolve("house/odd.dslr"));
    assertThat(told())
        .hasSize(3)
        .anySatisfy(one -> assertThat(one).startsWith("rules/house/CODE.DRL: rules in code aren't"))
        .contains(
            "rules/house/odd.dslr: this is a folder, called like a file of rules; give it another"
                + " name",
            "rules/house/soon.dslr.txt: the name of a file of rules ends in .dslr; rename this one");
  }

  @Test
  void aFileIsNoFolder() throws IOException {
    write("house/late.dslr", "late");
    RuleMistakes wrong =
        catchThrowableOfType(
            RuleMistakes.class,
            () -> RuleFolder.read(folder.resolve("house/late.dslr"), "late.dslr", List.of()));
    assertThat(wrong.all())
        .extracting(RuleMistake::text)
        .containsExactly("late.dslr: this is a file; name the folder that holds it");
  }

  @Test
  void codeIsRefusedWithWhatToWriteInstead() throws IOException {
    write("house/late.dslr", "late");
    write("house/mesh.drl", "package rules.house");
    write("words.dsl", "[condition][]it rains=eval(true)");
    assertThat(told())
        .containsExactly(
            "rules/house/mesh.drl: rules in code aren't run; write the rule in sentences, in a file"
                + " that ends in .dslr: what there is to say, and how, is in OWN-RULES.md and"
                + " SENTENCES.md",
            "rules/words.dsl: no sentences can be added; write what they stand for in the rule"
                + " itself, as in “there is a screen whose frame length is less than 30 cm”");
  }

  @Test
  void aMarkAtTheBeginningThatEditorsLeaveIsNoPartOfTheText() throws IOException, RuleMistakes {
    write("house/late.dslr", "\uFEFFrule");
    assertThat(read()).extracting(RuleFile::text).containsExactly("rule");
  }

  @Test
  void aFolderThatCannotBePartOfAnIdIsTold() throws IOException {
    write("First Class/a.dslr", "");
    write("paste/c.dslr", "");
    assertThat(told())
        .containsExactly(
            "rules/First Class/a.dslr: rules are called by their folder, whose name is one word of"
                + " small letters a to z; “First Class” is none",
            "rules/paste/c.dslr: the folder “paste” is called like a family of the built-in rules;"
                + " give it another name");
  }

  @Test
  void aFileIsTakenUpToItsMostAndRefusedBeyond() throws IOException, RuleMistakes {
    write("house/large.dslr", "x".repeat(MOST));
    assertThat(read().get(0).text()).hasSize(MOST);
    write("house/large.dslr", "x".repeat(MOST + 1));
    assertThat(told())
        .containsExactly(
            "rules/house/large.dslr: this file can't be read: it is larger than 256 KiB");
  }

  @Test
  void allTogetherHaveAMostAsWell() throws IOException, RuleMistakes {
    for (int i = 0; i < 32; i++) {
      write("house/rule" + i + ".dslr", "x".repeat(MOST));
    }
    assertThat(read()).hasSize(32);
    write("house/last.dslr", "x");
    assertThat(told()).containsExactly("rules: more than 8 MiB of rules; no more are read");
  }

  @Test
  void whatIsNoTextIsRefused() throws IOException {
    write("house/late.dslr", new byte[] {'r', (byte) 0xe9, 'e'});
    assertThat(told()).containsExactly("rules/house/late.dslr: this file isn't in UTF-8");
  }

  @Test
  void anEmptyOrMissingFolderIsAMistake() throws IOException {
    assertThat(told()).containsExactly("rules: no .dslr file in this folder");
    Files.delete(folder);
    assertThat(told()).containsExactly("rules: no such folder");
    Files.createDirectories(folder);
  }

  @Test
  void aLinkThatLeadsNowhereIsNoRuleLeftOut() throws IOException {
    write("house/rule.dslr", "");
    Files.createSymbolicLink(folder.resolve("house/gone.dslr"), folder.resolve("nowhere"));
    assertThat(told())
        .containsExactly(
            "rules/house/gone.dslr: this file can't be read: it is a pipe, a device, or a link that"
                + " leads nowhere");
  }

  @Test
  void fiveHundredFilesAreTakenAndOneMoreIsNot() throws IOException, RuleMistakes {
    for (int i = 0; i < 500; i++) {
      write("house/rule" + i + ".dslr", "");
    }
    assertThat(read()).hasSize(500);
    write("house/last.dslr", "");
    assertThat(told()).containsExactly("rules: more than 500 rule files");
  }
}
