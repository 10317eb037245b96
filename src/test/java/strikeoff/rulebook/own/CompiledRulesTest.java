package strikeoff.rulebook.own;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
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
    RuleCache cache = new RuleCache(Optional.of(folder.resolve("deep/cache")));
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
    RuleCache cache = new RuleCache(Optional.of(taken));
    cache.keep("one", two());
    assertThat(cache.find("one")).isEmpty();
    assertThat(taken).hasContent("no folder");
    RuleCache.NONE.keep("one", two());
    assertThat(RuleCache.NONE.find("one")).isEmpty();
  }

  @Test
  void aPlaceThatIsTakenLeavesNoHalfBehind() throws IOException {
    Files.createDirectories(folder.resolve("one/inside"));
    new RuleCache(Optional.of(folder)).keep("one", two());
    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left).containsExactly(folder.resolve("one"));
    }
  }
}
