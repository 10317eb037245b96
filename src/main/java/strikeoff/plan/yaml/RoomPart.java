package strikeoff.plan.yaml;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strikeoff.plan.Crew;
import strikeoff.plan.Dates;
import strikeoff.plan.Draught;
import strikeoff.plan.Equipment;
import strikeoff.plan.Handling;
import strikeoff.plan.Hours;
import strikeoff.plan.Protection;
import strikeoff.plan.Room;
import strikeoff.plan.Table;
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

/** Reads what a print room has: table, air, people, hours, and how long each handling takes. */
final class RoomPart {

  /** Years of four digits that anybody plans for. */
  private static final int FIRST_YEAR = 1900;

  private static final int LAST_YEAR = 2999;

  private static final int MOST_STATIONS = 1000;
  private static final int MOST_PEOPLE = 20;
  private static final int MOST_PIECES = 100;

  /** What is known of moist air and drying films ends here: supercooled water and boiling. */
  private static final Temperature COLDEST = new Temperature(-40);

  private static final Temperature HOTTEST = new Temperature(100);

  private static final Pattern OPEN =
      Pattern.compile("(\\d{1,2})(?::(\\d{2}))?\\s*(?:-|–|to)\\s*(\\d{1,2})(?::(\\d{2}))?");
  private static final Map<String, Draught.By> AIR = new LinkedHashMap<>();

  static {
    for (Draught.By by : List.of(Draught.By.STILL, Draught.By.FAN, Draught.By.HAIR_DRYER)) {
      AIR.put(by.text(), by);
    }
  }

  private static final Map<String, Protection> PROTECTION = protection();

  private final Draft draft;
  private final Assumptions assumptions;

  RoomPart(Draft draft) {
    this.draft = draft;
    this.assumptions = draft.assumptions();
  }

