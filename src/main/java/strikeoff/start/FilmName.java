package strikeoff.start;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * What a film's name says: {@code heron-slate-blue.png} is slate blue of the design heron.
 *
 * @param design what the names of its films begin with
 * @param colour the rest
 */
public record FilmName(String design, String colour) {

  private static final Set<String> OUTLINES = Set.of("key", "outline");

  /** True of an outline, which is printed last. */
  public boolean isKey() {
    return OUTLINES.contains(colour.toLowerCase(Locale.ROOT));
  }

  /**
   * Of each name, in the same order.
   *
   * @param files names of the pictures of one folder, without the folder
   * @param folder what films of one word belong to, as {@code rust.png} does
   * @param colours tells colours from other words
   */
  public static List<FilmName> of(List<String> files, String folder, Predicate<String> colours) {
    List<List<String>> words = files.stream().map(FilmName::words).toList();
    Set<List<String>> designs =
        words.stream()
            .filter(w -> w.size() > 1)
            .map(w -> w.subList(0, w.size() - 1))
            .collect(Collectors.toSet());
    List<FilmName> names = new ArrayList<>();
    for (List<String> film : words) {
      int begins = beginning(film, designs);
      String rest = text(film.subList(begins, film.size()));
      if (begins > 0) {
        names.add(new FilmName(text(film.subList(0, begins)), rest));
      } else {
        FilmName ofFolder = new FilmName(folder, rest);
        boolean isColour = ofFolder.isKey() || rest.matches("\\d+") || colours.test(rest);
        names.add(isColour ? ofFolder : new FilmName(rest, rest));
      }
    }
    return names;
  }

  /** How many words are the design: the fewest that are all but the colour of any film. */
  private static int beginning(List<String> film, Set<List<String>> designs) {
    for (int many = 1; many < film.size(); many++) {
      if (designs.contains(film.subList(0, many))) {
        return many;
      }
    }
    return 0;
  }

  private static List<String> words(String file) {
    String stem = file.replaceFirst("\\.[^.]*$", "");
    List<String> words =
        Arrays.stream(stem.split("[-_\\s.]+")).filter(word -> !word.isEmpty()).toList();
    return words.isEmpty() ? List.of(stem) : words;
  }

  private static String text(List<String> words) {
    return String.join(" ", words);
  }
}
