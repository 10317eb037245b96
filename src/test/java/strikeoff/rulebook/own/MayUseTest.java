package strikeoff.rulebook.own;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Own rules compute and report; whatever ends the program or reaches beyond it is refused. */
class MayUseTest {

  private static final String HEAD =
      """
      package rules.bench
      import strikeoff.described.*
      import java.util.*
      global strikeoff.rulebook.Reporter reporter
      """;

  private static final String FORM =
      """
      rule "bench/%s"
          @severity("risk")
          @summary("s")
          @because("b.")
          @message("m.")
          @remedy("r.")
          @source("common practice, no source")
      when
          %s
      then
          %s
      end
      """;

  private static final String PLAN = "$plan : WholePlan()";
  private static final String REPORT = "reporter.report(drools.getRule(), $plan);";

  private static OwnRules rules(String text) throws RuleMistakes {
    return OwnRules.of(
        List.of(new RuleFile("rules/bench/own.drl", "bench", HEAD + text)), RuleCache.NONE);
  }

  private static List<RuleMistake> mistakes(String text) {
    RuleMistakes wrong = catchThrowableOfType(RuleMistakes.class, () -> rules(text));
    assertThat(wrong).as(text).isNotNull();
    return wrong.all();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          System.exit(0);                                       | System.exit
          Runtime.getRuntime().halt(0);                         | Runtime.halt
          java.util.function.IntConsumer c = System::exit;      | System.exit
          System.out.println("x");                              | System.out
          Object o = System.getenv();                           | System.getenv
          long t = System.nanoTime();                           | System.nanoTime
          Object o = java.time.LocalTime.now();                 | LocalTime.now
          Object o = java.util.Calendar.getInstance();          | Calendar.getInstance
          Object o = java.time.ZonedDateTime.now();             | ZonedDateTime.now
          new Thread(() -> { }).start();                        | new Thread
          List.of(1).parallelStream().count();                  | List.parallelStream
          Object o = java.util.stream.Stream.of(1).parallel();  | Stream.parallel
          Arrays.parallelSort(new int[9000]);                   | Arrays.parallelSort
          Arrays.parallelSetAll(new int[9], i -> i);            | Arrays.parallelSetAll
          Arrays.parallelPrefix(new int[9], (i, j) -> i);       | Arrays.parallelPrefix
          double d = Math.random();                             | Math.random
          double d = StrictMath.random();                       | StrictMath.random
          Collections.shuffle(new ArrayList(List.of(1, 2)));    | Collections.shuffle
          int i = System.identityHashCode($plan);               | System.identityHashCode
          Class.forName("java.lang.Runtime");                   | Class.forName
          Object o = String.class.getMethods();                 | Class.getMethods
          Object o = $plan.getClass().getClassLoader();         | Class.getClassLoader
          new ProcessBuilder("true").start();                   | new ProcessBuilder
          new java.io.FileWriter("x").close();                  | new FileWriter
          java.nio.file.Files.delete(java.nio.file.Path.of("x")); | Files.delete
          new Formatter("x").close();                           | new Formatter
          new java.net.Socket("localhost", 1).close();          | new Socket
          Locale.setDefault(Locale.ROOT);                       | Locale.setDefault
          $plan.wait();                                         | Object.wait
          drools.halt();                                        | Drools.halt
          Object o = drools.getContext(Object.class);           | Drools.getContext
          new Exception().printStackTrace();                    | Exception.printStackTrace
          strikeoff.cli.Main.main(new String[0]);               | Main.main
          strikeoff.rulebook.own.RuleThread.ask();              | RuleThread.ask
          Object o = new Timer();                               | new Timer
          """)
  void whatReachesBeyondAPlanIsRefusedAtItsLine(String code, String told) {
    List<RuleMistake> all =
        mistakes(
            FORM.formatted("sound", PLAN, REPORT)
                + FORM.formatted("odd", PLAN, code + "\n" + REPORT));
    assertThat(all)
        .extracting(RuleMistake::text)
        .anySatisfy(
            text ->
                assertThat(text)
                    .startsWith("rules/bench/own.drl:27: a rule may compute with its facts")
                    .contains("it can't use “" + told + "”"));
    assertThat(all).extracting(RuleMistake::file).containsOnly("rules/bench/own.drl");
  }

  @Test
  void aConditionAFunctionAndADeclaredFactAreReadToo() {
    assertThat(
            mistakes(FORM.formatted("odd", "$plan : WholePlan(System.getenv() != null)", REPORT)))
        .extracting(RuleMistake::text)
        .singleElement()
        .asString()
        .startsWith("rules/bench/own.drl:13:")
        .contains("“System.getenv”");
    assertThat(
            mistakes(
                "function void leave() { System.exit(0); }\n"
                    + FORM.formatted("odd", PLAN, "leave();\n" + REPORT)))
        .extracting(RuleMistake::text)
        .singleElement()
        .asString()
        .startsWith("rules/bench/own.drl:5:")
        .contains("“System.exit”");
    assertThat(
            mistakes(
                "declare Worker extends Thread\n  n : int\nend\n"
                    + FORM.formatted("odd", PLAN, REPORT)))
        .extracting(RuleMistake::text)
        .anySatisfy(text -> assertThat(text).contains("Thread"));
  }

  @Test
  void whatComputesIsAllowed() throws RuleMistakes {
    String conditions =
        """
        $a : ScreenUsed($n : screen, screen matches "(?i).*a.*", screen str[startsWith] "a",
                frameLength.base() > 100)
            accumulate( $s : ScreenUsed(); $c : count(1), $l : collectList($s),
                $m : average($s.frameLength().base()), $x : max($s.mesh().perCm()) )
            $i : Integer() from List.of(1, 2, 3)
            not ScreenUsed(screen != $n, frameLength.base() < twice(3))
            exists ScreenUsed(screen == $n)
            forall( ScreenUsed(screen != "") )
            eval($c > 0)
            $plan : WholePlan()""";
    String code =
        """
        List<String> names = new ArrayList<>();
            for (Object o : $l) { names.add(String.valueOf(o) + " " + $i); }
            Map<String, Integer> m = new HashMap<>();
            names.stream().filter(q -> q.length() > 2).forEach(q -> m.merge(q, 1, Integer::sum));
            names.sort(Comparator.comparing(String::length));
            switch ($n) { case "a": m.clear(); break; default: }
            String words = String.format("%%.1f", Math.sqrt($c)) + String.join(", ", names);
            java.time.LocalTime noon = java.time.LocalTime.of(12, 0).plusMinutes(words.length());
            if (noon.getHour() < 0) { throw new IllegalStateException("before noon"); }
            insert(new Seen($n, 3));
            """
            + REPORT;
    OwnRules own =
        rules(
            "declare Seen\n  of : String\n  n : int\nend\n"
                + "function int twice(int x) { return x * 2; }\n"
                + FORM.formatted("many", conditions, code));
    assertThat(own.rules()).hasSize(1);
  }

  /** A list of ours that let rules reach a file or a process by a detour would be worth nothing. */
  @Test
  void whatIsAllowedOfThisProgramReachesNothingBeyondIt() {
    MayUse list = MayUse.shipped();
    String[] ours =
        list.packages().stream().filter(p -> p.startsWith("strikeoff.")).toArray(String[]::new);
    assertThat(ours).hasSizeGreaterThan(10);
    JavaClasses program =
        new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages(ours);
    noClasses()
        .that(resideInAnyPackage(ours))
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "java.io", "java.nio.file..", "java.net..", "java.lang.reflect..", "javax..")
        .orShould()
        .dependOnClassesThat()
        .haveNameMatching("java\\.lang\\.(Runtime|Process.*|ProcessBuilder|ClassLoader)")
        .orShould()
        .callMethod(System.class, "exit", int.class)
        .check(program);
  }

  /** Where the compiler names only its own insides, words of ours stand instead. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          $plan : WholePlan() String(this == new String[0][3])
          $plan : WholePlan() String(this == )
          $plan : WholePlan(notes[ == 3)
          $plan : WholePlan( ( )
          """)
  void whatTheCompilerCantTakeIsToldInWords(String condition) {
    assertThat(mistakes(FORM.formatted("odd", condition, REPORT)))
        .isNotEmpty()
        .allSatisfy(
            mistake -> {
              assertThat(mistake.message()).doesNotContain("null", "Cannot invoke", "Exception");
              assertThat(mistake.line()).isBetween(5, 17);
            });
  }

  /** What no fact has a part in is computed when rules are loaded, before any plan is read. */
  @Test
  void aConditionWithoutAFactEndsToo() {
    assertThat(
            mistakes(
                "function int round(int x) { return round(x + 1) + 1; }\n"
                    + FORM.formatted("odd", "eval(round(1) > 0)\n" + PLAN, REPORT)))
        .extracting(RuleMistake::text)
        .containsExactly("rules/bench/own.drl: a condition that names no fact goes round");
    assertThat(
            mistakes(
                "function int round(int x) { while (x > 0) { x = 1; } return x; }\n"
                    + FORM.formatted("odd", "eval(round(1) > 0)\n" + PLAN, REPORT)))
        .extracting(RuleMistake::text)
        .containsExactly(
            "rules/bench/own.drl: a condition that names no fact doesn't come to an end");
  }
}
