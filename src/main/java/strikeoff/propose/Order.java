package strikeoff.propose;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import strikeoff.layout.Footprint;
import strikeoff.layout.Placement;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;

/**
 * What a run must keep to whatever else it chooses: every colour of every placement once and in the
 * design's order, what lies under it first, across a seam only when it is sewn, pastes mixed first,
 * and nothing printed once the fixing has begun. Of a run in several parts that is so in each.
 */
final class Order {

  private final Leeway leeway;
  private final int[] firstColour;
  private final int colours;

  /** Which of them are to be printed. */
  private final BitSet own = new BitSet();

  private final int awayAfter;
  private final List<Boolean> followAtOnce;

  Order(Leeway leeway) {
    this(leeway, Integer.MAX_VALUE);
  }

  private Order(Leeway leeway, int awayAfter) {
    this.leeway = leeway;
    this.awayAfter = awayAfter;
    this.followAtOnce = leeway.followAtOnce();
    List<Placement> all = leeway.layout().placements();
    this.firstColour = new int[all.size() + 1];
    for (Placement placement : all) {
      int own = leeway.layout().footprintsOf(placement.id()).size();
      firstColour[placement.id() + 1] = firstColour[placement.id()] + own;
    }
    this.colours = firstColour[all.size()];
    for (Footprint film : leeway.own().films()) {
      own.set(firstColour[film.placement().id()] + film.separation().number() - 1);
    }
  }

  /**
   * The same order, and seams that prints lie across are sewn last.
   *
   * @param awayAfter prints away from a seam that may come after it is sewn
   */
  Order sewnLast(int awayAfter) {
    return new Order(leeway, awayAfter);
  }

  /** Placements of a print step, arrangement by arrangement. */
  List<Placement> placements(PrintStep print) {
    List<Placement> all = new ArrayList<>();
    for (String arrangement : print.arrangements()) {
      Set<Integer> only = Set.copyOf(print.only(arrangement));
      for (Placement placement : leeway.layout().of(arrangement)) {
        if (only.isEmpty() || only.contains(placement.number())) {
          all.add(placement);
        }
      }
    }
    return all;
  }

  /** Of each arrangement of a step the numbers of all that it prints, rising. */
  Map<String, List<Integer>> numbers(PrintStep print) {
    Map<String, List<Integer>> numbers = new LinkedHashMap<>();
    for (String name : print.arrangements()) {
      List<Integer> only = print.only(name);
      numbers.put(
          name,
          leeway.layout().of(name).stream()
              .map(Placement::number)
              .filter(number -> only.isEmpty() || only.contains(number))
              .sorted()
              .toList());
    }
    return numbers;
  }

  /** Such numbers as a step says them: none of an arrangement that it prints wholly. */
  Map<String, List<Integer>> said(Map<String, List<Integer>> numbers) {
    Map<String, List<Integer>> said = new LinkedHashMap<>(numbers);
    said.replaceAll((name, own) -> own.size() == leeway.layout().of(name).size() ? List.of() : own);
    return said;
  }

  /** Numbers of the colours that a step prints of an arrangement. */
  List<Integer> colours(PrintStep print, String arrangement) {
    if (!print.separations().isEmpty()) {
      return print.separations();
    }
    List<Integer> all = new ArrayList<>();
    for (int i = 1; i <= leeway.colours(arrangement); i++) {
      all.add(i);
    }
    return all;
  }

  /** Pastes of some colours of the first arrangement that a step prints. */
  List<String> pastes(PrintStep print, List<Integer> colours) {
    String design = leeway.plan().arrangements().get(print.arrangements().get(0)).design();
    var separations = leeway.plan().designs().get(design).separations();
    List<String> pastes = new ArrayList<>();
    colours.forEach(number -> pastes.add(separations.get(number - 1).paste()));
    return pastes;
  }

  boolean keeps(List<Step> run) {
    int[] printedIn = new int[colours];
    Map<String, Integer> sewn = new HashMap<>();
    Map<String, Integer> mixed = new HashMap<>();
    Arrays.fill(printedIn, -1);
    boolean fixing = false;
    boolean slept = false;
    int last = 0;
    for (int i = 0; i < leeway.first().size(); i++) {
      if (i >= run.size() || !isSame(leeway.first().get(i), run.get(i))) {
        return false;
      }
      done(run.get(i), i, printedIn, mixed);
    }
    for (int at = leeway.first().size(); at < run.size(); at++) {
      Step step = run.get(at);
      if (step instanceof PrintStep print) {
        if (fixing || !prints(print, at, printedIn, mixed)) {
          return false;
        }
      } else if (step instanceof Step.Sew sew) {
        if (fixing || sewn.putIfAbsent(sew.seam(), at) != null) {
          return false;
        }
      } else if (step instanceof Step.Mix mix) {
        for (String paste : mix.pastes()) {
          // Again is afresh.
          mixed.putIfAbsent(paste, at);
          if (fixing) {
            return false;
          }
        }
      } else if (Leeway.isWet(step)) {
        fixing = true;
        if (last >= leeway.last().size()
            || slept && followAtOnce.get(last)
            || !isSame(leeway.last().get(last++), step)) {
          return false;
        }
        slept = false;
      } else if (step instanceof Step.EndOfDay) {
        slept = true;
      }
    }
    return last == leeway.last().size()
        && mixed.keySet().containsAll(leeway.mixed())
        && sewn.keySet().containsAll(leeway.sewn())
        && own.stream().allMatch(print -> printedIn[print] >= 0)
        && seams(printedIn, sewn)
        && under(printedIn, run);
  }

  /** How many steps every run begins with. */
  int first() {
    return leeway.first().size();
  }

