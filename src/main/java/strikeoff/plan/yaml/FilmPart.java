package strikeoff.plan.yaml;

import java.util.Map;
import java.util.Optional;
import strikeoff.artwork.StudioFolder;
import strikeoff.artwork.Wanted;
import strikeoff.units.Length;
import strikeoff.units.Pair;
import strikeoff.yaml.Fields;
import strikeoff.yaml.Item;
import strikeoff.yaml.QuantityKinds;

/**
 * Reads the films of a studio's inventory, and looks each up: what is wrong with one is told where
 * it is named, once for all plans that take it.
 */
final class FilmPart {

  /** Of a film that says no size; how large it is wanted, each plan says. */
  private static final Pair ANY = new Pair(new Length(100), new Length(100));

  private final Draft draft;
  private final StudioFolder folder;

  FilmPart(Draft draft, StudioFolder folder) {
    this.draft = draft;
    this.folder = folder;
  }

  /** The pictures of all films by their names. */
  Map<String, String> films(Fields root) {
    return root.namedUnder("films", "the films").map(f -> f.each(this::picture)).orElse(Map.of());
  }

  private String picture(Item item) {
    Fields f = Fields.of(item, "a film", draft.reading());
    f.required("artwork", ArtworkPart.NAME);
    Optional<Pair> size = f.optional("size", QuantityKinds.size());
    Optional<Wanted> wanted =
        new ArtworkPart(draft).wanted(f, size.orElse(ANY), Optional.of(folder));
    wanted
        .filter(w -> f.sound("size"))
        .flatMap(w -> folder.refuses(w, size.isPresent(), draft.bounds()))
        .ifPresent(why -> f.wrong("artwork", why));
    f.done();
    return wanted.map(Wanted::file).orElse("");
  }
}
