package strikeoff.layout;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.units.Length;

/**
 * Two arrangements that answer each other across a line, one as drawn and one mirrored, as on the
 * two panels of a curtain. Which arrangements do is told at {@link PanelPairs}.
 *
 * @param arrangement as drawn
 * @param mirrored its answer, as many copies
 * @param line what they are mirrored in
 * @param axis where the line lies: its x if it runs across the cloth, its y if along it
 * @param copies of each
 * @param misfit how far the worst copy lies from the mirror image of its partner
 * @param misfitAlong the part of that along the cloth
 * @param misfitAcross the part of it across the cloth
 * @param first the partner of that copy, as drawn
 * @param second that copy
 * @param apart free distance between the outlines nearest to the line; below zero if they overlap
 * @param mend what to write for the mirrored arrangement so that nothing misfits
 */
public record MirroredPanels(
    String arrangement,
    String mirrored,
    MirrorLine line,
    Length axis,
    int copies,
    Length misfit,
    Length misfitAlong,
    Length misfitAcross,
    String first,
    String second,
    Length apart,
    Mend mend,
    PlanPath path,
    List<Related> related)
    implements Evidence {

  /** What is written so that each copy mirrors its partner. */
  public sealed interface Mend {

    /** Values of the arrangement, as a plan has them. */
    record Values(String written) implements Mend {}

    /**
     * Places of all copies.
     *
     * @param written as a plan has them
     * @param instead true if they are set in another way now
     */
    record Places(String written, boolean instead) implements Mend {}

    /**
     * More places than anybody copies: each as far on the other side as its partner.
     *
     * @param across true if the line runs across the cloth
     * @param sum of a corner's measure and its partner's
     */
    record Partners(boolean across, Length sum) implements Mend {}
  }

  public MirroredPanels {
    related = List.copyOf(related);
  }

  @Override
  public List<String> marks() {
    return List.of(first, second);
  }
}
