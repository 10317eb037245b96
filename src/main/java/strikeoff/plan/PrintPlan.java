package strikeoff.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.units.Measures;

/**
 * A whole print plan, as the printer wrote it, with defaults filled in. Maps keep the order of the
 * document. Everything a plan refers to by name exists: the reader refuses plans where it doesn't.
 *
 * @param title the plan's name
 * @param notes free text of the printer, may be empty
 * @param seams by name
 * @param screens by name
 * @param pastes by name
 * @param designs by name
 * @param arrangements how designs are placed, by name
 * @param run the steps in order; empty for a plan that only lays out
 * @param protection what is worn or used against dust, alkali and heat, as written
 * @param acceptances findings that the printer accepts, with a reason
 * @param assumptions every value that the plan left open, with what was taken instead
 * @param measures in whose units its figures are told
 * @param by who made the plan, may be empty
 */
public record PrintPlan(
    String title,
    String notes,
    Cloth cloth,
    Map<String, Seam> seams,
    Table table,
    Room room,
    Crew crew,
    Hours hours,
    Handling handling,
    Equipment equipment,
    Map<String, Screen> screens,
    Map<String, Paste> pastes,
    Map<String, Design> designs,
    Map<String, Arrangement> arrangements,
    List<Step> run,
    List<Protection> protection,
    List<Acceptance> acceptances,
    List<Assumption> assumptions,
    Measures measures,
    String by) {

  public PrintPlan {
    seams = Ordered.copy(seams);
    screens = Ordered.copy(screens);
    pastes = Ordered.copy(pastes);
    designs = Ordered.copy(designs);
    arrangements = Ordered.copy(arrangements);
    run = List.copyOf(run);
    protection = List.copyOf(protection);
    acceptances = List.copyOf(acceptances);
    assumptions = List.copyOf(assumptions);
  }

  /** The step of that number; the first of them in a run that was changed to try something. */
  public Optional<Step> step(int number) {
    return run.stream().filter(step -> step.number() == number).findFirst();
  }

  /** The print step of that number; empty if that step does something else. */
  public Optional<PrintStep> print(int number) {
    return run.stream()
        .filter(step -> step.number() == number)
        .filter(PrintStep.class::isInstance)
        .map(PrintStep.class::cast)
        .findFirst();
  }

  /** All steps of a kind, in the order of the run. */
  public <S extends Step> List<S> steps(Class<S> kind) {
    return run.stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  /** The same plan with another run. */
  public PrintPlan with(List<Step> otherRun) {
    return with(pastes, otherRun);
  }

  /** Whether the plans differ in what pastes are mixed from, and how much of them, at the most. */
  public boolean isButForMixing(PrintPlan other) {
    return with(unmixed(), run).equals(other.with(other.unmixed(), other.run));
  }

  /** Whether the plans print the same films through the same screens, on tables that are alike. */
  public boolean hasFilmsOf(PrintPlan other) {
    return designs.equals(other.designs)
        && screens.equals(other.screens)
        && table.equals(other.table)
        && unmixed().equals(other.unmixed());
  }

  private Map<String, Paste> unmixed() {
    Map<String, Paste> unmixed = new LinkedHashMap<>(pastes);
    unmixed.replaceAll((name, paste) -> paste.unmixed());
    return unmixed;
  }

  private PrintPlan with(Map<String, Paste> otherPastes, List<Step> otherRun) {
    return new PrintPlan(
        title,
        notes,
        cloth,
        seams,
        table,
        room,
        crew,
        hours,
        handling,
        equipment,
        screens,
        otherPastes,
        designs,
        arrangements,
        otherRun,
        protection,
        acceptances,
        assumptions,
        measures,
        by);
  }

  /**
   * Whether a step washes the cloth before anything is printed on it: then it has shrunk by then.
   */
  public boolean washedFirst() {
    for (Step step : run) {
      if (step instanceof PrintStep) {
        return false;
      }
      if (step instanceof Step.Wash) {
        return true;
      }
    }
    return false;
  }
}
