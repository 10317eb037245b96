package strikeoff.plan.yaml;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import strikeoff.plan.Cloth;
import strikeoff.plan.Seam;
import strikeoff.policy.Default;
import strikeoff.policy.Defaults;
import strikeoff.units.ArealMass;
import strikeoff.units.Length;
import strikeoff.units.Parsed;
import strikeoff.units.Share;
import strikeoff.yaml.Expected;
import strikeoff.yaml.Fields;
import strikeoff.yaml.Item;
import strikeoff.yaml.Node;
import strikeoff.yaml.QuantityKinds;
import strikeoff.yaml.Reading;
import strikeoff.yaml.ValueKinds;

/** Reads the cloth and its seams. */
final class ClothPart {

  private static final Map<String, Boolean> FORMS = forms();

  /**
   * Poly-cotton of 60 to 40 shrinks by about 3.6 % where the cotton alone shrinks by 6 %: the part
   * of the cotton. A trade table has 3.5 to 5.5 % for poly-cotton.
   */
  private static final String BLEND =
      "the shrinkage of each cellulose fibre by its share; a trade table has 3.5-5.5 % for"
          + " poly-cotton";

  private final Draft draft;
  private final Assumptions assumptions;

  ClothPart(Draft draft) {
    this.draft = draft;
    this.assumptions = draft.assumptions();
  }

  Cloth cloth(Fields root) {
    Fields f = Everyday.called("cloth", root.underOrAbsent("cloth", "the cloth"));
    if (!root.has("cloth")) {
      root.wrong("cloth", "“cloth” is missing: the cloth with its length and width belongs here");
      f = Fields.absent(f.path(), new strikeoff.document.Position(1, 1), new Reading());
    }
    Map<String, Share> fibres = fibres(f);
    boolean washed =
        assumptions.or(
            f,
            "washed",
            ValueKinds.yesNo(),
            assumptions.standard().cloth().washed(),
            "washed before printing");
    boolean loomState = f.optional("loom-state", ValueKinds.yesNo()).orElse(false);
    if (washed && loomState && f.sound("washed", "loom-state")) {
      f.wrong(
          "loom-state", "cloth that was washed or scoured is loom-state no more; leave one out");
    }
    Shrinkage shrinkage = shrinkage(f, washed, fibres);
    Fields allowances = f.underOrAbsent("allowances", "the allowances");
    Expected<Length> length = QuantityKinds.aboveZero(Length.class);
    Cloth cloth =
        new Cloth(
            fibres,
            assumptions.or(
                f,
                "mass",
                QuantityKinds.aboveZero(ArealMass.class),
                assumptions.standard().cloth().mass(),
                "mass of the cloth"),
            f.required("width", length),
            f.required("length", length),
            assumptions.orWords(
                f,
                "form",
                ValueKinds.word("open or tube", FORMS),
                assumptions.standard().cloth().form(),
                "form of the cloth"),
            assumptions.orWords(
                f,
                "ground",
                Colours.colour(),
                assumptions.standard().cloth().ground(),
                "ground colour"),
            washed,
            shrinkage.length(),
            shrinkage.width(),
            allowance(allowances, "start"),
            allowance(allowances, "end"),
            allowance(allowances, "near"),
            allowance(allowances, "far"),
            assumptions.or(
                f,
                "selvedge",
                QuantityKinds.quantity(Length.class),
                assumptions.standard().cloth().selvedge(),
                "width of the selvedges"),
            loomState,
            f.optional("finished", QuantityKinds.size()),
            f.path());
    allowances.done();
    f.done();
    room(f, allowances, cloth);
    return cloth;
  }

  /** What is turned in and cut away must leave some cloth. */
  private static void room(Fields f, Fields allowances, Cloth c) {
    if (!f.sound("length", "width", "selvedge")
        || !allowances.sound("start", "end", "near", "far")) {
      return;
    }
    if (c.startAllowance().plus(c.endAllowance()).mm() >= c.length().mm()) {
      f.wrong(
          "the allowances at start and end leave nothing of the length "
              + c.length().text(f.measures()));
    }
    double across = c.nearAllowance().plus(c.farAllowance()).mm() + 2 * c.selvedge().mm();
    if (across >= c.width().mm()) {
      f.wrong(
          "the allowances and selvedges leave nothing of the width "
              + c.width().text(f.measures()));
    }
  }

  private Length allowance(Fields allowances, String end) {
    return assumptions.or(
        allowances,
        end,
        QuantityKinds.quantity(Length.class),
        assumptions.standard().cloth().allowance(),
        "allowance at the " + end + (end.equals("near") || end.equals("far") ? " edge" : ""));
  }

  private Map<String, Share> fibres(Fields f) {
    Optional<Item> item = f.item("fibre");
    if (item.isPresent() && item.get().node() instanceof Node.Mapping) {
      return blend(f, item.get());
    }
    Expected<String> one =
        ValueKinds.scalar(
            "a fibre such as cotton, or shares such as {cotton: 60 %, linen: 40 %},",
            "cotton", text -> Lookup.fibre(text, draft.policy()));
    return Map.of(
        assumptions.orWords(
            f, "fibre", one, assumptions.standard().cloth().fibre(), "fibre of the cloth"),
        new Share(1));
  }

