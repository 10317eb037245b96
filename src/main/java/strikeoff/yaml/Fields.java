package strikeoff.yaml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import strikeoff.document.PlanPath;
import strikeoff.document.Position;
import strikeoff.units.Measures;
import strikeoff.units.Script;
import strikeoff.units.Spelling;

/**
 * Reads the keys of one mapping and remembers which ones it asked for, so that what is left over in
 * the end is what nobody knows. Every accessor gives a value: a stand-in where the mapping holds
 * none, with a problem reported.
 */
public final class Fields {

  /** Nobody's slip stands among more keys than that. */
  private static final int MOST_KEYS = 100;

  private final Item item;
  private final Map<String, Node.Entry> entries;
  private final Reading reading;
  private final Set<String> asked = new LinkedHashSet<>();
  private final Map<String, String> otherwise = new LinkedHashMap<>();
  private final Set<String> faulty = new LinkedHashSet<>();
  private final Map<String, Node.Entry> slips = new LinkedHashMap<>();
  private final boolean hollow;

  private Fields(Item item, Map<String, Node.Entry> entries, boolean hollow, Reading reading) {
    this.item = item;
    this.entries = entries;
    this.hollow = hollow;
    this.reading = reading;
  }

  /**
   * @param what the mapping describes, as {@code a screen}
   */
  public static Fields of(Item item, String what, Reading reading) {
    return of(item, what, false, reading);
  }

  /**
   * Reads a section that holds several things, each a mapping under its name.
   *
   * @param what as {@code the screens}
   */
  public static Fields named(Item item, String what, Reading reading) {
    return of(item, what, true, reading);
  }

  private static Fields of(Item item, String what, boolean byName, Reading reading) {
    if (item.node() instanceof Node.Mapping m) {
      for (Node.Entry again : m.again()) {
        Node.Entry first = m.entries().get(again.key());
        reading
            .problems()
            .add(
                again.at(),
                item.path(),
                () ->
                    Script.quoted(again.key())
                        + " stands here a second time; the first is at "
                        + first.at());
      }
      return new Fields(item, m.entries(), !m.whole(), reading);
    }
    String words = withKeys(what) + " expected, and " + item.node().kind() + " stands here";
    if (item.node() instanceof Node.Nothing n) {
      if (n.told()) {
        reading.problems().doubtful();
      } else {
        reading.problems().add(item.key(), item.path(), words);
      }
    } else if (item.node() instanceof Node.Sequence list) {
      ListedKeys listed = ListedKeys.of(list, byName);
      reading.wrong(item, words + listed.write());
      if (listed.nameless()) {
        reading.nameless();
      }
      if (listed.clear()) {
        return new Fields(item, listed.entries(), false, reading);
      }
    } else {
      reading.wrong(item, words);
    }
    return new Fields(item, Map.of(), true, reading);
  }

  private static String withKeys(String what) {
    boolean several = what.startsWith("the ") && what.endsWith("s");
    return what + (several ? " with their keys were" : " with its keys was");
  }

  /** The keys of a mapping that the document leaves out altogether. */
  public static Fields absent(PlanPath path, Position near, Reading reading) {
    Node none = new Node.Mapping(Map.of(), near, near);
    return new Fields(new Item(none, path, near), Map.of(), false, reading);
  }

  public PlanPath path() {
    return item.path();
  }

  /** Where the mapping, or the key that leads to it, begins. */
  public Position position() {
    return item.key();
  }

  public Reading reading() {
    return reading;
  }

  /** True if the key stands there. */
  public boolean has(String key) {
    ask(key);
    return entry(key) != null;
  }

  /** True if each of these was read without a mistake, or left out where it may be. */
  public boolean sound(String... keys) {
    return !hollow && List.of(keys).stream().noneMatch(faulty::contains);
  }

  /** Reports a mistake at a key's value, or at the mapping if the key is not there. */
  public void wrong(String key, String message) {
    faulty.add(key);
    Node.Entry entry = entry(key);
    if (entry == null) {
      wrong(message);
    } else {
      reading.wrong(item.child(entry), message);
    }
  }

  /** Reports a mistake in the name of a key itself. */
  public void wrongKey(String key, String message) {
    faulty.add(key);
    reading.problems().add(entry(key).at(), item.path().key(key), message);
  }

  /** Reports a mistake of the mapping as a whole. */
  public void wrong(String message) {
    if (!hollow) {
      reading.problems().add(item.key(), item.path(), message);
    }
  }

  /** A value that must be there. */
  public <T> T required(String key, Expected<T> expected) {
    ask(key);
    Node.Entry entry = entry(key);
    if (entry == null) {
      faulty.add(key);
      if (hollow || reading.partial()) {
        reading.problems().doubtful();
      } else {
        reading
            .problems()
            .add(
                item.key(),
                item.path().key(key),
                "“" + key + "” is missing: " + expected.words() + " belongs here");
      }
      return expected.standIn();
    }
    return read(entry, expected).orElseGet(expected::standIn);
  }

