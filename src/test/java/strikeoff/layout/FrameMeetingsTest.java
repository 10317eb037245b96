package strikeoff.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import strikeoff.artwork.DemoFilms;
import strikeoff.policy.yaml.PolicyReader;

/** What is looked up by frame is what each pair of footprints says when it is measured. */
class FrameMeetingsTest {

  @Test
  void ofFilmsEachPairIsToldAsItIsMeasured() throws IOException {
    String text = Files.readString(Path.of("plans/estuary-curtains.yaml"));
    holds(Layout.of(DemoFilms.plan(text, PolicyReader.builtIn()), PolicyReader.builtIn()));
  }

  /** The first frame of the row meets the last one across the seam. */
  @Test
  void soItIsRoundATube() {
    Layout layout =
        Sheet.tube(285, 100).design("motif", 20, 20).series("row", "motif", 8, 37, 0, 10).layout();
    Footprint first = layout.footprints().get(0);
    Footprint last = layout.footprints().get(layout.footprints().size() - 1);
    assertThat(new FrameMeetings(layout).meet(first, last)).isTrue();
    holds(layout);
  }

  /** So dense that nothing is kept. */
  @Test
  void soItIsWhereHundredsLieOnOneAnother() {
    Layout layout =
        Sheet.open(2000, 500).design("dot", 20, 20).series("row", "dot", 450, 0.3, 0, 10).layout();
    holds(layout);
  }

  private static void holds(Layout layout) {
    FrameMeetings meetings = new FrameMeetings(layout);
    Map<Footprint, Boolean> all = new IdentityHashMap<>();
    layout.footprints().forEach(one -> all.put(one, true));
    for (Footprint frame : layout.footprints()) {
      List<Footprint> under =
          layout.footprints().stream()
              .filter(film -> FilmUnder.lies(film, frame.frame(), layout.tube()))
              .toList();
      List<Footprint> inTheWay =
          layout.footprints().stream()
              .filter(other -> layout.tube().overlaps(other.frame(), frame.frame()))
              .toList();
      assertThat(under).contains(frame);
      for (int again = 0; again < 2; again++) {
        assertThat(meetings.under(frame, all)).isEqualTo(under);
        assertThat(meetings.inTheWay(frame, all)).isEqualTo(inTheWay);
      }
      for (Footprint other : layout.footprints()) {
        assertThat(meetings.lies(other, frame)).isEqualTo(under.contains(other));
        assertThat(meetings.meet(other, frame)).isEqualTo(inTheWay.contains(other));
      }
    }
  }
}
