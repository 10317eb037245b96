package strikeoff.cli.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import strikeoff.check.FileTrouble;
import strikeoff.cli.files.PlanFiles.PlanFile;
import strikeoff.cli.text.FileNames;
import strikeoff.findings.Narrowed;
import strikeoff.findings.RuleInfo;
import strikeoff.policy.yaml.PolicyReader;
import strikeoff.report.HtmlReport;
import strikeoff.report.IndexEntry;
import strikeoff.report.PageMark;
import strikeoff.report.outcome.Outcome;

/**
 * The folder that reports are written into: each is whole and of this run, or gone. What is not
 * known as a page of an earlier run is somebody's own, and is neither replaced nor taken away.
 */
public final class ReportFolder {

  /** The page of all plans. */
  public static final String INDEX = "index.html";

  /** The page of rules beside it. */
  public static final String RULES = "rules.html";

  /** The pages that belong to no single plan. */
  public static final List<String> OF_ALL = List.of(INDEX, RULES);

  private static final List<String> OF_ALL_SHEETS = List.of(INDEX);

  private static final String HTML = ".html";

  private static final int LONGEST_NAME = 80;

  /** What pages are called; a page that has another name was renamed by somebody who keeps it. */
  private static final Pattern NAME = Pattern.compile("[a-z0-9-]+\\.html");

  /** Names that some file systems keep for devices, and our own pages. */
  private static final Set<String> TAKEN =
      Set.of(
          "index", "rules", "con", "prn", "aux", "nul", "com1", "com2", "com3", "lpt1", "lpt2",
          "lpt3");

  private final Path folder;
  private final PageMark mark;

  public ReportFolder(Path folder) {
    this(folder, PageMark.CHECK);
  }

  /**
   * @param mark by which its pages are known
   */
  public ReportFolder(Path folder, PageMark mark) {
    this.folder = folder;
    this.mark = mark;
  }

  /**
   * Makes the folder if it isn't there, and clears what killed runs left half written.
   *
   * @throws IOException if it can't be made
   */
  public void make() throws IOException {
    Files.createDirectories(folder);
    WholeFile.clear(folder, name -> name.endsWith(HTML));
  }

  /**
   * A file name for each plan: letters, digits and hyphens of the plan's own file name, all small,
   * so that no two are one file where case doesn't count and none leads out of the folder.
   */
  public static Map<PlanFile, String> names(List<PlanFile> plans) {
    Map<PlanFile, String> names = new LinkedHashMap<>();
    List<String> pages = pages(plans.stream().map(PlanFile::name).toList());
    for (int i = 0; i < pages.size(); i++) {
      names.put(plans.get(i), pages.get(i));
    }
    return names;
  }

  /**
   * The same for the names of a whole batch's plans.
   *
   * @param plans in the batch's order
   */
  public static List<String> pages(List<String> plans) {
    Set<String> used = new HashSet<>();
    TAKEN.forEach(stem -> used.add(stem + HTML));
    return plans.stream().map(plan -> free(stem(plan), used)).toList();
  }

  /** Whether a page of that name is there. */
  public boolean holds(String page) {
    return isPage(folder.resolve(page));
  }

  /** A page's name that isn't used yet, and is from now on. */
  private static String free(String stem, Set<String> used) {
    String page = stem + HTML;
    for (int next = 2; !used.add(page); next++) {
      page = stem + "-" + next + HTML;
    }
    return page;
  }

  private static String stem(String file) {
    String last = file.substring(file.lastIndexOf('/') + 1).toLowerCase(Locale.ROOT);
    String stem =
        last.replaceFirst("\\.ya?ml$", "").replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    String cut = stem.length() > LONGEST_NAME ? stem.substring(0, LONGEST_NAME) : stem;
    return cut.isEmpty() ? "plan" : cut;
  }

  /**
   * Makes ready for a run's pages: those of earlier runs go, and so do halves of killed ones.
   *
   * @throws IOException if nothing can be written here
   */
  public void open() throws IOException {
    openBut(Set.of());
  }

