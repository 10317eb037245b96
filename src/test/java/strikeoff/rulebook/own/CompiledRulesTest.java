package strikeoff.rulebook.own;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is kept of compiled rules comes back whole or not at all. */
class CompiledRulesTest {

  private static final OwnRule LATE =
      new OwnRule(
          "house/late", "rules/house/loft.dslr", 3, List.of("rule “late”", "end"), List.of());
  private static final OwnRule FINE =
      new OwnRule(
          "house/fine", "rules/house/own.drl", 4096, List.of(), List.of("a/b", "house/finest"));

  private static CompiledRules two() {
    Map<String, byte[]> classes = new LinkedHashMap<>();
    classes.put("rules.house.B", new byte[] {1, 2, 3});
    classes.put("rules.house.A", new byte[0]);
    return new CompiledRules(List.of(LATE, FINE), List.of("rules.house.A", "m2"), classes);
  }

  private static CompiledRules back(byte[] bytes) {
    return CompiledRules.of(bytes).orElseThrow();
  }

  @Test
  void everythingComesBackInItsOrder() {
    CompiledRules back = back(two().bytes());
    assertThat(back.rules()).containsExactly(LATE, FINE);
    assertThat(back.models()).containsExactly("rules.house.A", "m2");
    assertThat(back.classes().keySet()).containsExactly("rules.house.B", "rules.house.A");
    assertThat(back.classes().get("rules.house.B")).containsExactly(1, 2, 3);
    assertThat(back.classes().get("rules.house.A")).isEmpty();
    assertThat(back.bytes()).isEqualTo(two().bytes());
  }

  @Test
  void nothingAtAllComesBackAsNothing() {
    CompiledRules none = new CompiledRules(List.of(), List.of(), Map.of());
    assertThat(back(none.bytes()).rules()).isEmpty();
    assertThat(back(none.bytes()).classes()).isEmpty();
  }

  @Test
  void aSingleChangedByteAnywhereIsNoticed() {
    byte[] sound = two().bytes();
    for (int i = 0; i < sound.length; i++) {
      byte[] damaged = sound.clone();
      damaged[i] ^= 1;
      assertThat(CompiledRules.of(damaged)).as("byte %d", i).isEmpty();
    }
  }

  @Test
  void aFileThatWasCutOffIsNoticedWhereverItEnds() {
    byte[] sound = two().bytes();
    for (int length = 0; length < sound.length; length++) {
      assertThat(CompiledRules.of(Arrays.copyOf(sound, length))).as("%d bytes", length).isEmpty();
    }
  }

  @Test
  void anotherVersionOrSomethingElseWithASoundDigestIsNotRead() throws IOException {
    for (String text :
        List.of("strikeoff rules 2\n\0\0\0\0\0\0\0\0\0\0\0\0", "strikeoff rules 1\n", "")) {
      ByteArrayOutputStream file = new ByteArrayOutputStream();
      file.write(text.getBytes(StandardCharsets.US_ASCII));
      file.write(Digest.of(file.toByteArray()));
      assertThat(CompiledRules.of(file.toByteArray())).as(text).isEmpty();
    }
  }

  @Test
  void whatIsChangedOutsideDoesNotChangeWhatIsKept() {
    Map<String, byte[]> classes = new LinkedHashMap<>(Map.of("a", new byte[] {1}));
    CompiledRules rules = new CompiledRules(List.of(), List.of(), classes);
    classes.clear();
    assertThat(rules.classes()).containsKey("a");
  }

  // The cache that keeps them.

  @TempDir private Path folder;

  @TempDir private Path home;

  private RuleCache cache(Path kept) {
    return new RuleCache(Optional.of(kept), Optional.of(home.resolve("rules.key")));
  }

  private static RuleFile file(String name, String family, String text) {
    return new RuleFile(name, family, text);
  }

  private static String key(RuleFile... files) {
    return RuleCache.NONE.key(List.of(files));
  }

  @Test
  void filesThatDifferInAnythingAreKeptApart() {
    String key = key(file("a", "b", "c"));
    assertThat(key).isEqualTo(key(file("a", "b", "c"))).hasSize(64).matches("[0-9a-f]+");
    assertThat(
            Stream.of(
                key(file("x", "b", "c")),
                key(file("a", "x", "c")),
                key(file("a", "b", "x")),
                // The same letters, cut elsewhere.
                key(file("ab", "", "c")),
                key(file("a", "bc", "")),
                key(file("a", "b", "c"), file("", "", "")),
                key(file("a", "b", "c"), file("a", "b", "c")),
                key()))
        .doesNotContain(key)
        .doesNotHaveDuplicates();
  }

