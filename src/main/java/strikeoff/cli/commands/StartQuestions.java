package strikeoff.cli.commands;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import strikeoff.cli.commands.Asking.Ended;
import strikeoff.start.FirstDesigns;
import strikeoff.start.PlanAnswers;
import strikeoff.start.PrintKind;
import strikeoff.start.Said;
import strikeoff.start.Spread;
import strikeoff.start.Wishes;
import strikeoff.units.ArealMass;
import strikeoff.units.Length;
import strikeoff.units.Measures;
import strikeoff.units.MeshCount;
import strikeoff.units.Pair;
import strikeoff.units.Parsed;
import strikeoff.units.Quantities;

/** What start asks on a terminal, and what it takes for an answer. */
final class StartQuestions {

  /** In mm: the least cloth, and what is offered. */
  private static final double LEAST = 100;

  private static final double WIDE = 900;
  private static final double LONG = 2000;

  private final Asking asking;
  private final FilmQuestions filmQuestions;
  private OfferedSizes sizes = new OfferedSizes(Measures.of(List.of()));
  private Optional<Films> films = Optional.empty();

  /** One design from its films, and its size as it was settled before the cloth's. */
  record Films(FirstDesigns motifs, Said<Pair> size) {}

  StartQuestions(Asking asking, FilmQuestions filmQuestions) {
    this.asking = asking;
    this.filmQuestions = filmQuestions;
  }

  /** What is printed, if films tell it. */
  Optional<Films> films() {
    return films;
  }

  /**
   * Asks everything.
   *
   * @param usual what is offered for title, medium, fibre and colours
   */
  PlanAnswers answers(Wishes usual) throws Ended {
    String title =
        asking.ask(
            "What is the plan called?", usual.title(), t -> AnswerReading.read("plan: %s", t));
    films =
        filmQuestions.motifs(usual).map(motifs -> new Films(motifs, motifs.motifs().get(0).size()));
    films.ifPresent(known -> asking.say("", "The films measure " + known.size().text() + "."));
    double along = needed(known -> known.along());
    double across = needed(known -> known.across());
    String fibre = asking.ask("What is the cloth made of?", usual.fibre(), AnswerReading::fibre);
    Said<Length> width =
        asking.ask(
            "How wide is the cloth?",
            across > WIDE ? sizes.text(sizes.up(across)) : "90 cm",
            text -> length(text, across, 5000));
    Said<Length> length =
        asking.ask(
            "How long is it?",
            along > LONG ? sizes.text(sizes.up(along)) : sizes.isMetric() ? "2 m" : "80 in",
            text -> length(text, along, 50_000));
    Said<ArealMass> mass =
        asking.ask(
            "How heavy is it?",
            sizes.isMetric() ? "150 g/m²" : "4.5 oz/yd²",
            text -> AnswerReading.above(text, ArealMass.class));
    boolean dye =
        asking.ask(
            "Dye or paint?",
            usual.dye() ? "dye" : "paint",
            text -> AnswerReading.medium(text, fibre));
    List<String> colours = films.isEmpty() ? colours(usual) : colours(films.get());
    return printed(usual, new AskedCloth(title, fibre, mass, length, width), dye, colours);
  }

  private List<String> colours(Wishes usual) throws Ended {
    return asking.ask(
        "In which colours, light before dark, with commas between?",
        String.join(", ", usual.colours()),
        AnswerReading::colours);
  }

  private List<String> colours(Films known) throws Ended {
    List<FirstDesigns.Coloured> pastes = known.motifs().pastes();
    List<String> colours =
        asking.ask(
            "In which colours are "
                + String.join(", ", pastes.stream().map(FirstDesigns.Coloured::name).toList())
                + " printed, with commas between?",
            String.join(", ", pastes.stream().map(FirstDesigns.Coloured::colour).toList()),
            text ->
                text.split(",", -1).length == pastes.size()
                    ? AnswerReading.colours(text)
                    : Parsed.refused("Say " + pastes.size() + " colours, one for each film."));
    films = Optional.of(new Films(known.motifs().in(colours), known.size()));
    return colours;
  }

  /** How much cloth the films take, with room along the edges; less than 10 cm is none. */
  private double needed(Function<Pair, Length> side) {
    return films
        .map(known -> Math.max(LEAST, side.apply(known.size().value()).mm() + 4 * sizes.step()))
        .orElse(LEAST);
  }

