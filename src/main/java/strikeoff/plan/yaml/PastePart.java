package strikeoff.plan.yaml;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.plan.Ingredient;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.Storage;
import strikeoff.policy.Default;
import strikeoff.policy.Defaults;
import strikeoff.policy.Substance;
import strikeoff.units.ArealMass;
import strikeoff.units.Span;
import strikeoff.units.Temperature;
import strikeoff.yaml.Expected;
import strikeoff.yaml.Fields;
import strikeoff.yaml.Item;
import strikeoff.yaml.QuantityKinds;
import strikeoff.yaml.ValueKinds;

/** Reads the pastes and paints. */
final class PastePart {

  private static final Map<String, Medium> MEDIA = new LinkedHashMap<>();
  private static final Map<String, Storage> PLACES = new LinkedHashMap<>();
  private static final Map<String, Boolean> ALKALI = new LinkedHashMap<>();

  static {
    MEDIA.put("dye", Medium.DYE);
    MEDIA.put("paint", Medium.PAINT);
    PLACES.put("room", Storage.ROOM);
    PLACES.put("cold", Storage.COLD);
    ALKALI.put("separate", false);
    ALKALI.put("in paste", true);
  }

  private final Draft draft;
  private final Assumptions assumptions;
  private final StrikeOffPart times;

  PastePart(Draft draft) {
    this.draft = draft;
    this.times = new StrikeOffPart(draft);
    this.assumptions = draft.assumptions();
  }

  Map<String, Paste> pastes(Fields root) {
    return root.namedUnder("pastes", "the pastes").map(f -> f.each(this::paste)).orElse(Map.of());
  }

  private Paste paste(Item item) {
    Fields f = Everyday.called("paste", Fields.of(item, "a paste", draft.reading()));
    Medium medium = f.required("medium", ValueKinds.word("dye or paint", MEDIA));
    boolean dye = medium == Medium.DYE;
    List<Ingredient> recipe =
        f.optional("recipe", Recipes.recipe(draft.policy())).orElse(List.of());
    Expected<Span> time = QuantityKinds.quantity(Span.class);
    Defaults.Transparent covers = assumptions.standard().paste().transparent();
    Paste paste =
        new Paste(
            item.name(),
            medium,
            groups(f, dye),
            f.required("colour", Colours.colour()),
            assumptions.or(
                f,
                "transparent",
                ValueKinds.yesNo(),
                dye ? covers.dye() : covers.paint(),
                "lets what lies under it show"),
            f.optional("amount", QuantityKinds.amount()),
            recipe,
            alkali(f, dye, recipe),
            f.under("thickener", "the thickener").map(this::thickener),
            kept(f, assumptions.standard().paste().kept(), "where the mixed paste is kept"),
            f.optional("mixed before", time),
            f.optional("deposit", QuantityKinds.aboveZero(ArealMass.class)),
            times.dryingTime(f, "frame-safe"),
            times.dryingTime(f, "lift-safe"),
            f.under("strike-off", "the strike-off").map(times::strikeOff),
            label(f, dye),
            f.path());
    f.done();
    if (paste.deposit().isPresent() && paste.strikeOff().isPresent()) {
      f.wrong("deposit", "the strike-off tells the deposit already; leave one of the two out");
    }
    if (f.sound("frame-safe", "lift-safe") && crossed(paste)) {
      f.wrong("lift-safe", "a print is safe to lift no sooner than a frame is safe on it");
    }
    return paste;
  }

  private Optional<Paste.Label> label(Fields f, boolean dye) {
    if (dye && f.has("label") && f.sound("medium")) {
      f.wrong("label", "a label says how paint is heat-set, and this is dye");
    }
    return f.under("label", "what the label asks of heat-setting").map(PastePart::label);
  }

  private static Paste.Label label(Fields f) {
    Paste.Label label =
        new Paste.Label(
            f.required("temperature", QuantityKinds.quantity(Temperature.class)),
            f.required("for", QuantityKinds.aboveZero(Span.class)),
            f.path());
    f.done();
    return label;
  }

  private static boolean crossed(Paste p) {
    return p.frameSafe().isPresent()
        && p.liftSafe().isPresent()
        && p.liftSafe().get().after().minutes() < p.frameSafe().get().after().minutes();
  }

  /** One dye's group, or those of several that are mixed in one pot. */
  private List<String> groups(Fields f, boolean dye) {
    if (dye && f.sound("medium")) {
      Expected<String> group = Lookup.group(draft.policy());
      if (!f.has("group")) {
        return List.of(f.required("group", group));
      }
      List<String> groups = f.required("group", ValueKinds.oneOrMore(group));
      if (new HashSet<>(groups).size() < groups.size()) {
        f.wrong("group", "one group is named twice");
      }
      return groups;
    }
    if (f.has("group") && f.sound("medium")) {
      f.wrong("group", "paint has no reactive group; leave it out, or say medium: dye");
    }
    return List.of();
  }

  /** A recipe with alkali in it says where the alkali is. */
  private boolean alkali(Fields f, boolean dye, List<Ingredient> recipe) {
    Expected<Boolean> where = ValueKinds.word("separate or in paste", ALKALI);
    boolean held = Recipes.holds(recipe, Substance.Role.ALKALI, draft.policy());
    if (!dye || held || !recipe.isEmpty()) {
      boolean said = f.optional("alkali", where).orElse(held);
      if (held && !said && f.sound("alkali")) {
        f.wrong("alkali", "the recipe holds an alkali, so it is in the paste and not separate");
      }
      if (dye && said && !held && !recipe.isEmpty() && f.sound("alkali", "recipe")) {
        f.wrong(
            "alkali",
            "the recipe holds no alkali, so there is none in the paste: write it into the recipe,"
                + " such as baking soda: 5 g");
      }
      return said;
    }
    return assumptions.orWords(
        f, "alkali", where, assumptions.standard().paste().alkali(), "where the alkali is");
  }

  private Storage kept(Fields f, Default<String> standard, String words) {
    return assumptions.orWords(f, "kept", ValueKinds.word("room or cold", PLACES), standard, words);
  }

  private Paste.Thickener thickener(Fields f) {
    Expected<Span> time = QuantityKinds.quantity(Span.class);
    Span stood = f.required("stood", time);
    Paste.Thickener thickener =
        new Paste.Thickener(
            stood,
            assumptions.orDerived(
                f, "age", time, stood, stood::text, "age of the thickener", "as long as it stood"),
            kept(f, assumptions.standard().thickener().kept(), "where the thickener is kept"),
            f.path());
    f.done();
    if (f.sound("stood", "age") && thickener.age().minutes() < stood.minutes()) {
      f.wrong("age", "the thickener is no younger than the " + stood + " it stood");
    }
    return thickener;
  }
}
