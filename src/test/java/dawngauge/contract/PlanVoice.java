package dawngauge.contract;

import dawngauge.trip.WheelPosition;
import java.util.LinkedHashMap;
import java.util.Map;

/** Where the tires are to be set in the fewest stops; what it leaves out, with the reason. */
final class PlanVoice implements Voice {

  @Override
  public String name() {
    return "plan";
  }

  @Override
  public Map<Place, Saying> of(Grid.Haul haul) {
    Map<Place, Saying> said = new LinkedHashMap<>();
    String text = Page.inUnits(haul, "plan");
    int from = text.indexOf("NOT PLANNED");
    int to = text.lastIndexOf("A forecast replaces");
    String out = Words.oneLine(from < 0 ? "" : text.substring(from, to < from ? from : to));
    for (WheelPosition position : haul.trip().rig().positions()) {
      if (haul.changed(position)) {
        continue; // it speaks of the tire that is there now, from where the rig stands
      }
      boolean low = false;
      for (String line : Words.parts(out, " - ")) {
        low = low || (line.startsWith(position.words() + ":") && Words.ranLow(line));
      }
      said.put(
          new Place(haul.trip().rig().shortForm(position), Place.WHOLE_TRIP),
          Saying.NOTHING.with(Field.RAN_LOW, low));
    }
    return said;
  }
}
