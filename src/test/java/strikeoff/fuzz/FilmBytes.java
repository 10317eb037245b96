package strikeoff.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import strikeoff.artwork.Artworks;
import strikeoff.artwork.Artworks.Looked;
import strikeoff.artwork.Wanted;
import strikeoff.document.Bounds;
import strikeoff.plan.Artwork.Tone;
import strikeoff.units.Length;
import strikeoff.units.Pair;

/** Any bytes in a film's place, picture or drawing: measured, or refused in a sentence. */
public final class FilmBytes {

  private static final Bounds SMALL = Bounds.USUAL.with(Map.of("megapixels", 4));
  private static final Pair SIZE = new Pair(new Length(100), new Length(80));

  private FilmBytes() {}

  /** Called by the fuzzer. */
  public static void fuzzerTestOneInput(byte[] input) {
    try {
      Path folder = Files.createTempDirectory("film");
      Path plan = Files.write(folder.resolve("plan.yaml"), new byte[0]);
      Path film = Files.write(folder.resolve("film.png"), input);
      try {
        Wanted wanted =
            new Wanted("film.png", Tone.DARK, true, Optional.empty(), new Length(1), SIZE);
        Looked looked = Artworks.nowhere().beside(plan).look(wanted, SMALL, Long.MAX_VALUE);
        if (looked instanceof Looked.Seen seen) {
          assertThat(seen.artwork().printed().fraction()).isBetween(0.0, 1.0);
          seen.artwork()
              .reach()
              .ifPresent(
                  reach -> {
                    assertThat(reach.left()).isLessThan(reach.right());
                    assertThat(reach.near()).isLessThan(reach.far());
                    assertThat(reach.right().mm()).isLessThanOrEqualTo(100.001);
                  });
        } else {
          // What it quotes of a drawing may be anything.
          String said = ((Looked.Refused) looked).why().replaceAll("“[^”]*”", "");
          assertThat(said).isNotBlank().doesNotContain("null");
        }
      } finally {
        Files.delete(film);
        Files.delete(plan);
        Files.delete(folder);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
