package strikeoff.artwork;

import java.util.ArrayList;
import java.util.List;
import strikeoff.units.Script;

/** What a drawing holds that a film can't, by name and line. */
final class SvgWrong {

  private static final int MOST_TOLD = 5;

  private final List<String> wrong = new ArrayList<>();
  private int more;

  void tell(int line, String name, String advice) {
    if (wrong.size() == MOST_TOLD) {
      more++;
    } else {
      wrong.add("line " + line + " " + Script.quoted(name) + " (" + advice + ")");
    }
  }

  boolean isNothing() {
    return wrong.isEmpty();
  }

  void requireNothing() throws UnreadablePicture {
    if (!isNothing()) {
      throw new UnreadablePicture(
          "this drawing holds what a film can't: "
              + String.join("; ", wrong)
              + (more > 0 ? "; and " + more + " more of the like" : ""));
    }
  }
}