  private Map<String, Share> blend(Fields f, Item item) {
    Fields shares = Fields.of(item, "the shares of the fibres", draft.reading());
    Map<String, Share> fibres = new LinkedHashMap<>();
    int before = draft.reading().problems().count();
    for (String name : shares.names()) {
      Share share = shares.required(name, QuantityKinds.shareOfWhole());
      Parsed<String> fibre = Lookup.fibre(name, draft.policy());
      if (fibre instanceof Parsed.Refused<String> r) {
        shares.wrongKey(name, r.message());
      }
      fibre.toOptional().ifPresent(n -> fibres.merge(n, share, ClothPart::add));
    }
    double sum = fibres.values().stream().mapToDouble(Share::fraction).sum();
    if (draft.reading().problems().count() == before && Math.abs(sum - 1) > 0.0005) {
      f.wrong(
          "fibre",
          "the shares of the fibres add up to " + new Share(sum).text() + ", not to 100 %");
    }
    return fibres.isEmpty() ? Map.of("cotton", new Share(1)) : fibres;
  }

  private static Share add(Share a, Share b) {
    return new Share(a.fraction() + b.fraction());
  }

  private record Shrinkage(Share length, Share width) {

    boolean some() {
      return length.fraction() > 0 || width.fraction() > 0;
    }
  }

  private Shrinkage shrinkage(Fields f, boolean washed, Map<String, Share> fibres) {
    Optional<Item> item = f.item("shrinkage");
    Expected<Share> share = QuantityKinds.shareOfWhole();
    if (item.isPresent() && !(item.get().node() instanceof Node.Mapping)) {
      Share both = f.required("shrinkage", share);
      return agreed(f, washed, new Shrinkage(both, both));
    }
    Fields sides = f.underOrAbsent("shrinkage", "the shrinkage");
    Shrinkage shrinkage =
        new Shrinkage(side(sides, "length", washed, fibres), side(sides, "width", washed, fibres));
    sides.done();
    return item.isPresent() ? agreed(f, washed, shrinkage) : shrinkage;
  }

  /** Cloth that was washed has shrunk: only the writer knows which of the two is right. */
  private static Shrinkage agreed(Fields f, boolean washed, Shrinkage shrinkage) {
    if (washed && shrinkage.some() && f.has("washed") && f.sound("washed", "shrinkage")) {
      f.wrong(
          "shrinkage",
          "washed: yes in line "
              + f.item("washed").get().key().line()
              + " says that it shrinks no more, and shrinkage in line "
              + f.item("shrinkage").get().key().line()
              + " says that it does; leave one of them out");
    }
    return shrinkage;
  }

  private Share side(Fields sides, String side, boolean washed, Map<String, Share> fibres) {
    Expected<Share> share = QuantityKinds.shareOfWhole();
    String words = "shrinkage in " + side;
    if (washed || fibres.size() == 1) {
      String fibre = fibres.keySet().iterator().next();
      return assumptions.or(sides, side, share, standard(side, washed, fibre), words);
    }
    double sum = 0;
    for (Map.Entry<String, Share> part : fibres.entrySet()) {
      if (draft.policy().fibre(part.getKey()).cellulose()) {
        Share whole = standard(side, false, part.getKey()).value();
        sum += part.getValue().fraction() * whole.fraction();
      }
    }
    Share blend = new Share(sum);
    return assumptions.orDerived(sides, side, share, blend, blend::text, words, BLEND);
  }

  private Default<Share> standard(String side, boolean washed, String fibre) {
    Defaults.Shrinkage usual = assumptions.standard().cloth().shrinkage();
    return washed
        ? usual.washed()
        : side.equals("length")
            ? usual.lengthOf().getOrDefault(fibre, usual.length())
            : usual.widthOf().getOrDefault(fibre, usual.width());
  }

  Map<String, Seam> seams(Fields root, Cloth cloth, boolean lengthKnown) {
    return root.namedUnder("seams", "the seams")
        .map(f -> f.each(i -> seam(i, cloth, lengthKnown)))
        .orElse(Map.of());
  }

  private Seam seam(Item item, Cloth cloth, boolean lengthKnown) {
    Fields f = Fields.of(item, "a seam", draft.reading());
    Seam seam =
        new Seam(
            item.name(),
            f.required("at", QuantityKinds.quantity(Length.class)),
            assumptions.or(
                f,
                "allowance",
                QuantityKinds.quantity(Length.class),
                assumptions.standard().seam().allowance(),
                "seam allowance"),
            assumptions.or(
                f,
                "padded",
                ValueKinds.yesNo(),
                assumptions.standard().seam().padded(),
                "ridge padded"),
            f.optional("sewn", ValueKinds.yesNo()).orElse(false),
            f.path());
    f.done();
    if (lengthKnown && f.sound("at") && seam.at().mm() > cloth.length().mm()) {
      f.wrong(
          "at",
          seam.at().text(f.measures())
              + " lies past the end of the cloth, which is "
              + cloth.length().text(f.measures())
              + " long");
    }
    return seam;
  }

  private static Map<String, Boolean> forms() {
    Map<String, Boolean> forms = new LinkedHashMap<>();
    forms.put("open", false);
    forms.put("tube", true);
    return forms;
  }
}
