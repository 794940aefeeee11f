package dawngauge;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The program's packages use each other as the table allows, and reach outside as the rules do. */
class ArchitectureTest {
  private static final JavaClasses PROGRAM =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("dawngauge");

  private static final JavaClasses TRESPASSES =
      new ClassFileImporter().importPackages("dawngauge.trespass");

  @Test
  void packagesUseEachOtherAsTheTableAllows() {
    assertThat(PackageTable.OURS.violations(PROGRAM)).isEmpty();
  }

  static Stream<ArchRule> sideRules() {
    return SideRules.ALL.stream();
  }

  @ParameterizedTest
  @MethodSource("sideRules")
  void sideRulesHold(ArchRule rule) {
    rule.allowEmptyShould(true).check(PROGRAM); // that there is something: see below
  }

  @Test
  void theProgramWasLookedAt() {
    Set<String> packages =
        PROGRAM.stream().map(JavaClass::getPackageName).collect(Collectors.toSet());
    assertThat(packages)
        .contains(
            "dawngauge.problem",
            "dawngauge.quantity",
            "dawngauge.explain",
            "dawngauge.disk",
            "dawngauge.geo",
            "dawngauge.physics",
            "dawngauge.tire",
            "dawngauge.trip",
            "dawngauge.tripfile",
            "dawngauge.ambient",
            "dawngauge.feed",
            "dawngauge.rules",
            "dawngauge.weights",
            "dawngauge.forecast",
            "dawngauge.advice",
            "dawngauge.page",
            "dawngauge.ledger",
            "dawngauge.report",
            "dawngauge.settings",
            "dawngauge.planner",
            "dawngauge.cli");
    assertThat(PROGRAM.contain("dawngauge.trespass.Trespasser")).isFalse();
    assertThat(PROGRAM.contain("dawngauge.Main")).isTrue();
  }

  @Test
  void theTableIsSound() {
    Map<String, Set<String>> rows = PackageTable.OURS.rows();
    assertThat(PackageTable.OURS.cycles()).isEmpty();
    rows.forEach((name, used) -> assertThat(rows.keySet()).as(name).containsAll(used));
    for (String front : List.of("cli", "ui")) {
      assertThat(rows.get(front)).doesNotContain("tripfile", "exchange", "feed", "physics");
    }
    assertThat(rows.get("planner")).doesNotContain("ledger", "report", "physics");
  }

  // Proof that the check can fail: the same classes against a table that allows less.

  @Test
  void anArrowThatIsNotAllowedIsFound() {
    PackageTable strict = PackageTable.OURS.with("quantity", Set.of());
    assertThat(strict.violations(PROGRAM))
        .isNotEmpty()
        .allSatisfy(line -> assertThat(line).startsWith("quantity may not use problem:"))
        .anySatisfy(line -> assertThat(line).contains("QuantityKind"));
  }

  @Test
  void aPackageThatIsNotInTheTableIsFound() {
    assertThat(PackageTable.OURS.without("trip").violations(PROGRAM))
        .anySatisfy(line -> assertThat(line).startsWith("package trip is not in the table"));
    JavaClasses stray = trespasser("Harmless");
    assertThat(PackageTable.OURS.violations(stray))
        .singleElement()
        .asString()
        .startsWith("package trespass is not in the table");
  }

  @Test
  void useOfTheRootIsFound() {
    assertThat(PackageTable.OURS.with("trespass", Set.of()).violations(trespasser("UsesRoot")))
        .isNotEmpty()
        .allSatisfy(line -> assertThat(line).startsWith("trespass may not use the root:"));
  }

  @Test
  void nothingToLookAtIsFound() {
    assertThat(PackageTable.OURS.violations(List.of()))
        .containsExactly("there was no class to look at");
  }

  @Test
  void aCycleInTheTableIsFound() {
    assertThat(PackageTable.OURS.with("problem", Set.of("quantity")).cycles())
        .contains("problem", "quantity");
  }

  static Stream<Arguments> trespasses() {
    return Stream.of(
        Arguments.of("Json", SideRules.JACKSON),
        Arguments.of("Swing", SideRules.SWING),
        Arguments.of("Awt", SideRules.SWING),
        Arguments.of("Tracks", SideRules.GPX),
        Arguments.of("Tables", SideRules.CSV),
        Arguments.of("Calendars", SideRules.CALENDAR),
        Arguments.of("PaperSheet", SideRules.PDF),
        Arguments.of("Sun", SideRules.SUNCALC),
        Arguments.of("Statistics", SideRules.HIPPARCHUS),
        Arguments.of("Chances", SideRules.DISTRIBUTIONS),
        Arguments.of("Arguments", SideRules.PICOCLI),
        Arguments.of("Reads", SideRules.FILES),
        Arguments.of("ReadsResource", SideRules.FILES),
        Arguments.of("WritesByName", SideRules.FILES),
        Arguments.of("Prints", SideRules.FILES),
        Arguments.of("Connects", SideRules.HTTP),
        Arguments.of("AsksNow", SideRules.CLOCK),
        Arguments.of("AsksNowByReference", SideRules.CLOCK),
        Arguments.of("AsksForToday", SideRules.CLOCK),
        Arguments.of("AsksForTheTimeOfAPlace", SideRules.CLOCK),
        Arguments.of("AsksForMillis", SideRules.CLOCK),
        Arguments.of("AsksForTheClock", SideRules.CLOCK),
        Arguments.of("StartsThread", SideRules.THREADS),
        Arguments.of("WorksElsewhere", SideRules.THREADS),
        Arguments.of("WorksInParallel", SideRules.THREADS));
  }

  @ParameterizedTest
  @MethodSource("trespasses")
  void aTrespassIsFoundByItsRule(String name, ArchRule broken) {
    for (ArchRule rule : SideRules.ALL) {
      boolean found = rule.allowEmptyShould(true).evaluate(trespasser(name)).hasViolation();
      boolean wider = broken == SideRules.DISTRIBUTIONS && rule == SideRules.HIPPARCHUS;
      assertThat(found).as(rule.getDescription()).isEqualTo(rule == broken || wider);
    }
  }

  @Test
  void namingAFileAndBeingHandedAClockIsNoTrespass() {
    for (ArchRule rule : SideRules.ALL) {
      assertThat(rule.allowEmptyShould(true).evaluate(trespasser("Harmless")).hasViolation())
          .as(rule.getDescription())
          .isFalse();
    }
  }

  private static JavaClasses trespasser(String name) {
    JavaClasses one =
        TRESPASSES.that(
            DescribedPredicate.describe(name, candidate -> candidate.getSimpleName().equals(name)));
    assertThat(one).hasSize(1);
    return one;
  }
}
