package strikeoff.document.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.document.Scalars;

class ManuscriptTest {

  private static final String RUN =
      """
      plan: Reeds   # two colours
      cloth: {fibre: cotton, washed: yes}
      protection:
        - gloves
      notes: |
        Lay the shells first.
      run:
        - mix: all
        # Only when it is dry.
        - print: reeds      # by the window
          pause: 2 min

        - print: shells
        - end of day
      """;

  private static String edited(String text, Edit... edits) {
    return Manuscript.of(text).orElseThrow().with(List.of(edits)).orElseThrow();
  }

  private static PlanPath path(String text) {
    return new PlanPath(text);
  }

  @Test
  void aValueIsWrittenInPlaceOfAnother() {
    assertThat(edited(RUN, new Edit.Write(path("run[1].pause"), "5 min")))
        .isEqualTo(RUN.replace("pause: 2 min", "pause: 5 min"));
    assertThat(edited(RUN, new Edit.Write(path("cloth.fibre"), "linen")))
        .isEqualTo(RUN.replace("cotton", "linen"));
    assertThat(edited(RUN, new Edit.Write(path("notes"), "none")))
        .isEqualTo(RUN.replace("|\n  Lay the shells first.", "none"));
  }

  @Test
  void aNewKeyStandsBehindTheOthersInTheirWay() {
    assertThat(edited(RUN, new Edit.Write(path("run[1].dry between colours"), "40 min")))
        .isEqualTo(
            RUN.replace("pause: 2 min\n", "pause: 2 min\n    dry between colours: 40 min\n"));
    assertThat(edited(RUN, new Edit.Write(path("run[2].every other"), "yes")))
        .isEqualTo(RUN.replace("shells\n  - end", "shells\n    every other: yes\n  - end"));
    assertThat(edited(RUN, new Edit.Write(path("cloth.shrinkage"), "3 %")))
        .isEqualTo(RUN.replace("washed: yes}", "washed: yes, shrinkage: 3 %}"));
    assertThat(edited(RUN, new Edit.Write(path("crew"), "2"))).isEqualTo(RUN + "crew: 2\n");
  }

  @Test
  void aListOfLinesBecomesOneLine() {
    assertThat(edited(RUN, new Edit.Write(path("protection"), "[gloves, dust mask]")))
        .isEqualTo(RUN.replace("protection:\n  - gloves", "protection: [gloves, dust mask]"));
  }

  @Test
  void aStepIsPutInAboveTheCommentOfTheNextOne() {
    assertThat(edited(RUN, new Edit.Insert(path("run[1]"), "dry: 20 min")))
        .isEqualTo(RUN.replace("  # Only", "  - dry: 20 min\n  # Only"));
    assertThat(edited(RUN, new Edit.Insert(path("run[0]"), "dry: 20 min")))
        .isEqualTo(RUN.replace("  - mix", "  - dry: 20 min\n  - mix"));
    assertThat(edited(RUN, new Edit.Append(path("run"), "dry: 20 min")))
        .isEqualTo(RUN + "  - dry: 20 min\n");
    assertThat(edited("run: [a, b]", new Edit.Insert(path("run[1]"), "c")))
        .isEqualTo("run: [a, c, b]");
    assertThat(edited("run: []", new Edit.Append(path("run"), "c"))).isEqualTo("run: [c]");
  }

  @Test
  void whatIsTakenOutTakesItsLinesAlong() {
    assertThat(edited(RUN, new Edit.Remove(path("run[1].pause"))))
        .isEqualTo(RUN.replace("    pause: 2 min\n", ""));
    assertThat(edited(RUN, new Edit.Remove(path("run[3]"))))
        .isEqualTo(RUN.replace("  - end of day\n", ""));
    assertThat(edited(RUN, new Edit.Remove(path("cloth.fibre"))))
        .isEqualTo(RUN.replace("fibre: cotton, ", ""));
    assertThat(edited(RUN, new Edit.Remove(path("cloth.washed"))))
        .isEqualTo(RUN.replace(", washed: yes", ""));
  }

