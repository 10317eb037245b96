package strikeoff.plan.yaml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.plan.Crew;
import strikeoff.plan.Draught;
import strikeoff.plan.Equipment;
import strikeoff.plan.Handling;
import strikeoff.plan.Protection;
import strikeoff.plan.Room;
import strikeoff.plan.Table;
import strikeoff.policy.Default;
import strikeoff.policy.Defaults;
import strikeoff.units.AirSpeed;
import strikeoff.units.Length;
import strikeoff.units.Parsed;
import strikeoff.units.Quantities;
import strikeoff.units.Script;
import strikeoff.units.Span;
import strikeoff.units.Spelling;
import strikeoff.units.Temperature;
import strikeoff.yaml.Expected;
import strikeoff.yaml.Fields;
import strikeoff.yaml.Item;
import strikeoff.yaml.Node;
import strikeoff.yaml.QuantityKinds;
import strikeoff.yaml.ValueKinds;

/** Reads what a print room has: table, air, people, and how long each handling takes. */
final class RoomPart {

  private static final int MOST_STATIONS = 1000;

  private static final Map<String, Draught.By> AIR = new LinkedHashMap<>();

  static {
    for (Draught.By by : List.of(Draught.By.STILL, Draught.By.FAN, Draught.By.HAIR_DRYER)) {
      AIR.put(by.text(), by);
    }
  }

  private static final Map<String, Protection> PROTECTION = protection();

  private final Assumptions assumptions;

  RoomPart(Draft draft) {
    this.assumptions = draft.assumptions();
  }

  Table table(Fields root) {
    Fields f = Everyday.called("table", root.underOrAbsent("table", "the table"));
    Expected<Length> length = QuantityKinds.aboveZero(Length.class);
    Table table =
        new Table(
            assumptions.or(
                f,
                "length",
                length,
                assumptions.standard().table().length(),
                "length of the table"),
            assumptions.or(
                f, "width", length, assumptions.standard().table().width(), "width of the table"),
            assumptions.or(
                f,
                "railed",
                ValueKinds.yesNo(),
                assumptions.standard().table().railed(),
                "registration rail"),
            f.optional("cloth at", QuantityKinds.quantity(Length.class)),
            f.under("stations", "the stations").map(this::stations),
            f.path());
    f.done();
    return table;
  }

  private Table.Stations stations(Fields f) {
    Expected<Length> length = QuantityKinds.aboveZero(Length.class);
    Expected<Length> free = QuantityKinds.quantity(Length.class);
    Table.Stations stations =
        new Table.Stations(
            f.required("count", ValueKinds.count("the number of stations", 1, MOST_STATIONS)),
            f.required("length", length),
            f.required("width", length),
            assumptions.or(
                f, "gap", free, assumptions.standard().stations().gap(), "gap between stations"),
            assumptions.or(
                f,
                "clearance",
                free,
                assumptions.standard().stations().clearance(),
                "working room around a frame"),
            f.optional("fixed", ValueKinds.yesNo()).orElse(false),
            f.path());
    f.done();
    return stations;
  }

  Room room(Fields root) {
    Fields f = Everyday.called("room", root.underOrAbsent("room", "the room"));
    Room room =
        new Room(
            assumptions.or(
                f,
                "temperature",
                roomTemperature(),
                assumptions.standard().room().temperature(),
                "temperature of the room"),
            assumptions.or(
                f,
                "humidity",
                QuantityKinds.shareOfWhole(),
                assumptions.standard().room().humidity(),
                "humidity of the room"),
            assumptions.orWords(
                f,
                "air",
                draught(f, "air"),
                assumptions.standard().room().air(),
                "air over the cloth"),
            f.path());
    f.done();
    return room;
  }

  static Expected<Temperature> roomTemperature() {
    return QuantityKinds.between(
        new Temperature(Room.COLDEST), new Temperature(Room.HOTTEST), "what a print room can be");
  }

  /** A speed, or a word that the policy gives a speed to, which is then an assumption. */
  Expected<Draught> draught(Fields f, String key) {
    return ValueKinds.scalar(
        "still, fan, hair-dryer or an air speed such as 0.3 m/s",
        new Draught(Draught.By.STILL, new AirSpeed(0)),
        text -> {
          if (AIR.containsKey(text)) {
            Default<AirSpeed> standard = assumptions.standard().air().of(AIR.get(text));
            if (f.has(key)) {
              assumptions.assume(f.path().key(key), "air speed of “" + text + "”", standard);
            }
            return Parsed.value(new Draught(AIR.get(text), standard.value()));
          }
          boolean word = !text.isEmpty() && Character.isLetter(text.charAt(0));
          return word
              ? Parsed.refused(
                  "still, fan, hair-dryer or an air speed such as 0.3 m/s was expected; "
                      + Script.quoted(text)
                      + " is not known"
                      + Spelling.didYouMean(text, AIR.keySet()))
              : Quantities.parse(text, AirSpeed.class)
                  .map(speed -> new Draught(Draught.By.STATED, speed));
        });
  }

