package strikeoff.cli.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import strikeoff.artwork.Artworks;
import strikeoff.artwork.StudioFolder;
import strikeoff.cli.files.PlanFiles.PlanFile;
import strikeoff.document.Bounds;
import strikeoff.plan.yaml.NamedArtwork;

/** The films that lie beside plans, or in their studio's inventory, as files that a run reads. */
public final class PlanArtwork {

  private PlanArtwork() {}

  /**
   * Where those of a plan lie, or would lie; nothing for what the plan may not name. What a shell
   * hands over as a pipe can be read once, by the check.
   */
  public static List<Path> of(PlanFile plan) {
    return plan.isStandardInput()
        ? List.of()
        : named(plan.path(), Artworks.nowhere().beside(plan.path())::path);
  }

  /** The same of a policy file's inventory. */
  public static List<Path> ofStudio(Path policy) {
    return named(policy, StudioFolder.of(policy)::path);
  }

  private static List<Path> named(Path file, Function<String, Optional<Path>> place) {
    if (!Files.isRegularFile(file)) {
      return List.of();
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(Bounds.USUAL.bytes() + 1);
      return NamedArtwork.of(bytes, Bounds.USUAL).files().stream()
          .map(place)
          .flatMap(Optional::stream)
          .toList();
    } catch (IOException e) {
      return List.of();
    }
  }

  /**
   * Adds the bytes of a plan's own films to what its result depends on.
   *
   * @param bytes of the plan
   */
  public static void into(CacheKey key, PlanFile plan, byte[] bytes, Bounds bounds) {
    Artworks artworks = Artworks.nowhere().beside(plan.path());
    for (String name : NamedArtwork.of(bytes, bounds).files()) {
      key.put("artwork", List.of(name, artworks.digest(name, bounds)));
    }
  }
}
