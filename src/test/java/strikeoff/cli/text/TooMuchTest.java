package strikeoff.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import strikeoff.document.Underway;
import strikeoff.document.Underway.Much;
import strikeoff.document.Underway.Stage;

/** Every bound that is named is one that {@code --bound} knows. */
class TooMuchTest {

  private static final String LATE = "it took more than 120 s and was given up";
  private static final String END = ", and --max-seconds gives it longer";

  private final Underway underway = Underway.begin();

  private String text() {
    return TooMuch.text(120, underway);
  }

  @Test
  void whatNeverBeganSaysNoMore() {
    assertThat(text()).isEqualTo(LATE);
  }

  @Test
  void aPipeThatBringsNothingIsNoLongPlan() {
    Underway.at(Stage.READING);
    assertThat(text())
        .isEqualTo(LATE + " while nothing of it had come yet; a file is read at once" + END);
  }

  @Test
  void filmsAreToldByTheirPoints() {
    Underway.at(Stage.READING);
    Underway.has(Much.BYTES, 30_000);
    assertThat(text()).startsWith(LATE + " while it was read, 29 KiB of text; several plans");
    Underway.more(Much.FILMS, 1);
    Underway.more(Much.POINTS, 180_000_000);
    Underway.more(Much.FILMS, 1);
    Underway.more(Much.POINTS, 190_000_000);
    assertThat(text())
        .isEqualTo(
            LATE
                + " while its films were measured, 29 KiB of text, 2 films of 370 million points so"
                + " far; films of fewer points an inch are measured sooner, --bound"
                + " artwork-megapixels=N refuses at once what has more"
                + END);
  }

  @Test
  void aRunIsToldByItsImpressionsOnceTheyAreKnown() {
    Underway.at(Stage.DERIVING);
    Underway.has(Much.STEPS, 1);
    Underway.has(Much.SEPARATIONS, 1000);
    Underway.has(Much.COPIES, 8);
    Underway.has(Much.PRINTS, 8000);
    assertThat(text())
        .startsWith(
            LATE
                + " while its day was worked out, 8000 prints to lay, 1000 separations, 8 copies on"
                + " the cloth, 1 step; a plan for each part of the run takes less than its share,"
                + " --bound impressions=N refuses");
    Underway.has(Much.IMPRESSIONS, 7000);
    Underway.has(Much.CONTACTS, 12);
    assertThat(text()).contains(", 7000 impressions, ").contains(", 12 frames on wet films; ");
  }

  /** They do all of it again, of a plan that is a little another. */
  @Test
  void trialsCountForNothing() {
    Underway.at(Stage.DERIVING);
    Underway.has(Much.IMPRESSIONS, 7000);
    Underway.at(Stage.MENDING);
    Underway.at(Stage.READING);
    Underway.has(Much.IMPRESSIONS, 3);
    assertThat(text())
        .isEqualTo(
            LATE
                + " while edits that mend it were tried, each by a check, 7000 impressions; a plan"
                + " for each part of the run takes less than its share, check --verdicts without"
                + " reports tries none"
                + END);
  }
}
