package strikeoff.sequence;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import strikeoff.colour.Lab;
import strikeoff.colour.Meeting;
import strikeoff.colour.Meetings;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence.Related;
import strikeoff.layout.Copies;
import strikeoff.layout.Footprint;
import strikeoff.layout.Placement;
import strikeoff.plan.Paste;
import strikeoff.units.Length;
import strikeoff.units.Ratio;
import strikeoff.units.Share;

/** Gathers where one separation of a design is lost, so that one cause gives one fact. */
final class LostPrints {

  /** More than that are told by their number. */
  private static final int LISTED = 6;

  private final Footprint first;
  private final boolean under;
  private final Map<String, Paste> others = new LinkedHashMap<>();
  private final Set<Placement> placements = new LinkedHashSet<>();
  private double most;
  private boolean meant;
  private Optional<Length> knockout = Optional.empty();

  LostPrints(Footprint first, boolean under) {
    this.first = first;
    this.under = under;
  }

  /**
   * @param meant whether the plan says that some of the others go over it
   */
  void add(Footprint print, List<Footprint> on, double share, boolean meant) {
    on.forEach(o -> others.putIfAbsent(o.paste().name(), o.paste()));
    placements.add(print.placement());
    most = Math.max(most, share);
    this.meant |= meant;
  }

  /** All that is hidden was measured on films, which can leave it out but for so much. */
  void knockedOut(Length but) {
    knockout = Optional.of(but);
  }

  /** Translucent colours over darker ones: they come out dull, as {@link #fact} has it. */
  PaintOnDarker dulled(Meetings meetings) {
    ColourAmongOthers told = fact(meetings);
    return new PaintOnDarker(
        told.design(),
        told.paste(),
        told.named(),
        told.lightness(),
        told.others(),
        told.without(),
        told.withoutLightness(),
        told.look(),
        told.missed(),
        told.share(),
        told.seenBeside(),
        told.copies(),
        told.marks(),
        told.related(),
        told.path());
  }

  ColourAmongOthers fact(Meetings meetings) {
    Paste paste = first.paste();
    Paste other = others.values().iterator().next();
    Meeting meeting = under ? meetings.under(paste, other) : meetings.over(paste, other);
    List<Related> related = new ArrayList<>();
    others.values().stream()
        .limit(LISTED)
        .forEach(o -> related.add(new Related(o.name(), colour(o))));
    List<String> names =
        others.size() <= LISTED
            ? List.copyOf(others.keySet())
            : Stream.concat(
                    others.keySet().stream().limit(LISTED),
                    Stream.of(others.size() - LISTED + " more"))
                .toList();
    double beneath = Lab.of(meeting.without()).lightness();
    return new ColourAmongOthers(
        first.placement().design(),
        paste.name(),
        under,
        first.separation().key(),
        paste.colour(),
        Ratio.toTenth(Lab.of(paste.colour()).lightness()),
        names,
        meeting.without(),
        Ratio.toTenth(beneath),
        meeting.look(),
        Ratio.toTenth(meeting.difference()),
        Ratio.toTenth(meeting.missed()),
        new Share(Math.rint(most * 100) / 100),
        !meetings.isLostOnGround(paste),
        instead(paste, meetings),
        !meant && others.values().stream().noneMatch(o -> meetings.over(paste, o).isLost()),
        meant,
        knockout,
        Copies.of(placements),
        placements.stream().map(Placement::name).toList(),
        related,
        colour(paste));
  }

  /** What would be seen over each of the others; nothing that no paste can be. */
  private ColourAmongOthers.Instead instead(Paste paste, Meetings meetings) {
    if (!paste.transparent()) {
      return new ColourAmongOthers.Instead(
          List.copyOf(others.keySet()), Optional.empty(), OptionalInt.empty());
    }
    boolean opaque = others.values().stream().allMatch(o -> meetings.showsIfOpaque(paste, o));
    return new ColourAmongOthers.Instead(
        List.of(),
        opaque ? Optional.of(paste.medium()) : Optional.empty(),
        meetings.showsDeeper(paste, others.values()));
  }

  private static PlanPath colour(Paste paste) {
    return paste.path().key("colour");
  }
}
