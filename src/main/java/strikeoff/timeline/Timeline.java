package strikeoff.timeline;

import java.util.List;
import strikeoff.plan.Evidence;
import strikeoff.units.Span;

/**
 * The run as simulated.
 *
 * @param tasks in order of start
 * @param impressions in order of laying; an impression's id is its index
 * @param contacts every frame on a film too early, in order of laying
 * @param start when the first task starts
 * @param finish when the last task ends
 * @param handsOn time that people work
 * @param waiting time that people wait inside opening hours
 * @param evidence further facts for rules, one for each cause
 */
public record Timeline(
    List<Task> tasks,
    List<Impression> impressions,
    List<Contact> contacts,
    Moment start,
    Moment finish,
    Span handsOn,
    Span waiting,
    List<Evidence> evidence) {

  public Timeline {
    tasks = List.copyOf(tasks);
    impressions = List.copyOf(impressions);
    contacts = List.copyOf(contacts);
    evidence = List.copyOf(evidence);
  }
}
