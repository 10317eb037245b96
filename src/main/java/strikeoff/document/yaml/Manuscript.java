package strikeoff.document.yaml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.document.Position;
import strikeoff.document.Replacement;
import strikeoff.document.Scalars;
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

  /** What stands at each path; keys by the path of their value. */
  private final Map<PlanPath, Place> places = new LinkedHashMap<>();

  /**
   * @param key where the key begins, or the item
   * @param name the key; empty for an item
   * @param parent the mapping or list that holds it; nothing for the whole document
   * @param number of its place among the others that the parent holds, from 0
   */
  private record Place(Node node, Position key, String name, Optional<Node> parent, int number) {}

  private Manuscript(String text, Node root) {
    this.text = text;
    this.lines = new LineOffsets(text);
    places.put(PlanPath.ROOT, new Place(root, root.at(), "", Optional.empty(), 0));
    add(root, PlanPath.ROOT);
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

  /** The comments of a text, in their order. */
  public static List<String> comments(String text) {
    return Comments.of(text);
  }

  private void add(Node node, PlanPath path) {
    if (node instanceof Node.Mapping m) {
      int number = 0;
      for (Node.Entry e : m.entries().values()) {
        PlanPath below = path.key(e.key());
        places.putIfAbsent(below, new Place(e.value(), e.at(), e.key(), Optional.of(m), number++));
        add(e.value(), below);
      }
    } else if (node instanceof Node.Sequence s) {
      for (int i = 0; i < s.items().size(); i++) {
        Node item = s.items().get(i);
        PlanPath below = path.item(i);
        places.putIfAbsent(below, new Place(item, item.at(), "", Optional.of(s), i));
        add(item, below);
      }
    }
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
    List<Splice> splices = new ArrayList<>();
    for (Edit edit : edits) {
      List<Splice> made = splices(edit);
      if (made.isEmpty()) {
        return Optional.empty();
      }
      splices.addAll(made);
    }
    return Optional.of(splices);
  }

  /** True if something stands there. */
  public boolean has(PlanPath path) {
    return places.containsKey(path);
  }

  /**
   * What stands in the text for an item of a list, with its comments, without the dash and the
   * indent of the list.
   *
   * @return nothing if no item is there
   */
  public Optional<List<String>> item(PlanPath path) {
    Place place = places.get(path);
    if (place == null || !(place.parent().orElse(place.node()) instanceof Node.Sequence list)) {
      return Optional.empty();
    }
    if (!isBlock(list)) {
      return Optional.of(
          List.of("- " + text.substring(lines.offset(place.node().at()), behind(place.node()))));
    }
    int column = lines.column(list.at());
    int from = lines.aboveComments(lines.lineOf(dashOf(list, place.node())), column);
    String whole = text.substring(from, lines.lineEnd(behind(place.node())));
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
    Place place = places.get(path);
    Node root = places.get(PlanPath.ROOT).node();
    String end = lines.separator();
    if (!(root instanceof Node.Mapping) || !isBlock(root)) {
      return Optional.empty();
    }
    if (place == null) {
      String above = text.isEmpty() || text.endsWith("\n") || text.endsWith("\r") ? "" : end;
      return Optional.of(text + above + key + ":" + end + block(items, 2, end) + end);
    }
    int column = lines.column(root.at()) + 2;
    int from = behindColon(place.key(), place.name());
    int to = Math.max(from, behind(place.key(), place.name(), place.node()));
    if (place.node() instanceof Node.Sequence list && isBlock(list) && !list.items().isEmpty()) {
      column = lines.column(list.at());
      int first = lines.lineOf(dashOf(list, list.items().get(0)));
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

  /** None if it has no place here. */
  private List<Splice> splices(Edit edit) {
    Place place = places.get(edit.at());
    if (edit instanceof Edit.Write write) {
      return place == null
          ? added(write.at(), write.value()).stream().toList()
          : List.of(value(place, write.value()));
    }
    if (edit instanceof Edit.Append append) {
      return appended(append, place).stream().toList();
    }
    if (place == null) {
      return List.of();
    }
    if (edit instanceof Edit.Insert insert) {
      return place.parent().orElse(place.node()) instanceof Node.Sequence list
          ? List.of(inFront(list, place, insert.item()))
          : List.of();
    }
    if (edit instanceof Edit.Move move) {
      return moved(place, places.get(move.before()));
    }
    return removal(place).stream().toList();
  }

  /** A key that is not there yet, in the mapping that the rest of its path leads to. */
  private Optional<Splice> added(PlanPath path, String value) {
    PlanPath above = path.parent();
    Place mapping = places.get(above);
    if (mapping == null) {
      return Optional.empty();
    }
    int prefix = above.text().isEmpty() ? 0 : above.text().length() + 1;
    String key = path.text().substring(prefix);
    return key.contains("[")
        ? Optional.empty()
        : key(mapping.node(), Scalars.text(key) + ": " + value);
  }

  private Optional<Splice> appended(Edit.Append append, Place place) {
    if (place == null) {
      return added(append.at(), "[" + append.item() + "]");
    }
    if (place.node() instanceof Node.Sequence list) {
      return Optional.of(behindAll(list, append.item()));
    }
    return place.node() instanceof Node.Scalar single
        ? Optional.of(value(place, "[" + Scalars.text(single.text()) + ", " + append.item() + "]"))
        : Optional.of(value(place, "[" + append.item() + "]"));
  }

  /** Whole lines move; items in brackets don't, since no printer writes a run in brackets. */
  private List<Splice> moved(Place item, Place before) {
    boolean beside =
        before != null
            && item.parent().equals(before.parent())
            && item.parent().orElse(item.node()) instanceof Node.Sequence list
            && isBlock(list);
    if (!beside || item == before) {
      return List.of();
    }
    Node.Sequence list = (Node.Sequence) item.parent().get();
    int column = lines.column(list.at());
    int from = lines.aboveComments(lines.lineOf(dashOf(list, item.node())), column);
    int to = lines.nextLine(behind(item.node()));
    int target = lines.aboveComments(lines.lineOf(dashOf(list, before.node())), column);
    String lifted = text.substring(from, to);
    if (!lifted.endsWith("\n") && !lifted.endsWith("\r")) {
      return List.of(
          new Splice(target, target, lifted + lines.separator()),
          new Splice(behindLineBefore(from), to, ""));
    }
    return List.of(new Splice(target, target, lifted), new Splice(from, to, ""));
  }

  /**
   * Before the line end in front of a line, which need not be the one that the text begins with.
   */
  private int behindLineBefore(int from) {
    int at = from - 1;
    return at > 0 && text.charAt(at) == '\n' && text.charAt(at - 1) == '\r' ? at - 1 : at;
  }

  /** A value of one line in place of another; what takes lines of its own moves up to its key. */
  private Splice value(Place place, String value) {
    Node node = place.node();
    if (!place.name().isEmpty() && (isBlock(node) || node instanceof Node.Nothing)) {
      int colon = behindColon(place.key(), place.name());
      return new Splice(colon, Math.max(colon, behind(node)), " " + value);
    }
    return new Splice(lines.offset(node.at()), behind(node), value);
  }

  private int behindColon(Position key, String name) {
    int from = lines.offset(key);
    char first = text.charAt(from);
    boolean quoted = first == '"' || first == '\'';
    // A name with quotes in it is longer as it is written; what is left of it holds no colon then.
    int at = quoted ? text.indexOf(first, from + 1 + name.length()) : from + name.length();
    return text.indexOf(':', at) + 1;
  }

  /** Just behind a value; a text of several lines ends before the line end that closes it. */
  private int behind(Node node) {
    int from = lines.offset(node.at());
    int to = lines.offset(node.end());
    while (to > from && Character.isWhitespace(text.charAt(to - 1))) {
      to--;
    }
    return to;
  }

  /** In the way of the others: behind the last one, on a line of its own or in the same braces. */
  private Optional<Splice> key(Node node, String entry) {
    if (!(node instanceof Node.Mapping mapping)) {
      return Optional.empty();
    }
    List<Node.Entry> entries = new ArrayList<>(mapping.entries().values());
    boolean block = isBlock(node);
    if (entries.isEmpty()) {
      int inside = lines.offset(node.at()) + 1;
      return block ? Optional.empty() : Optional.of(new Splice(inside, inside, entry));
    }
    Node.Entry last = entries.get(entries.size() - 1);
    int behind = behind(last.at(), last.key(), last.value());
    return Optional.of(
        block
            ? ownLine(lines.lineEnd(behind), lines.column(mapping.at()), entry)
            : new Splice(behind, behind, ", " + entry));
  }

  /** Just behind an entry's value, or behind its colon if it has none. */
  private int behind(Position key, String name, Node value) {
    return value instanceof Node.Nothing ? behindColon(key, name) : behind(value);
  }

  private Splice behindAll(Node.Sequence list, String item) {
    List<Node> items = list.items();
    if (items.isEmpty()) {
      int inside = lines.offset(list.at()) + 1;
      return new Splice(inside, inside, item);
    }
    int behind = behind(items.get(items.size() - 1));
    return isBlock(list)
        ? ownLine(lines.lineEnd(behind), lines.column(list.at()), "- " + item)
        : new Splice(behind, behind, ", " + item);
  }

  private Splice inFront(Node.Sequence list, Place place, String item) {
    if (!isBlock(list)) {
      int at = lines.offset(place.node().at());
      return new Splice(at, at, item + ", ");
    }
    int dash = lines.column(list.at());
    int above = lines.aboveComments(lines.lineOf(dashOf(list, place.node())), dash);
    return new Splice(above, above, " ".repeat(dash) + "- " + item + lines.separator());
  }

  /** An item may begin on a line below its dash. */
  private int dashOf(Node.Sequence list, Node item) {
    int at = lines.offset(item.at());
    int column = lines.column(list.at());
    int line = lines.lineOf(at);
    while (line > 0
        && (lines.start(line) + column >= text.length()
            || text.charAt(lines.start(line) + column) != '-')) {
      line--;
    }
    return lines.start(line) + column;
  }

  private Splice ownLine(int behind, int column, String entry) {
    return new Splice(behind, behind, lines.separator() + " ".repeat(column) + entry);
  }

  private Optional<Splice> removal(Place place) {
    if (place.parent().isEmpty()) {
      return Optional.empty();
    }
    Node parent = place.parent().get();
    int from = lines.offset(place.key());
    int to =
        place.name().isEmpty()
            ? behind(place.node())
            : behind(place.key(), place.name(), place.node());
    if (!isBlock(parent)) {
      return Optional.of(inBraces(from, to, place.number()));
    }
    if (size(parent) == 1) {
      return Optional.empty(); // an empty block cannot be written
    }
    if (parent instanceof Node.Sequence list) {
      from = dashOf(list, place.node());
    } else if (place.number() == 0 && !lines.isFirstOnLine(from)) {
      return Optional.empty(); // it shares its line with a dash that has to stay
    }
    return Optional.of(new Splice(lines.start(lines.lineOf(from)), lines.nextLine(to), ""));
  }

  /** With the comma in front of it, or the one behind it where it is the first. */
  private Splice inBraces(int from, int to, int number) {
    int begin = from;
    int end = to;
    if (number > 0) {
      while (text.charAt(begin - 1) != ',') {
        begin--;
      }
      begin--;
    } else {
      while (text.charAt(end) == ' ') {
        end++;
      }
      if (text.charAt(end) == ',') {
        end++;
        while (text.charAt(end) == ' ') {
          end++;
        }
      } else {
        end = to;
      }
    }
    return new Splice(begin, end, "");
  }

  private static int size(Node node) {
    return node instanceof Node.Mapping m
        ? m.entries().size()
        : ((Node.Sequence) node).items().size();
  }

  private boolean isBlock(Node node) {
    if (node instanceof Node.Scalar || node instanceof Node.Nothing) {
      return false;
    }
    int at = lines.offset(node.at());
    return at >= text.length() || (text.charAt(at) != '{' && text.charAt(at) != '[');
  }
}
