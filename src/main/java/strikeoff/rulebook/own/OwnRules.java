package strikeoff.rulebook.own;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drools.model.Model;

/**
 * A studio's own rules, ready to run. They are code that whoever runs the program trusts, as a
 * plan's writer never is.
 *
 * @param rules what stands in the files
 * @param models what the engine runs
 * @param fromCache true if they had been compiled before
 */
public record OwnRules(List<OwnRule> rules, List<Model> models, boolean fromCache) {

  /** No own rules: what loads no compiler. */
  public static final OwnRules NONE = new OwnRules(List.of(), List.of(), false);

  public OwnRules {
    rules = List.copyOf(rules);
    models = List.copyOf(models);
  }

  /**
   * Compiles rules, or takes them from the cache.
   *
   * @throws RuleMistakes with every mistake that shows
   */
  public static OwnRules of(List<RuleFile> files, RuleCache cache) throws RuleMistakes {
    if (files.isEmpty()) {
      return NONE;
    }
    String key = cache.key(files);
    Optional<CompiledRules> kept = cache.find(key);
    if (kept.isPresent()) {
      try {
        return loaded(kept.get(), true);
      } catch (ModelLoading.Unloadable e) {
        // Kept by a program that differs where no version tells: compile anew.
      }
    }
    CompiledRules compiled = BoundedCompilation.of(files);
    try {
      OwnRules rules = loaded(compiled, false);
      cache.keep(key, compiled);
      return rules;
    } catch (ModelLoading.Unloadable e) {
      String file =
          files.stream()
              .filter(f -> !f.isVocabulary() && f.family().equals(e.family()))
              .map(RuleFile::name)
              .findFirst()
              .orElse(files.get(0).name());
      throw new RuleMistakes(List.of(new RuleMistake(file, 0, e.getMessage())));
    }
  }

  public Optional<OwnRule> rule(String id) {
    return rules.stream().filter(r -> r.id().equals(id)).findFirst();
  }

  private static OwnRules loaded(CompiledRules compiled, boolean fromCache)
      throws ModelLoading.Unloadable {
    List<Model> models = ModelLoading.of(new MemoryLoader(compiled.classes()), compiled.models());
    models.forEach(JoinWatch::over);
    return new OwnRules(compiled.rules(), models, fromCache);
  }

  /** Classes that were never files. */
  private static final class MemoryLoader extends ClassLoader {

    private final Map<String, byte[]> classes;

    MemoryLoader(Map<String, byte[]> classes) {
      super(OwnRules.class.getClassLoader());
      this.classes = classes;
    }

    @Override
    protected Class<?> findClass(String name) throws ClassNotFoundException {
      byte[] bytes = classes.get(name);
      if (bytes == null) {
        throw new ClassNotFoundException(name);
      }
      return defineClass(name, bytes, 0, bytes.length);
    }
  }
}
