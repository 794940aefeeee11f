package dawngauge.contract;

import java.util.EnumMap;
import java.util.Map;

/**
 * What one page says of one tire at one stop: ran low, hold, floor, aim, ceiling, basis of the load
 * and the figures to set; what the page does not speak of is absent.
 */
record Saying(Map<Field, Object> parts) {

  static final Saying NOTHING = new Saying(Map.of());

  Saying {
    parts = Map.copyOf(parts);
  }

  /** Whether it speaks of something. */
  boolean says(Field field) {
    return parts.containsKey(field);
  }

  /** Whether it says yes to something. */
  boolean yes(Field field) {
    return Boolean.TRUE.equals(parts.get(field));
  }

  /** The same with one part more. */
  Saying with(Field field, Object said) {
    Map<Field, Object> more = new EnumMap<>(Field.class);
    more.putAll(parts);
    more.put(field, said);
    return new Saying(more);
  }
}
