package dawngauge.contract;

import static dawngauge.contract.Cell.Capacity.LABEL;
import static dawngauge.contract.Cell.Capacity.LABEL_OF_ANOTHER;
import static dawngauge.contract.Cell.Capacity.ROWS;
import static dawngauge.contract.Cell.Load.AXLE_75;
import static dawngauge.contract.Cell.Load.AXLE_94;
import static dawngauge.contract.Cell.Load.AXLE_99;
import static dawngauge.contract.Cell.Load.NOT_WEIGHED;
import static dawngauge.contract.Cell.Load.WHEEL_94;
import static dawngauge.contract.Cell.Pressure.AT_LABEL;
import static dawngauge.contract.Cell.Pressure.LESS_15;
import static dawngauge.contract.Cell.Pressure.LESS_30;
import static dawngauge.contract.Cell.Pressure.LESS_5;
import static dawngauge.contract.Cell.Pressure.LESS_9;

import java.util.List;

/**
 * What is to be said of the load of one single tire of the grid's kind, GAWR share 2,600 lb, with
 * an error of 1.5 psi (one standard deviation) of its pressure and no air to be had anywhere.
 * Computed by hand from the rules of capacity, load and chance; inferred here, no published source.
 * Every pressure is a part of 60 psi, also where the grid takes parts of the rated pressure, since
 * no label speaks. Where air is to be had and cures it, a hold becomes an adjustment.
 */
final class ExpectedMarks {

  /** One standard deviation of the pressure, in psi. */
  static final double PRESSURE_ERROR = 1.5;

  /** More than this chance, in percent, asks for a mark: what a confidence of 90 % leaves. */
  static final int THRESHOLD = 10;

  /** What is said of the load. */
  enum Mark {
    /** Nothing. */
    SILENT,
    /** It cannot be shown to carry its load. */
    RECHECK,
    /** It must not roll. */
    HOLD,
    /** Nothing of the pressure; once a trip that the axle has no load to spare. */
    AS_CERTIFIED
  }

  /** Chance that was not computed. */
  static final int NOT_COMPUTED = -1;

  /**
   * A row.
   *
   * @param notShown chance in percent that the load is over the cautious curve, or {@link
   *     #NOT_COMPUTED}
   * @param under chance in percent that it is over the likely curve, or {@link #NOT_COMPUTED}
   */
  record Row(
      Cell.Capacity capacity,
      Cell.Load load,
      Cell.Pressure pressure,
      int notShown,
      int under,
      Mark mark) {}

  static final List<Row> ROWS_OF_TABLE =
      List.of(
          new Row(ROWS, WHEEL_94, AT_LABEL, 0, 0, Mark.SILENT),
          new Row(ROWS, WHEEL_94, LESS_5, 8, 8, Mark.SILENT),
          new Row(ROWS, WHEEL_94, LESS_9, 51, 51, Mark.HOLD),
          new Row(LABEL, WHEEL_94, AT_LABEL, 1, 0, Mark.SILENT),
          new Row(LABEL, WHEEL_94, LESS_5, 35, 7, Mark.RECHECK),
          new Row(LABEL, WHEEL_94, LESS_9, 87, 49, Mark.HOLD),
          new Row(LABEL, NOT_WEIGHED, AT_LABEL, 1, 0, Mark.SILENT),
          new Row(LABEL, NOT_WEIGHED, LESS_5, 7, 4, Mark.SILENT),
          new Row(LABEL, NOT_WEIGHED, LESS_9, 14, 8, Mark.RECHECK),
          new Row(LABEL, NOT_WEIGHED, LESS_15, 31, 17, Mark.HOLD),
          new Row(LABEL_OF_ANOTHER, AXLE_94, AT_LABEL, 70, 2, Mark.RECHECK),
          new Row(LABEL_OF_ANOTHER, AXLE_94, LESS_5, 97, 17, Mark.HOLD),
          new Row(LABEL_OF_ANOTHER, AXLE_75, AT_LABEL, NOT_COMPUTED, NOT_COMPUTED, Mark.SILENT),
          new Row(LABEL_OF_ANOTHER, AXLE_75, LESS_5, NOT_COMPUTED, NOT_COMPUTED, Mark.SILENT),
          new Row(LABEL_OF_ANOTHER, AXLE_75, LESS_9, NOT_COMPUTED, NOT_COMPUTED, Mark.SILENT),
          new Row(LABEL_OF_ANOTHER, AXLE_75, LESS_15, 14, 0, Mark.RECHECK),
          new Row(LABEL_OF_ANOTHER, AXLE_75, LESS_30, 100, 12, Mark.HOLD),
          new Row(LABEL, AXLE_99, AT_LABEL, NOT_COMPUTED, NOT_COMPUTED, Mark.AS_CERTIFIED));

  private ExpectedMarks() {}
}
