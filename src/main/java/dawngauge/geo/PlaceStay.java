package dawngauge.geo;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.SpanText;
import java.time.Duration;
import java.time.LocalTime;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What a line of a list of places says of standing there, parted by commas: "45 min", "overnight
 * 06:00", "hose".
 *
 * @param stay how long the rig is to stand, or null where that is not said
 * @param overnight whether it stands for a night
 * @param leaves when it leaves after the night by the clock there, or null
 * @param hose whether there is air for tires
 */
public record PlaceStay(
    @Nullable Duration stay, boolean overnight, @Nullable LocalTime leaves, boolean hose) {

  /** Nothing is said. */
  public static final PlaceStay UNSAID = new PlaceStay(null, false, null, false);

  private static final int LONGEST_SHOWN = 60;
  private static final String WORDS = "45 min, overnight 06:00, hose";
  private static final Pattern OVERNIGHT =
      Pattern.compile("overnight(?:\\s+(\\d|[01]\\d|2[0-3]):([0-5]\\d))?");

  /** Reads what stands behind the place. */
  public static Outcome<PlaceStay> parse(String text) {
    Outcome<PlaceStay> read = Outcome.of(UNSAID);
    for (String part : text.split(",", -1)) {
      String word = part.strip().toLowerCase(Locale.ROOT);
      read = read.then(known -> known.with(word, part.strip()));
    }
    return read.then(
        known ->
            known.overnight && known.leaves == null && known.stay == null
                ? failed(ProblemCode.NIGHT_WITHOUT_END, text, "overnight 06:00", "overnight, 9 h")
                : Outcome.of(known));
  }

  private Outcome<PlaceStay> with(String word, String typed) {
    Matcher night = OVERNIGHT.matcher(word);
    boolean clock = night.matches() && night.group(1) != null;
    boolean span = word.matches("\\d.*");
    if (word.equals("hose")) {
      return Outcome.of(new PlaceStay(stay, overnight, leaves, true));
    } else if ((clock || span) && (stay != null || leaves != null)) {
      return failed(ProblemCode.STAY_SAID_TWICE, typed, WORDS);
    } else if (clock) {
      int hour = Integer.parseInt(night.group(1));
      int minute = Integer.parseInt(night.group(2));
      return Outcome.of(new PlaceStay(stay, true, LocalTime.of(hour, minute), hose));
    } else if (night.matches()) {
      return Outcome.of(new PlaceStay(stay, true, leaves, hose));
    } else if (span) {
      return SpanText.parse(word).map(known -> new PlaceStay(known, overnight, leaves, hose));
    }
    return failed(ProblemCode.NO_WORD_OF_A_STAY, typed, WORDS);
  }

  private static Outcome<PlaceStay> failed(ProblemCode code, String text, String... more) {
    String[] values = new String[more.length + 1];
    values[0] =
        text.length() <= LONGEST_SHOWN ? text : text.substring(0, LONGEST_SHOWN - 3) + "...";
    System.arraycopy(more, 0, values, 1, more.length);
    return Outcome.failed(Problem.of(code, "", values));
  }
}
