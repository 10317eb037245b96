package strikeoff.artwork;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import strikeoff.artwork.Artworks.Looked;
import strikeoff.document.Bounds;
import strikeoff.plan.Artwork.Tone;
import strikeoff.units.Length;
import strikeoff.units.Pair;

/** A folder with a plan, and pictures beside it that are looked at as the plan's films. */
record BesidePlan(Path folder) {

  static final long ALL_POINTS = 1_000_000_000L;

  /** A film of that name as most plans have it, on a rectangle of 100 mm by so many. */
  static Wanted wanted(String name, double width) {
    return new Wanted(
        name,
        Tone.DARK,
        false,
        Optional.empty(),
        new Length(0),
        new Pair(new Length(100), new Length(width)));
  }

  Looked look(Wanted wanted) throws IOException {
    Path plan = folder.resolve("plan.yaml");
    Files.writeString(plan, "plan: it");
    return Artworks.nowhere().beside(plan).look(wanted, Bounds.USUAL, ALL_POINTS);
  }

  /** Why it can't be taken in; empty if it is read. */
  String refused(Wanted wanted) throws IOException {
    return look(wanted) instanceof Looked.Refused refused ? refused.why() : "";
  }
}
