package dawngauge.contract;

import dawngauge.trip.WheelPosition;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How the figures of a tire at a stop came about. */
final class ExplainVoice implements Voice {

  private static final String NUMBER = Words.FIGURE + " (?:psi|bar) ";
  private static final Pattern MARK = Pattern.compile("(?m)^Mark: (.*)$");
  private static final Pattern LOAD = Pattern.compile("on this side .*?\\[typed: ([^\\]]*)\\]");

  @Override
  public String name() {
    return "explanation";
  }

  @Override
  public Map<Place, Saying> of(Grid.Haul haul) {
    Map<Place, Saying> said = new LinkedHashMap<>();
    for (WheelPosition position : haul.trip().rig().positions()) {
      String tire = haul.trip().rig().shortForm(position);
      for (int stop = 0; stop < haul.trip().route().stops().size(); stop++) {
        String number = String.valueOf(stop + 1);
        String text = Page.inUnits(haul, "explain", "--stop", number, "--tire", tire);
        said.put(new Place(tire, stop), saying(haul, text));
      }
    }
    return said;
  }

  private static Saying saying(Grid.Haul haul, String text) {
    Saying saying = Saying.NOTHING;
    Matcher mark = MARK.matcher(text);
    if (mark.find()) {
      int end = text.indexOf("\nCautions", mark.end());
      String reasons = text.substring(mark.end(), end < 0 ? text.length() : end);
      saying =
          saying
              .with(Field.HOLD, mark.group(1).equals("hold"))
              .with(Field.RAN_LOW, Words.ranLow(reasons));
    }
    String line = Words.oneLine(text);
    saying =
        figure(
            haul, saying, Field.FLOOR, line, NUMBER + "lowest safe pressure for its likely load");
    saying = figure(haul, saying, Field.AIM, line, NUMBER + "set cold to:");
    saying = figure(haul, saying, Field.CEILING, line, NUMBER + "never over:");
    Matcher load = LOAD.matcher(line);
    return load.find() ? saying.with(Field.LOAD_BASIS, LoadBasis.of(load.group(1))) : saying;
  }

  private static Saying figure(
      Grid.Haul haul, Saying saying, Field field, String line, String pattern) {
    return Words.find(haul, line, pattern, Words.halfTenth(haul))
        .map(figure -> saying.with(field, figure))
        .orElse(saying);
  }
}
