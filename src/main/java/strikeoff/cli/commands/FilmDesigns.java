package strikeoff.cli.commands;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import strikeoff.artwork.Artworks;
import strikeoff.artwork.FilmFolder;
import strikeoff.artwork.Wanted;
import strikeoff.check.Checker;
import strikeoff.check.FileTrouble;
import strikeoff.document.Bounds;
import strikeoff.plan.Artwork;
import strikeoff.start.FilmName;
import strikeoff.start.FirstDesigns;
import strikeoff.start.Said;
import strikeoff.units.Length;
import strikeoff.units.Measures;
import strikeoff.units.Pair;

/** The designs that lie in a folder as films, one for each separation. */
final class FilmDesigns {

  /** More are no first plan. */
  private static final int MOST_FILMS = 40;

  /** Films can't be taken in. */
  static final class Refused extends Exception {
    private static final long serialVersionUID = 1;

    private final transient List<String> whys;
    private final boolean usage;

    private Refused(boolean usage, List<String> whys) {
      super(String.join("\n", whys), null, false, false);
      this.usage = usage;
      this.whys = List.copyOf(whys);
    }

    static Refused usage(String why) {
      return new Refused(true, List.of(why));
    }

    List<String> whys() {
      return whys;
    }

    /** True if a command was wrong, false if it is the films. */
    boolean isUsage() {
      return usage;
    }
  }

  private record Separation(FilmFolder.Film film, FilmName name) {
    String file() {
      return film.name();
    }

    String said() {
      return name.design().equals(name.colour())
          ? name.colour()
          : name.design() + " " + name.colour();
    }
  }

  private final Artworks artworks;
  private final Map<String, List<Separation>> designs = new LinkedHashMap<>();

  /** What is wrong with names; told together with what is wrong with pictures. */
  private final List<String> misnamed;

  private FilmDesigns(Artworks artworks, List<String> misnamed) {
    this.artworks = artworks;
    this.misnamed = misnamed;
  }

  /**
   * Those of a folder.
   *
   * @param plan the folder that the plan is to lie in
   * @param folder of films, as a user names it
   * @param there where that is
   */
  static FilmDesigns in(Path plan, String folder, Path there) throws Refused {
    Path home = plan.toAbsolutePath().normalize();
    Path films = there.toAbsolutePath().normalize();
    if (!films.startsWith(home)) {
      throw Refused.usage(
          folder
              + ": films lie beside the plan or in a folder below it, so that it can name them; this"
              + " folder lies elsewhere. Copy it there, or write the plan beside it with -o");
    }
    Path at = home;
    for (Path step : home.equals(films) ? List.<Path>of() : home.relativize(films)) {
      at = at.resolve(step);
      if (Files.isSymbolicLink(at)) {
        throw Refused.usage(
            folder + ": this is a link, and a plan's films aren't read through one");
      }
    }
    if (!Files.isDirectory(films)) {
      throw Refused.usage(
          folder + (Files.exists(films) ? ": this is no folder" : ": there is no such folder"));
    }
    String below =
        home.relativize(films).toString().replace(home.getFileSystem().getSeparator(), "/");
    try {
      List<FilmFolder.Film> all =
          FilmFolder.of(home, below, Bounds.USUAL)
              .orElseThrow(
                  () ->
                      Refused.usage(
                          folder
                              + ": there are more than "
                              + FilmFolder.MOST_FILES
                              + " files in this folder, and it isn't looked through; put the films"
                              + " into a folder of their own"));
      if (all.isEmpty()) {
        throw Refused.usage(
            folder + ": there is no film in this folder; films are PNG, TIFF, PBM or SVG files");
      }
      if (all.size() > MOST_FILMS) {
        throw Refused.usage(
            folder
                + ": there are "
                + all.size()
                + " pictures in this folder; a first plan takes up to "
                + MOST_FILMS);
      }
      FilmDesigns found = new FilmDesigns(Artworks.nowhere().below(home), new ArrayList<>());
      found.take(all, below.isEmpty() ? "motif" : String.valueOf(films.getFileName()));
      return found;
    } catch (IOException | InvalidPathException e) {
      throw Refused.usage(
          folder
              + ": this folder can't be read"
              + (e instanceof IOException io ? ": " + FileTrouble.of(io) : ""));
    }
  }

