package strikeoff;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Holds the package table: each package uses only what stands above it. */
class ArchitectureTest {

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("strikeoff");

  /** Each package and what it may use besides itself; a subject may use those named before it. */
  private static final Map<String, List<String>> TABLE = new LinkedHashMap<>();

  static {
    allow("units");
    allow("plan", "units");
    allow("policy", "units", "plan");
    allow("yaml", "units", "plan");
    allow("policy.yaml", "units", "plan", "policy", "yaml");
    allow("plan.yaml", "units", "plan", "policy", "yaml");
    String[] data = {"units", "plan", "policy"};
    allow("chemistry", data);
    allow("screens", data);
    allow("layout", with(data, "screens"));
    allow("drying", with(data, "screens"));
    allow("timeline", with(data, "screens", "layout", "drying"));
    String[] run = with(data, "screens", "layout", "drying", "timeline");
    allow("colour", run);
    allow("cloth", run);
    allow("paste", with(run, "chemistry"));
    allow("bath", with(run, "chemistry", "cloth", "paste"));
    allow("sequence", with(run, "colour", "cloth"));
    allow("care", with(run, "paste", "bath"));
    String[] subjects =
        with(run, "chemistry", "colour", "cloth", "paste", "bath", "sequence", "care");
    allow("facts", subjects);
    allow("findings", with(subjects, "facts"));
    allow("rulebook", with(data, "findings"));
    String[] result = with(subjects, "facts", "findings");
    allow("check", with(result, "rulebook", "plan.yaml", "policy.yaml"));
    allow("report", with(result, "check"));
    allow("cli", with(result, "check", "report", "rulebook", "policy.yaml"));
  }

  private static void allow(String name, String... uses) {
    TABLE.put(name, List.of(uses));
  }

  private static String[] with(String[] some, String... more) {
    return Stream.concat(Arrays.stream(some), Arrays.stream(more)).toArray(String[]::new);
  }

  @TestFactory
  Stream<DynamicTest> eachPackageUsesOnlyWhatStandsAboveIt() {
    return TABLE.entrySet().stream()
        .map(
            row ->
                DynamicTest.dynamicTest(row.getKey(), () -> check(row.getKey(), row.getValue())));
  }

  private static void check(String name, List<String> uses) {
    List<String> allowed = new ArrayList<>();
    allowed.add(in(name));
    uses.forEach(use -> allowed.add(in(use)));
    classes()
        .that(resideInAnyPackage(in(name)).and(notInAnotherRow(name)))
        .should()
        .onlyDependOnClassesThat(
            resideOutsideOfPackages("strikeoff..")
                .or(resideInAnyPackage(allowed.toArray(String[]::new)).and(ofRows(name, uses))))
        .allowEmptyShould(true)
        .check(CLASSES);
  }

  private static String in(String name) {
    return "strikeoff." + name + "..";
  }

  /** The package plan holds plan.yaml, which has a row of its own. */
  private static DescribedPredicate<JavaClass> notInAnotherRow(String name) {
    return describe("not in another row", type -> row(type).equals(name));
  }

  private static DescribedPredicate<JavaClass> ofRows(String name, List<String> uses) {
    return describe("of " + uses, type -> row(type).equals(name) || uses.contains(row(type)));
  }

  private static String row(JavaClass type) {
    String below = type.getPackageName().replaceFirst("^strikeoff\\.?", "");
    return TABLE.keySet().stream()
        .filter(row -> below.equals(row) || below.startsWith(row + "."))
        .max(java.util.Comparator.comparing(String::length))
        .orElse("");
  }

  @Test
  void theTableNamesEveryPackage() {
    classes()
        .should()
        .resideInAnyPackage(
            TABLE.keySet().stream().map(ArchitectureTest::in).toArray(String[]::new))
        .check(CLASSES);
  }

  /** By row, since plan and plan.yaml are two packages to newcomers as well. */
  private static final SliceAssignment ROWS =
      new SliceAssignment() {
        @Override
        public SliceIdentifier getIdentifierOf(JavaClass type) {
          return row(type).isEmpty() ? SliceIdentifier.ignore() : SliceIdentifier.of(row(type));
        }

        @Override
        public String getDescription() {
          return "rows of the table";
        }
      };

  @Test
  void noPackagesGoRoundInCircles() {
    slices().assignedFrom(ROWS).should().beFreeOfCycles().check(CLASSES);
  }

  @Test
  void eachLibraryHasItsPackage() {
    only("org.kie..", "strikeoff.rulebook..");
    only("org.drools..", "strikeoff.rulebook..");
    only("com.fasterxml..", "strikeoff.yaml..");
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
      return name.equals("now") || name.equals("systemDefault");
    }
    if (owner.isEquivalentTo(System.class)) {
      // How long a plan takes is measured; a wait that runs out is the only thing that depends on
      // it.
      return name.equals("currentTimeMillis")
          || name.equals("nanoTime")
              && !call.getOriginOwner().getName().startsWith("strikeoff.cli.Batch");
    }
    return owner.isEquivalentTo(Math.class) && name.equals("random")
        || owner.isEquivalentTo(Locale.class) && name.equals("getDefault")
        || owner.isEquivalentTo(java.util.TimeZone.class) && name.equals("getDefault");
  }

  @Test
  void nothingIsLeftInTheUtilitiesDrawer() {
    noClasses()
        .should()
        .haveNameMatching(".*\\.[A-Z]\\w*(Utils?|Helper|Manager|Data|Impl)$")
        .check(CLASSES);
  }
}