  /**
   * The same where some pages were written by parts of this run.
   *
   * @throws IOException if nothing can be written here
   */
  public void openBut(Set<String> kept) throws IOException {
    make();
    try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder, "*" + HTML)) {
      for (Path entry : entries) {
        String name = FileNames.last(entry);
        if (NAME.matcher(name).matches() && !kept.contains(name)) {
          gone(name);
        }
      }
    } catch (DirectoryIteratorException e) {
      throw e.getCause();
    }
  }

  /**
   * The same where runs share the folder: only the pages that this run will write go.
   *
   * @throws IOException if nothing can be written here
   */
  public void open(Collection<String> pages) throws IOException {
    make();
    for (String page : pages) {
      gone(page);
    }
  }

  /**
   * Writes a page whole. If it can't be written, none of an earlier run stays in its place; what is
   * no page of strikeoff stays.
   *
   * @throws IOException if it can't be written
   */
  public void write(String name, byte[] utf8) throws IOException {
    Path file = folder.resolve(name);
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !isEmpty(file) && !isPage(file)) {
      throw new IOException("what stands here is no page of strikeoff, and stays");
    }
    try {
      WholeFile.write(file, utf8);
    } catch (IOException | RuntimeException | Error e) {
      try {
        gone(name);
      } catch (IOException stays) {
        e.addSuppressed(stays);
      }
      throw e;
    }
  }

  /** The same with a text. */
  public void write(String name, String text) throws IOException {
    write(name, text.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Writes the pages of all plans together, the index last.
   *
   * @param trouble takes which of them can't be written, and why
   * @return whether there is an index
   */
  public boolean index(
      String title, List<IndexEntry> entries, List<RuleInfo> rules, Consumer<String> trouble) {
    return index(title, entries, rules, false, Map.of(), trouble);
  }

  /**
   * The same.
   *
   * @param byPupil whether plans are grouped by whose they are, rather than by folder
   * @param pages what each pupil gets back, by name
   */
  public boolean index(
      String title,
      List<IndexEntry> entries,
      List<RuleInfo> rules,
      boolean byPupil,
      Map<String, String> pages,
      Consumer<String> trouble) {
    tried(RULES, HtmlReport.rules(rules, PolicyReader.builtIn()), trouble);
    byte[] index =
        HtmlReport.index(title, entries, byPupil, pages).getBytes(StandardCharsets.UTF_8);
    return tried(INDEX, index, trouble);
  }

  /**
   * Writes a page for each pupil to get back.
   *
   * @param taken names of the pages of plans
   * @param trouble takes which of them can't be written, and why
   * @return those that were written, by the pupil's name
   */
  public Map<String, String> handBack(
      List<Outcome> plans,
      List<RuleInfo> rules,
      Optional<Narrowed> narrowed,
      Collection<String> taken,
      Consumer<String> trouble) {
    Map<String, RuleInfo> byId = new LinkedHashMap<>();
    rules.forEach(rule -> byId.put(rule.id(), rule));
    Map<String, List<Outcome>> byPupil = new TreeMap<>();
    plans.forEach(p -> byPupil.computeIfAbsent(p.pupil(), key -> new ArrayList<>()).add(p));
    Set<String> used = new HashSet<>(taken);
    Map<String, String> written = new LinkedHashMap<>();
    byPupil.forEach(
        (name, own) -> {
          String page = free("pupil-" + stem(name), used);
          if (tried(page, HtmlReport.pupil(name, own, byId, narrowed), trouble)) {
            written.put(name, page);
          }
        });
    return written;
  }

  /**
   * Writes the page that leads to the sheets.
   *
   * @param trouble takes why it can't be written
   * @return whether it is there
   */
  public boolean sheetsIndex(String title, List<IndexEntry> entries, Consumer<String> trouble) {
    return tried(INDEX, HtmlReport.sheetsIndex(title, entries), trouble);
  }

  private boolean tried(String page, byte[] utf8, Consumer<String> trouble) {
    try {
      write(page, utf8);
      return true;
    } catch (IOException e) {
      trouble.accept(page + ": this page can't be written: " + FileTrouble.of(e));
      return false;
    }
  }

  /**
   * Takes a page away, if it is there and a page.
   *
   * @throws IOException if it can't be taken away
   */
  public void gone(String page) throws IOException {
    Path file = folder.resolve(page);
    if (isPage(file)) {
      Files.deleteIfExists(file);
    }
  }

  private boolean isPage(Path file) {
    return isPlainFile(file) && mark.stands(Overwriting.beginning(file));
  }

  /** As another program makes a file whose name it wants to keep. */
  private static boolean isEmpty(Path file) throws IOException {
    return isPlainFile(file) && Files.size(file) == 0;
  }

  private static boolean isPlainFile(Path file) {
    return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
  }

  /** The pages that belong to no single plan. */
  public List<String> ofAll() {
    return mark == PageMark.SHEETS ? OF_ALL_SHEETS : OF_ALL;
  }

  /** The pages of plans and of all of them together, as they lie in the folder. */
  public List<Path> files(Collection<String> pages) {
    List<Path> files = new ArrayList<>();
    ofAll().forEach(page -> files.add(folder.resolve(page)));
    pages.forEach(page -> files.add(folder.resolve(page)));
    return files;
  }
}
