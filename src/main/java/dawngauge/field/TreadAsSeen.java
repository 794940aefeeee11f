package dawngauge.field;

import java.util.Map;

/** What may be said of tread that is seen and not measured, and what depth that stands for. */
final class TreadAsSeen {

  /**
   * Worn down to the wear bars (49 CFR 571.119 S6.4), or the least that still covers the head on a
   * U.S. coin (common practice, no source). In small letters.
   */
  static final Map<String, String> WORDS =
      Map.of(
          "wear bars", "2/32 in",
          "at the wear bars", "2/32 in",
          "penny", "2/32 in",
          "quarter", "4/32 in");

  private TreadAsSeen() {}
}
