package strikeoff.day;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import strikeoff.day.Use.WaitedFor;
import strikeoff.day.facts.Busy;
import strikeoff.day.facts.NotInRoom;
import strikeoff.day.facts.RunFigures;
import strikeoff.day.facts.Timeline;
import strikeoff.document.PlanPath;
import strikeoff.plan.Draught;
import strikeoff.plan.DyeFixing;
import strikeoff.plan.Medium;
import strikeoff.plan.PrintOrder;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.speech.DaySpeech;
import strikeoff.speech.RoomSpeech;
import strikeoff.units.AirSpeed;
import strikeoff.units.Measures;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/** Sinks, fans, hair-dryers and drying places, worked by hand; the comments show the arithmetic. */
class SharedRoomTest {

  /** Wren prints a heron in two colours and Tam a shell in one, each with screens of their own. */
  private static PrintDay twoPrint() {
    return new PrintDay(Medium.DYE)
        .paste("blue", 10, 60)
        .paste("ink", 10, 60)
        .paste("sand", 10, 60)
        .design("heron", 30, 40, 10, "s1=blue", "s2=ink")
        .design("shell", 30, 40, 10, "s3=sand")
        .series("herons", "heron", 1, 60, 20)
        .placed("shell", "shell", 100, 20)
        .printBy(
            List.of("Wren"), "herons", PrintOrder.BY_COLOUR, false, 0, Until.NO_WAIT, Until.NO_WAIT)
        .printBy(
            List.of("Tam"), "shell", PrintOrder.BY_COLOUR, false, 0, Until.NO_WAIT, Until.NO_WAIT);
  }

  @Test
  void twoWashAtOnceWithTwoSinksAndQueueAtOne() {
    // Load to 9:15. Wren prints blue to 9:15:50 and ink to 9:16:40, then washes s1 to 9:26:40 and
    // s2 to 9:36:40. Tam prints sand to 9:17:30 and has s3 to wash.
    Timeline two = twoPrint().equipment(2, 1, 1, 10).timeline();
    assertThat(washed(two))
        .containsExactly("9:16:40 s1 sink 1", "9:17:30 s3 sink 2", "9:26:40 s2 sink 1");
    assertThat(queues(two)).isEmpty();

    // At one sink he comes after both: 9:36:40, having stood there for 19 min 10 s.
    Timeline one = twoPrint().equipment(1, 1, 1, 10).timeline();
    assertThat(washed(one))
        .containsExactly("9:16:40 s1 sink", "9:26:40 s2 sink", "9:36:40 s3 sink");
    assertThat(queues(one)).containsExactly("9:17:30 Tam waits for the sink to 9:36:40");
    RunFigures figures = PrintDay.figures(one);
    assertThat(figures.waitedFor())
        .containsExactly(
            new WaitedFor(new Doing.ForPiece(Resource.Kind.SINK, 1), new Span(1150.0 / 60)));
    // Wren works meanwhile, so that it is nobody's idle time but Tam's.
    assertThat(one.waiting().minutes()).isZero();
    // What decides the finish at 9:46:40 is the sink: 15 min, two prints of 50 s, three washes.
    assertThat(figures.chain().links())
        .extracting(
            l ->
                DaySpeech.text(l.doing(), Measures.METRIC)
                    + l.after().map(r -> " after the " + r.name()).orElse(""))
        .containsExactly(
            "lay the cloth on the table",
            "printing with s1",
            "printing with s2",
            "wash out s1",
            "wash out s2",
            "wash out s3 after the sink");
    // 30 of the 46 min 40 s; Tam's own work is 50 s and 10 min
    assertThat(busy(figures, Resource.Kind.SINK, "sink").busy().minutes())
        .isCloseTo(30, offset(1e-9));
    assertThat(busy(figures, Resource.Kind.SINK, "sink").share().fraction())
        .isCloseTo(30 / (46 + 40.0 / 60), offset(1e-9));
    assertThat(busy(figures, Resource.Kind.PERSON, "Tam").busy().minutes())
        .isCloseTo(10 + 50.0 / 60, offset(1e-9));
  }

  @Test
  void aWashedScreenWaitsForAPlaceToDryIn() {
    // s1 is washed by 9:26:40, s2 by 9:36:40, s3 by 9:46:40; each dries 30 min. One place: s1 to
    // 9:56:40, s2 to 10:26:40 having stood 20 min, s3 to 10:56:40 having stood 40 min.
    Timeline one = twoPrint().equipment(1, 1, 1, 1).timeline();
    assertThat(dries(one))
        .containsExactly(
            "9:26:40 s1 drying place", "9:56:40 s2 drying place", "10:26:40 s3 drying place");
    assertThat(clock(one.finish())).isEqualTo("10:56:40");
    // Nobody stands by a wet screen.
    assertThat(queues(one))
        .containsExactly(
            "9:17:30 Tam waits for the sink to 9:36:40",
            "9:36:40 s2 waits for the drying place to 9:56:40",
            "9:46:40 s3 waits for the drying place to 10:26:40");
    assertThat(PrintDay.figures(one).waitedFor())
        .extracting(WaitedFor::doing)
        .containsExactly(new Doing.ForPiece(Resource.Kind.SINK, 1));

    // Two: s3 takes the first one again, 10 min after it was washed.
    Timeline two = twoPrint().equipment(1, 1, 1, 2).timeline();
    assertThat(dries(two))
        .containsExactly(
            "9:26:40 s1 drying place 1", "9:36:40 s2 drying place 2", "9:56:40 s3 drying place 1");
  }

