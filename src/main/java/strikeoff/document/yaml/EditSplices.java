package strikeoff.document.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.document.Scalars;
import strikeoff.document.yaml.TextPlaces.Place;
import strikeoff.yaml.Node;

/** The stretches of a YAML text that an edit changes. */
final class EditSplices {

  private final TextPlaces places;
  private final String text;
  private final LineOffsets lines;

  EditSplices(TextPlaces places) {
    this.places = places;
    this.text = places.text();
    this.lines = places.lines();
  }

  /** None if it has no place here. */
  List<Splice> of(Edit edit) {
    Place place = places.at(edit.at());
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
      return moved(place, places.at(move.before()));
    }
    return removal(place).stream().toList();
  }

  /** A key that is not there yet, in the mapping that the rest of its path leads to. */
  private Optional<Splice> added(PlanPath path, String value) {
    PlanPath above = path.parent();
    Place mapping = places.at(above);
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
            && places.isBlock(list);
    if (!beside || item == before) {
      return List.of();
    }
    Node.Sequence list = (Node.Sequence) item.parent().get();
    int column = lines.column(list.at());
    int from = lines.aboveComments(lines.lineOf(places.dashOf(list, item.node())), column);
    int to = lines.nextLine(places.behind(item.node()));
    int target = lines.aboveComments(lines.lineOf(places.dashOf(list, before.node())), column);
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
    if (!place.name().isEmpty() && (places.isBlock(node) || node instanceof Node.Nothing)) {
      int colon = places.behindColon(place.key(), place.name());
      return new Splice(colon, Math.max(colon, places.behind(node)), " " + value);
    }
    return new Splice(lines.offset(node.at()), places.behind(node), value);
  }

  /** In the way of the others: behind the last one, on a line of its own or in the same braces. */
  private Optional<Splice> key(Node node, String entry) {
    if (!(node instanceof Node.Mapping mapping)) {
      return Optional.empty();
    }
    List<Node.Entry> entries = new ArrayList<>(mapping.entries().values());
    boolean block = places.isBlock(node);
    if (entries.isEmpty()) {
      int inside = lines.offset(node.at()) + 1;
      return block ? Optional.empty() : Optional.of(new Splice(inside, inside, entry));
    }
    Node.Entry last = entries.get(entries.size() - 1);
    int behind = places.behind(last.at(), last.key(), last.value());
    return Optional.of(
        block
            ? ownLine(lines.lineEnd(behind), lines.column(mapping.at()), entry)
            : new Splice(behind, behind, ", " + entry));
  }

  private Splice behindAll(Node.Sequence list, String item) {
    List<Node> items = list.items();
    if (items.isEmpty()) {
      int inside = lines.offset(list.at()) + 1;
      return new Splice(inside, inside, item);
    }
    int behind = places.behind(items.get(items.size() - 1));
    return places.isBlock(list)
        ? ownLine(lines.lineEnd(behind), lines.column(list.at()), "- " + item)
        : new Splice(behind, behind, ", " + item);
  }

  private Splice inFront(Node.Sequence list, Place place, String item) {
    if (!places.isBlock(list)) {
      int at = lines.offset(place.node().at());
      return new Splice(at, at, item + ", ");
    }
    int dash = lines.column(list.at());
    int above = lines.aboveComments(lines.lineOf(places.dashOf(list, place.node())), dash);
    return new Splice(above, above, " ".repeat(dash) + "- " + item + lines.separator());
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
            ? places.behind(place.node())
            : places.behind(place.key(), place.name(), place.node());
    if (!places.isBlock(parent)) {
      return Optional.of(inBraces(from, to, place.number()));
    }
    if (places.size(parent) == 1) {
      return Optional.empty(); // an empty block cannot be written
    }
    if (parent instanceof Node.Sequence list) {
      from = places.dashOf(list, place.node());
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
}
