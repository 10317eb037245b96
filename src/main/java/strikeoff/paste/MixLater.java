package strikeoff.paste;

import java.util.List;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.document.Scalars;
import strikeoff.plan.Step;

/** Edits that have a paste mixed just before a step, and not where it is mixed now. */
final class MixLater {

  private MixLater() {}

  /**
   * The whole mix step moves; if it mixes others as well, the paste gets a step of its own.
   *
   * @param before the step that prints with it
   */
  static List<Edit> edits(Step.Mix mix, String paste, PlanPath before) {
    List<String> others =
        mix.pastes().stream().distinct().filter(name -> !name.equals(paste)).toList();
    if (others.isEmpty()) {
      return List.of(new Edit.Move(mix.path(), before));
    }
    String left =
        others.size() == 1
            ? Scalars.text(others.get(0))
            : "[" + String.join(", ", others.stream().map(Scalars::text).toList()) + "]";
    return List.of(
        new Edit.Write(mix.path().key("mix"), left),
        new Edit.Insert(before, "mix: " + Scalars.text(paste)));
  }
}
