package strikeoff.yaml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.parser.Parser;
import org.yaml.snakeyaml.parser.ParserException;
import strikeoff.document.Bounds;
import strikeoff.document.PlanPath;
import strikeoff.document.Position;
import strikeoff.units.Script;

/** Builds the tree from the parser's events and refuses what plans have no use for. */
final class Composer {

  /** Longer keys are no names, and paths are made of them. */
  static final int LONGEST_KEY = 80;

  private static final Pattern COMMENT = Pattern.compile("[\\s]*(?:[:-]\\s+)?#.*");

  /** Plain values that are none, as YAML 1.1 has them. */
  private static final Set<String> NULLS = Set.of("~", "null", "Null", "NULL");

  private final Parser parser;
  private final Mended text;
  private final List<String> lines;
  private final Problems problems;
  private final Bounds bounds;
  private Optional<Slips.Slip> slip = Optional.empty();
  private int values;

  /** The parser's last. */
  private Event event;

  /** The line where the outermost open bracket stands; 0 outside of brackets. */
  private int bracket;

  Composer(Parser parser, Mended text, Problems problems, Bounds bounds) {
    this.parser = parser;
    this.text = text;
    this.lines = text.lines();
    this.problems = problems;
    this.bounds = bounds;
  }

  /** The only document, or empty with the reason reported. */
  Optional<Node> document() {
    if (!begins()) {
      problems.add(new Position(1, 1), PlanPath.ROOT, "the file is empty; a plan was expected");
      return Optional.empty();
    }
    Optional<Node> root = node(1);
    if (root.isPresent() && begins()) {
      refuse("a second document begins; a file holds one plan, so leave out the lines “---”");
    }
    return root;
  }

  /** Goes on to what a document holds; false if there is none left. */
  private boolean begins() {
    do {
      next();
    } while (event.is(Event.ID.StreamStart)
        || event.is(Event.ID.DocumentStart)
        || event.is(Event.ID.DocumentEnd));
    return !event.is(Event.ID.StreamEnd);
  }

  private void next() {
    event = parser.getEvent();
  }

  /** A slip that YAML takes for something else, mended in the text: it is to be read again. */
  Optional<Slips.Slip> slip() {
    return slip;
  }

  /** Where the slip is. */
  Optional<Fault> fault() {
    return slip.map(s -> new Fault(s.message(), "", s.at(), s.at()));
  }

  /** The node at the current event; empty where reading on makes no sense. */
  private Optional<Node> node(int depth) {
    Position at = at();
    if (depth > bounds.depth()) {
      refuse("lists and mappings are nested deeper than " + bounds.depth() + " levels");
      return Optional.empty();
    }
    if (++values > bounds.values()) {
      refuse("the file holds more than " + bounds.values() + " values");
      return Optional.empty();
    }
    adornments();
    if (event instanceof CollectionStartEvent) {
      int outer = bracket;
      bracket = outer == 0 && opensBracket(at) ? at.line() : outer;
      Optional<Node> inside =
          event.is(Event.ID.MappingStart) ? mapping(at, depth) : sequence(at, depth);
      bracket = outer;
      return inside;
    }
    if (!(event instanceof ScalarEvent scalar)) {
      refuse("“*” refers to an anchor, which plans do not have; write the value out or quote it");
      return Optional.of(new Node.Nothing(false, true, at));
    }
    String text = scalar.getValue();
    if (text.isBlank() || scalar.isPlain() && NULLS.contains(text)) {
      return Optional.of(new Node.Nothing(commentFollows(at), at));
    }
    if (unseen(text, at)) {
      return Optional.of(new Node.Nothing(false, true, at));
    }
    Position end = end(at);
    int block = bracket > 0 ? bracket : at.line();
    slip = slip.or(() -> QuoteSlips.swallowed(at, end, block, this.text));
    return slip.isPresent()
        ? Optional.empty()
        : Optional.of(new Node.Scalar(text.strip(), at, end));
  }

