package strikeoff.rulebook.own;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import strikeoff.plan.Evidence;

/**
 * What code in own rules may use, by the list {@code may-use.txt}: it may compute and report.
 * Whoever ends the program from a rule, or prints into its results, would let a gate pass.
 *
 * @param whole classes with all that is in them
 * @param packages packages with all their classes
 * @param parts members by the class of which no others may be used
 * @param never members that are refused in any class
 */
record MayUse(
    Set<String> whole, Set<String> packages, Map<String, Set<String>> parts, Set<String> never) {

  private static final String LIST = "may-use.txt";

  MayUse {
    whole = Set.copyOf(whole);
    packages = Set.copyOf(packages);
    parts = Map.copyOf(parts);
    never = Set.copyOf(never);
  }

  /** The list that comes with the program. */
  static MayUse shipped() {
    try (InputStream in = MayUse.class.getResourceAsStream(LIST)) {
      if (in == null) {
        throw new IllegalStateException("no " + LIST + " on the class path");
      }
      return of(new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static MayUse of(List<String> lines) {
    Set<String> whole = new HashSet<>();
    Set<String> packages = new HashSet<>();
    Map<String, Set<String>> parts = new HashMap<>();
    Set<String> never = new HashSet<>();
    for (String line : lines) {
      if (line.isBlank() || line.startsWith("#")) {
        continue;
      }
      int members = line.indexOf('#');
      if (line.startsWith("- ")) {
        never.addAll(Arrays.asList(line.substring(2).split(",")));
      } else if (line.endsWith(".*")) {
        packages.add(line.substring(0, line.length() - 2));
      } else if (members > 0) {
        parts.put(line.substring(0, members), Set.of(line.substring(members + 1).split(",")));
      } else {
        whole.add(line);
      }
    }
    return new MayUse(whole, packages, parts, never);
  }

  boolean allows(CodeUse use) {
    if (never.contains(use.member())) {
      return false;
    }
    String type = use.type();
    Set<String> some = parts.get(type);
    if (some != null) {
      return use.member().isEmpty() || some.contains(use.member());
    }
    return whole.contains(type)
        || packages.contains(type.substring(0, Math.max(0, type.lastIndexOf('.'))))
        || isFact(type);
  }

  /** A fact may be read wherever it is declared. */
  private static boolean isFact(String type) {
    try {
      return Evidence.class.isAssignableFrom(
          Class.forName(type, false, MayUse.class.getClassLoader()));
    } catch (ClassNotFoundException | LinkageError e) {
      return false;
    }
  }
}
