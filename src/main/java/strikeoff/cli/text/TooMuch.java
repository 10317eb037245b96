package strikeoff.cli.text;

import java.util.ArrayList;
import java.util.List;
import strikeoff.document.Underway;
import strikeoff.document.Underway.Much;
import strikeoff.document.Underway.Stage;

/** Says of a plan that took too long what was being done, what there is much of, and what helps. */
public final class TooMuch {

  private static final long MILLION = 1_000_000;

  private static final int KIB = 1024;

  private TooMuch() {}

  /** In one line, as the end of a sentence. */
  public static String text(long seconds, Underway underway) {
    String late = "it took more than " + seconds + " s and was given up";
    if (underway.stage() == Stage.NOTHING) {
      return late;
    }
    List<String> much = much(underway);
    return late
        + " while "
        + doing(underway)
        + (much.isEmpty() ? "" : ", " + String.join(", ", much))
        + "; "
        + helps(underway)
        + ", and --max-seconds gives it longer";
  }

  private static String doing(Underway underway) {
    boolean films = underway.of(Much.FILMS) > 0;
    return switch (underway.stage()) {
      case NOTHING, READING ->
          films
              ? "its films were measured"
              : underway.of(Much.BYTES) > 0 ? "it was read" : "nothing of it had come yet";
      case DERIVING -> "its day was worked out";
      case JUDGING -> "it was judged";
      case MENDING -> "edits that mend it were tried, each by a check";
      case TELLING -> "its results were put into words";
    };
  }

  private static List<String> much(Underway u) {
    List<String> much = new ArrayList<>();
    if (u.stage() == Stage.READING) {
      add(much, u.of(Much.BYTES) / KIB, " KiB of text", " KiB of text");
      if (u.of(Much.FILMS) > 0) {
        much.add(
            count(u.of(Much.FILMS), " film", " films")
                + " of "
                + (u.of(Much.POINTS) / MILLION)
                + " million points so far");
      }
      return much;
    }
    if (u.of(Much.IMPRESSIONS) > 0) {
      add(much, u.of(Much.IMPRESSIONS), " impression", " impressions");
    } else {
      add(much, u.of(Much.PRINTS), " print to lay", " prints to lay");
    }
    add(much, u.of(Much.SEPARATIONS), " separation", " separations");
    add(much, u.of(Much.COPIES), " copy on the cloth", " copies on the cloth");
    add(much, u.of(Much.STEPS), " step", " steps");
    add(much, u.of(Much.CONTACTS), " frame on a wet film", " frames on wet films");
    return much;
  }

  private static void add(List<String> much, long many, String one, String more) {
    if (many > 0) {
      much.add(count(many, one, more));
    }
  }

  private static String count(long many, String one, String more) {
    return many + (many == 1 ? one : more);
  }

  private static String helps(Underway underway) {
    String split = "a plan for each part of the run takes less than its share";
    return switch (underway.stage()) {
      case NOTHING, READING ->
          underway.of(Much.FILMS) > 0
              ? "films of fewer points an inch are measured sooner, --bound artwork-megapixels=N"
                  + " refuses at once what has more"
              : underway.of(Much.BYTES) > 0
                  ? "several plans are read sooner, --bound kib=N refuses at once what has more"
                  : "a file is read at once";
      case DERIVING, JUDGING -> split + ", --bound impressions=N refuses at once what has more";
      case MENDING -> split + ", check --verdicts without reports tries none";
      case TELLING -> split + ", --verdicts and no --reports tell less";
    };
  }
}
