package strikeoff.cli.serve;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import strikeoff.report.ServedPages;

/** The pages as they are now; tells when one is there anew. */
public final class ShownPages {

  /** So many lines are read above a page; the terminal has all of them. */
  private static final int MOST_NOTED = 5;

  /** The page that is made last. */
  private static final String ALL = "index.html";

  private final Map<String, Kept> pages = new HashMap<>();
  private String front = ALL;
  private String note = "";
  private boolean ended;

  /**
   * A page, packed: a thousand of them wait here.
   *
   * @param version alike for the same bytes only
   */
  private record Kept(byte[] packed, String version) {}

  /**
   * How a page stands.
   *
   * @param version of the page, {@link ServedPages#NONE} if there is none
   * @param note what keeps all pages from being made anew; empty if nothing does
   */
  record State(String version, String note) {

    /** What tells this from how it stood before, in letters that an address takes. */
    String mark() {
      return version + "." + Integer.toHexString(note.hashCode());
    }
  }

  /** Shows a page, in place of the one that was called so. */
  public synchronized void put(String name, byte[] utf8) {
    String version = ServedPages.version(utf8);
    Kept before = pages.get(name);
    if (before == null || !before.version().equals(version)) {
      pages.put(name, new Kept(packed(ServedPages.of(utf8, version)), version));
      notifyAll();
    }
  }

  /** Shows none but these any more. */
  public synchronized void retain(Collection<String> names) {
    if (pages.keySet().retainAll(names)) {
      notifyAll();
    }
  }

  /** Which page stands for all of them. */
  public synchronized void front(String name) {
    front = name;
  }

  /**
   * Tells whoever looks what keeps the pages from being made anew.
   *
   * @param lines why; none once they are
   */
  public synchronized void note(List<String> lines) {
    int more = lines.size() - MOST_NOTED;
    String now =
        more > 0
            ? String.join("\n", lines.subList(0, MOST_NOTED)) + "\nand " + more + " more"
            : String.join("\n", lines);
    if (!now.equals(note)) {
      note = now;
      notifyAll();
    }
  }

  /** Lets nobody wait any longer. */
  synchronized void end() {
    ended = true;
    notifyAll();
  }

  synchronized String front() {
    return front;
  }

  /** The page as a browser gets it. */
  Optional<byte[]> page(String name) {
    return Optional.ofNullable(kept(name)).map(kept -> unpacked(kept.packed()));
  }

  private synchronized Kept kept(String name) {
    return pages.get(name);
  }

  private State state(String name) {
    Kept kept = pages.get(name);
    return new State(kept == null ? ServedPages.NONE : kept.version(), note);
  }

  /** Whether it may still be made: a browser shows the one of the watch before so long. */
  private boolean isAwaited(String name) {
    return !pages.containsKey(name) && !pages.containsKey(ALL);
  }

  /**
   * How the page stands once it is otherwise than known, or after so long.
   *
   * @param known the mark of how it stood
   */
  synchronized State after(String name, String known, long millis) throws InterruptedException {
    long left = millis;
    // A wait is cut short by pages of others; how long it then was matters to nobody.
    while (left > 0 && !ended && (state(name).mark().equals(known) || isAwaited(name))) {
      long slice = Math.min(left, TimeUnit.SECONDS.toMillis(1));
      wait(slice);
      left -= slice;
    }
    return state(name);
  }

  private static byte[] packed(byte[] page) {
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    try (GZIPOutputStream out = new GZIPOutputStream(packed)) {
      out.write(page);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return packed.toByteArray();
  }

  private static byte[] unpacked(byte[] packed) {
    try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(packed))) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
