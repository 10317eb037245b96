package strikeoff.cli.commands;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.File;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import strikeoff.cli.text.Exit;
import strikeoff.cli.text.Surroundings;
import strikeoff.report.json.BillOfMaterials;

class LicencesCommandTest {

  /** As Maven lays a library into its repository. */
  private static final Pattern LIBRARY = Pattern.compile("/([^/]+)/([^/]+)/\\1-\\2\\.jar$");

  /** The plugin that makes the bill of materials won't work offline. */
  @BeforeEach
  void aBillWasMade() throws Exception {
    assumeFalse(BillOfMaterials.components().isEmpty(), "built without a network");
  }

  @Test
  void listsEachComponentWithALicenceWhoseTextIsThere() throws Exception {
    List<BillOfMaterials.Component> components = BillOfMaterials.components();
    assertThat(components)
        .extracting(BillOfMaterials.Component::name)
        .contains("drools-core", "jsvg", "jts-core", "picocli", "slf4j-nop", "snakeyaml")
        .doesNotContain("assertj-core", "jqwik")
        .isSorted();
    assertThat(components)
        .extracting(LicencesCommand::licence)
        .containsOnly("Apache-2.0", "BSD-3-Clause", "MIT");
  }

  @Test
  void namesTheVersionsThatRun() throws Exception {
    for (BillOfMaterials.Component component : BillOfMaterials.components()) {
      assertThat(running(component.name())).as(component.name()).isEqualTo(component.version());
    }
  }

  private static String running(String name) {
    for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
      Matcher library = LIBRARY.matcher(entry.replace(File.separatorChar, '/'));
      if (library.find() && library.group(1).equals(name)) {
        return library.group(2);
      }
    }
    return "not on the class path";
  }

  @Test
  void printsTheListAndOnDemandTheTexts() {
    assertThat(told("licences"))
        .startsWith("strikeoff is licensed under Apache-2.0. It holds:\n  commons-codec ")
        .containsPattern("(?m)^  jts-core \\S+ +BSD-3-Clause$")
        .doesNotContain("==");
    assertThat(told("licences", "--texts"))
        .contains("\n== Apache-2.0\n", "http://www.apache.org/licenses/")
        .contains("\n== BSD-3-Clause\n", "Eclipse Foundation, Inc. and its licensors")
        .contains("\n== MIT\n", "QOS.ch", "Copyright (c) 2021-2024");
  }

  @Test
  void theVersionNamesTheJava() {
    assertThat(told("--version"))
        .startsWith("strikeoff ")
        .endsWith("\nJava " + System.getProperty("java.runtime.version") + "\n");
  }

  private static String told(String... arguments) {
    StringWriter out = new StringWriter();
    Surroundings here =
        new Surroundings(
            new PrintWriter(out),
            new PrintWriter(out),
            InputStream.nullInputStream(),
            Map.of(),
            false,
            Path.of(""),
            80);
    assertThat(Strikeoff.run(here, arguments)).isEqualTo(Exit.PRINTABLE.code());
    return out.toString().replace(System.lineSeparator(), "\n");
  }
}
