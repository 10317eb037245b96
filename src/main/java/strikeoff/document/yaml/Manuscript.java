package strikeoff.document.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.document.Position;
import strikeoff.document.Replacement;
import strikeoff.document.yaml.TextPlaces.Place;
import strikeoff.yaml.Comments;
import strikeoff.yaml.Node;
import strikeoff.yaml.YamlReader;
import strikeoff.yaml.YamlReading;

/**
 * A YAML text that can be changed at single places. Comments, spaces, quotes, line ends and the
 * order of keys stay as they are wherever nothing is changed.
 */
public final class Manuscript {

  private final String text;
  private final LineOffsets lines;

  private final TextPlaces places;

  private Manuscript(String text, Node root) {
    this.text = text;
    this.places = new TextPlaces(text, root);
    this.lines = places.lines();
  }

  /**
   * @param text without a byte-order mark
   * @return nothing if the text is no sound YAML
   */
  public static Optional<Manuscript> of(String text) {
    return YamlReader.read(text) instanceof YamlReading.Document document
        ? Optional.of(new Manuscript(text, document.root()))
        : Optional.empty();
  }

  /** Where the braces round the whole text open; empty if its keys stand in lines of their own. */
  public Optional<Position> braces() {
    Node root = places.at(PlanPath.ROOT).node();
    return places.isBlock(root) ? Optional.empty() : Optional.of(root.at());
  }

  /** The comments of a text, in their order. */
  public static List<String> comments(String text) {
    return Comments.of(text);
  }

  /**
   * The text with all of these changes; their paths are those of the text as it is.
   *
   * @return nothing if one of them has no place here, or two are about the same one
   */
  public Optional<String> with(List<Edit> edits) {
    return splices(edits).flatMap(all -> Splice.all(text, all));
  }

  /**
   * The stretches of text that change, for programs that make the changes themselves.
   *
   * @return nothing if one of them has no place here
   */
  public Optional<List<Replacement>> changes(List<Edit> edits) {
    return splices(edits).map(all -> all.stream().map(this::change).toList());
  }

  private Replacement change(Splice splice) {
    return new Replacement(
        lines.position(splice.from()), lines.position(splice.to()), splice.text());
  }

  private Optional<List<Splice>> splices(List<Edit> edits) {
    EditSplices all = new EditSplices(places);
    List<Splice> splices = new ArrayList<>();
    for (Edit edit : edits) {
      List<Splice> made = all.of(edit);
      if (made.isEmpty()) {
        return Optional.empty();
      }
      splices.addAll(made);
    }
    return Optional.of(splices);
  }

  /** True if something stands there. */
  public boolean has(PlanPath path) {
    return places.at(path) != null;
  }

  /**
   * What stands in the text for an item of a list, with its comments, without the dash and the
   * indent of the list.
   *
   * @return nothing if no item is there
   */
  public Optional<List<String>> item(PlanPath path) {
    Place place = places.at(path);
    if (place == null || !(place.parent().orElse(place.node()) instanceof Node.Sequence list)) {
      return Optional.empty();
    }
    if (!places.isBlock(list)) {
      return Optional.of(
          List.of(
              "- " + text.substring(lines.offset(place.node().at()), places.behind(place.node()))));
    }
    int column = lines.column(list.at());
    int from = lines.aboveComments(lines.lineOf(places.dashOf(list, place.node())), column);
    String whole = text.substring(from, lines.lineEnd(places.behind(place.node())));
    return Optional.of(
        whole
            .lines()
            .map(
                line ->
                    line.substring(Math.min(column, line.length() - line.stripLeading().length())))
            .toList());
  }

  /**
   * The text with another list under one of its first keys, which comes last if it is new. All else
   * stays as it is, a comment behind the key too.
   *
   * @param items lines of the list, each as it is to stand but for the list's indent
   * @return nothing if the text has no place for a list
   */
  public Optional<String> withList(String key, List<String> items) {
    PlanPath path = PlanPath.ROOT.key(key);
    Place place = places.at(path);
    Node root = places.at(PlanPath.ROOT).node();
    String end = lines.separator();
    if (!(root instanceof Node.Mapping) || !places.isBlock(root)) {
      return Optional.empty();
    }
    if (place == null) {
      String above = text.isEmpty() || text.endsWith("\n") || text.endsWith("\r") ? "" : end;
      return Optional.of(text + above + key + ":" + end + block(items, 2, end) + end);
    }
    int column = lines.column(root.at()) + 2;
    int from = places.behindColon(place.key(), place.name());
    int to = Math.max(from, places.behind(place.key(), place.name(), place.node()));
    if (place.node() instanceof Node.Sequence list
        && places.isBlock(list)
        && !list.items().isEmpty()) {
      column = lines.column(list.at());
      int first = lines.lineOf(places.dashOf(list, list.items().get(0)));
      int start = lines.aboveComments(first, column);
      // Only what follows the line of the key; else a list that begins on it.
      from = start > from ? start : from;
      return Optional.of(
          text.substring(0, from) + block(items, column, end) + text.substring(lines.lineEnd(to)));
    }
    return Optional.of(
        text.substring(0, from)
            + end
            + block(items, column, end)
            + text.substring(lines.lineEnd(to)));
  }

  private static String block(List<String> items, int column, String end) {
    return items.stream().map(line -> " ".repeat(column) + line).collect(Collectors.joining(end));
  }
}