  /** A value that may be left out; a faulty one counts as left out. */
  public <T> Optional<T> optional(String key, Expected<T> expected) {
    ask(key);
    Node.Entry entry = entry(key);
    return entry == null ? Optional.empty() : read(entry, expected);
  }

  /** The raw value of a key, for decoders that look closer themselves. */
  public Optional<Item> item(String key) {
    ask(key);
    return Optional.ofNullable(entry(key)).map(item::child);
  }

  /** The fields of a mapping under a key, if it is there. */
  public Optional<Fields> under(String key, String what) {
    return item(key).map(i -> Fields.of(i, what, reading));
  }

  /** The same for a section of several things by name. */
  public Optional<Fields> namedUnder(String key, String what) {
    return item(key).map(i -> Fields.named(i, what, reading));
  }

  /** The fields under a key; those of an empty mapping if it is left out. */
  public Fields underOrAbsent(String key, String what) {
    return under(key, what)
        .orElseGet(() -> Fields.absent(item.path().key(key), item.key(), reading));
  }

  /** Every entry of the mapping, for mappings whose keys are names. */
  public <T> Map<String, T> each(Function<Item, T> decode) {
    Map<String, T> result = new LinkedHashMap<>();
    for (Node.Entry entry : entries.values()) {
      asked.add(entry.key());
      result.put(entry.key(), decode.apply(item.child(entry)));
    }
    return result;
  }

  public List<String> names() {
    return new ArrayList<>(entries.keySet());
  }

  /** Reports every key that nobody asked for. */
  public void done() {
    for (Node.Entry entry : entries.values()) {
      if (!asked.contains(entry.key()) || isSlip(entry)) {
        reading
            .problems()
            .add(entry.at(), item.path().key(entry.key()), () -> unknown(entry.key()));
      }
    }
  }

  /** Says that these are keys of their own, so that none is taken for a slip for another. */
  public void knows(String... keys) {
    asked.addAll(List.of(keys));
  }

  /** Says what is called otherwise here, for those who write the other word. */
  public void calls(String written, String key) {
    otherwise.put(written, key);
  }

  /** What stands under a key, or under one that can only be a slip for it. */
  private Node.Entry entry(String key) {
    Node.Entry written = entries.get(key);
    if (written == null && !slips.containsKey(key) && entries.size() <= MOST_KEYS) {
      slips.put(key, slip(key));
    }
    return written != null ? written : slips.get(key);
  }

  /** Told when all is read; until then its value is read as if it stood under the right key. */
  private Node.Entry slip(String key) {
    for (Node.Entry entry : entries.values()) {
      boolean free = !asked.contains(entry.key()) && !isSlip(entry);
      if (free && (key.equals(otherwise.get(entry.key())) || Spelling.isSlip(entry.key(), key))) {
        return entry;
      }
    }
    return null;
  }

  private boolean isSlip(Node.Entry entry) {
    for (Node.Entry slip : slips.values()) {
      if (slip == entry) {
        return true;
      }
    }
    return false;
  }

  private String unknown(String key) {
    for (Map.Entry<String, Node.Entry> slip : slips.entrySet()) {
      if (slip.getValue() != null && slip.getValue().key().equals(key)) {
        return Script.quoted(key) + " is not known here; did you mean “" + slip.getKey() + "”?";
      }
    }
    if (otherwise.containsKey(key)) {
      return Script.quoted(key) + " is not known here; did you mean “" + otherwise.get(key) + "”?";
    }
    List<String> free = asked.stream().filter(k -> !entries.containsKey(k)).toList();
    String meant = Spelling.didYouMean(key, free);
    String rest =
        !meant.isEmpty() || asked.isEmpty() || asked.size() > 20
            ? meant
            : "; known are " + String.join(", ", asked);
    return Script.quoted(key) + " is not known here" + rest;
  }

  private <T> Optional<T> read(Node.Entry entry, Expected<T> expected) {
    int before = reading.problems().count();
    Item value = item.child(entry);
    Optional<T> read;
    if (entry.value() instanceof Node.Nothing n) {
      if (n.told()) {
        reading.problems().doubtful();
        faulty.add(entry.key());
        return Optional.empty();
      }
      String hint = n.comment() ? "; what follows “#” is a comment unless it stands in quotes" : "";
      reading
          .problems()
          .add(
              entry.at(),
              value.path(),
              expected.words() + " was expected, and nothing stands here" + hint);
      read = Optional.empty();
    } else {
      read = expected.read(value, reading);
    }
    if (read.isEmpty() || reading.problems().count() > before) {
      faulty.add(entry.key());
    }
    return read;
  }

  private void ask(String key) {
    asked.add(key);
    reading.asked(key);
  }

  /** The units that the document is written in, as far as it was decoded. */
  public Measures measures() {
    return reading.measures();
  }
}
