package strikeoff.paste;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import strikeoff.day.Moment;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;

/**
 * The first print of a paste, or of several that are told together.
 *
 * @param pastes their names
 * @param mixedBefore true if the plan says that it was mixed before the first day
 * @param mixings how often the day gets to mix it
 * @param firstUse when the first of them is wanted
 * @param mixed when its earliest mixing ends; of several, the last of those; empty if none does
 * @param sooner edits that have the step that mixes it come first; none if none does
 * @param path of the step that prints the first of them
 */
public record FirstPrint(
    List<String> pastes,
    boolean mixedBefore,
    int mixings,
    Moment firstUse,
    Optional<Moment> mixed,
    List<Edit> sooner,
    List<Related> related,
    PlanPath path)
    implements Evidence.Gathered {

  public FirstPrint {
    pastes = List.copyOf(pastes);
    sooner = List.copyOf(sooner);
    related = List.copyOf(related);
  }

  /** The paste, or the first of several. */
  public String paste() {
    return pastes.get(0);
  }

  /** When it is wanted, in seconds of the print days' clock. */
  public long begins() {
    return firstUse.seconds();
  }

  /** When it is ready; when it is wanted, if the run doesn't mix it. */
  public Moment ready() {
    return mixed.orElse(firstUse);
  }

  /** How many minutes it is printed before a mixing of the run ends; 0 if none ends later. */
  public double minutesAhead() {
    return Math.max(0, ready().since(firstUse).minutes());
  }

  /** Edits of the plan that have it mixed first: one way, or none. */
  public List<List<Edit>> mixingSooner() {
    return sooner.isEmpty() ? List.of() : List.of(sooner);
  }

  @Override
  public Object gathering() {
    return FirstPrint.class;
  }

  @Override
  public FirstPrint and(List<Evidence> others) {
    List<FirstPrint> all =
        Stream.concat(Stream.of(this), others.stream().map(FirstPrint.class::cast)).toList();
    return new FirstPrint(
        all.stream().map(FirstPrint::paste).toList(),
        mixedBefore,
        mixings,
        firstUse,
        all.stream().flatMap(one -> one.mixed().stream()).max(Moment::compareTo),
        all.stream().flatMap(one -> one.sooner().stream()).distinct().toList(),
        all.stream().flatMap(one -> one.related().stream()).toList(),
        path);
  }
}