  private Optional<Node> mapping(Position at, int depth) {
    Map<String, Node.Entry> entries = new LinkedHashMap<>();
    List<Node.Entry> again = new ArrayList<>();
    boolean whole = true;
    Position last = at;
    Optional<Node.Entry> before = Optional.empty();
    for (next(); !event.is(Event.ID.MappingEnd); next()) {
      if (!(event instanceof ScalarEvent name)) {
        throw new ParserException(null, null, "expected a field name", event.getEndMark());
      }
      Position keyAt = at();
      adornments();
      String key = straight(name.getValue().strip(), keyAt);
      boolean known = isKey(key, keyAt);
      whole &= known;
      next();
      Optional<Node> value = node(depth + 1);
      if (value.isEmpty()) {
        return Optional.empty();
      }
      last = value.get().end();
      if (known) {
        Node.Entry entry = new Node.Entry(key, value.get(), keyAt);
        slip = slip.or(Joined.slip(entry, before, isFlow(at), text));
        if (slip.isPresent()) {
          return Optional.empty();
        }
        before = Optional.of(entry);
        if (entries.putIfAbsent(key, entry) != null) {
          again.add(entry);
        }
      }
    }
    return Optional.of(new Node.Mapping(entries, again, whole, at, end(last)));
  }

  /** A key without the quotation marks of word processors. */
  private String straight(String key, Position at) {
    Optional<String> inside = ValueKinds.printedQuotes(key);
    inside.ifPresent(
        k ->
            problems.add(
                text.original(at),
                PlanPath.ROOT,
                "printed quotation marks stand here; write the key without: " + k));
    return inside.orElse(key);
  }

  private boolean isFlow(Position at) {
    return lines.get(at.line() - 1).startsWith("{", at.column() - 1);
  }

  private boolean opensBracket(Position at) {
    return isFlow(at) || lines.get(at.line() - 1).startsWith("[", at.column() - 1);
  }

  private boolean isKey(String key, Position at) {
    if (key.equals("<<")) {
      problems.add(
          text.original(at),
          PlanPath.ROOT,
          "“<<” would merge another mapping, which plans do not do; write it out");
      return false;
    }
    if (key.isEmpty()) {
      problems.add(text.original(at), PlanPath.ROOT, "a key without a name stands here");
      return false;
    }
    if (key.length() > LONGEST_KEY) {
      problems.add(
          text.original(at),
          PlanPath.ROOT,
          () ->
              Script.quoted(key)
                  + " is longer than the "
                  + LONGEST_KEY
                  + " letters a key may have");
      return false;
    }
    return !unseen(key, at);
  }

  private Optional<Node> sequence(Position at, int depth) {
    List<Node> items = new ArrayList<>();
    Position last = at;
    for (next(); !event.is(Event.ID.SequenceEnd); next()) {
      Optional<Node> item = node(depth + 1);
      if (item.isEmpty()) {
        return Optional.empty();
      }
      last = item.get().end();
      items.add(item.get());
    }
    slip = slip.or(() -> Joined.comma(items, text));
    return Optional.of(new Node.Sequence(items, at, end(last)));
  }

  /** Anchors and tags change what a reader of the file sees; plans say everything openly. */
  private void adornments() {
    boolean alias = event.is(Event.ID.Alias);
    if (!alias && ((NodeEvent) event).getAnchor() != null) {
      refuse("“&” names an anchor, which plans do not have; quote the value or leave it out");
    }
    if (tag() != null) {
      refuse("“!” gives a tag, which plans do not have; quote the value or leave it out");
    }
  }

  private String tag() {
    return event instanceof CollectionStartEvent collection
        ? collection.getTag()
        : event instanceof ScalarEvent scalar ? scalar.getTag() : null;
  }

  /** Escapes in quotes can bring in what the raw text may not hold. */
  private boolean unseen(String text, Position at) {
    for (int i = 0; i < text.length(); i++) {
      if (TextDecoder.isUnseen(text, i)) {
        problems.add(
            this.text.original(at),
            PlanPath.ROOT,
            "this value holds an invisible character; leave it out");
        return true;
      }
    }
    return false;
  }

  private boolean commentFollows(Position at) {
    String line = lines.get(at.line() - 1);
    String rest = line.substring(Math.min(at.column() - 1, line.length()));
    return COMMENT.matcher(rest).matches();
  }

  private void refuse(String message) {
    problems.add(text.original(at()), PlanPath.ROOT, message);
  }

  private Position at() {
    return place(event.getStartMark());
  }

  /**
   * Where the current event ends. The end of a list or mapping without brackets is no character of
   * the file: the parser sees it at whatever comes next, so the last value inside decides.
   */
  private Position end(Position last) {
    Position end = place(event.getEndMark());
    return end.compareTo(at()) == 0 || end.compareTo(last) < 0 ? last : end;
  }

  private Position place(Mark mark) {
    return YamlReader.place(mark.getLine(), mark.getColumn(), lines);
  }
}
