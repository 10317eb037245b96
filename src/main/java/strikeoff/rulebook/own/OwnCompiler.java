package strikeoff.rulebook.own;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drools.compiler.kie.builder.impl.InternalKieModule;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;

/**
 * Compiles a studio's own rules as the build compiles the built-in ones. The only class that loads
 * the compiler, which takes longer than to check a plan.
 */
final class OwnCompiler {

  /** What the compiler adds to load rules through a container, which nothing here does. */
  private static final String DESCRIPTION = "org/drools/project/model/ProjectModel.class";

  private static final String VERSION = "Drools-Model-Version:";

  private OwnCompiler() {}

  /**
   * What the compiler made.
   *
   * @param classes bytes of each class by its binary name
   * @param models names of the classes that are models
   */
  record Compiled(Map<String, byte[]> classes, List<String> models) {}

  /**
   * @throws RuleMistakes if the compiler refuses any of them
   */
  static Compiled compile(List<DrlSource> sources) throws RuleMistakes {
    Attempt attempt = attempt(sources);
    if (!attempt.refusals().isEmpty()) {
      throw new RuleMistakes(located(sources, attempt.refusals()));
    }
    Compiled compiled = attempt.compiled().orElseThrow();
    Map<String, byte[]> classes = new LinkedHashMap<>();
    compiled.classes().forEach((name, bytes) -> classes.put(name, Interruptible.of(bytes)));
    return new Compiled(classes, compiled.models());
  }

  private static Compiled compiled(KieBuilder builder) {
    InternalKieModule module = (InternalKieModule) builder.getKieModule();
    Map<String, byte[]> classes = new LinkedHashMap<>();
    List<String> models = new ArrayList<>();
    for (String name : module.getFileNames().stream().sorted().toList()) {
      if (name.endsWith(".class") && !name.equals(DESCRIPTION)) {
        classes.put(
            name.substring(0, name.length() - ".class".length()).replace('/', '.'),
            module.getBytes(name));
      } else if (name.endsWith("/drools-model")) {
        new String(module.getBytes(name), StandardCharsets.UTF_8)
            .lines()
            .map(String::strip)
            .filter(line -> !line.isEmpty() && !line.startsWith(VERSION))
            .forEach(models::add);
      }
    }
    return new Compiled(classes, models);
  }

  private static KieBuilder built(List<DrlSource> sources) {
    KieServices services = KieServices.Factory.get();
    KieFileSystem files = services.newKieFileSystem();
    for (int i = 0; i < sources.size(); i++) {
      // Names of our own: the compiler makes class names of them.
      DrlSource source = sources.get(i);
      files.write(
          "src/main/resources/rules/" + source.file().family() + "/file" + i + ".drl",
          source.drl());
    }
    return services
        .newKieBuilder(files, OwnCompiler.class.getClassLoader())
        .buildAll(ExecutableModelProject.class);
  }

  /**
   * What stands against rules.
   *
   * @param line as the compiler names it; 0 if it names none
   * @param use what they use and may not
   */
  record Refusal(String text, int line, Optional<CodeUse> use) {

    static Refusal of(String said, int line) {
      return new Refusal("not a rule: " + said, line, Optional.empty());
    }

    static Refusal of(CodeUse use) {
      return new Refusal(
          "a rule may compute with its facts and report, and nothing else; it can't use “"
              + use.text()
              + "” ("
              + use.type()
              + ")",
          0,
          Optional.of(use));
    }
  }

  /** Either what was compiled or what stands against it. */
  private record Attempt(Optional<Compiled> compiled, List<Refusal> refusals) {}

  private static Attempt attempt(List<DrlSource> sources) {
    try {
      KieBuilder builder = built(sources);
      List<Message> errors = builder.getResults().getMessages(Message.Level.ERROR);
      if (!errors.isEmpty()) {
        return new Attempt(
            Optional.empty(),
            errors.stream()
                // Says only which of the classes made from the rules was refused.
                .filter(m -> !m.getText().startsWith("Java source of") || errors.size() == 1)
                .limit(1)
                .map(m -> Refusal.of(firstLine(m.getText()), m.getLine()))
                .toList());
      }
      Compiled compiled = compiled(builder);
      return new Attempt(
          Optional.of(compiled), refused(compiled.classes()).map(Refusal::of).toList());
    } catch (RuntimeException | StackOverflowError e) {
      // Some expressions make the compiler give up instead of saying what it doesn't like.
      return new Attempt(Optional.empty(), List.of(Refusal.of(givenUp(e), 0)));
    }
  }

  private static Stream<CodeUse> refused(Map<String, byte[]> classes) {
    MayUse list = MayUse.shipped();
    List<CodeUse> refused =
        CodeUses.of(classes.values()).stream()
            .filter(use -> !classes.containsKey(use.type()) && !list.allows(use))
            .toList();
    Set<String> used =
        refused.stream()
            .filter(use -> !use.member().isEmpty())
            .map(CodeUse::type)
            .collect(Collectors.toSet());
    // A class is named wherever something of it is used, which is told already.
    return refused.stream().filter(use -> !use.member().isEmpty() || !used.contains(use.type()));
  }

  /**
   * A message that the compiler wrote for people is told; what only names its own insides is none.
   */
  private static String givenUp(Throwable e) {
    String said = firstLine(String.valueOf(e.getMessage()));
    boolean insides =
        e instanceof NullPointerException
            || e instanceof ClassCastException
            || e instanceof IndexOutOfBoundsException
            || e instanceof StackOverflowError
            || e.getMessage() == null
            || said.isEmpty();
    return insides
        ? "its conditions or what follows “then” can't be understood; leave lines out until it is"
            + " taken, and write the last one otherwise"
        : said;
  }

  private static String firstLine(String text) {
    return text.lines().findFirst().orElse("").strip();
  }

  /**
   * The compiler doesn't say of every mistake where it is, so after a failure each rule is compiled
   * by itself.
   */
  private static List<RuleMistake> located(List<DrlSource> sources, List<Refusal> whole) {
    List<RuleMistake> mistakes = new ArrayList<>();
    for (DrlSource source : sources) {
      for (DrlSource rule : source.ruleByRule()) {
        for (Refusal refusal : attempt(List.of(rule)).refusals()) {
          mistakes.add(new RuleMistake(source.file().name(), rule.lineOf(refusal), refusal.text()));
        }
      }
    }
    if (mistakes.isEmpty()) {
      DrlSource first = sources.get(0);
      whole.forEach(
          refusal ->
              mistakes.add(new RuleMistake(first.file().name(), refusal.line(), refusal.text())));
    }
    return mistakes;
  }
}
