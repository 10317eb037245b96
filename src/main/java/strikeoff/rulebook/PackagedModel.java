package strikeoff.rulebook;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.drools.model.Model;

/**
 * Loads the model classes that the build made of the rules. Their list is read directly: a
 * container would scan the class path first, which takes longer than everything else at start.
 */
final class PackagedModel {

  private static final String LIST = "META-INF/kie/strikeoff/strikeoff/drools-model";

  /** The list's first line names the version of the generator; each other line is a class. */
  private static final String VERSION = "Drools-Model-Version:";

  private PackagedModel() {}

  static List<Model> load() {
    ClassLoader loader = PackagedModel.class.getClassLoader();
    try (InputStream in = loader.getResourceAsStream(LIST)) {
      if (in == null) {
        throw new IllegalStateException("no " + LIST + " on the class path");
      }
      List<Model> models = new ArrayList<>();
      for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList()) {
        if (!line.isBlank() && !line.startsWith(VERSION)) {
          Class<?> model = Class.forName(line.strip(), true, loader);
          models.add((Model) model.getDeclaredConstructor().newInstance());
        }
      }
      return models;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("the rules were not built as this program expects", e);
    }
  }
}
