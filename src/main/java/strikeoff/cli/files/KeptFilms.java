package strikeoff.cli.files;

import java.util.List;
import java.util.Optional;
import strikeoff.artwork.KeptMeasures;

/**
 * Measures of films in the folder of kept results, found by the film's bytes, by all else that they
 * depend on, and by the program that measured.
 */
public final class KeptFilms implements KeptMeasures {

  private final ResultCache cache;
  private final byte[] program;

  /**
   * @param program which program measures
   */
  public KeptFilms(ResultCache cache, byte[] program) {
    this.cache = cache;
    this.program = program.clone();
  }

  private byte[] key(String of) {
    return new CacheKey().put("measured by", program).put("measures of", of).bytes();
  }

  @Override
  public Optional<byte[]> find(String of) {
    return cache.find(key(of)).flatMap(entry -> entry.pages().get(0));
  }

  @Override
  public void keep(String of, byte[] measures) {
    cache.keep(key(of), new ResultCache.Entry(List.of(), "", List.of(Optional.of(measures))));
  }
}
