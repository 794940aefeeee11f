package dawngauge.contract;

/**
 * Two pages that do not say the same of one tire at one stop.
 *
 * @param one name of the page that spoke of it first
 * @param other name of the other
 * @param field of what they speak
 * @param kind how the other differs
 * @param haul the trip
 * @param place tire and stop
 * @param saying all that the first page says there
 * @param told what both say, for the message
 */
record Disagreement(
    String one,
    String other,
    Field field,
    Kind kind,
    Grid.Haul haul,
    Place place,
    Saying saying,
    String told) {

  /** How the other page differs. */
  enum Kind {
    SAYS_NO,
    SAYS_YES,
    LOWER,
    HIGHER,
    ANOTHER_BASIS;

    static Kind of(Object one, Object other) {
      if (one instanceof Boolean) {
        return Boolean.TRUE.equals(one) ? SAYS_NO : SAYS_YES;
      }
      if (one instanceof Figure first && other instanceof Figure second) {
        return second.psi() < first.psi() ? LOWER : HIGHER;
      }
      return ANOTHER_BASIS;
    }
  }

  static boolean same(Object one, Object other) {
    return (one instanceof Figure first && other instanceof Figure second)
        ? first.agrees(second)
        : one.equals(other);
  }

  @Override
  public String toString() {
    return "%s, %s: %s %s, %s at %s, %s"
        .formatted(one, other, field, kind, told, place, haul.cell());
  }
}
