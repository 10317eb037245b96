package strikeoff.yaml;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import strikeoff.document.PlanPath;
import strikeoff.document.Position;
import strikeoff.units.Measures;
import strikeoff.units.MeasuresTally;
import strikeoff.units.WrittenIn;

/** What comes up while one document is decoded. */
public final class Reading {

  private final Problems problems = new Problems();
  private final List<Note> notes = new ArrayList<>();
  private final Set<String> keys = new LinkedHashSet<>();
  private final MeasuresTally tally = new MeasuresTally();
  private final boolean partial;
  private boolean nameless;

  public Reading() {
    this(false);
  }

  private Reading(boolean partial) {
    this.partial = partial;
  }

  /** For what a faulty text says where its slips are taken as they were meant. */
  public static Reading of(YamlReading.Faulty faulty) {
    Reading reading = new Reading(faulty.partial());
    reading.problems.addAll(faulty.problems());
    return reading;
  }

  /** True if parts of the document were left out, so that what is missing may stand there. */
  public boolean partial() {
    return partial;
  }

  /** Says that a section was left out since nothing in it has a name. */
  void nameless() {
    nameless = true;
  }

  /** True if a name that nothing bears may be that of something that was left out. */
  boolean mayBeNamed() {
    return partial || nameless;
  }

  public Problems problems() {
    return problems;
  }

  /** Reports what is wrong with a value, at the value. */
  public void wrong(Item item, String message) {
    if (item.node() instanceof Node.Nothing n && n.told()) {
      problems.doubtful();
      return;
    }
    problems.add(item.node().at(), item.path(), message);
  }

  /** Something the writer left open and the reader took for granted. */
  public void note(Item item, String words) {
    String written = item.node() instanceof Node.Scalar s ? s.text() : item.node().kind();
    notes.add(new Note(item.path(), written, words));
  }

  /** Counts the units that a value is written in. */
  void written(Item item, List<WrittenIn> units) {
    Position at = item.node().at();
    units.forEach(u -> tally.add(u, ((long) at.line() << Integer.SIZE) + at.column()));
  }

  /** The units that the document is written in, as far as it was decoded. */
  public Measures measures() {
    return tally.measures();
  }

  public List<Note> notes() {
    return List.copyOf(notes);
  }

  /** Every key that any decoder has asked for, whether or not it stood there. */
  public Set<String> keys() {
    return Set.copyOf(keys);
  }

  void asked(String key) {
    keys.add(key);
  }

  /** What was taken for granted at a place, which cup for example. */
  public record Note(PlanPath path, String written, String words) {}
}
