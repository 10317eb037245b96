package strikeoff.rulebook.own;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drools.drl.ast.descr.AbstractClassTypeDeclarationDescr;
import org.drools.drl.ast.descr.PackageDescr;
import org.drools.drl.parser.DrlParser;
import org.drools.drl.parser.DroolsParserException;
import org.kie.internal.builder.conf.LanguageLevelOption;

/**
 * What a file of rules holds by the word of the parser that the compiler uses. A search through the
 * text takes what stands in a comment for a rule, or a package, that the engine never sees.
 *
 * @param family the name of the package
 * @param rules names of its rules, in their order
 * @param clocks what of it counts time by a clock
 */
record DrlOutline(String family, List<String> rules, List<String> clocks) {

  /** Facts that grow old, and windows of time, ask the engine's clock. */
  private static final Set<String> OF_CLOCKS = Set.of("role", "expires", "timestamp", "duration");

  DrlOutline {
    rules = List.copyOf(rules);
    clocks = List.copyOf(clocks);
  }

  /** Empty if the parser can't read the text: the compiler then says why. */
  static Optional<DrlOutline> of(String drl) {
    DrlParser parser = new DrlParser(LanguageLevelOption.DRL6);
    try {
      PackageDescr file = parser.parse(false, drl);
      return file == null || parser.hasErrors() ? Optional.empty() : Optional.of(of(file));
    } catch (DroolsParserException | RuntimeException | StackOverflowError e) {
      return Optional.empty();
    }
  }

  private static DrlOutline of(PackageDescr file) {
    Stream<String> events =
        file.getClassAndEnumDeclarationDescrs().stream()
            .map(AbstractClassTypeDeclarationDescr::getAnnotationNames)
            .flatMap(names -> names.stream())
            .filter(OF_CLOCKS::contains)
            .map(name -> "@" + name);
    Stream<String> windows = file.getWindowDeclarations().stream().map(w -> "window");
    return new DrlOutline(
        String.valueOf(file.getName()),
        // A query is kept beside the rules, and can't report anything.
        file.getRules().stream().filter(r -> !r.isQuery()).map(r -> r.getName()).toList(),
        Stream.concat(events, windows).distinct().sorted().collect(Collectors.toList()));
  }
}
