package strikeoff.mend;

import com.github.difflib.DiffUtils;
import com.github.difflib.patch.AbstractDelta;
import java.util.List;
import strikeoff.findings.Mend.Hunk;

/** Which lines differ between two texts. */
final class Hunks {

  private Hunks() {}

  static List<Hunk> of(String before, String after) {
    return DiffUtils.diff(before.lines().toList(), after.lines().toList()).getDeltas().stream()
        .map(Hunks::hunk)
        .toList();
  }

  private static Hunk hunk(AbstractDelta<String> delta) {
    return new Hunk(
        delta.getSource().getPosition() + 1,
        delta.getSource().getLines(),
        delta.getTarget().getLines());
  }
}