  private void take(List<FilmFolder.Film> all, String folder) {
    List<String> files = all.stream().map(f -> f.name().replaceFirst(".*/", "")).toList();
    List<FilmName> names = FilmName.of(files, folder, word -> FilmColours.known(word).isPresent());
    Map<String, String> first = new HashMap<>();
    for (int i = 0; i < all.size(); i++) {
      Separation one = new Separation(all.get(i), names.get(i));
      String before = first.putIfAbsent(one.said().toLowerCase(Locale.ROOT), one.file());
      if (before != null) {
        misnamed.add(
            one.file()
                + ": by its name this is the same separation as "
                + before
                + "; one design has one film for each colour");
      }
      designs.computeIfAbsent(one.name().design(), d -> new ArrayList<>()).add(one);
    }
    designs.forEach(
        (design, separations) -> {
          if (separations.size() > AnswerReading.MOST_COLOURS) {
            misnamed.add(
                "“"
                    + design
                    + "” has "
                    + separations.size()
                    + " films; a first plan has at most "
                    + AnswerReading.MOST_COLOURS
                    + " colours");
          }
        });
  }

  /** Their names. */
  List<String> names() {
    return List.copyOf(designs.keySet());
  }

  /** One of them alone. */
  FilmDesigns only(String design) {
    FilmDesigns one = new FilmDesigns(artworks, misnamed);
    one.designs.put(design, designs.get(design));
    return one;
  }

  /** How large a design is: as the last of its films says that says anything, often the outline. */
  Optional<Pair> size(String design) {
    return designs.get(design).stream()
        .flatMap(separation -> separation.film().says().stream())
        .reduce((one, later) -> later);
  }

  /** What checks a plan that names them. */
  Checker checker() {
    return Checker.builtIn().with(artworks);
  }

  /**
   * What is printed, every film measured.
   *
   * @param colours as they were given; none leaves them to the films' names
   * @param otherwise the size of designs whose films say none; empty if nobody says it
   * @param units that sizes are written in
   */
  FirstDesigns motifs(List<String> colours, Optional<Said<Pair>> otherwise, Measures units)
      throws Refused {
    Map<String, Said<Pair>> sizes = new HashMap<>();
    Map<String, FilmColours.Word> words = new LinkedHashMap<>();
    List<String> whys = new ArrayList<>(misnamed);
    long left = Bounds.USUAL.artworkMegapixels() * 1_000_000L;
    for (String design : names()) {
      Optional<Said<Pair>> size =
          size(design).map(said -> FirstDesigns.size(said, units)).or(() -> otherwise);
      size.ifPresent(known -> sizes.put(design, known));
      for (Separation one : designs.get(design)) {
        if (size.isEmpty()) {
          whys.add(one.film().refused().map(why -> one.file() + ": " + why).orElse(unsized(one)));
          continue;
        }
        Pair rectangle = size.get().value();
        Artworks.Looked looked = artworks.look(wanted(one, rectangle), Bounds.USUAL, left);
        if (looked instanceof Artworks.Looked.Refused refused) {
          whys.add(one.file() + ": " + refused.why());
        } else if (looked instanceof Artworks.Looked.Seen seen) {
          left -= seen.points();
          words.merge(
              one.name().colour(),
              new FilmColours.Word(
                  one.name().colour(), one.name().isKey(), seen.artwork().printed()),
              FilmColours.Word::or);
        }
      }
    }
    refuse(whys);
    List<FirstDesigns.Coloured> pastes = FilmColours.of(List.copyOf(words.values()), colours);
    List<String> order = pastes.stream().map(FirstDesigns.Coloured::name).toList();
    List<FirstDesigns.Motif> motifs = new ArrayList<>();
    designs.forEach(
        (design, separations) ->
            motifs.add(
                new FirstDesigns.Motif(
                    design,
                    design + " row",
                    sizes.get(design),
                    separations.stream()
                        .sorted(Comparator.comparingInt(s -> order.indexOf(s.name().colour())))
                        .map(
                            s ->
                                FirstDesigns.film(
                                    s.said(), s.name().colour(), s.file(), s.name().isKey()))
                        .toList())));
    return new FirstDesigns(pastes, motifs);
  }

  private static String unsized(Separation one) {
    return one.file() + ": this film doesn't say how large it is; say the motif's size, --motif";
  }

  /** As a plan has it that names nothing but the film. */
  private static Wanted wanted(Separation one, Pair size) {
    return new Wanted(one.file(), Artwork.Tone.DARK, false, Optional.empty(), new Length(0), size);
  }

  private static void refuse(List<String> whys) throws Refused {
    if (!whys.isEmpty()) {
      throw new Refused(false, whys);
    }
  }
}