  @Test
  void aStepMovesWithItsComment() {
    String step =
        "  # Only when it is dry.\n  - print: reeds      # by the window\n    pause: 2 min\n";
    assertThat(edited(RUN, new Edit.Move(path("run[1]"), path("run[0]"))))
        .isEqualTo(RUN.replace(step, "").replace("  - mix: all\n", step + "  - mix: all\n"));
    assertThat(edited("run:\n- a\n- b", new Edit.Move(path("run[1]"), path("run[0]"))))
        .isEqualTo("run:\n- b\n- a");
  }

  @Test
  void anItemIsAddedToWhateverStandsThere() {
    assertThat(edited(RUN, new Edit.Append(path("protection"), "dust mask")))
        .isEqualTo(RUN.replace("- gloves\n", "- gloves\n  - dust mask\n"));
    assertThat(edited("a: 1\nb: [x]", new Edit.Append(path("b"), "y"))).endsWith("b: [x, y]");
    assertThat(edited("a: 1\nb: x", new Edit.Append(path("b"), "y"))).endsWith("b: [x, y]");
    assertThat(edited("a: 1\nb:", new Edit.Append(path("b"), "y"))).endsWith("b: [y]");
    assertThat(edited("a: 1", new Edit.Append(path("b"), "y"))).isEqualTo("a: 1\nb: [y]");
  }

  @Test
  void lineEndsStayAsTheyAre() {
    String windows = RUN.replace("\n", "\r\n");
    assertThat(edited(windows, new Edit.Insert(path("run[1]"), "dry: 20 min")))
        .isEqualTo(windows.replace("  # Only", "  - dry: 20 min\r\n  # Only"));
    assertThat(edited("run:\n  - mix: all", new Edit.Write(path("run[0].takes"), "1 h")))
        .isEqualTo("run:\n  - mix: all\n    takes: 1 h");
  }

  @Test
  void severalChangesAreMadeAtOnce() {
    assertThat(
            edited(
                RUN,
                new Edit.Write(path("run[2].every other"), "yes"),
                new Edit.Write(path("run[2].pause"), "1 min"),
                new Edit.Remove(path("run[3]"))))
        .isEqualTo(
            RUN.replace(
                "shells\n  - end of day\n", "shells\n    every other: yes\n    pause: 1 min\n"));
    assertThat(
            Manuscript.of(RUN)
                .orElseThrow()
                .with(
                    List.of(
                        new Edit.Remove(path("run[1]")),
                        new Edit.Write(path("run[1].pause"), "1 min"))))
        .isEmpty();
  }

  @Test
  void whatHasNoPlaceInTheTextIsNotWritten() {
    Manuscript run = Manuscript.of(RUN).orElseThrow();
    for (Edit edit :
        List.of(
            new Edit.Write(path("screens.heron.mesh"), "43/cm"),
            new Edit.Write(path("run[3].pause"), "1 min"),
            new Edit.Remove(path("protection[0]")),
            new Edit.Remove(path("run[2].print")),
            new Edit.Insert(path("cloth"), "x"))) {
      assertThat(run.with(List.of(edit))).as("%s", edit).isEmpty();
      assertThat(run.changes(List.of(edit))).isEmpty();
    }
    assertThat(Manuscript.of("plan: [")).isEmpty();
  }

  @Test
  void namesAreQuotedWhereYamlNeedsIt() {
    for (String name :
        List.of(
            "reed green", "no", "a: b", "#1", "a #b", "x, y", "{", "\"", "back\\slash", "- a")) {
      Object back = load("[" + Scalars.text(name) + "]");
      assertThat(back).isEqualTo(List.of(name));
    }
    assertThat(Scalars.text("reed green")).isEqualTo("reed green");
  }

