package strikeoff;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import strikeoff.policy.Limits;
import strikeoff.policy.Policy;
import strikeoff.units.Quantity;

/** Holds the package table of DEVELOPERS.md to the code, and what each package may not do. */
class ArchitectureTest {

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("strikeoff");

  /** A row of the table in DEVELOPERS.md: package, what it holds, what it uses. */
  private static final Pattern ROW = Pattern.compile("\\| `([a-z.]+)` \\|[^|]+\\|([^|]*)\\|");

  private static final Pattern NAME = Pattern.compile("`([a-z.]+)`");

  /** What every package may use, so that no row lists it. */
  private static final Set<String> EVERYWHERE =
      Set.of("units", "document", "evidence", "plan", "policy");

  /** Each package and what it uses besides itself, in the order of the rows. */
  private static final Map<String, Set<String>> TABLE = table();

  private static Map<String, Set<String>> table() {
    Map<String, Set<String>> table = new LinkedHashMap<>();
    try {
      for (String line : Files.readAllLines(Path.of("DEVELOPERS.md"))) {
        Matcher row = ROW.matcher(line);
        if (row.matches()) {
          Set<String> uses = new TreeSet<>();
          NAME.matcher(row.group(2)).results().forEach(use -> uses.add(use.group(1)));
          table.put(row.group(1), uses);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return table;
  }

  /** The packages as they are; one without a row stands under its full name. */
  private static Map<String, Set<String>> used() {
    Map<String, Set<String>> used = new TreeMap<>();
    for (JavaClass type : CLASSES) {
      Set<String> uses = used.computeIfAbsent(row(type), row -> new TreeSet<>());
      for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
        JavaClass target = dependency.getTargetClass().getBaseComponentType();
        String use = row(target);
        if (target.getPackageName().startsWith("strikeoff.")
            && !use.equals(row(type))
            && !(EVERYWHERE.contains(use) && isBelow(use, row(type)))) {
          uses.add(use);
        }
      }
    }
    return used;
  }

  private static boolean isBelow(String above, String row) {
    List<String> rows = List.copyOf(TABLE.keySet());
    return rows.indexOf(above) < rows.indexOf(row);
  }

  /** The longest name of a row that the type's package begins with: plan.yaml rather than plan. */
  private static String row(JavaClass type) {
    String below = type.getPackageName().replaceFirst("^strikeoff\\.", "");
    return TABLE.keySet().stream()
        .filter(row -> below.equals(row) || below.startsWith(row + "."))
        .max(Comparator.comparing(String::length))
        .orElse(type.getPackageName());
  }

  @Test
  void thePackagesAreThoseOfTheTableAndUseWhatItSays() {
    assertThat(used()).containsExactlyInAnyOrderEntriesOf(TABLE);
  }

  @Test
  void eachPackageUsesOnlyWhatStandsAboveIt() {
    Set<String> above = new TreeSet<>();
    TABLE.forEach(
        (name, uses) -> {
          assertThat(above).as("above %s", name).containsAll(uses);
          above.add(name);
        });
  }

  @Test
  void eachLibraryHasItsPackage() {
    only("org.kie..", "strikeoff.rulebook..");
    only("org.drools..", "strikeoff.rulebook..");
    only(
        "com.fasterxml..",
        "strikeoff.report.json..",
        "strikeoff.plan.yaml..",
        "strikeoff.studio..");
    only("org.yaml..", "strikeoff.yaml..");
    only("gg.jte..", "strikeoff.report..");
    only("picocli..", "strikeoff.cli..");
  }

  private static void only(String library, String... packages) {
    noClasses()
        .that()
        .resideOutsideOfPackages(packages)
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(library)
        .check(CLASSES);
  }

  /** What tells of a plan has to say in whose units, so that no figure comes back in others. */
  @Test
  void figuresOfAPlanAreToldInItsUnits() {
    noClasses()
        .that()
        .resideOutsideOfPackages(
            "strikeoff.units..",
            "strikeoff.policy..",
            "strikeoff.studio..",
            "strikeoff.yaml..",
            "strikeoff.plan.yaml..",
            "strikeoff.start..",
            "strikeoff.rulebook.own..")
        .and()
        .doNotHaveFullyQualifiedName("strikeoff.cli.text.ExplainText")
        .and()
        .doNotHaveFullyQualifiedName("strikeoff.cli.text.PolicyText")
        .and()
        .doNotHaveFullyQualifiedName("strikeoff.report.RulesPages")
        .should()
        .callMethodWhere(
            describe(
                "tells a quantity in metric units",
                call ->
                    call.getTargetOwner().isAssignableTo(Quantity.class)
                        && !UNITLESS.contains(call.getTargetOwner().getSimpleName())
                        && call.getName().equals("text")
                        && call.getTarget().getRawParameterTypes().isEmpty()))
        .check(CLASSES);
  }

  /** A misspelt name of a limit would be found by whoever's plan reads it first. */
  @Test
  void derivationsReadNoLimitByItsName() {
    noClasses()
        .that()
        .resideOutsideOfPackages(
            "strikeoff.studio..", "strikeoff.rulebook..", "strikeoff.cli.text..")
        .should()
        .callMethod(Policy.class, "limit", String.class)
        .check(CLASSES);
  }

  /** What no derivation asks for would stand among the typed limits for nothing. */
  @Test
  void everyTypedLimitIsRead() {
    List<String> unread =
        CLASSES.stream()
            .filter(type -> type.getName().startsWith(Limits.class.getName() + "$"))
            .flatMap(type -> type.getMethods().stream())
            .filter(method -> method.getRawParameterTypes().isEmpty())
            .filter(method -> !Set.of("toString", "hashCode").contains(method.getName()))
            .filter(method -> method.getCallsOfSelf().isEmpty())
            .map(JavaMethod::getFullName)
            .toList();
    assertThat(unread).isEmpty();
  }

  private static final Set<String> UNITLESS = Set.of("Span", "Share", "Angle", "Ratio");

  @Test
  void onlyTheCommandLinePrintsAndOnlyMainExits() {
    noClasses()
        .should()
        .accessTargetWhere(
            describe("prints to the standard streams", ArchitectureTest::isStandardStream))
        .check(CLASSES);
    noClasses()
        .that()
        .doNotHaveFullyQualifiedName("strikeoff.cli.Main")
        .should()
        .callMethodWhere(
            describe(
                "ends the program",
                call ->
                    call.getTargetOwner().isEquivalentTo(System.class)
                            && call.getName().equals("exit")
                        || call.getTargetOwner().isEquivalentTo(Runtime.class)
                            && Set.of("exit", "halt").contains(call.getName())))
        .check(CLASSES);
    noClasses()
        .that(resideOutsideOfPackages("strikeoff.cli.."))
        .should()
        .dependOnClassesThat()
        .belongToAnyOf(
            java.io.PrintStream.class, java.io.Console.class, java.io.FileDescriptor.class)
        .check(CLASSES);
  }

  private static boolean isStandardStream(JavaAccess<?> access) {
    return access.getTargetOwner().isEquivalentTo(System.class)
        && Set.of("out", "err", "in").contains(access.getName());
  }

  @Test
  void nothingDependsOnTheClockOrTheLocale() {
    noClasses()
        .should()
        .callMethodWhere(describe("reads the clock or the locale", ArchitectureTest::isOfToday))
        .check(CLASSES);
  }

  private static boolean isOfToday(JavaMethodCall call) {
    AccessTarget.MethodCallTarget target = call.getTarget();
    JavaClass owner = target.getOwner();
    List<String> takes = target.getRawParameterTypes().stream().map(JavaClass::getName).toList();
    String name = target.getName();
    if (owner.isEquivalentTo(String.class)) {
      return Set.of("toLowerCase", "toUpperCase").contains(name) && takes.isEmpty()
          || Set.of("format", "formatted").contains(name)
              && !takes.contains(Locale.class.getName());
    }
    if (owner.getPackageName().startsWith("java.time")) {
      // Whoever watches sees when it was; nothing that is kept says so.
      return name.equals("now")
              && !call.getOriginOwner().getName().equals("strikeoff.cli.text.SinceSave")
          || name.equals("systemDefault");
    }
    if (owner.isEquivalentTo(System.class)) {
      // How long a plan takes is measured; a wait that runs out is the only thing that depends on
      // it, and a search that was given seconds.
      return name.equals("currentTimeMillis")
          || name.equals("nanoTime")
              && !call.getOriginOwner().getName().startsWith("strikeoff.cli.commands.Batch")
              && !call.getOriginOwner().getName().equals("strikeoff.rulebook.OwnBook$Time")
              // A search may be given seconds.
              && !call.getOriginOwner().getName().equals("strikeoff.cli.commands.ProposeCommand");
    }
    return owner.isEquivalentTo(Math.class) && name.equals("random")
        || owner.isEquivalentTo(Locale.class) && name.equals("getDefault")
        || owner.isEquivalentTo(java.util.TimeZone.class) && name.equals("getDefault");
  }

  /** Whoever reads a name in a message or an import knows which type is meant. */
  @Test
  void noTwoTypesHaveOneName() {
    Map<String, List<String>> named =
        CLASSES.stream()
            .filter(type -> type.isTopLevelClass() && !type.getSimpleName().equals("package-info"))
            .filter(type -> !type.getPackageName().startsWith("gg."))
            .collect(
                Collectors.groupingBy(
                    JavaClass::getSimpleName,
                    TreeMap::new,
                    Collectors.mapping(JavaClass::getPackageName, Collectors.toList())));
    named.values().removeIf(packages -> packages.size() < 2);
    assertThat(named).isEmpty();
  }

  @Test
  void nothingIsLeftInTheUtilitiesDrawer() {
    noClasses()
        .should()
        .haveNameMatching(".*\\.[A-Z]\\w*(Utils?|Helper|Manager|Data|Impl)$")
        .check(CLASSES);
  }
}
