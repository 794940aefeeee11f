package dawngauge.contract;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Why the tires read as they did, after the trip. */
final class ReviewVoice implements Voice {

  private static final Pattern ROW =
      Pattern.compile("(?m)^ *(t\\d[a-z]+)  +trailer axle \\d.*?  (\\S+(?: \\S+)*)$");

  @Override
  public String name() {
    return "review";
  }

  @Override
  public Map<Place, Saying> of(Grid.Haul haul) {
    Map<Place, Saying> said = new LinkedHashMap<>();
    Matcher row = ROW.matcher(Page.inUnits(haul, "review"));
    while (row.find()) {
      said.put(
          new Place(row.group(1), Place.WHOLE_TRIP),
          Saying.NOTHING.with(Field.RAN_LOW, row.group(2).contains("ran low")));
    }
    return said;
  }
}
