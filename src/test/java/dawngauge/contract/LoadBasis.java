package dawngauge.contract;

import java.util.Locale;

/** How the load of a tire is known. */
enum LoadBasis {
  WHEEL,
  AXLE,
  GROUP,
  NOT_WEIGHED;

  /** By the key words of a page. */
  static LoadBasis of(String words) {
    String low = words.toLowerCase(Locale.ROOT);
    if (low.contains("not weighed") || low.contains("no weight") || low.contains("no scale")) {
      return NOT_WEIGHED;
    }
    if (low.contains("wheel") || low.contains("each side")) {
      return WHEEL;
    }
    if (low.contains("together") || low.contains("group")) {
      return GROUP;
    }
    if (low.contains("axle") || low.contains("alone")) {
      return AXLE;
    }
    throw new IllegalArgumentException("no basis of a load: " + words);
  }
}
