package strikeoff.cli.commands;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import strikeoff.cli.files.PolicyFiles.PolicyFile;
import strikeoff.cli.text.Exit;

/** What is wrong with policies and own rules, one line each. */
final class StudioFaults {

  private final Set<String> ofNamed = new LinkedHashSet<>();
  private final Set<String> ofFound = new LinkedHashSet<>();
  private final Map<Path, String> broken = new HashMap<>();

  /** True if something that was named is there and can't be read. */
  private boolean unread;

  /** All of it, what was named first. */
  List<String> all() {
    List<String> all = new ArrayList<>(ofNamed);
    all.addAll(ofFound);
    return all;
  }

  /** What is wrong with what the user named for all plans; then nothing can be judged. */
  List<String> ofNamed() {
    return List.copyOf(ofNamed);
  }

  /** How a run ends that can't go on: by a mistake in what was named, or by what can't be read. */
  Exit exit() {
    return ofNamed.isEmpty() || unread ? Exit.FAULT : Exit.USAGE;
  }

  /** Why plans can't be judged by these; empty if they can. */
  Optional<String> broken(List<PolicyFile> policies) {
    return policies.stream()
        .map(file -> broken.get(file.path()))
        .filter(Objects::nonNull)
        .findFirst();
  }

  /** A mistake in a policy: one that was found breaks only the plans that it holds for. */
  void wrong(PolicyFile file, String what) {
    if (file.given()) {
      ofNamed.add(what);
    } else {
      ofFound.add(what);
      broken.putIfAbsent(file.path(), "the policy that holds for it has a mistake: " + what);
    }
  }

  /** A policy that can't be read. */
  void unread(PolicyFile file, String why) {
    wrong(file, file.name() + ": this policy can't be read: " + why);
    unread |= file.given();
  }

  /**
   * Mistakes in own rules, which run for all plans.
   *
   * @param notRead true if a file of theirs can't be read
   */
  void rules(List<String> wrong, boolean notRead) {
    ofNamed.addAll(wrong);
    unread |= notRead;
  }
}
