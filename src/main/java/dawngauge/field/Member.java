package dawngauge.field;

/**
 * What stands under one name in a part of a rig.
 *
 * @param <R> the part
 */
public sealed interface Member<R> permits Field, Estimable, Texts, Pairs, Parts, OnePart {

  /** Its name in the file. */
  String key();

  /** Its name in forms and comparisons. */
  String label();
}
