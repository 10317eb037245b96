package strikeoff.plan.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.plan.DryingTime;
import strikeoff.plan.StrikeOff;
import strikeoff.units.Area;
import strikeoff.units.Mass;
import strikeoff.units.Pair;
import strikeoff.units.Parsed;
import strikeoff.units.Quantities;
import strikeoff.units.Span;
import strikeoff.yaml.Expected;
import strikeoff.yaml.Fields;
import strikeoff.yaml.Item;
import strikeoff.yaml.Node;
import strikeoff.yaml.QuantityKinds;
import strikeoff.yaml.Reading;
import strikeoff.yaml.ValueKinds;

/** Reads what a printer measured on a strike-off: times with their air, and weights. */
final class StrikeOffPart {

  private static final int MOST_PULLS = 20;

  private final RoomPart room;
  private final Assumptions assumptions;

  StrikeOffPart(Draft draft) {
    this.room = new RoomPart(draft);
    this.assumptions = draft.assumptions();
  }

  /** {@code 30 min}, taken in the room's air, or {@code {after: 30 min, air: fan}}. */
  Optional<DryingTime> dryingTime(Fields f, String key) {
    Optional<DryingTime> time = f.optional(key, timeOrAired());
    time.ifPresent(t -> inTheRoom(f.path().key(key), t));
    return time;
  }

  /** What the plan leaves out of the air in which a time was taken was as in the room. */
  private void inTheRoom(PlanPath path, DryingTime time) {
    List<String> left = new ArrayList<>();
    if (time.temperature().isEmpty()) {
      left.add("temperature");
    }
    if (time.humidity().isEmpty()) {
      left.add("humidity");
    }
    if (time.air().isEmpty()) {
      left.add("movement of air");
    }
    if (!left.isEmpty()) {
      assumptions.derived(
          path,
          "where this drying time was taken",
          "the room's " + String.join(", ", left),
          "the plan names no other air");
    }
  }

  private Expected<DryingTime> timeOrAired() {
    Expected<DryingTime> plain =
        ValueKinds.scalar(
            "a time such as 30 min, or a mapping such as {after: 30 min, air: fan},",
            DryingTime.inTheRoom(new Span(1)),
            StrikeOffPart::time);
    return new Expected<>() {
      @Override
      public String words() {
        return plain.words();
      }

      @Override
      public DryingTime standIn() {
        return plain.standIn();
      }

      @Override
      public Optional<DryingTime> read(Item item, Reading reading) {
        return item.node() instanceof Node.Mapping
            ? Optional.of(aired(item, reading))
            : plain.read(item, reading);
      }
    };
  }

  private static Parsed<DryingTime> time(String text) {
    return Quantities.parse(text, Span.class).map(DryingTime::inTheRoom);
  }

  private DryingTime aired(Item item, Reading reading) {
    Fields f = Fields.of(item, "a drying time", reading);
    DryingTime time = inAir(f);
    f.done();
    return time;
  }

  private DryingTime inAir(Fields f) {
    return new DryingTime(
        f.required("after", QuantityKinds.aboveZero(Span.class)),
        f.optional("air", room.draught(f, "air")),
        f.optional("temperature", RoomPart.roomTemperature()),
        f.optional("humidity", QuantityKinds.shareOfWhole()));
  }

  StrikeOff strikeOff(Fields f) {
    Pair size = f.required("size", QuantityKinds.size());
    StrikeOff read =
        new StrikeOff(
            new Area(size.along().mm() * size.across().mm() / 100),
            f.required("cloth", QuantityKinds.aboveZero(Mass.class)),
            f.required("printed", QuantityKinds.aboveZero(Mass.class)),
            f.required("touch-dry", QuantityKinds.aboveZero(Mass.class)),
            inAir(f),
            assumptions.or(
                f,
                "pulls",
                ValueKinds.count("the number of pulls", 1, MOST_PULLS),
                assumptions.standard().separation().pulls(),
                "pulls of the strike-off"),
            f.path());
    f.done();
    inTheRoom(f.path(), read.dried());
    if (f.sound("cloth", "printed", "touch-dry", "size", "after")) {
      if (read.printed().grams() <= read.cloth().grams()) {
        f.wrong("printed", "just printed the piece must weigh more than the bare cloth");
      } else if (read.touchDry().grams() >= read.printed().grams()
          || read.touchDry().grams() <= read.cloth().grams()) {
        f.wrong(
            "touch-dry",
            "touch-dry the piece must weigh less than just printed, and more than the bare cloth");
      }
    }
    return read;
  }
}
