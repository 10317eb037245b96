package strikeoff.packaged;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Containers have the locale C, in which a JDK knows no letter beyond ASCII. */
class LocaleIT {

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({"LAUNCHER, POSIX", "JAR, C"})
  void namesHaveAllLetters(Program.Way way, String locale) throws Exception {
    Program strikeoff = Program.in(way, folder).with("LC_ALL", locale);
    Path border = Path.of("plans/first-border.yaml").toAbsolutePath();
    Program.Told told =
        strikeoff.bash(
            """
            u=$'\\xc3\\xbc' U=$'\\xc3\\x9c'
            mkdir -p plans "$U/$u"
            cp %s plans/plain.yaml; cp %s plans/br${u}cke.yaml; cp %s "$U/$u/a.yaml"
            printf 'studio: S\\nhours: 9-17\\n' > "$U/studio.yaml"
            strikeoff check plans --verdicts --reports "$U-out" -f json="$u.json" -f text="$u.txt"
            cat "$u.txt"
            strikeoff check "plans/br${u}cke.yaml" "$U" --verdicts
            strikeoff check "plans/br*cke.yaml" "pl*/*${u}*.yaml" --verdicts
            strikeoff join "$u.json" -f json="$U.json" -f text="$u.txt"
            cd "$U/$u" && strikeoff check a.yaml --verdicts --reports "$u"
            cd ../.. && ls "$U-out" "$U/$u/$u" "$U.json"
            """
                .formatted(border, border, border));
    assertThat(told.err()).isEmpty();
    assertThat(told.out().lines().map(line -> line.replaceAll(": \\d .*", "")))
        .containsExactly(
            "PRINTABLE      plans/br\u00FCcke.yaml",
            "PRINTABLE      plans/plain.yaml",
            "PRINTABLE      plans/br\u00FCcke.yaml",
            "PRINTABLE      \u00DC/\u00FC/a.yaml",
            "PRINTABLE      plans/br\u00FCcke.yaml",
            "PRINTABLE      a.yaml",
            "\u00DC.json",
            "",
            "\u00DC-out:",
            "br-cke.html",
            "index.html",
            "plain.html",
            "rules.html",
            "",
            "\u00DC/\u00FC/\u00FC:",
            "a.html",
            "index.html",
            "rules.html");
  }
}