  Crew crew(Fields root) {
    Optional<Item> item = root.item("crew");
    boolean counted =
        item.isPresent()
            && item.get().node() instanceof Node.Scalar s
            && s.text().matches("[-\\d].*");
    if (item.isEmpty() || counted) {
      Expected<Integer> count = ValueKinds.count("the number of people", 1, Crew.MOST);
      int people =
          assumptions.or(root, "crew", count, assumptions.standard().crew(), "people who print");
      return new Crew(numbered(people), root.path().key("crew"));
    }
    List<String> names =
        root.required("crew", ValueKinds.oneOrMore(ValueKinds.text("the name of a person", 60)));
    if (new LinkedHashSet<>(names).size() < names.size()) {
      root.wrong("crew", "two people of the crew have one name");
    }
    if (names.size() > Crew.MOST) {
      root.wrong("crew", "at most " + Crew.MOST + " people can print one plan");
    }
    return new Crew(names.isEmpty() ? List.of("printer") : names, root.path().key("crew"));
  }

  private static List<String> numbered(int people) {
    if (people == 1) {
      return List.of("printer");
    }
    List<String> names = new ArrayList<>();
    for (int i = 1; i <= people; i++) {
      names.add("printer " + i);
    }
    return names;
  }

  /** The same people, and whether a class of children works along. */
  Crew with(Crew crew, Fields root) {
    Expected<Boolean> who =
        ValueKinds.word("children or adults", Map.of("children", true, "adults", false));
    return new Crew(crew.names(), root.optional("class", who).orElse(false), crew.path());
  }

  Handling handling(Fields root) {
    Fields f = root.underOrAbsent("handling", "the handling times");
    Defaults.Handling usual = assumptions.standard().handling();
    Handling handling =
        new Handling(
            time(f, "lay", usual.lay(), "laying a frame"),
            time(f, "pull", usual.pull(), "one pull"),
            time(f, "lift", usual.lift(), "lifting a frame"),
            time(f, "load", usual.load(), "pinning the cloth on"),
            time(f, "move", usual.move(), "moving the cloth on"),
            time(f, "mix", usual.mix(), "mixing one paste"),
            time(f, "sew", usual.sew(), "sewing and pressing a seam"),
            time(f, "brush", usual.brush(), "brushing silicate on"),
            time(f, "wash screen", usual.washScreen(), "washing a screen"),
            time(f, "dry screen", usual.dryScreen(), "drying a washed screen"),
            f.path());
    f.done();
    return handling;
  }

  private Span time(Fields f, String key, Default<Span> standard, String words) {
    return assumptions.or(
        f, key, QuantityKinds.quantity(Span.class), standard, "time for " + words);
  }

  Equipment equipment(Fields root) {
    Fields f = root.underOrAbsent("equipment", "the equipment");
    Defaults.Equipment usual = assumptions.standard().equipment();
    Equipment equipment =
        new Equipment(
            pieces(f, "sinks", usual.sinks(), "sinks"),
            pieces(f, "fans", usual.fans(), "fans"),
            pieces(f, "hair dryers", usual.hairDryers(), "hair-dryers"),
            pieces(f, "drying places", usual.dryingPlaces(), "drying places for washed screens"),
            f.path());
    f.done();
    return equipment;
  }

  private int pieces(Fields f, String key, Default<Integer> standard, String words) {
    return assumptions.or(
        f, key, ValueKinds.count("the number of " + words, 0, Equipment.MOST), standard, words);
  }

  List<Protection> worn(Fields root) {
    Expected<Protection> one =
        ValueKinds.word("dust mask, gloves, goggles or heat gloves", PROTECTION);
    List<Protection> worn =
        root.optional("protection", ValueKinds.oneOrMore(one)).orElse(List.of());
    return worn.stream().distinct().toList();
  }

  private static Map<String, Protection> protection() {
    Map<String, Protection> words = new LinkedHashMap<>();
    for (Protection p : Protection.values()) {
      words.put(p.text(), p);
    }
    return words;
  }
}
