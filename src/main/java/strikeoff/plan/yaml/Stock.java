package strikeoff.plan.yaml;

import java.util.LinkedHashMap;
import java.util.Map;
import strikeoff.artwork.Artworks;
import strikeoff.artwork.StudioFolder;
import strikeoff.document.Bounds;
import strikeoff.policy.Policy;
import strikeoff.yaml.Fields;
import strikeoff.yaml.Item;
import strikeoff.yaml.Node;

/**
 * What a studio owns, written as plans write it, so that its plans needn't write it again: a plan's
 * own words always win.
 *
 * @param places table, room, crew, hours, handling and equipment, each as far as it is written
 * @param screens by name
 * @param pastes by name
 * @param films by name
 */
public record Stock(
    Map<String, Held> places,
    Map<String, Held> screens,
    Map<String, Held> pastes,
    Map<String, Film> films) {

  /** Nothing is owned. */
  public static final Stock NONE = new Stock(Map.of(), Map.of(), Map.of(), Map.of());

  /** Sections of a plan that hold what a place of work has. */
  private static final String[] PLACES = {
    "table", "room", "crew", "hours", "handling", "equipment"
  };

  public Stock {
    places = new LinkedHashMap<>(places);
    screens = new LinkedHashMap<>(screens);
    pastes = new LinkedHashMap<>(pastes);
    films = new LinkedHashMap<>(films);
  }

  boolean isEmpty() {
    return places.isEmpty() && screens.isEmpty() && pastes.isEmpty() && films.isEmpty();
  }

  /**
   * Something that the studio has.
   *
   * @param source the file and line where it is written
   */
  public record Held(Node node, String source) {}

  /**
   * A film of the inventory.
   *
   * @param file its picture, beside the policy file that names it or below
   * @param folder where that policy file lies
   */
  public record Film(Held held, String file, StudioFolder folder) {

    /** The SHA-256 of its picture's bytes, or why there is none. */
    public String digest(Bounds bounds) {
      return folder.digest(file, bounds);
    }
  }

  /**
   * Reads these sections of a policy file as strictly as a plan's, reporting every mistake.
   *
   * @param file its name
   * @param folder where it lies, with its films
   */
  public static Stock read(Fields root, Policy policy, String file, StudioFolder folder) {
    Draft draft =
        new Draft(
            policy,
            Bounds.USUAL,
            Artworks.nowhere(),
            Map.of(),
            root.reading(),
            new Assumptions(policy),
            Names.of(new Node.Nothing(false, root.position())));
    RoomPart room = new RoomPart(draft);
    room.table(root);
    room.room(root);
    if (root.has("crew")) {
      room.crew(root);
    }
    new HoursPart(draft).hours(root);
    room.handling(root);
    room.equipment(root);
    new ScreenPart(draft).screens(root);
    new PastePart(draft).pastes(root);
    Map<String, Held> places = new LinkedHashMap<>();
    for (String place : PLACES) {
      root.item(place).ifPresent(i -> places.put(place, held(i, file)));
    }
    Map<String, String> pictures = new FilmPart(draft, folder).films(root);
    Map<String, Film> films = new LinkedHashMap<>();
    named(root, "films", file)
        .forEach((name, h) -> films.put(name, new Film(h, pictures.get(name), folder)));
    return new Stock(places, named(root, "screens", file), named(root, "pastes", file), films);
  }

  private static Map<String, Held> named(Fields root, String section, String file) {
    Map<String, Held> named = new LinkedHashMap<>();
    root.item(section)
        .filter(i -> i.node() instanceof Node.Mapping)
        .map(i -> Fields.named(i, "the " + section, root.reading()))
        .ifPresent(f -> named.putAll(f.each(i -> held(i, file))));
    return named;
  }

  private static Held held(Item item, String file) {
    return new Held(item.node(), file + ", line " + item.key().line());
  }

  /** This stock with what another place further down has besides or instead. */
  public Stock under(Stock lower) {
    return new Stock(
        merged(places, lower.places),
        merged(screens, lower.screens),
        merged(pastes, lower.pastes),
        merged(films, lower.films));
  }

  private static <T> Map<String, T> merged(Map<String, T> upper, Map<String, T> lower) {
    Map<String, T> all = new LinkedHashMap<>(upper);
    all.putAll(lower);
    return all;
  }
}
