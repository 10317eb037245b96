package strikeoff.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import strikeoff.care.Care;
import strikeoff.care.Hazard;
import strikeoff.findings.Sources;
import strikeoff.plan.Medium;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Protection;
import strikeoff.report.page.CautionBlock;
import strikeoff.speech.CareSpeech;
import strikeoff.speech.HazardSpeech;
import strikeoff.units.Measures;
import strikeoff.units.Phrase;

/** The cautions that a plan calls for, each hazard once however many steps have it. */
final class Cautions {

  private static final int MOST_PLACES = 30;

  /** More are told without their numbers. */
  private static final int MOST_STEPS = 6;

  private Cautions() {}

  static List<CautionBlock> of(Care care, Measures units) {
    Map<Hazard, List<strikeoff.care.Caution>> byHazard = new EnumMap<>(Hazard.class);
    care.cautions()
        .forEach(c -> byHazard.computeIfAbsent(c.hazard(), h -> new ArrayList<>()).add(c));
    List<CautionBlock> cautions = new ArrayList<>();
    byHazard.forEach((hazard, all) -> cautions.add(caution(hazard, all, units)));
    return cautions;
  }

  private static CautionBlock caution(
      Hazard hazard, List<strikeoff.care.Caution> all, Measures units) {
    Set<String> where = new LinkedHashSet<>();
    for (strikeoff.care.Caution caution : all) {
      String place = CareSpeech.place(caution, units);
      String figures = CareSpeech.figures(caution, units);
      where.add(figures.isEmpty() ? place : place + " (" + figures + ")");
    }
    String missing =
        all.get(0).missing().stream().map(Protection::text).collect(Collectors.joining(", "));
    return new CautionBlock(
        HazardSpeech.text(hazard),
        hazard.needed().stream().map(Protection::text).collect(Collectors.joining(", ")),
        missing,
        where.size() <= MOST_PLACES
            ? String.join("; ", where)
            : where.stream().limit(MOST_PLACES).collect(Collectors.joining("; "))
                + "; and "
                + (where.size() - MOST_PLACES)
                + " more",
        Sources.shown(HazardSpeech.body(hazard)));
  }

  /**
   * What to mind on a sheet, each hazard once with its steps; what holds for the whole plan on
   * each.
   */
  static String minded(Care care, Set<Integer> steps) {
    Map<Hazard, List<strikeoff.care.Caution>> byHazard = new EnumMap<>(Hazard.class);
    for (strikeoff.care.Caution caution : care.cautions()) {
      if (caution.step() == 0 || steps.contains(caution.step())) {
        byHazard.computeIfAbsent(caution.hazard(), h -> new ArrayList<>()).add(caution);
      }
    }
    return byHazard.entrySet().stream()
        .map(e -> brief(e.getKey(), e.getValue()) + at(e.getValue()))
        .collect(Collectors.joining("; "));
  }

  /** What of some hazards is to be minded, wherever the run has them. */
  static String minded(Care care, Collection<Hazard> hazards) {
    return hazards.stream()
        .filter(hazard -> care.cautions().stream().anyMatch(c -> c.hazard() == hazard))
        .map(HazardSpeech::brief)
        .collect(Collectors.joining("; "));
  }

  private static String brief(Hazard hazard, List<strikeoff.care.Caution> all) {
    return HazardSpeech.brief(hazard, all.stream().map(strikeoff.care.Caution::hurt).toList());
  }

  private static String at(List<strikeoff.care.Caution> all) {
    List<String> numbers =
        all.stream()
            .map(strikeoff.care.Caution::step)
            .filter(s -> s > 0)
            .sorted()
            .distinct()
            .map(String::valueOf)
            .toList();
    return numbers.isEmpty() || numbers.size() > MOST_STEPS
        ? ""
        : (numbers.size() == 1 ? " (step " : " (steps ") + Phrase.list(numbers) + ")";
  }

  /**
   * What is worn in some steps, each thing once: against their cautions, and of what the plan has
   * at hand also what the media that they print ask for.
   */
  static String worn(Care care, PrintPlan plan, Set<Integer> steps) {
    Stream<Protection> printing =
        steps.stream()
            .flatMap(step -> plan.print(step).stream())
            .flatMap(print -> media(print, plan))
            .flatMap(medium -> medium.worn().stream())
            .filter(plan.protection()::contains);
    return text(Stream.concat(against(care, c -> steps.contains(c.step())), printing));
  }

  /** What is worn against some cautions, each thing once. */
  static String worn(Care care, Predicate<strikeoff.care.Caution> which) {
    return text(against(care, which));
  }

  private static Stream<Protection> against(Care care, Predicate<strikeoff.care.Caution> which) {
    return care.cautions().stream().filter(which).flatMap(caution -> caution.needed().stream());
  }

  private static String text(Stream<Protection> worn) {
    return worn.distinct().map(Protection::text).collect(Collectors.joining(", "));
  }

  private static Stream<Medium> media(PrintStep print, PrintPlan plan) {
    return print.arrangements().stream()
        .flatMap(
            name ->
                plan.designs().get(plan.arrangements().get(name).design()).separations().stream())
        .filter(s -> print.separations().isEmpty() || print.separations().contains(s.number()))
        .map(s -> plan.pastes().get(s.paste()).medium());
  }
}
