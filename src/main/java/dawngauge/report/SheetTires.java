package dawngauge.report;

import dawngauge.advice.Advice;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.StopLine;
import dawngauge.ledger.TireNames;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The tires of a ledger one by one, in walking order. */
final class SheetTires {

  private final TireNames words;
  private final Map<String, List<String>> vehicles = new LinkedHashMap<>();

  SheetTires(Ledger ledger, @Nullable Advice advice) {
    words = advice == null ? TireNames.NONE : TireNames.of(advice.forecast().trip().rig());
    List<String> seen = new ArrayList<>();
    ledger.rig().forEach(axle -> seen.addAll(names(axle.positions())));
    for (StopLine stop : ledger.stops()) {
      stop.rows().forEach(row -> seen.addAll(names(row.tires())));
    }
    seen.stream()
        .distinct()
        .forEach(
            name ->
                vehicles.computeIfAbsent(name.substring(0, 1), key -> new ArrayList<>()).add(name));
  }

  /** Short forms in a text that holds nothing else. */
  static List<String> names(String tires) {
    return tires.isEmpty() ? List.of() : List.of(tires.split(" ", -1));
  }

  /** Short forms, a list a vehicle. */
  List<List<String>> vehicles() {
    return List.copyOf(vehicles.values());
  }

  List<String> all() {
    return vehicles.values().stream().flatMap(List::stream).toList();
  }

  /** "pickup axle 2 left inner"; empty where not known. */
  String words(String name) {
    return words.words(name);
  }

  /** "pickup axle 2 left inner (p2li)" of each that was not told before; adds it to those told. */
  List<String> untold(List<String> names, Set<String> told) {
    return words.untold(names, told);
  }

  /** All of them: "p1l: pickup axle 1 left; ..."; empty where not known. */
  String words() {
    return String.join(
        "; ",
        all().stream().filter(words.known()::contains).map(n -> n + ": " + words(n)).toList());
  }

  /** "51", or where it changes on the way "46, from 5: 47, from 7: 49"; numbers are of stops. */
  static String overTheStops(
      List<StopLine> stops, String name, Function<StopLine.TireRow, String> figure) {
    StringBuilder said = new StringBuilder();
    String before = "";
    for (StopLine stop : stops) {
      StopLine.TireRow row = stop.row(name);
      String now = row == null ? before : figure.apply(row);
      if (!now.equals(before)) {
        said.append(said.isEmpty() ? "" : ", from " + stop.number() + ": ").append(now);
        before = now;
      }
    }
    return said.toString();
  }
}
