package dawngauge.contract;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Pages held against each other, each part against the page that spoke of it first. */
final class Comparison {

  private record Subject(Place place, Field field) {}

  private record Said(String voice, Object what) {}

  private final List<Disagreement> disagreements = new ArrayList<>();
  private final Map<String, Map<Place, Saying>> sayings = new LinkedHashMap<>();
  private int compared;

  /** All that pages say of a trip. */
  static Comparison of(Grid.Haul haul, List<Voice> voices) {
    Comparison comparison = new Comparison();
    Map<Subject, Said> first = new LinkedHashMap<>();
    Map<Place, Saying> leading = new LinkedHashMap<>();
    for (Voice voice : voices) {
      Map<Place, Saying> said = voice.of(haul);
      comparison.sayings.put(voice.name(), said);
      said.forEach(
          (place, saying) -> {
            Saying lead = leading.computeIfAbsent(place, here -> saying);
            saying
                .parts()
                .forEach(
                    (field, what) -> {
                      Said now = new Said(voice.name(), what);
                      Said before = first.putIfAbsent(new Subject(place, field), now);
                      if (before != null) {
                        comparison.compare(haul, before, now, place, field, lead);
                      }
                    });
          });
    }
    return comparison;
  }

  private void compare(
      Grid.Haul haul, Said before, Said now, Place place, Field field, Saying leading) {
    compared++;
    if (!Disagreement.same(before.what, now.what)) {
      disagreements.add(
          new Disagreement(
              before.voice,
              now.voice,
              field,
              Disagreement.Kind.of(before.what, now.what),
              haul,
              place,
              leading,
              before.what + " / " + now.what));
    }
  }

  List<Disagreement> disagreements() {
    return disagreements;
  }

  /** What each page said, by its name. */
  Map<String, Map<Place, Saying>> sayings() {
    return sayings;
  }

  int compared() {
    return compared;
  }
}