  @Test
  void theOrderOfFilesIsTheOrderOfTheirRules() {
    RuleFile one = file("a", "b", "c");
    RuleFile two = file("d", "e", "f");
    assertThat(key(one, two)).isNotEqualTo(key(two, one));
  }

  @Test
  void whatIsKeptIsFoundByItsKeyAloneAndNoHalfIsLeft() throws IOException {
    RuleCache cache = cache(folder.resolve("deep/cache"));
    assertThat(cache.find("one")).isEmpty();
    cache.keep("one", two());
    assertThat(cache.find("one").orElseThrow().bytes()).isEqualTo(two().bytes());
    assertThat(cache.find("two")).isEmpty();
    try (Stream<Path> kept = Files.list(folder.resolve("deep/cache"))) {
      assertThat(kept).containsExactly(folder.resolve("deep/cache/one"));
    }
  }

  @Test
  void whereNothingCanBeKeptNothingFails() throws IOException {
    Path taken = Files.writeString(folder.resolve("file"), "no folder");
    RuleCache cache = cache(taken);
    cache.keep("one", two());
    assertThat(cache.find("one")).isEmpty();
    assertThat(taken).hasContent("no folder");
    RuleCache.NONE.keep("one", two());
    assertThat(RuleCache.NONE.find("one")).isEmpty();
  }

  @Test
  void aPlaceThatIsTakenLeavesNoHalfBehind() throws IOException {
    Files.createDirectories(folder.resolve("one/inside"));
    cache(folder).keep("one", two());
    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left).containsExactly(folder.resolve("one"));
    }
  }

  // What lies there and who put it there.

  @Test
  void whatSomebodyElseKeptIsNotBelieved() throws IOException {
    Path handedIn = folder.resolve("cache");
    Path others = folder.resolve("theirs.key");
    new RuleCache(Optional.of(handedIn), Optional.of(others)).keep("one", two());
    assertThat(cache(handedIn).find("one")).as("sealed by another key").isEmpty();
    cache(handedIn).keep("one", two());
    assertThat(cache(handedIn).find("one")).isPresent();
    Files.copy(handedIn.resolve("one"), handedIn.resolve("two"));
    assertThat(cache(handedIn).find("two")).as("of other rules").isEmpty();
    Files.write(handedIn.resolve("one"), two().bytes());
    assertThat(cache(handedIn).find("one")).as("not sealed at all").isEmpty();
    Files.write(handedIn.resolve("one"), new byte[3]);
    assertThat(cache(handedIn).find("one")).as("shorter than a seal").isEmpty();
  }

  @Test
  void aKeyThatOthersCanReadIsMadeAnew() throws IOException {
    assumeTrue(Files.getFileStore(home).supportsFileAttributeView("posix"));
    Path key = home.resolve("rules.key");
    cache(folder).keep("one", two());
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(key)))
        .isEqualTo("rw-------");
    byte[] before = Files.readAllBytes(key);
    Files.setPosixFilePermissions(key, PosixFilePermissions.fromString("rw-r--r--"));
    assertThat(cache(folder).find("one")).as("as a checkout leaves it").isEmpty();
    assertThat(Files.readAllBytes(key)).hasSize(32).isNotEqualTo(before);
  }

  @Test
  void withoutAKeyNothingIsKept() {
    RuleCache keyless = new RuleCache(Optional.of(folder), Optional.empty());
    keyless.keep("one", two());
    assertThat(folder).isEmptyDirectory();
    assertThat(keyless.find("one")).isEmpty();
  }

  @Test
  void anotherBuildOfTheProgramIsToldByWhatIsInItsJar() throws IOException {
    String first = ProgramFile.digest(jar("one.jar", "rules"));
    assertThat(ProgramFile.digest(jar("same.jar", "rules"))).isEqualTo(first);
    assertThat(ProgramFile.digest(jar("other.jar", "RULES")))
        .as("as long, of the same minute, and otherwise")
        .isNotEqualTo(first);
    Path none = Files.writeString(folder.resolve("none.jar"), "no jar, though it is long enough");
    assertThatThrownBy(() -> ProgramFile.digest(none)).isInstanceOf(IOException.class);
  }

  private Path jar(String name, String text) throws IOException {
    Path jar = folder.resolve(name);
    try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(jar))) {
      ZipEntry entry = new ZipEntry("rules.txt");
      entry.setTime(0);
      out.putNextEntry(entry);
      out.write(text.getBytes(StandardCharsets.UTF_8));
      out.closeEntry();
    }
    return jar;
  }
}