  static List<Path> plans() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("plans"))) {
      return files
          .filter(f -> f.toString().endsWith(".yaml"))
          .filter(ManuscriptTest::isPlan)
          .sorted()
          .toList();
    }
  }

  private static boolean isPlan(Path file) {
    try {
      return Files.readAllLines(file).stream().anyMatch(line -> line.startsWith("plan:"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The same changes, made in a tree that another library reads, come to the same values. */
  @ParameterizedTest
  @MethodSource("plans")
  void nothingElseChangesInAnyDemoPlan(Path plan) throws IOException {
    String text = Files.readString(plan);
    Manuscript manuscript = Manuscript.of(text).orElseThrow();
    List<String> before = text.lines().toList();
    List<Edit> edits = new ArrayList<>();
    collect(load(text), PlanPath.ROOT, edits);
    assertThat(edits).hasSizeGreaterThan(50);
    // Some 30 of each plan, others in each, since every one reads the whole text twice.
    int apart = edits.size() / 30 + 1;
    for (int i = text.length() % apart; i < edits.size(); i += apart) {
      Edit edit = edits.get(i);
      Optional<String> after = manuscript.with(List.of(edit));
      if (after.isEmpty()) {
        assertThat(edit).isInstanceOfAny(Edit.Remove.class);
        continue;
      }
      Object tree = load(text);
      apply(tree, edit);
      assertThat(load(after.get())).as("%s", edit).isEqualTo(tree);
      List<String> gone = new ArrayList<>(before);
      after.get().lines().forEach(gone::remove);
      assertThat(comments(gone)).as("comments lost by %s", edit).isEmpty();
    }
  }

  private static List<String> comments(List<String> lines) {
    return lines.stream().filter(line -> line.strip().startsWith("#")).toList();
  }

  private static void collect(Object node, PlanPath path, List<Edit> edits) {
    if (node instanceof Map<?, ?> map) {
      edits.add(new Edit.Write(path.key("added"), "1"));
      for (Map.Entry<?, ?> e : map.entrySet()) {
        PlanPath below = path.key((String) e.getKey());
        edits.add(new Edit.Write(below, "changed"));
        edits.add(new Edit.Remove(below));
        collect(e.getValue(), below, edits);
      }
    } else if (node instanceof List<?> list) {
      edits.add(new Edit.Append(path, "added"));
      for (int i = 0; i < list.size(); i++) {
        edits.add(new Edit.Insert(path.item(i), "added"));
        edits.add(new Edit.Write(path.item(i), "changed"));
        edits.add(new Edit.Remove(path.item(i)));
        collect(list.get(i), path.item(i), edits);
      }
    }
  }

  @SuppressWarnings("unchecked")
  private static void apply(Object tree, Edit edit) {
    Map<PlanPath, Object> parents = new LinkedHashMap<>();
    Map<PlanPath, Object> keys = new LinkedHashMap<>();
    parents(tree, PlanPath.ROOT, parents, keys);
    if (edit instanceof Edit.Append append) {
      ((List<Object>) at(tree, edit.at(), parents, keys)).add(append.item());
    } else if (edit instanceof Edit.Write && !parents.containsKey(edit.at())) {
      PlanPath above = edit.at().parent();
      ((Map<String, Object>) at(tree, above, parents, keys)).put("added", 1);
    } else if (parents.get(edit.at()) instanceof List<?> list) {
      int index = (int) keys.get(edit.at());
      if (edit instanceof Edit.Write write) {
        ((List<Object>) list).set(index, write.value());
      } else if (edit instanceof Edit.Insert insert) {
        ((List<Object>) list).add(index, insert.item());
      } else {
        list.remove(index);
      }
    } else {
      Map<String, Object> map = (Map<String, Object>) parents.get(edit.at());
      if (edit instanceof Edit.Write write) {
        map.put((String) keys.get(edit.at()), write.value());
      } else {
        map.remove(keys.get(edit.at()));
      }
    }
  }

  private static Object at(
      Object tree, PlanPath path, Map<PlanPath, Object> parents, Map<PlanPath, Object> keys) {
    Object parent = parents.get(path);
    if (parent == null) {
      return tree;
    }
    return parent instanceof Map<?, ?> map
        ? map.get(keys.get(path))
        : ((List<?>) parent).get((int) keys.get(path));
  }

  private static void parents(
      Object node, PlanPath path, Map<PlanPath, Object> parents, Map<PlanPath, Object> keys) {
    if (node instanceof Map<?, ?> map) {
      for (Map.Entry<?, ?> e : map.entrySet()) {
        PlanPath below = path.key((String) e.getKey());
        parents.put(below, map);
        keys.put(below, e.getKey());
        parents(e.getValue(), below, parents, keys);
      }
    } else if (node instanceof List<?> list) {
      for (int i = 0; i < list.size(); i++) {
        parents.put(path.item(i), list);
        keys.put(path.item(i), i);
        parents(list.get(i), path.item(i), parents, keys);
      }
    }
  }

  private static Object load(String text) {
    return new Yaml(new SafeConstructor(new LoaderOptions())).load(text);
  }
}
