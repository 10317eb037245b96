package strikeoff.artwork;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/** What a drawing clips by: outlines alone, of no more corners than can cross each other soon. */
final class SvgClips {

  /**
   * Letters of all outlines to clip by: where they cross each other, each crossing takes memory.
   */
  private static final int MOST_LETTERS = 4_000;

  private final Set<String> clips = new HashSet<>();

  /** Letters of outlines by their names; below nothing of those that can't clip. */
  private final Map<String, Integer> outlines = new HashMap<>();

  /** Lines by what is named there. */
  private final Map<String, Integer> copied = new LinkedHashMap<>();

  private final Map<String, Integer> named = new LinkedHashMap<>();
  private int letters;

  void element(
      int line, String name, String id, boolean inClip, boolean evenOdd, Map<String, String> said)
      throws SvgNotDrawn {
    int mine = said.getOrDefault("d", "").length() + said.getOrDefault("points", "").length();
    if (name.equals("clipPath")) {
      if (id != null) {
        clips.add(id);
      }
    } else if (inClip) {
      if (evenOdd) {
        throw new SvgNotDrawn("clips by evenodd aren't drawn here: " + SvgRefusals.CUT);
      }
      letters += mine;
      if (name.equals("use")) {
        copied.put(said.get("href").substring(1), line);
      }
    }
    if (said.containsKey("clip-path")) {
      String url = said.get("clip-path");
      named.put(url.substring(5, url.length() - 1), line);
    }
    if (id != null && SvgPlaces.SHAPES.contains(name)) {
      boolean plain = !evenOdd && !said.containsKey("transform") && !said.containsKey("clip-path");
      outlines.put(id, plain ? mine : -1);
    }
  }

  void check(SvgWrong wrong) throws UnreadablePicture {
    named.forEach(
        (id, line) -> {
          if (!clips.contains(id)) {
            wrong.tell(line, "#" + id, "it clips, but is no clipPath: delete that");
          }
        });
    copied.forEach(
        (id, line) -> {
          int mine = outlines.getOrDefault(id, -1);
          if (mine < 0) {
            wrong.tell(line, "#" + id, "it clips, but is no plain outline: " + SvgRefusals.CUT);
          }
          letters += mine;
        });
    wrong.requireNothing();
    if (letters > MOST_LETTERS) {
      throw new UnreadablePicture(
          "this drawing clips by outlines of more than "
              + MOST_LETTERS
              + " letters; "
              + SvgRefusals.CUT);
    }
  }
}