  Table table(Fields root) {
    Fields f = Everyday.called("table", root.underOrAbsent("table", "the table"));
    Expected<Length> length = QuantityKinds.aboveZero(Length.class);
    Table table =
        new Table(
            assumptions.or(f, "length", length, "table.length", "length of the table"),
            assumptions.or(f, "width", length, "table.width", "width of the table"),
            assumptions.or(f, "railed", ValueKinds.yesNo(), "table.railed", "registration rail"),
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
            assumptions.or(f, "gap", free, "stations.gap", "gap between stations"),
            assumptions.or(
                f, "clearance", free, "stations.clearance", "working room around a frame"),
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
                f, "temperature", roomTemperature(), "room.temperature", "temperature of the room"),
            assumptions.or(
                f,
                "humidity",
                QuantityKinds.shareOfWhole(),
                "room.humidity",
                "humidity of the room"),
            assumptions.or(f, "air", draught(f, "air"), "room.air", "air over the cloth"),
            f.path());
    f.done();
    return room;
  }

  static Expected<Temperature> roomTemperature() {
    return QuantityKinds.between(COLDEST, HOTTEST, "what a print room can be");
  }

  /** A speed, or a word that the policy gives a speed to, which is then an assumption. */
  Expected<Draught> draught(Fields f, String key) {
    return ValueKinds.scalar(
        "still, fan, hair-dryer or an air speed such as 0.3 m/s",
        new Draught(Draught.By.STILL, new AirSpeed(0)),
        text -> {
          if (AIR.containsKey(text)) {
            var standard = assumptions.standard("air." + text);
            if (f.has(key)) {
              assumptions.assume(f.path().key(key), "air speed of “" + text + "”", standard);
            }
            AirSpeed speed = assumptions.value(standard, QuantityKinds.quantity(AirSpeed.class));
            return Parsed.value(new Draught(AIR.get(text), speed));
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
      Expected<Integer> count = ValueKinds.count("the number of people", 1, MOST_PEOPLE);
      int people = assumptions.or(root, "crew", count, "crew", "people who print");
      return new Crew(numbered(people), root.path().key("crew"));
    }
    List<String> names =
        root.required("crew", ValueKinds.oneOrMore(ValueKinds.text("the name of a person", 60)));
    if (new LinkedHashSet<>(names).size() < names.size()) {
      root.wrong("crew", "two people of the crew have one name");
    }
    if (names.size() > MOST_PEOPLE) {
      root.wrong("crew", "at most " + MOST_PEOPLE + " people can print one plan");
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

  Hours hours(Fields root) {
    Hours.Day standIn = new Hours.Day(540, 1020);
    Expected<Hours.Day> day =
        ValueKinds.scalar("opening hours such as 09:00-17:00", standIn, RoomPart::day);
    List<Hours.Day> days =
        assumptions.or(root, "hours", ValueKinds.oneOrMore(day), "hours", "opening hours");
    return new Hours(days.isEmpty() ? List.of(standIn) : days, root.path().key("hours"));
  }

  /** The same hours on the dates that a plan gives. */
  Hours dated(Hours hours, Fields root) {
    Expected<LocalDate> date =
        ValueKinds.scalar("a date such as 2027-03-06", LocalDate.EPOCH, RoomPart::date);
    Dates dates = new Dates(root.optional("start on", date), root.optional("finish by", date));
    Optional<LocalDate> start = dates.startOn();
    if (start.isPresent() && dates.finishBy().filter(start.get()::isAfter).isPresent()) {
      root.item("finish by")
          .ifPresent(
              item ->
                  draft
                      .reading()
                      .problems()
                      .add(
                          item.node().at(),
                          item.path(),
                          "this is before `start on`, "
                              + start.get()
                              + ": nothing is done by then"));
    }
    return new Hours(hours.days(), dates, hours.path());
  }

  /** Year, month and day as ISO 8601 writes them; no other order is the same everywhere. */
  private static Parsed<LocalDate> date(String text) {
    try {
      LocalDate date = LocalDate.parse(text);
      return date.getYear() < FIRST_YEAR || date.getYear() > LAST_YEAR
          ? Parsed.refused(
              "a year from "
                  + FIRST_YEAR
                  + " to "
                  + LAST_YEAR
                  + " was expected, not "
                  + date.getYear())
          : Parsed.value(date);
    } catch (DateTimeParseException e) {
      return Parsed.refused(
          "a date such as 2027-03-06, year, month and day, was expected; "
              + Script.quoted(text)
              + " is none");
    }
  }

  /** Stretches of work with breaks between them. */
  private static Parsed<Hours.Day> day(String text) {
    String words = "opening hours such as 09:00-17:00 were expected; " + Script.quoted(text);
    List<Hours.Break> breaks = new ArrayList<>();
    int opens = -1;
    int closes = -1;
    for (String stretch : text.split(",", -1)) {
      Matcher m = OPEN.matcher(stretch.strip());
      if (!m.matches()) {
        return Parsed.refused(words + " are none");
      }
      int from = minutes(m.group(1), m.group(2));
      int to = minutes(m.group(3), m.group(4));
      if (from < 0 || to < 0) {
        return Parsed.refused(words + " hold a time that no clock shows");
      }
      if (from >= to) {
        return Parsed.refused(words + " close before they open");
      }
      if (closes >= from) {
        return Parsed.refused(
            words
                + " leave no break before "
                + stretch.strip()
                + "; write the stretches of a day in order, with the breaks between them left out");
      }
      if (closes >= 0) {
        breaks.add(new Hours.Break(closes, from));
      }
      opens = opens < 0 ? from : opens;
      closes = to;
    }
    return Parsed.value(new Hours.Day(opens, closes, breaks));
  }

  private static int minutes(String hours, String minutes) {
    int h = Integer.parseInt(hours);
    int m = minutes == null ? 0 : Integer.parseInt(minutes);
    return m > 59 || h * 60 + m > 24 * 60 ? -1 : h * 60 + m;
  }

  Handling handling(Fields root) {
    Fields f = root.underOrAbsent("handling", "the handling times");
    Handling handling =
        new Handling(
            time(f, "lay", "laying a frame"),
            time(f, "pull", "one pull"),
            time(f, "lift", "lifting a frame"),
            time(f, "load", "pinning the cloth on"),
            time(f, "move", "moving the cloth on"),
            time(f, "mix", "mixing one paste"),
            time(f, "sew", "sewing and pressing a seam"),
            time(f, "brush", "brushing silicate on"),
            time(f, "wash screen", "washing a screen"),
            time(f, "dry screen", "drying a washed screen"),
            f.path());
    f.done();
    return handling;
  }

  private Span time(Fields f, String key, String words) {
    return assumptions.or(
        f, key, QuantityKinds.quantity(Span.class), "handling." + key, "time for " + words);
  }

  Equipment equipment(Fields root) {
    Fields f = root.underOrAbsent("equipment", "the equipment");
    Equipment equipment =
        new Equipment(
            pieces(f, "sinks", "sinks"),
            pieces(f, "fans", "fans"),
            pieces(f, "hair dryers", "hair-dryers"),
            pieces(f, "drying places", "drying places for washed screens"),
            f.path());
    f.done();
    return equipment;
  }

  private int pieces(Fields f, String key, String words) {
    return assumptions.or(
        f,
        key,
        ValueKinds.count("the number of " + words, 0, MOST_PIECES),
        "equipment." + key,
        words);
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
