package dawngauge.contract;

import dawngauge.trip.WheelPosition;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Whether the rig is fit to go, from where it stands when it was last noted. */
final class FitnessVoice implements Voice {

  private static final Pattern BLOCK =
      Pattern.compile("(?ms)^((?:\\S[^\\n]*\\n)+)  do +(.*?)(?=^\\S|\\z)");

  @Override
  public String name() {
    return "fitness";
  }

  @Override
  public Map<Place, Saying> of(Grid.Haul haul) {
    Map<Place, Saying> said = new LinkedHashMap<>();
    String text = Page.inUnits(haul, "fitness");
    int refused = text.indexOf("\nDO NOT GO");
    int rest = Math.max(text.indexOf("\nPUT RIGHT"), text.indexOf("\nWORTH KNOWING"));
    int mend = text.indexOf("\nPUT RIGHT");
    int end = mend < 0 ? rest : mend;
    for (WheelPosition position : haul.trip().rig().positions()) {
      Saying saying = Saying.NOTHING.with(Field.HOLD, false).with(Field.RAN_LOW, false);
      Matcher block = BLOCK.matcher(text);
      while (block.find()) {
        if (!speaksOf(position, Words.oneLine(block.group(1)).trim())) {
          continue;
        }
        boolean stops = refused >= 0 && (end < 0 || block.start() < end);
        if (stops) {
          saying = saying.with(Field.HOLD, true);
          saying = Words.ranLow(block.group(2)) ? saying.with(Field.RAN_LOW, true) : saying;
        }
        saying = basis(saying, Words.oneLine(block.group(2)));
      }
      said.put(new Place(haul.trip().rig().shortForm(position), haul.now()), saying);
    }
    return said;
  }

  private static Saying basis(Saying saying, String found) {
    return found.matches(".*(?:[Nn]o scale weight|not weighed).*")
        ? saying.with(Field.LOAD_BASIS, LoadBasis.NOT_WEIGHED)
        : saying;
  }

  /** "trailer", "trailer axle 1", "trailer axle 1 left and right, trailer axle 2 left". */
  private static boolean speaksOf(WheelPosition position, String heading) {
    String axle = "";
    for (String part : Words.parts(heading.replaceFirst("^Trailer", "trailer"), ", | and ")) {
      String slot = part;
      if (part.startsWith("trailer axle ")) {
        axle = part.substring(0, "trailer axle 1".length());
        slot = part.substring(axle.length()).trim();
      }
      boolean wholeRig = part.equals("trailer");
      boolean sameAxle = axle.equals(position.axle().words());
      if (wholeRig
          || (sameAxle && (slot.isEmpty() || position.words().equals(axle + " " + slot)))) {
        return true;
      }
    }
    return false;
  }
}
