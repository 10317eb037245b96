package strikeoff.report.sarif;

import java.nio.file.Path;
import java.util.Optional;
import strikeoff.report.outcome.Outcome;

/**
 * Where the program runs.
 *
 * @param folder from which plans are named if they lie below it, absolute; if it isn't known they
 *     go by the names they were given
 * @param rules the page of rules that the run wrote, if it wrote one
 */
public record RunFolder(Optional<Path> folder, Optional<Path> rules) {

  String uri(Outcome plan) {
    return folder.map(f -> FileUri.of(plan.file(), f)).orElseGet(() -> FileUri.of(plan.file()));
  }

  Optional<String> page() {
    // The path's own letters, which a narrow locale may not be able to say.
    return rules.map(path -> FileUri.of(path.toUri().getPath()));
  }
}