  private PlanAnswers printed(Wishes usual, AskedCloth cloth, boolean dye, List<String> colours)
      throws Ended {
    PrintKind printed =
        asking.ask(
            "What is printed: motifs in a row, a border, or small repeats?",
            "motifs",
            text ->
                roomy(
                    cloth,
                    Asking.word(
                            List.of("motifs", "border", "a border", "repeats", "small repeats"),
                            List.of(
                                PrintKind.MOTIFS,
                                PrintKind.NEAR_BORDER,
                                PrintKind.NEAR_BORDER,
                                PrintKind.SMALL_REPEATS,
                                PrintKind.SMALL_REPEATS))
                        .apply(text)));
    if (printed == PrintKind.NEAR_BORDER) {
      printed =
          asking.ask(
              "Along which edge: near, far or both?",
              "near",
              text ->
                  roomy(
                      cloth,
                      Asking.word(
                              List.of("near", "far", "both"),
                              List.of(
                                  PrintKind.NEAR_BORDER, PrintKind.FAR_BORDER, PrintKind.BORDERS))
                          .apply(text)));
    }
    PrintKind what = printed;
    Said<Pair> motif =
        films.isPresent()
            ? films.get().size()
            : asking.ask(
                "How large is the motif, along the cloth x across it?",
                sizes.motif(what, cloth),
                text ->
                    AnswerReading.size(
                        text,
                        size -> sizes.spread(what, cloth, size, size.along()).fits(),
                        "There is no room for that on the cloth."));
    Pair frame = PlanAnswers.usualFrame(motif.value(), sizes.units());
    Said<Length> pitch =
        asking.ask(
            what == PrintKind.MOTIFS || what == PrintKind.SMALL_REPEATS
                ? "How far is it from one to the next?"
                : "How long is a repeat?",
            sizes.text(sizes.pitch(what, cloth, motif.value(), frame)),
            text -> pitch(text, what, cloth, motif.value()));
    int most =
        Math.min(
            OfferedSizes.MOST_COPIES,
            sizes.spread(what, cloth, motif.value(), pitch.value()).alongCount());
    int count =
        what == PrintKind.MOTIFS
            ? asking.ask("How many motifs?", "" + most, text -> AnswerReading.count(text, 1, most))
            : most;
    Said<Pair> outside =
        asking.ask(
            "How large are the frames, outside?",
            sizes.pair(frame),
            text ->
                AnswerReading.size(
                    text,
                    size -> sizes.holds(size, motif.value()),
                    "A frame for this motif measures at least "
                        + sizes.pair(sizes.leastFrame(motif.value()))
                        + ": the image, room for paste, and the rails."));
    Said<MeshCount> mesh =
        asking.ask(
            "Which mesh do they have?",
            sizes.isMetric() ? "43/cm" : "110/in",
            text -> AnswerReading.mesh(text));
    Spread spread = sizes.spread(what, cloth, motif.value(), pitch.value());
    double wide = spread.tableWidth(outside.value().across().mm());
    double longest = outside.value().along().mm();
    Pair usualTable = PlanAnswers.usualTable(longest, wide, sizes.units());
    Said<Pair> table =
        asking.ask(
            "How large is the table, along the cloth x across it?",
            sizes.pair(usualTable),
            text ->
                AnswerReading.size(
                    text,
                    size -> size.along().mm() >= longest && size.across().mm() >= wide,
                    "The frames need a table of at least "
                        + sizes.pair(new Pair(sizes.up(longest), sizes.up(wide)))
                        + "."));
    PlanAnswers answers =
        new PlanAnswers(
            cloth.title(),
            cloth.fibre(),
            cloth.mass(),
            cloth.length(),
            cloth.width(),
            dye,
            colours,
            what,
            motif,
            pitch,
            count,
            outside,
            mesh,
            table,
            0,
            sizes.units());
    return what == PrintKind.MOTIFS ? boards(answers) : answers;
  }

  /** What films fill more than the cloth has room for is refused. */
  private Parsed<PrintKind> roomy(AskedCloth cloth, Parsed<PrintKind> printed) {
    boolean full =
        films.isPresent()
            && printed
                .toOptional()
                .filter(
                    what -> {
                      Pair size = films.get().size().value();
                      return !sizes.spread(what, cloth, size, size.along()).fits();
                    })
                .isPresent();
    return full ? Parsed.refused("There is no room for that on the cloth.") : printed;
  }

  private PlanAnswers boards(PlanAnswers a) throws Ended {
    int boards =
        asking.ask(
            "On how many boards, 0 for none?",
            "0",
            text -> AnswerReading.count(text, 0, a.mostBoards()));
    return a.on(boards);
  }

  private Parsed<Said<Length>> pitch(String text, PrintKind what, AskedCloth cloth, Pair motif) {
    Parsed<Said<Length>> said = length(text, 1, 50_000);
    if (!(said instanceof Parsed.Value<Said<Length>> value)) {
      return said;
    }
    Length pitch = value.value().value();
    double least =
        what == PrintKind.SMALL_REPEATS
            ? Math.max(motif.along().mm(), motif.across().mm())
            : motif.along().mm();
    if (pitch.mm() < least - 0.5) {
      return Parsed.refused(
          "They would overlap: the motif measures " + sizes.text(new Length(least)) + ".");
    }
    Spread spread = sizes.spread(what, cloth, motif, pitch);
    if (!spread.fits()) {
      return Parsed.refused("There is no room for one on the cloth.");
    }
    return spread.count() > OfferedSizes.MOST_COPIES && what != PrintKind.MOTIFS
        ? Parsed.refused(
            "That makes "
                + spread.count()
                + " copies; a first plan prints "
                + OfferedSizes.MOST_COPIES
                + " at most. Take them further apart, or a larger motif.")
        : said;
  }

  private Parsed<Said<Length>> length(String text, double least, double most) {
    Parsed<Length> parsed = Quantities.parse(text, Length.class);
    if (parsed instanceof Parsed.Value<Length> value) {
      if (value.value().mm() < least || value.value().mm() > most) {
        return Parsed.refused(
            "Between "
                + new Length(least).text(sizes.units())
                + " and "
                + new Length(most).text(sizes.units())
                + " can be planned here.");
      }
      if (sizes.isMetric()) {
        sizes = new OfferedSizes(Measures.of(value.written()));
      }
    }
    return parsed.map(length -> new Said<>(text, length));
  }
}
