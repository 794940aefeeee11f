package dawngauge.fitness;

import dawngauge.explain.Authority;
import dawngauge.explain.Phrase;
import dawngauge.rules.FittedTire;
import dawngauge.tire.LoadRange;
import dawngauge.tire.TireSize;
import dawngauge.tire.TireSpec;
import dawngauge.trip.AxleRef;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/** Whether the tires of an axle, and the mates of a dual pair, are alike. */
final class AxleMatchChecks {

  private static final Authority ALIKE = Authority.regulation("49 CFR 570.62");

  /** Millimeter: half an inch, 49 CFR 570.62. */
  private static final double MOST_BETWEEN_MATES = 12.7;

  private AxleMatchChecks() {}

  static void check(Inspection inspection, GatheredDefects findings) {
    for (AxleRef ref : inspection.axles()) {
      List<FittedTire> wheels = inspection.wheels(ref);
      mixed(ref, wheels, findings);
      for (FittedTire wheel : wheels) {
        mates(inspection, wheel, findings);
      }
    }
  }

  private static void mixed(AxleRef ref, List<FittedTire> wheels, GatheredDefects findings) {
    Map<String, String> sizes = new LinkedHashMap<>();
    Map<String, String> constructions = new LinkedHashMap<>();
    Map<String, String> classes = new LinkedHashMap<>();
    Map<String, String> ranges = new LinkedHashMap<>();
    for (FittedTire wheel : wheels) {
      TireSpec spec = wheel.spec();
      if (spec == null) {
        continue;
      }
      put(sizes, sizeKey(spec), spec.size());
      var construction = spec.constructionOrFromSize();
      put(constructions, construction, construction == null ? null : construction.word());
      var tireClass = spec.classOrFromSize();
      put(classes, tireClass, tireClass == null ? null : tireClass.word());
      String range = spec.loadRange();
      put(
          ranges,
          range == null ? null : range.strip().toUpperCase(Locale.ROOT),
          range == null ? null : rangeWords(range));
    }
    List<String> differing = new ArrayList<>();
    describe("size", sizes, differing);
    describe("construction", constructions, differing);
    boolean unlawful = !differing.isEmpty();
    describe("class", classes, differing);
    describe("load range", ranges, differing);
    if (!differing.isEmpty()) {
      findings
          .axle(ref)
          .add(
              FindingKind.MIXED_TIRES,
              unlawful ? Severity.STOP : Severity.MEND,
              Phrase.of("its tires differ: {0}", String.join("; ", differing)),
              Phrase.of("fit the same kind of tire on the whole axle"),
              unlawful ? ALIKE : Authority.commonPractice());
    }
  }

  private static void put(Map<String, String> seen, @Nullable Object key, @Nullable String words) {
    if (key != null && words != null) {
      seen.putIfAbsent(key.toString(), words);
    }
  }

  private static void describe(String what, Map<String, String> seen, List<String> differing) {
    if (seen.size() > 1) {
      differing.add(what + " " + Words.and(List.copyOf(seen.values())));
    }
  }

  /** The dimensions where the size can be read, whatever stands around them; else the text. */
  private static @Nullable String sizeKey(TireSpec spec) {
    String text = spec.size();
    if (text == null) {
      return null;
    }
    return spec.parsedSize()
        .map(
            size ->
                size.sectionWidthMillimeters()
                    + "/"
                    + size.aspectPercent()
                    + "/"
                    + size.rimInches()
                    + "/"
                    + size.overallDiameterMillimeters())
        .orElse(TireSize.plain(text));
  }

  private static String rangeWords(String letter) {
    OptionalInt plies = LoadRange.plyRating(letter);
    return letter + (plies.isPresent() ? " (" + plies.getAsInt() + " ply rating)" : "");
  }

  private static void mates(Inspection inspection, FittedTire wheel, GatheredDefects findings) {
    Optional<FittedTire> mate = inspection.mate(wheel);
    OptionalDouble mine = diameter(wheel);
    OptionalDouble other = mate.map(AxleMatchChecks::diameter).orElse(OptionalDouble.empty());
    if (mine.isEmpty() || other.isEmpty()) {
      return;
    }
    double apart = mine.getAsDouble() - other.getAsDouble();
    if (apart > MOST_BETWEEN_MATES) {
      findings
          .tire(wheel.position())
          .add(
              FindingKind.DUAL_DIAMETERS,
              Severity.MEND,
              Phrase.of(
                  "by its size {0}, more than half an inch, larger over the tread than its dual mate:"
                      + " it carries most of the pair's load",
                  smallLength(apart)),
              Phrase.of("fit mates of the same diameter"),
              ALIKE);
    }
  }

  private static String smallLength(double millimeters) {
    return String.format(Locale.ROOT, "%.1f in (%.0f mm)", millimeters / 25.4, millimeters);
  }

  private static OptionalDouble diameter(FittedTire wheel) {
    TireSpec spec = wheel.spec();
    return spec == null
        ? OptionalDouble.empty()
        : spec.parsedSize()
            .map(TireSize::overallDiameterMillimeters)
            .orElse(OptionalDouble.empty());
  }
}