  /** Before which step a night may lie that is wanted before another, by their places. */
  int night(List<Step> run, int wanted) {
    int last = -1;
    int at = wanted;
    for (int i = leeway.first().size(); i <= wanted; i++) {
      if (Leeway.isWet(run.get(i))) {
        last++;
        at = followAtOnce.get(last) ? at : i;
      }
    }
    return last < 0 || !Leeway.isWet(run.get(wanted)) ? wanted : at;
  }

  /** What was done before the part that is arranged; a paste that it mixes again is mixed in it. */
  private void done(Step step, int at, int[] printedIn, Map<String, Integer> mixed) {
    if (step instanceof Step.Mix mix) {
      mix.pastes().stream()
          .filter(paste -> !leeway.mixed().contains(paste))
          .forEach(paste -> mixed.put(paste, at));
    } else if (step instanceof PrintStep print) {
      for (Placement placement : placements(print)) {
        int first = firstColour[placement.id()];
        colours(print, placement.arrangement()).stream()
            .filter(number -> first + number <= firstColour[placement.id() + 1])
            .forEach(number -> printedIn[first + number - 1] = at);
      }
    }
  }

  private static boolean isSame(Step one, Step other) {
    return one.at(1).equals(other.at(1));
  }

  private boolean prints(PrintStep print, int at, int[] printedIn, Map<String, Integer> mixed) {
    for (Placement placement : placements(print)) {
      int first = firstColour[placement.id()];
      int all = firstColour[placement.id() + 1] - first;
      List<Integer> numbers = colours(print, placement.arrangement());
      for (int number : numbers) {
        if (number > all || printedIn[first + number - 1] >= 0 || !own.get(first + number - 1)) {
          return false;
        }
        if (number > 1 && printedIn[first + number - 2] < 0) {
          return false;
        }
        printedIn[first + number - 1] = at;
        Footprint footprint = leeway.layout().footprint(placement.id(), number);
        boolean there = footprint.paste().mixedBefore().isPresent();
        if (!there && !mixed.containsKey(footprint.paste().name())) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean seams(int[] printedIn, Map<String, Integer> sewn) {
    for (Map.Entry<String, Set<Integer>> seam : leeway.across().entrySet()) {
      Integer at = sewn.get(seam.getKey());
      for (int id : seam.getValue()) {
        int printed = printedIn[firstColour[id]];
        if (at != null && printed >= 0 && printed < at) {
          return false;
        }
      }
      if (at != null && !seam.getValue().isEmpty() && away(printedIn, at, seam.getValue())) {
        return false;
      }
    }
    return true;
  }

  /** True if too much that lies away from a seam comes after it is sewn. */
  private boolean away(int[] printedIn, int sewn, Set<Integer> across) {
    int after = 0;
    for (int id = 0; id + 1 < firstColour.length && after <= awayAfter; id++) {
      for (int print = firstColour[id]; print < firstColour[id + 1]; print++) {
        after += !across.contains(id) && printedIn[print] > sewn ? 1 : 0;
      }
    }
    return after > awayAfter;
  }

  private boolean under(int[] printedIn, List<Step> run) {
    for (Map.Entry<Integer, Set<Integer>> later : leeway.before().entrySet()) {
      int begins = printedIn[firstColour[later.getKey()]];
      for (int earlier : later.getValue()) {
        int ends = printedIn[firstColour[earlier + 1] - 1];
        if (begins < 0 || ends < 0) {
          continue; // One of them is printed in a later part.
        }
        if (ends > begins || ends == begins && !inOrder(run.get(ends), earlier, later.getKey())) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean inOrder(Step step, int earlier, int later) {
    List<String> order = ((PrintStep) step).arrangements();
    String one = leeway.layout().placements().get(earlier).arrangement();
    String other = leeway.layout().placements().get(later).arrangement();
    return one.equals(other) || order.indexOf(one) < order.indexOf(other);
  }

  /** Each mix step mixes what is printed first before the others, as the word all has it done. */
  List<Step> mixedInOrder(List<Step> run) {
    Map<String, Integer> firstUse = new LinkedHashMap<>();
    for (Step step : run) {
      if (step instanceof PrintStep print) {
        for (String arrangement : print.arrangements()) {
          String design = leeway.plan().arrangements().get(arrangement).design();
          var separations = leeway.plan().designs().get(design).separations();
          for (int number : colours(print, arrangement)) {
            firstUse.putIfAbsent(separations.get(number - 1).paste(), firstUse.size());
          }
        }
      }
    }
    List<Step> ordered = new ArrayList<>(run);
    // What was mixed before stays as it was.
    List<Step> own = ordered.subList(leeway.first().size(), ordered.size());
    own.replaceAll(
        step -> {
          if (!(step instanceof Step.Mix mix) || mix.pastes().size() < 2) {
            return step;
          }
          List<String> pastes = new ArrayList<>(leeway.mixed());
          pastes.retainAll(mix.pastes());
          pastes.sort(
              (a, b) ->
                  Integer.compare(
                      firstUse.getOrDefault(a, Integer.MAX_VALUE),
                      firstUse.getOrDefault(b, Integer.MAX_VALUE)));
          return pastes.equals(mix.pastes())
              ? mix
              : new Step.Mix(mix.number(), pastes, mix.takes(), mix.by(), mix.path());
        });
    return ordered;
  }

  /** The same steps, numbered from 1. */
  static List<Step> numbered(List<Step> run) {
    List<Step> numbered = new ArrayList<>(run.size());
    for (Step step : run) {
      int number = numbered.size() + 1;
      numbered.add(step.number() == number ? step : step.at(number));
    }
    return numbered;
  }
}
