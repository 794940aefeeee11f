package dawngauge.trip;

import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.tire.BothSystems;
import dawngauge.tire.TireClass;
import dawngauge.tire.TireSize;
import dawngauge.tire.TireSpec;
import io.soabase.recordbuilder.core.RecordBuilder;
import org.jspecify.annotations.Nullable;

/**
 * One line of the certification label: a tire size and its cold pressure.
 *
 * @param size size text as on the label
 * @param tireClass class of tire, where the label tells
 * @param loadRange load range, where the label tells
 * @param coldPressure recommended cold inflation pressure
 * @param remarks note and extras
 */
@RecordBuilder
public record LabelFitment(
    String size,
    @Nullable TireClass tireClass,
    @Nullable String loadRange,
    Entered<GaugePressure> coldPressure,
    Remarks remarks)
    implements LabelFitmentBuilder.With {

  /**
   * What is to be said where the label asks for more than may be set.
   *
   * @param limit the lowest limit of tire, wheel and valve
   * @param where the position
   */
  public Problem above(GaugePressure limit, String where) {
    return Problem.of(
        ProblemCode.LABEL_ABOVE_LIMIT,
        where,
        BothSystems.both(coldPressure.value()),
        BothSystems.both(limit));
  }

  /** Whether size, class and load range, as far as both are known, are those of a tire. */
  public boolean speaksFor(TireSpec spec) {
    String theirs = spec.size();
    boolean sameSize = theirs != null && TireSize.plain(theirs).equals(TireSize.plain(size));
    boolean sameClass =
        tireClass == null || spec.tireClass() == null || tireClass == spec.tireClass();
    boolean sameRange =
        loadRange == null
            || spec.loadRange() == null
            || loadRange.equalsIgnoreCase(spec.loadRange());
    return sameSize && sameClass && sameRange;
  }
}