  @Test
  void theClothIsRinsedAtTheSinkAndSoakedInABathOfItsOwn() {
    PrintDay day =
        twoPrint()
            .step(
                n ->
                    new Step.Fix(
                        n,
                        DyeFixing.SOAK,
                        List.of(),
                        new Temperature(30),
                        new Span(5),
                        Optional.of("Tam"),
                        new PlanPath("run[2]")))
            .step(
                n ->
                    new Step.Rinse(
                        n,
                        new Temperature(20),
                        new Span(20),
                        Optional.of("Tam"),
                        new PlanPath("run[3]")));
    // Tam's s3 leaves the one sink at 9:46:40: he soaks to 9:51:40 and rinses at once, since Wren
    // has done by 9:36:40.
    Timeline timeline = day.timeline();
    assertThat(starts(timeline, Task.Kind.FIX)).containsExactly("9:46:40");
    assertThat(starts(timeline, Task.Kind.RINSE)).containsExactly("9:51:40");
    assertThat(piece(timeline, Task.Kind.FIX)).isEmpty();
    assertThat(piece(timeline, Task.Kind.RINSE)).contains("sink");
  }

  @Test
  void whoRinsesWaitsForWhoeverWashesScreensThere() {
    // Tam washes for Wren: s1 as soon as she leaves it, 9:15:50 to 9:25:50, s2 to 9:35:50. Wren has
    // the cloth at 9:16:40.
    PrintDay day =
        new PrintDay(Medium.DYE)
            .paste("blue", 10, 60)
            .paste("ink", 10, 60)
            .design("heron", 30, 40, 10, "s1=blue", "s2=ink")
            .series("herons", "heron", 1, 60, 20)
            .printWashedBy("Tam", "herons")
            .step(
                n ->
                    new Step.Rinse(
                        n,
                        new Temperature(20),
                        new Span(20),
                        Optional.of("Wren"),
                        new PlanPath("run[1]")));
    Timeline one = day.timeline();
    assertThat(queues(one)).containsExactly("9:16:40 Wren waits for the sink to 9:35:50");
    assertThat(starts(one, Task.Kind.RINSE)).containsExactly("9:35:50");
    assertThat(PrintDay.figures(one).chain().links())
        .extracting(link -> DaySpeech.text(link.doing(), Measures.METRIC))
        .endsWith("wash out s1", "wash out s2", "rinse at 20 °C");
    assertThat(starts(day.equipment(2, 1, 1, 10).timeline(), Task.Kind.RINSE))
        .containsExactly("9:16:40");
  }

  @Test
  void aHairDryerTakesHandsAndAFanDoesNot() {
    // Tam mixes 40 min from 9:00; the cloth is printed by 9:17:30 and is to be dried by him.
    Timeline held = mixingAndDrying(Draught.By.HAIR_DRYER).timeline();
    assertThat(starts(held, Task.Kind.WAIT)).containsExactly("9:17:30", "9:40:00");
    assertThat(waits(held)).containsExactly("waits for Tam", "dry 20 min");
    assertThat(piece(held, Task.Kind.WAIT)).contains("hair-dryer");
    // load 15, three prints of 50 s, four washes of 10 min, mixing 40, and 20 with his hands
    assertThat(busy(PrintDay.figures(held), Resource.Kind.PERSON, "Tam").busy().minutes())
        .isEqualTo(60);
    assertThat(
            busy(PrintDay.figures(held), Resource.Kind.HAIR_DRYER, "hair-dryer").busy().minutes())
        .isEqualTo(20);
    // Tam is still mixing until 9:40 while Wren washes to 9:47:30: nobody is idle but the cloth.
    assertThat(PrintDay.figures(held).waitedFor()).isEmpty();

    Timeline blown = mixingAndDrying(Draught.By.FAN).timeline();
    assertThat(starts(blown, Task.Kind.WAIT)).containsExactly("9:17:30");
    assertThat(piece(blown, Task.Kind.WAIT)).contains("fan");
    assertThat(busy(PrintDay.figures(blown), Resource.Kind.PERSON, "Tam").busy().minutes())
        .isEqualTo(40);
    assertThat(busy(PrintDay.figures(blown), Resource.Kind.FAN, "fan").busy().minutes())
        .isEqualTo(20);
  }

  private static PrintDay mixingAndDrying(Draught.By by) {
    return new PrintDay(Medium.DYE)
        .paste("sand", 10, 60)
        .unmixedPaste("ink")
        .design("shell", 30, 40, 10, "s3=sand")
        .series("shells", "shell", 3, 60, 20)
        .mixedBy("Tam", 40, "ink")
        .print("shells")
        .step(
            n ->
                new Step.Dry(
                    n,
                    PrintDay.minutes(20),
                    Optional.of(new Draught(by, new AirSpeed(5))),
                    Optional.of("Tam"),
                    new PlanPath("run[2]")));
  }

