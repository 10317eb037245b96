package strikeoff.rulebook.own;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
    if (attempt.refusal().isPresent()) {
      throw new RuleMistakes(located(sources, attempt.refusal().get()));
    }
    KieBuilder builder = attempt.builder().orElseThrow();
    InternalKieModule module = (InternalKieModule) builder.getKieModule();
    Map<String, byte[]> classes = new LinkedHashMap<>();
    List<String> models = new ArrayList<>();
    for (String name : module.getFileNames().stream().sorted().toList()) {
      if (name.endsWith(".class")) {
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

  /** What the compiler says first against rules, with its line; 0 if it names none. */
  record Refusal(String text, int line) {}

  private record Attempt(Optional<KieBuilder> builder, Optional<Refusal> refusal) {}

  private static Attempt attempt(List<DrlSource> sources) {
    try {
      KieBuilder builder = built(sources);
      List<Message> errors = builder.getResults().getMessages(Message.Level.ERROR);
      return new Attempt(
          Optional.of(builder),
          errors.stream()
              // Says only which of the classes made from the rules was refused.
              .filter(m -> !m.getText().startsWith("Java source of") || errors.size() == 1)
              .findFirst()
              .map(m -> new Refusal(firstLine(m.getText()), m.getLine())));
    } catch (RuntimeException e) {
      // Some expressions make the compiler give up instead of saying what it doesn't like.
      return new Attempt(
          Optional.empty(), Optional.of(new Refusal(firstLine(String.valueOf(e.getMessage())), 0)));
    }
  }

  private static String firstLine(String text) {
    return text.lines().findFirst().orElse("").strip();
  }

  /**
   * The compiler doesn't say of every mistake where it is, so after a failure each rule is compiled
   * by itself.
   */
  private static List<RuleMistake> located(List<DrlSource> sources, Refusal whole) {
    List<RuleMistake> mistakes = new ArrayList<>();
    for (DrlSource source : sources) {
      for (DrlSource rule : source.ruleByRule()) {
        attempt(List.of(rule))
            .refusal()
            .ifPresent(
                refusal ->
                    mistakes.add(
                        new RuleMistake(
                            source.file().name(),
                            rule.lineOf(refusal),
                            "not a rule: " + refusal.text())));
      }
    }
    if (mistakes.isEmpty()) {
      mistakes.add(
          new RuleMistake(
              sources.get(0).file().name(), whole.line(), "not a rule: " + whole.text()));
    }
    return mistakes;
  }
}
