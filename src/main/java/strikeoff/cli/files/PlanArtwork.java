package strikeoff.cli.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import strikeoff.artwork.Artworks;
import strikeoff.cli.files.PlanFiles.PlanFile;
import strikeoff.document.Bounds;
import strikeoff.plan.yaml.NamedArtwork;

/** The films that lie beside plans, as files that a run reads. */
public final class PlanArtwork {

  private PlanArtwork() {}

  /**
   * Where those of a plan lie, or would lie; nothing for what the plan may not name. What a shell
   * hands over as a pipe can be read once, by the check.
   */
  public static List<Path> of(PlanFile plan) {
    if (plan.isStandardInput() || !Files.isRegularFile(plan.path())) {
      return List.of();
    }
    try (InputStream in = Files.newInputStream(plan.path())) {
      Artworks artworks = Artworks.nowhere().beside(plan.path());
      return NamedArtwork.of(in.readNBytes(Bounds.USUAL.bytes() + 1), Bounds.USUAL).stream()
          .map(artworks::path)
          .flatMap(Optional::stream)
          .toList();
    } catch (IOException e) {
      return List.of();
    }
  }

  /**
   * Adds the bytes of a plan's films to what its result depends on.
   *
   * @param bytes of the plan
   */
  public static void into(CacheKey key, PlanFile plan, byte[] bytes, Bounds bounds) {
    Artworks artworks = Artworks.nowhere().beside(plan.path());
    for (String name : NamedArtwork.of(bytes, bounds)) {
      key.put("artwork", List.of(name, artworks.digest(name, bounds)));
    }
  }
}
