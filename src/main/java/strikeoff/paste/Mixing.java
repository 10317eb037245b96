package strikeoff.paste;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import strikeoff.day.Moment;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;

/**
 * The mixing of a paste, or of several that one step mixes and that are told together.
 *
 * @param pastes their names
 * @param prints how many impressions the run makes with it
 * @param ready when it is mixed; empty if the clock doesn't get there
 * @param path of the mix step
 */
public record Mixing(List<String> pastes, int prints, Optional<Moment> ready, PlanPath path)
    implements Evidence.Gathered {

  public Mixing {
    pastes = List.copyOf(pastes);
  }

  /** The paste, or the first of several. */
  public String paste() {
    return pastes.get(0);
  }

  /** When it is mixed, in seconds of the print days' clock; after all else if it never is. */
  public long ends() {
    return ready.map(Moment::seconds).orElse(Long.MAX_VALUE);
  }

  @Override
  public Object gathering() {
    return path;
  }

  @Override
  public Mixing and(List<Evidence> others) {
    return new Mixing(
        Stream.concat(Stream.of(this), others.stream().map(Mixing.class::cast))
            .map(Mixing::paste)
            .toList(),
        prints,
        ready,
        path);
  }
}
