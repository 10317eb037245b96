package strikeoff.speech;

import java.util.Map;

/** Says what is right where rules of a family found nothing. */
public final class RightSpeech {

  private static final Map<String, String> SENTENCES =
      Map.ofEntries(
          Map.entry(
              "artwork", "Films that are named print what the plan says, and meet as they should."),
          Map.entry("drying", "No frame comes down on a film that is too wet."),
          Map.entry("order", "The colours go on in an order that lets each show."),
          Map.entry("media", "Dye, paint and baths come in an order that spoils none of them."),
          Map.entry("table", "Cloth and frames have room on the table."),
          Map.entry("screens", "Mesh, frames and squeegees suit the designs."),
          Map.entry("seams", "Seams and images keep out of each other's way."),
          Map.entry("layout", "The designs lie on the cloth as they should."),
          Map.entry("paste", "There is paste enough, and it keeps as long as it is used."),
          Map.entry(
              "fixing", "Dye is fixed, paint is set and the cloth is washed as it should be."),
          Map.entry("cloth", "The cloth suits what is printed on it."),
          Map.entry("time", "The work fits the hours of the room."),
          Map.entry("care", "What people and drains are to be guarded by is in the plan."));

  private RightSpeech() {}

  /** One sentence; empty for a family of a studio's own, of which nobody can tell. */
  public static String of(String family) {
    return SENTENCES.getOrDefault(family, "");
  }
}
