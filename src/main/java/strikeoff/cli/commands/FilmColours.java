package strikeoff.cli.commands;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import strikeoff.start.FirstDesigns;
import strikeoff.units.Share;

/** The colours of films: of their names, or as they are given. */
final class FilmColours {

  /** Of films whose names are no colours: the one that prints most is the lightest. */
  private static final int LIGHTEST = 0xd0;

  private static final int DARKEST = 0x50;

  private FilmColours() {}

  /**
   * What films are called by their colour.
   *
   * @param key true of outlines
   * @param share of its design that is printed in it; of several, the most
   */
  record Word(String name, boolean key, Share share) {
    Word or(Word other) {
      return share.fraction() >= other.share().fraction() ? this : other;
    }
  }

  /** A film's word as plans write that colour; empty if it is none. */
  static Optional<String> known(String word) {
    String joined = word.toLowerCase(Locale.ROOT).replace(" ", "");
    String last = word.toLowerCase(Locale.ROOT).replaceFirst(".* ", "");
    return Stream.of(joined, last)
        .filter(text -> AnswerReading.colour(text).isPresent())
        .findFirst();
  }

  /**
   * Pastes in the order of printing: light before dark and outlines last, or as all were given.
   *
   * @param given for some or all, each {@code rust=#b5653a} or a colour alone
   */
  static List<FirstDesigns.Coloured> of(List<Word> words, List<String> given)
      throws FilmDesigns.Refused {
    Map<String, FirstDesigns.Coloured> pastes = new HashMap<>();
    List<Word> byShare = new ArrayList<>(words);
    byShare.sort(
        Comparator.comparingDouble((Word word) -> -word.share().fraction())
            .thenComparing(Word::name));
    Map<Word, Optional<String>> names = new HashMap<>();
    byShare.forEach(word -> names.put(word, known(word.name())));
    List<Word> nameless =
        byShare.stream().filter(word -> names.get(word).isEmpty() && !word.key()).toList();
    for (Word word : byShare) {
      Optional<String> known = names.get(word);
      String standIn = word.key() ? "black" : grey(nameless.indexOf(word), nameless.size());
      pastes.put(
          word.name(),
          new FirstDesigns.Coloured(word.name(), known.orElse(standIn), known.isEmpty()));
    }
    List<Word> left = inOrder(byShare, pastes);
    List<String> order = new ArrayList<>();
    List<String> alone = new ArrayList<>();
    for (String one : given) {
      String name = plain(one.replaceFirst("=.*", ""));
      Optional<Word> film = left.stream().filter(w -> plain(w.name()).equals(name)).findFirst();
      if (film.isEmpty() && one.contains("=")) {
        throw FilmDesigns.Refused.usage(
            "--colours: no film is called “" + one.replaceFirst("=.*", "") + "”");
      }
      if (film.isEmpty()) {
        alone.add(one);
        order.add("");
        continue;
      }
      left.remove(film.get());
      order.add(film.get().name());
      if (one.contains("=")) {
        put(pastes, film.get(), one.replaceFirst("[^=]*=", "").strip());
      }
    }
    if (!alone.isEmpty() && alone.size() != left.size()) {
      throw FilmDesigns.Refused.usage(
          "--colours: "
              + String.join(", ", alone)
              + (alone.size() == 1
                  ? " is the name of no film, and "
                  : " are names of no films, and ")
              + (left.isEmpty()
                  ? "each film has its colour"
                  : "these films wait for theirs: "
                      + String.join(", ", left.stream().map(Word::name).toList()))
              + "; say which is whose, as rust=#b5653a");
    }
    for (int i = 0; i < alone.size(); i++) {
      put(pastes, left.get(i), alone.get(i));
      order.set(order.indexOf(""), left.get(i).name());
    }
    return order.size() == words.size()
        ? order.stream().map(pastes::get).toList()
        : inOrder(byShare, pastes).stream().map(w -> pastes.get(w.name())).toList();
  }

  private static void put(Map<String, FirstDesigns.Coloured> pastes, Word word, String colour) {
    pastes.put(word.name(), new FirstDesigns.Coloured(word.name(), colour, false));
  }

  private static List<Word> inOrder(List<Word> byShare, Map<String, FirstDesigns.Coloured> pastes) {
    Map<Word, Double> bright = new HashMap<>();
    byShare.forEach(w -> bright.put(w, FirstPlan.brightness(pastes.get(w.name()).colour())));
    List<Word> order = new ArrayList<>(byShare);
    order.sort(Comparator.comparing(Word::key).thenComparing(w -> -bright.get(w)));
    return order;
  }

  private static String grey(int rank, int many) {
    int tone = LIGHTEST - (many < 2 ? 0 : rank * (LIGHTEST - DARKEST) / (many - 1));
    return String.format(Locale.ROOT, "#%02x%02x%02x", tone, tone, tone);
  }

  private static String plain(String name) {
    return name.strip().toLowerCase(Locale.ROOT).replaceAll("[-_\\s]+", " ");
  }
}
