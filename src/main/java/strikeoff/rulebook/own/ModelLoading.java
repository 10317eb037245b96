package strikeoff.rulebook.own;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drools.model.Model;

/**
 * Loads compiled rules. What a condition computes without any fact is computed here, so own code
 * already runs: on a thread of its own, and for so long and no longer.
 */
final class ModelLoading {

  /** A thousand times what loading takes. */
  private static final long MOST_MILLIS = 10_000;

  private static final long GRACE_MILLIS = 200;

  private final ClassLoader loader;
  private final List<String> names;
  private final List<Model> models = new ArrayList<>();
  private volatile String loading = "";
  private volatile Throwable thrown;

  private ModelLoading(ClassLoader loader, List<String> names) {
    this.loader = loader;
    this.names = names;
  }

  /** The rules of one package can't be loaded. */
  static final class Unloadable extends Exception {

    private static final long serialVersionUID = 1;

    private final String family;

    Unloadable(String family, String message, Throwable cause) {
      super(message, cause);
      this.family = family;
    }

    /** The folder of the rules at fault. */
    String family() {
      return family;
    }
  }

  /**
   * @param names of the classes that are models
   * @throws Unloadable if one can't be loaded, or doesn't come to an end
   */
  static List<Model> of(ClassLoader loader, List<String> names) throws Unloadable {
    ModelLoading work = new ModelLoading(loader, names);
    RuleThread thread = new RuleThread(work::load, "load own rules");
    thread.start();
    try {
      thread.join(MOST_MILLIS);
      if (thread.isAlive()) {
        thread.end();
        thread.join(GRACE_MILLIS);
        throw work.unloadable("a condition that names no fact doesn't come to an end", null);
      }
    } catch (InterruptedException e) {
      thread.end();
      Thread.currentThread().interrupt();
      throw work.unloadable("loading was interrupted", e);
    }
    Optional<Throwable> thrown = Optional.ofNullable(work.thrown);
    if (thrown.isPresent()) {
      throw work.unloadable(what(thrown.get()), thrown.get());
    }
    return work.models;
  }

  private void load() {
    try {
      for (String name : names) {
        loading = name;
        Class<?> model = Class.forName(name, true, loader);
        models.add((Model) model.getDeclaredConstructor().newInstance());
      }
    } catch (ReflectiveOperationException | RuntimeException | Error e) {
      thrown = e;
    }
  }

  private static String what(Throwable thrown) {
    Throwable root = thrown;
    while (root.getCause() != null) {
      root = root.getCause();
    }
    if (root instanceof StackOverflowError) {
      return "a condition that names no fact goes round";
    }
    if (root instanceof OutOfMemoryError) {
      return "a condition that names no fact needs more memory than there is";
    }
    return "the rules can't be loaded: " + String.valueOf(root).lines().findFirst().orElse("");
  }

  private Unloadable unloadable(String message, Throwable cause) {
    String[] parts = loading.split("\\.");
    return new Unloadable(parts.length > 1 ? parts[1] : "", message, cause);
  }
}
