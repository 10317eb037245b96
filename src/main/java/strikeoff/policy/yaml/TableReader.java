package strikeoff.policy.yaml;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.policy.Fibre;
import strikeoff.policy.ReactiveGroup;
import strikeoff.policy.Substance;
import strikeoff.units.Quantities;
import strikeoff.units.Quantity;
import strikeoff.units.Range;
import strikeoff.units.Ratio;
import strikeoff.units.Share;
import strikeoff.units.Span;
import strikeoff.units.Temperature;
import strikeoff.yaml.Expected;
import strikeoff.yaml.Fields;
import strikeoff.yaml.Item;
import strikeoff.yaml.QuantityKinds;
import strikeoff.yaml.ValueKinds;

/** Reads what the trade looks up: reactive groups, fibres and substances. */
final class TableReader {

  private static final Map<String, Substance.Role> ROLES =
      Map.ofEntries(
          Map.entry("water", Substance.Role.WATER),
          Map.entry("alkali", Substance.Role.ALKALI),
          Map.entry("thickener", Substance.Role.THICKENER),
          Map.entry("dye", Substance.Role.DYE),
          Map.entry("pigment", Substance.Role.PIGMENT),
          Map.entry("binder", Substance.Role.BINDER),
          Map.entry("urea", Substance.Role.UREA),
          Map.entry("salt", Substance.Role.SALT),
          Map.entry("acid", Substance.Role.ACID),
          Map.entry("detergent", Substance.Role.DETERGENT),
          Map.entry("other", Substance.Role.OTHER));

  private final Fields tables;

  TableReader(Fields tables) {
    this.tables = tables;
  }

  List<ReactiveGroup> groups() {
    return table("reactive groups", this::group);
  }

  List<Fibre> fibres() {
    return table("fibres", this::fibre);
  }

  List<Substance> substances() {
    return table("substances", this::substance);
  }

  private <T> List<T> table(String name, java.util.function.Function<Item, T> row) {
    return List.copyOf(tables.underOrAbsent(name, "the table").each(row).values());
  }

  private ReactiveGroup group(Item item) {
    Fields f = Fields.of(item, "a reactive group", tables.reading());
    Fields life = f.underOrAbsent("life", "the life of a paste");
    Expected<Span> span = QuantityKinds.aboveZero(Span.class);
    ReactiveGroup group =
        new ReactiveGroup(
            name(item),
            aliases(f),
            f.required("coolest", QuantityKinds.quantity(Temperature.class)),
            f.required("warmest", QuantityKinds.quantity(Temperature.class)),
            stated(f, "soak"),
            stated(f, "batch"),
            f.required("shortest steam", span),
            f.required("longest steam", span),
            life.required("with alkali", span),
            life.required("with alkali, cold", span),
            life.required("without alkali", span),
            life.required("without alkali, cold", span),
            source(f));
    life.done();
    f.done();
    return group;
  }

  private static ReactiveGroup.Stated stated(Fields f, String way) {
    Fields s = f.underOrAbsent(way, "the time of a " + way);
    ReactiveGroup.Stated stated =
        new ReactiveGroup.Stated(
            s.required("pale", QuantityKinds.aboveZero(Span.class)),
            s.required("deep", QuantityKinds.aboveZero(Span.class)),
            s.required("at", QuantityKinds.quantity(Temperature.class)));
    s.done();
    return stated;
  }

  private Fibre fibre(Item item) {
    Fields f = Fields.of(item, "a fibre", tables.reading());
    Fields stands = f.underOrAbsent("dry heat", "the dry heat that it stands");
    Expected<Temperature> heat = QuantityKinds.quantity(Temperature.class);
    Fibre fibre =
        new Fibre(
            name(item),
            aliases(f),
            f.required("takes dye", QuantityKinds.shareOfWhole()),
            f.required("cellulose", ValueKinds.yesNo()),
            f.required("uptake", QuantityKinds.quantity(Share.class)),
            f.required("warmest wash", heat),
            f.optional("usual wash", heat),
            f.optional("stands soda", QuantityKinds.aboveZero(Span.class)),
            f.optional("felts from", heat),
            stands.required("without harm", heat),
            stands.required("at all", heat),
            stands.optional("softens", ValueKinds.yesNo()).orElse(false),
            f.optional("urea factor", QuantityKinds.aboveZero(Ratio.class)).orElse(new Ratio(1)),
            f.optional("counts from", QuantityKinds.shareOfWhole()),
            source(f));
    stands.done();
    f.done();
    return fibre;
  }

  private Substance substance(Item item) {
    Fields f = Fields.of(item, "a substance", tables.reading());
    Substance substance =
        new Substance(
            name(item),
            aliases(f),
            f.required("role", ValueKinds.word("a role", ROLES)),
            density(f),
            f.optional("alkali factor", QuantityKinds.aboveZero(Ratio.class)).map(Ratio::value),
            f.optional("sulphate", ValueKinds.yesNo()).orElse(false),
            source(f));
    f.done();
    return substance;
  }

  /** In g per ml: lowest, likeliest and highest. */
  private static Optional<Range> density(Fields f) {
    Optional<List<Ratio>> three =
        f.optional("grams per ml", ValueKinds.oneOrMore(QuantityKinds.aboveZero(Ratio.class)));
    if (three.isEmpty()) {
      return Optional.empty();
    }
    List<Double> v = three.get().stream().map(Ratio::value).toList();
    if (v.size() != 3 || !(v.get(0) <= v.get(1) && v.get(1) <= v.get(2))) {
      f.wrong("grams per ml", "the lowest, likeliest and highest density were expected");
      return Optional.empty();
    }
    return Optional.of(new Range(v.get(0), v.get(1), v.get(2)));
  }

  private static List<String> aliases(Fields f) {
    return f.optional("aliases", ValueKinds.oneOrMore(ValueKinds.text("another name", 60)))
        .orElse(List.of());
  }

  private static String source(Fields f) {
    return f.required("source", ValueKinds.text("a source", 2000));
  }

  private static String name(Item item) {
    String path = item.path().text();
    return path.substring(path.indexOf('.') + 1);
  }

  /** A quantity of any dimension, since each limit has its own. */
  static Expected<Quantity> anyQuantity() {
    return ValueKinds.scalar("a quantity with its unit", new Ratio(1), Quantities::parseAny);
  }
}
