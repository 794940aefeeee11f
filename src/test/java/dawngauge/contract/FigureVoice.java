package dawngauge.contract;

import dawngauge.trip.LogEvent;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Rig;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a tire is to be set to at a stop, and what the reading that was taken there means. */
final class FigureVoice implements Voice {

  private static final String NUMBER = Words.FIGURE + " (?:psi|bar)";

  @Override
  public String name() {
    return "figure";
  }

  @Override
  public Map<Place, Saying> of(Grid.Haul haul) {
    Map<Place, Saying> said = new LinkedHashMap<>();
    Rig rig = haul.trip().rig();
    for (WheelPosition position : rig.positions()) {
      String tire = rig.shortForm(position);
      for (int stop = 0; stop < haul.trip().route().stops().size(); stop++) {
        List<String> arguments =
            new ArrayList<>(List.of("--stop", String.valueOf(stop + 1), "--tire", tire));
        Optional<LogEvent.Reading> reading = haul.reading(position, stop);
        if (reading.isPresent()) {
          arguments.addAll(List.of("--reading", reading.get().pressure().text()));
          arguments.addAll(List.of("--state", word(reading.get().state())));
        }
        String text = Page.inUnits(haul, "figure", arguments.toArray(new String[0]));
        Saying saying = figures(haul, Words.oneLine(text));
        said.put(
            new Place(tire, stop),
            reading.isPresent() ? saying.with(Field.RAN_LOW, ranLow(text)) : saying);
      }
    }
    return said;
  }

  /** The cautions at the end tell of every tire that ran low. */
  private static boolean ranLow(String text) {
    int cautions = text.lastIndexOf("A forecast replaces");
    return Words.ranLow(cautions < 0 ? text : text.substring(0, cautions));
  }

  private static Saying figures(Grid.Haul haul, String line) {
    double half = Words.half(haul);
    Saying saying = Saying.NOTHING;
    saying = figure(haul, saying, Field.SET_COLD, line, "Cold: " + NUMBER, half);
    saying = figure(haul, saying, Field.SET_ON_ARRIVAL, line, "arrives: " + NUMBER, half);
    return figure(haul, saying, Field.CEILING, line, "Never over, cold: " + NUMBER, half);
  }

  private static Saying figure(
      Grid.Haul haul, Saying saying, Field field, String line, String pattern, double half) {
    return Words.find(haul, line, pattern, half)
        .map(figure -> saying.with(field, figure))
        .orElse(saying);
  }

  private static String word(ReadingState state) {
    return switch (state) {
      case COLD -> "cold";
      case COLD_IN_SUN -> "sun";
      case WARM -> "warm";
      case JUST_FILLED -> "filled";
    };
  }
}
