package strikeoff.cli.commands;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import strikeoff.artwork.FilmFolder;
import strikeoff.check.Checker;
import strikeoff.cli.commands.Asking.Ended;
import strikeoff.start.FirstDesigns;
import strikeoff.start.Said;
import strikeoff.start.Wishes;
import strikeoff.units.Pair;
import strikeoff.units.Parsed;

/** What start asks of films: only where pictures lie beside the plan or in a folder there. */
final class FilmQuestions {

  private static final String NONE = "none";
  private static final int MOST_FOLDERS = 200;
  private static final int MOST_NAMED = 3;

  /** Reads a folder of films. */
  interface Reading {
    FilmDesigns in(String folder) throws FilmDesigns.Refused;
  }

  private final Asking asking;
  private final Path home;
  private final Optional<String> offered;
  private final Reading reading;
  private Checker checker = Checker.builtIn();

  FilmQuestions(Asking asking, Path home, Optional<String> offered, Reading reading) {
    this.asking = asking;
    this.home = home;
    this.offered = offered;
    this.reading = reading;
  }

  /** One design from its films; empty if there are none, or none are wanted. */
  Optional<FirstDesigns> motifs(Wishes usual) throws Ended {
    List<String> near = offered.map(List::of).orElseGet(this::near);
    if (near.isEmpty()) {
      return Optional.empty();
    }
    String places = String.join(", ", near.subList(0, Math.min(MOST_NAMED, near.size())));
    while (true) {
      Optional<FilmDesigns> found =
          asking.ask(
              "Is there a folder with films (" + places + ")?", offered.orElse(NONE), this::read);
      if (found.isEmpty()) {
        return Optional.empty();
      }
      FilmDesigns one = found.get().only(design(found.get().names()));
      try {
        FirstDesigns motifs = one.motifs(List.of(), size(one), usual.units());
        Pair size = motifs.motifs().get(0).size().value();
        if (size.along().mm() < 1 || size.across().mm() < 1) {
          asking.say("  ", "A motif measures at least 1 mm each way.");
          continue;
        }
        checker = one.checker();
        motifs.standIns().ifPresent(told -> asking.say("", told));
        return Optional.of(motifs);
      } catch (FilmDesigns.Refused refused) {
        refused.whys().forEach(why -> asking.say("  ", why + "."));
      }
    }
  }

  /** What checks a plan that names them. */
  Checker checker() {
    return checker;
  }

  private Parsed<Optional<FilmDesigns>> read(String folder) {
    if (folder.equalsIgnoreCase(NONE)) {
      return Parsed.value(Optional.empty());
    }
    try {
      return Parsed.value(Optional.of(reading.in(folder)));
    } catch (FilmDesigns.Refused refused) {
      return Parsed.refused(String.join(". ", refused.whys()) + ".");
    }
  }

  private String design(List<String> names) throws Ended {
    return names.size() == 1
        ? names.get(0)
        : asking.ask(
            "Which design is printed: " + String.join(", ", names) + "?",
            names.get(0),
            Asking.word(names, names));
  }

  private Optional<Said<Pair>> size(FilmDesigns one) throws Ended {
    String design = one.names().get(0);
    Predicate<Pair> any = size -> true;
    return one.size(design).isPresent()
        ? Optional.empty()
        : Optional.of(
            asking.ask(
                "The films don't say how large they are. How large is the motif, along the cloth x"
                    + " across it?",
                "20 x 20 cm",
                text -> AnswerReading.size(text, any, "")));
  }

  /** Folders with pictures: the plan's own, and those in it. */
  private List<String> near() {
    List<String> below;
    try (Stream<Path> all = Files.list(home)) {
      below =
          all.limit(MOST_FOLDERS)
              .filter(Files::isDirectory)
              .filter(FilmFolder::holdsPictures)
              .map(folder -> folder.getFileName().toString())
              .sorted()
              .toList();
    } catch (IOException | RuntimeException e) {
      return List.of();
    }
    return FilmFolder.holdsPictures(home)
        ? Stream.concat(Stream.of("."), below.stream()).toList()
        : below;
  }
}