  @Test
  void theAirMovesFromWhenTheHandsAreThere() {
    // A paint film under the hair-dryer from 9:17:30 on, or from 9:40 on: the same film is safe
    // later by less than the 22 min 30 s, since it dried in still air meanwhile; but later.
    Moment atOnce = lastSafe(painted(1));
    Moment later = lastSafe(painted(40));
    assertThat(later).isGreaterThan(atOnce);
    assertThat(later.since(atOnce).minutes()).isLessThan(22.5);
  }

  private static Timeline painted(int mixing) {
    return new PrintDay(Medium.PAINT)
        .paste("sand")
        .unmixedPaste("ink")
        .design("shell", 30, 40, 10, "s3=sand")
        .series("shells", "shell", 3, 60, 20)
        .mixedBy("Tam", mixing, "ink")
        .print("shells")
        .step(
            n ->
                new Step.Dry(
                    n,
                    PrintDay.minutes(60),
                    Optional.of(new Draught(Draught.By.HAIR_DRYER, new AirSpeed(5))),
                    Optional.of("Tam"),
                    new PlanPath("run[2]")))
        .timeline();
  }

  private static Moment lastSafe(Timeline day) {
    return day.impressions().get(2).film().frameSafe().best();
  }

  @Test
  void whatTheRoomDoesNotHaveIsAFactAndNoHang() {
    Timeline none = twoPrint().equipment(0, 0, 0, 0).dry(20).timeline();
    assertThat(none.evidence())
        .filteredOn(NotInRoom.class::isInstance)
        .extracting(e -> ((NotInRoom) e).equipment() + ((NotInRoom) e).steps())
        .containsExactly("sink[1, 2]", "fan[]", "hair-dryer[]", "drying place[1, 2]");
    // as if there were one of each
    assertThat(none.finish())
        .isEqualTo(twoPrint().equipment(1, 1, 1, 1).dry(20).timeline().finish());
  }

  @Test
  void aFanThatBlowsAllDayIsThereToo() {
    PrintPlan plan = twoPrint().equipment(1, 0, 1, 10).blown(Draught.By.FAN).plan();
    assertThat(NotInRoom.all(Map.of(), plan))
        .singleElement()
        .satisfies(
            m -> {
              assertThat(RoomSpeech.where(m)).isEqualTo("for the air of the room");
              assertThat(m.key()).isEqualTo("fans");
              assertThat(m.path()).isEqualTo(new PlanPath("room.air"));
            });
    PrintPlan has = twoPrint().equipment(1, 1, 1, 10).blown(Draught.By.FAN).plan();
    assertThat(NotInRoom.all(Map.of(), has)).isEmpty();
  }

  private static List<String> washed(Timeline day) {
    return of(day, Task.Kind.WASH_SCREEN).stream()
        .map(
            t ->
                clock(t.start())
                    + " "
                    + t.screen().orElseThrow()
                    + " "
                    + t.piece().orElseThrow().name())
        .toList();
  }

  private static List<String> dries(Timeline day) {
    return of(day, Task.Kind.DRY_SCREEN).stream()
        .map(
            t ->
                clock(t.start())
                    + " "
                    + t.screen().orElseThrow()
                    + " "
                    + t.piece().orElseThrow().name())
        .toList();
  }

  private static List<String> queues(Timeline day) {
    return of(day, Task.Kind.QUEUE).stream()
        .map(
            t ->
                clock(t.start())
                    + " "
                    + t.person().or(t::screen).orElseThrow()
                    + " "
                    + DaySpeech.text(t.doing(), Measures.METRIC)
                    + " to "
                    + clock(t.end()))
        .toList();
  }

  private static List<String> starts(Timeline day, Task.Kind kind) {
    return of(day, kind).stream().map(t -> clock(t.start())).toList();
  }

  private static List<String> waits(Timeline day) {
    return of(day, Task.Kind.WAIT).stream()
        .map(t -> DaySpeech.text(t.doing(), Measures.METRIC))
        .toList();
  }

  /** What the last task of a kind takes up. */
  private static Optional<String> piece(Timeline day, Task.Kind kind) {
    List<Task> all = of(day, kind);
    return all.get(all.size() - 1).piece().map(Resource::name);
  }

  private static List<Task> of(Timeline day, Task.Kind kind) {
    return day.tasks().stream().filter(t -> t.kind() == kind).toList();
  }

  private static Busy busy(RunFigures figures, Resource.Kind kind, String name) {
    return figures.busy().stream()
        .filter(b -> b.resource().equals(new Resource(kind, name)))
        .findFirst()
        .orElseThrow();
  }

  private static String clock(Moment moment) {
    long second = moment.seconds() % 86_400;
    return String.format(
        java.util.Locale.ROOT, "%d:%02d:%02d", second / 3600, second / 60 % 60, second % 60);
  }
}
