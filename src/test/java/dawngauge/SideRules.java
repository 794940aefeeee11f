package dawngauge;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.name;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchRule;
import java.time.Clock;
import java.util.List;
import java.util.Set;
import java.util.Timer;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Who may reach outside: which library, the files, the clock, the threads. */
final class SideRules {
  private static final String ROOT = "dawngauge";

  /** Classes outside the packages for files that read a table or write a result all the same. */
  private static final Set<String> FILE_CLASSES =
      Set.of(
          "dawngauge.cli.StandardOutput",
          "dawngauge.geo.BundledLines",
          "dawngauge.geo.BundledNumbers",
          "dawngauge.tire.BundledTable");

  static final ArchRule FRONT_ENDS =
      noClasses()
          .that(resideInAnyPackage("dawngauge.cli..", "dawngauge.ui.."))
          .should()
          .dependOnClassesThat(
              resideInAnyPackage(
                  "dawngauge.tripfile..",
                  "dawngauge.exchange..",
                  "dawngauge.feed..",
                  "dawngauge.physics.."))
          .because("window and command line ask the planner");

  static final ArchRule JAVAFX =
      only(resideInAnyPackage("javafx..", "atlantafx.."), "dawngauge.ui..");
  static final ArchRule SWING =
      only(
          resideInAnyPackage("javax.swing..", "java.awt..", "org.jxmapviewer.."),
          "dawngauge.ui.map..");
  static final ArchRule JACKSON =
      only(
          resideInAnyPackage("com.fasterxml.jackson.."),
          "dawngauge.tripfile..",
          "dawngauge.feed..",
          "dawngauge.settings..",
          "dawngauge.report..");
  static final ArchRule CSV =
      only(resideInAnyPackage("de.siegmar.fastcsv.."), "dawngauge.exchange..");

  static final ArchRule GPX = only(resideInAnyPackage("io.jenetics.jpx.."), "dawngauge.exchange..");
  static final ArchRule CALENDAR = only(resideInAnyPackage("biweekly.."), "dawngauge.report..");
  static final ArchRule PDF = only(resideInAnyPackage("com.lowagie.."), "dawngauge.report..");
  static final ArchRule SUNCALC =
      only(resideInAnyPackage("org.shredzone.commons.suncalc.."), "dawngauge.geo..");
  static final ArchRule HIPPARCHUS =
      only(resideInAnyPackage("org.hipparchus.."), "dawngauge.rules..", "dawngauge.review..");
  static final ArchRule DISTRIBUTIONS =
      noClasses()
          .that(not(name("dawngauge.rules.Quantile")))
          .should()
          .dependOnClassesThat(resideInAnyPackage("org.hipparchus.distribution.."))
          .because("the normal distribution is asked in one place");
  static final ArchRule PICOCLI = only(resideInAnyPackage("picocli.."), "dawngauge.cli..");
  static final ArchRule HTTP =
      only(
          resideInAnyPackage("okhttp3..", "okio..", "java.net.http.."),
          "dawngauge.feed..",
          "dawngauge.ui.map..");

  static final ArchRule FILES =
      noClasses()
          .that(
              outside(
                  "dawngauge.disk..",
                  "dawngauge.tripfile..",
                  "dawngauge.exchange..",
                  "dawngauge.feed..",
                  "dawngauge.settings..",
                  "dawngauge.report..",
                  "dawngauge.ui.map.."))
          .and(describe("are not named", owner -> !FILE_CLASSES.contains(outermost(owner))))
          .should()
          .accessTargetWhere(describe("does input or output", SideRules::isInputOrOutput))
          .because("what reads and writes can fail and is kept at the edge");

  static final ArchRule CLOCK =
      noClasses()
          .that(outside())
          .should()
          .accessTargetWhere(describe("asks the system's clock", SideRules::asksTheClock))
          .because("time comes in by the door");

  static final ArchRule THREADS =
      noClasses()
          .that(outside("dawngauge.ui.common..", "dawngauge.feed.."))
          .should()
          .accessTargetWhere(describe("works on another thread", SideRules::startsWork))
          .because("one small helper keeps work in the background, and HTTP can be interrupted");

  static final List<ArchRule> ALL =
      List.of(
          FRONT_ENDS,
          JAVAFX,
          SWING,
          JACKSON,
          GPX,
          CSV,
          CALENDAR,
          PDF,
          SUNCALC,
          HIPPARCHUS,
          DISTRIBUTIONS,
          PICOCLI,
          HTTP,
          FILES,
          CLOCK,
          THREADS);

  private SideRules() {}

  private static ArchRule only(DescribedPredicate<JavaClass> what, String... packages) {
    return noClasses()
        .that(outside(packages))
        .should()
        .dependOnClassesThat(what)
        .because("that library is at home in " + String.join(", ", packages));
  }

  /** Outside the given packages and the root, which wires all. */
  private static DescribedPredicate<JavaClass> outside(String... packages) {
    DescribedPredicate<JavaClass> inside = resideInAnyPackage(packages);
    return describe(
        "are outside " + String.join(", ", packages),
        candidate -> !inside.test(candidate) && !candidate.getPackageName().equals(ROOT));
  }

  private static String outermost(JavaClass owner) {
    int inner = owner.getName().indexOf('$');
    return inner < 0 ? owner.getName() : owner.getName().substring(0, inner);
  }

  private static boolean isInputOrOutput(JavaAccess<?> access) {
    JavaClass owner = access.getTargetOwner();
    String name = access.getTarget().getName();
    if (owner.isAssignableTo(Throwable.class) || owner.getName().equals("java.nio.file.Path")) {
      return false;
    } else if (owner.getName().equals("java.io.File")) {
      return !name.equals("toPath"); // what a file chooser hands over, only named otherwise
    } else if (owner.getName().equals("java.io.PrintWriter")) {
      return name.equals("<init>"); // printing to one that was handed in is no reaching out
    } else if (owner.isEquivalentTo(System.class)) {
      return Set.of("in", "out", "err").contains(name);
    }
    return resideInAnyPackage("java.io..", "java.nio.file..", "java.nio.channels..").test(owner);
  }

  private static boolean asksTheClock(JavaAccess<?> access) {
    JavaClass owner = access.getTargetOwner();
    String name = access.getTarget().getName();
    if (owner.isEquivalentTo(System.class)) {
      return name.equals("currentTimeMillis") || name.equals("nanoTime");
    } else if (owner.isEquivalentTo(Clock.class)) {
      return name.startsWith("system") || name.startsWith("tick");
    } else if (owner.getPackageName().startsWith("java.time")) {
      return name.equals("now") && !takesClock(access);
    }
    boolean date = owner.getName().equals("java.util.Date");
    return (date && !name.equals("from") && !name.equals("toInstant"))
        || owner.getName().equals("java.util.Calendar");
  }

  private static boolean takesClock(JavaAccess<?> access) {
    return access.getTarget().getFullName().endsWith("(java.time.Clock)");
  }

  private static boolean startsWork(JavaAccess<?> access) {
    JavaClass owner = access.getTargetOwner();
    String name = access.getTarget().getName();
    return owner.isAssignableTo(Thread.class)
        || owner.isAssignableTo(Executor.class)
        || owner.isAssignableTo(Future.class)
        || owner.isEquivalentTo(Executors.class)
        || owner.isEquivalentTo(Timer.class)
        || name.equals("parallelStream")
        || (name.equals("parallel") && owner.getPackageName().startsWith("java.util.stream"));
  }
}
