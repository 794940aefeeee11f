package dawngauge;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Which package may use which others, as one table; packages below "dawngauge." are named by their
 * first part. The root package may use all and is used by none.
 *
 * @param rows what each package may use
 */
record PackageTable(Map<String, Set<String>> rows) {

  /** The table of this program. */
  static final PackageTable OURS =
      new PackageTable(
          Map.ofEntries(
              row("problem", ""),
              row("disk", ""),
              row("quantity", "problem"),
              row("explain", "quantity problem"),
              row("page", "quantity"),
              row("geo", "quantity problem"),
              row("physics", "quantity"),
              row("tire", "explain quantity problem"),
              row("trip", "tire geo quantity problem"),
              row("field", "trip tire geo quantity problem"),
              row("tripfile", "field trip tire geo quantity problem disk"),
              row("exchange", "trip geo quantity problem"),
              row("ambient", "trip geo physics explain quantity problem"),
              row("feed", "ambient trip geo explain quantity problem disk"),
              row("rules", "trip tire explain quantity problem"),
              row("forecast", "rules ambient trip tire geo physics explain quantity problem"),
              row("fitness", "rules trip tire explain quantity problem"),
              row(
                  "advice",
                  "rules fitness forecast ambient trip tire physics explain quantity problem"),
              row("weights", "rules trip tire explain quantity problem"),
              row("review", "rules forecast ambient trip tire physics explain quantity problem"),
              row(
                  "ledger",
                  "page review weights advice fitness forecast rules ambient field trip tire geo explain"
                      + " quantity problem"),
              row(
                  "report",
                  "ledger page review weights advice fitness forecast rules ambient trip tire geo explain quantity"
                      + " problem"),
              row("settings", "quantity problem disk"),
              row(
                  "planner",
                  "settings review weights advice fitness forecast rules feed ambient exchange tripfile trip tire geo"
                      + " explain quantity problem"),
              row(
                  "cli",
                  "planner report ledger page settings review weights advice fitness forecast rules ambient trip tire geo"
                      + " explain quantity problem"),
              row(
                  "ui",
                  "planner report ledger page settings review weights advice fitness forecast rules ambient"
                      + " field trip tire geo explain quantity problem")));

  private static final String ROOT = "dawngauge";

  PackageTable {
    rows = Collections.unmodifiableMap(new TreeMap<>(rows));
  }

  private static Map.Entry<String, Set<String>> row(String name, String mayUse) {
    List<String> used = mayUse.isEmpty() ? List.of() : Arrays.asList(mayUse.split(" "));
    return Map.entry(name, Set.copyOf(used));
  }

  /** The same table with one row exchanged. */
  PackageTable with(String name, Set<String> mayUse) {
    Map<String, Set<String>> changed = new TreeMap<>(rows);
    changed.put(name, mayUse);
    return new PackageTable(changed);
  }

  /** The same table without one row. */
  PackageTable without(String name) {
    Map<String, Set<String>> changed = new TreeMap<>(rows);
    changed.remove(name);
    return new PackageTable(changed);
  }

  /** What the classes do against this table, each package to package arrow with its places. */
  List<String> violations(Iterable<JavaClass> classes) {
    Set<String> found = new TreeSet<>();
    int seen = 0;
    for (JavaClass origin : classes) {
      String from = part(origin.getPackageName());
      if (from.isEmpty()) {
        continue;
      }
      seen++;
      if (!rows.containsKey(from)) {
        found.add("package " + from + " is not in the table: " + origin.getName());
        continue;
      }
      for (Dependency arrow : origin.getDirectDependenciesFromSelf()) {
        JavaClass target = arrow.getTargetClass().getBaseComponentType();
        String to = part(target.getPackageName());
        boolean inside = (target.getPackageName() + ".").startsWith(ROOT + ".");
        if (inside && !to.equals(from) && !rows.getOrDefault(from, Set.of()).contains(to)) {
          found.add(
              from
                  + " may not use "
                  + (to.isEmpty() ? "the root" : to)
                  + ": "
                  + arrow.getDescription());
        }
      }
    }
    return seen == 0 ? List.of("there was no class to look at") : new ArrayList<>(found);
  }

  /** Packages that lead back to themselves by way of what they may use; empty in a sound table. */
  Set<String> cycles() {
    Set<String> cyclic = new TreeSet<>(rows.keySet());
    cyclic.removeIf(name -> !reached(name).contains(name));
    return cyclic;
  }

  /** The arrows of a sound table for which no way by other packages stands, as "from > to". */
  Set<String> shortest() {
    Set<String> arrows = new TreeSet<>();
    rows.forEach(
        (from, used) -> {
          for (String to : used) {
            if (used.stream().noneMatch(other -> reached(other).contains(to))) {
              arrows.add(from + " > " + to);
            }
          }
        });
    return arrows;
  }

  /** Where one comes from a package by way of what each may use. */
  private Set<String> reached(String name) {
    Set<String> reached = new TreeSet<>();
    List<String> open = new ArrayList<>(rows.getOrDefault(name, Set.of()));
    while (!open.isEmpty()) {
      String next = open.remove(open.size() - 1);
      if (reached.add(next)) {
        open.addAll(rows.getOrDefault(next, Set.of()));
      }
    }
    return reached;
  }

  /** The first part below the root, or nothing for the root itself and for foreign packages. */
  private static String part(String packageName) {
    if (!packageName.startsWith(ROOT + ".")) {
      return "";
    }
    String below = packageName.substring(ROOT.length() + 1);
    int dot = below.indexOf('.');
    return dot < 0 ? below : below.substring(0, dot);
  }
}
