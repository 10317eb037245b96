package strikeoff.plan.yaml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import strikeoff.plan.Artwork;
import strikeoff.plan.Design;
import strikeoff.plan.Table;
import strikeoff.units.Area;
import strikeoff.units.Length;
import strikeoff.units.Pair;
import strikeoff.units.Share;
import strikeoff.yaml.Expected;
import strikeoff.yaml.Fields;
import strikeoff.yaml.Item;
import strikeoff.yaml.QuantityKinds;
import strikeoff.yaml.Reading;
import strikeoff.yaml.ValueKinds;

/** Reads the designs with their separations. */
final class DesignPart {

  private static final Pair CORNER = new Pair(new Length(0), new Length(0));

  private final Draft draft;
  private final Assumptions assumptions;
  private final ArtworkPart artworks;

  DesignPart(Draft draft) {
    this.draft = draft;
    this.artworks = new ArtworkPart(draft);
    this.assumptions = draft.assumptions();
  }

  Map<String, Design> designs(Fields root) {
    return root.namedUnder("designs", "the designs")
        .map(f -> f.each(this::design))
        .orElse(Map.of());
  }

  private Design design(Item item) {
    Fields f = Everyday.called("design", Fields.of(item, "a design", draft.reading()));
    Pair size = f.required("size", QuantityKinds.size());
    boolean sized = f.sound("size");
    List<Design.Separation> separations =
        f.required(
            "separations",
            Lists.of("a separation", i -> separation(i, size, sized), "screen", "paste"));
    f.done();
    return new Design(
        item.name(), size.along(), size.across(), numbered(separations), List.of(), f.path());
  }

  /** The same with their films laid over each other, once it is known how far frames can be off. */
  Map<String, Design> joined(Map<String, Design> designs, Table table) {
    Length off = draft.policy().registration(table.railed());
    Map<String, Design> joined = new LinkedHashMap<>();
    designs.forEach(
        (name, design) ->
            joined.put(name, design.with(artworks.joints(design.separations(), off))));
    return joined;
  }

  private static List<Design.Separation> numbered(List<Design.Separation> list) {
    List<Design.Separation> numbered = new ArrayList<>();
    for (Design.Separation s : list) {
      numbered.add(
          new Design.Separation(
              numbered.size() + 1,
              s.screen(),
              s.paste(),
              s.x(),
              s.y(),
              s.length(),
              s.width(),
              s.printed(),
              s.pulls(),
              s.key(),
              s.trap(),
              s.detail(),
              s.artwork(),
              s.path()));
    }
    return numbered;
  }

  private Design.Separation separation(Item item, Pair design, boolean sized) {
    Fields f = Everyday.called("separation", Fields.of(item, "a separation", draft.reading()));
    Pair at = f.optional("at", Points.place()).orElse(CORNER);
    Pair size = f.optional("size", QuantityKinds.size()).orElse(rest(design, at));
    Expected<Length> length = QuantityKinds.aboveZero(Length.class);
    Optional<Artwork> artwork = artworks.artwork(f, size, sized && f.sound("at", "size"));
    Area stated = printed(f, size);
    Optional<Artwork.Stated> states =
        Stream.of("area", "covers")
            .filter(f::has)
            .findFirst()
            .map(key -> new Artwork.Stated(stated, key));
    Design.Separation separation =
        new Design.Separation(
            1,
            f.required(
                "screen", ValueKinds.nameIn("a screen's name", "screen", draft.names().screens())),
            f.required(
                "paste", ValueKinds.nameIn("a paste's name", "paste", draft.names().pastes())),
            at.along(),
            at.across(),
            size.along(),
            size.across(),
            artwork.map(a -> new Area(whole(size) * a.printed().fraction())).orElse(stated),
            assumptions.or(
                f,
                "pulls",
                ValueKinds.count("the number of pulls", 1, Design.MOST_PULLS),
                assumptions.standard().separation().pulls(),
                "pulls for one impression"),
            f.optional("key", ValueKinds.yesNo()).orElse(false),
            f.optional("trap", QuantityKinds.quantity(Length.class)),
            f.optional("detail", length),
            artwork.map(a -> a.stating(states, artworks.sized(f))),
            f.path());
    f.done();
    if (sized && f.sound("at", "size") && !inside(at, size, design)) {
      f.wrong(
          f.has("size") ? "size" : "at",
          "this separation reaches past its design, which measures "
              + design.along().text(f.measures())
              + " x "
              + design.across().text(f.measures()));
    }
    return separation;
  }

  private static Pair rest(Pair design, Pair at) {
    return new Pair(
        new Length(Math.max(1, design.along().minus(at.along()).mm())),
        new Length(Math.max(1, design.across().minus(at.across()).mm())));
  }

  private static boolean inside(Pair at, Pair size, Pair design) {
    return !at.along().below(0)
        && !at.across().below(0)
        && !at.along().plus(size.along()).above(design.along().mm())
        && !at.across().plus(size.across()).above(design.across().mm());
  }

  private static double whole(Pair size) {
    return size.along().cm() * size.across().cm();
  }

  /**
   * The printed area as the plan states it, as a share of the separation's rectangle or outright;
   * all of it where the film tells.
   */
  private static Area printed(Fields f, Pair size) {
    double whole = whole(size);
    Optional<Area> area = f.optional("area", QuantityKinds.aboveZero(Area.class));
    Expected<Share> covers = QuantityKinds.above0UpToWhole();
    if (f.has("area")) {
      if (f.has("covers")) {
        f.wrong("covers", "covers and area say the same thing; keep one of them");
      }
      if (f.sound("area", "size", "at")
          && area.isPresent()
          && area.get().squareCm() > whole + 0.01) {
        f.wrong(
            "area",
            area.get().text(f.measures())
                + " is more than the whole rectangle of "
                + new Area(whole).text(f.measures()));
      }
      return area.orElse(new Area(whole));
    }
    if ((f.has("artwork") || f.has("film")) && !f.has("covers")) {
      return new Area(whole);
    }
    Share share =
        f.has("covers") ? f.required("covers", covers) : f.required("covers", new OrArea(covers));
    return new Area(whole * share.fraction());
  }

  /** Mentions the other way of giving it where both are missing. */
  private record OrArea(Expected<Share> covers) implements Expected<Share> {
    @Override
    public String words() {
      return "the printed share of the rectangle such as 38 %, or area such as 380 cm²,"
          + " or artwork such as films/heron.png,";
    }

    @Override
    public Share standIn() {
      return covers.standIn();
    }

    @Override
    public Optional<Share> read(Item item, Reading reading) {
      return covers.read(item, reading);
    }
  }
}
