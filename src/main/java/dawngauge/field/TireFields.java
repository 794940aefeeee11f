package dawngauge.field;

import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.TreadDepth;
import dawngauge.tire.Construction;
import dawngauge.tire.LoadIndex;
import dawngauge.tire.LoadInflationTable;
import dawngauge.tire.LoadInflationTable.Row;
import dawngauge.tire.TireClass;
import dawngauge.tire.TireSpec;
import dawngauge.trip.AxleRef;
import dawngauge.trip.HeatRecord;
import dawngauge.trip.Remarks;
import dawngauge.trip.Spare;
import dawngauge.trip.Tire;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** What kinds of tire, tires and spares have. */
public final class TireFields {

  private static final String SIDEWALL = "sidewall";
  private static final String TABLE = "tire maker's load table";
  private static final String WHEEL = "wheel stamp";

  static final Codec<Entered<Mass>> LOAD = Codec.positive(QuantityKind.MASS);
  static final Codec<Entered<GaugePressure>> PRESSURE = Codec.positive(QuantityKind.GAUGE_PRESSURE);
  static final Codec<TireClass> TIRE_CLASS = Codec.choice(TireClass.class, TireClass::word);

  /** Name of a kind of tire. */
  public static final Field<TireSpec, String> KIND_NAME =
      Field.name(
          "name",
          "Name",
          "as the tires refer to it",
          Codec.NAME,
          TireSpec::name,
          TireSpec::withName);

  /** Size. */
  public static final Field<TireSpec, String> SIZE =
      Field.optional("size", "Size", SIDEWALL, Codec.TEXT, TireSpec::size, TireSpec::withSize);

  /** Class. */
  public static final Field<TireSpec, TireClass> CLASS =
      Field.optional(
          "class", "Class", SIDEWALL, TIRE_CLASS, TireSpec::tireClass, TireSpec::withTireClass);

  /** Load range. */
  public static final Field<TireSpec, String> LOAD_RANGE =
      Field.optional(
          "loadRange",
          "Load range",
          SIDEWALL,
          Codec.TEXT,
          TireSpec::loadRange,
          TireSpec::withLoadRange);

  /** Radial or bias. */
  public static final Field<TireSpec, Construction> CONSTRUCTION =
      Field.optional(
          "construction",
          "Construction",
          SIDEWALL,
          Codec.choice(Construction.class, Construction::word),
          TireSpec::construction,
          TireSpec::withConstruction);

  /** Load index, single. */
  public static final Field<TireSpec, Integer> LOAD_INDEX_SINGLE =
      Field.optional(
          "loadIndexSingle",
          "Load index, single",
          "sidewall, number before the speed symbol",
          Codec.whole(LoadIndex.LEAST, LoadIndex.MOST),
          TireSpec::loadIndexSingle,
          TireSpec::withLoadIndexSingle);

  /** Load index, dual. */
  public static final Field<TireSpec, Integer> LOAD_INDEX_DUAL =
      Field.optional(
          "loadIndexDual",
          "Load index, dual",
          "sidewall, number behind the stroke",
          Codec.whole(LoadIndex.LEAST, LoadIndex.MOST),
          TireSpec::loadIndexDual,
          TireSpec::withLoadIndexDual);

  /** Speed symbol. */
  public static final Field<TireSpec, String> SPEED_SYMBOL =
      Field.optional(
          "speedSymbol",
          "Speed symbol",
          SIDEWALL,
          Codec.TEXT,
          TireSpec::speedSymbol,
          TireSpec::withSpeedSymbol);

  /** Rated load, single. */
  public static final Field<TireSpec, Entered<Mass>> RATED_LOAD_SINGLE =
      Field.optional(
          "ratedLoadSingle",
          "Rated load, single",
          SIDEWALL,
          LOAD,
          TireSpec::ratedLoadSingle,
          TireSpec::withRatedLoadSingle);

  /** Rated load, dual. */
  public static final Field<TireSpec, Entered<Mass>> RATED_LOAD_DUAL =
      Field.optional(
          "ratedLoadDual",
          "Rated load, dual",
          SIDEWALL,
          LOAD,
          TireSpec::ratedLoadDual,
          TireSpec::withRatedLoadDual);

  /** Rated pressure. */
  public static final Field<TireSpec, Entered<GaugePressure>> RATED_PRESSURE =
      Field.optional(
          "ratedPressure",
          "Rated pressure",
          SIDEWALL,
          PRESSURE,
          TireSpec::ratedPressure,
          TireSpec::withRatedPressure);

  /** Highest cold pressure. */
  public static final Field<TireSpec, Entered<GaugePressure>> MAX_COLD_PRESSURE =
      Field.optional(
          "maxColdPressure",
          "Max cold pressure",
          SIDEWALL,
          PRESSURE,
          TireSpec::maxColdPressure,
          TireSpec::withMaxColdPressure);

  /** Pressure of a row. */
  public static final Field<Row, Entered<GaugePressure>> ROW_PRESSURE =
      Field.required(
          "pressure",
          "Cold pressure",
          TABLE,
          PRESSURE,
          Row::pressure,
          (row, value) -> new Row(value, row.single(), row.dual()));

  /** Load of a single tire. */
  public static final Field<Row, Entered<Mass>> ROW_SINGLE =
      Field.required(
          "single",
          "Load, single",
          TABLE,
          LOAD,
          Row::single,
          (row, value) -> new Row(row.pressure(), value, row.dual()));

  /** Load of each tire of a pair. */
  public static final Field<Row, Entered<Mass>> ROW_DUAL =
      Field.optional(
          "dual",
          "Load, dual",
          TABLE,
          LOAD,
          Row::dual,
          (row, value) -> new Row(row.pressure(), row.single(), value));

  /** A row of the maker's table. */
  public static final Part<Row> ROW =
      Part.bare(
          "row",
          "row",
          new Row(PRESSURE.standIn(), LOAD.standIn(), null),
          List.<Member<Row>>of(ROW_PRESSURE, ROW_SINGLE, ROW_DUAL));

  /** Rows of the maker's table. */
  public static final Parts<TireSpec, Row> ROWS =
      new Parts<>(
          "rows",
          "Rows of the maker's table",
          ROW,
          TireFields::rows,
          (spec, rows) -> spec.withRows(inOrder(rows) ? new LoadInflationTable(rows) : null),
          TireFields::rowFaults);

  /** A kind of tire. */
  public static final Part<TireSpec> TIRE_TYPE =
      Part.bare(
              "tire type",
              "tireType",
              new TireSpec(
                  "", null, null, null, null, null, null, null, null, null, null, null, null),
              List.<Member<TireSpec>>of(
                  KIND_NAME,
                  SIZE,
                  CLASS,
                  CONSTRUCTION,
                  LOAD_RANGE,
                  LOAD_INDEX_SINGLE,
                  LOAD_INDEX_DUAL,
                  SPEED_SYMBOL,
                  RATED_LOAD_SINGLE,
                  RATED_LOAD_DUAL,
                  RATED_PRESSURE,
                  MAX_COLD_PRESSURE,
                  ROWS))
          .checked((spec, sound) -> orderFaults(spec));

  /** Id of a tire. */
  public static final Field<Tire, String> TIRE_ID =
      Field.name(
          "id", "Id", "as places and readings refer to it", Codec.NAME, Tire::id, Tire::withId);

  /** Kind of a tire. */
  public static final Field<Tire, String> TIRE_KIND =
      Field.required("type", "Kind", SIDEWALL, Codec.NAME, Tire::type, Tire::withType);

  /** Date code. */
  public static final Field<Tire, String> DATE_CODE =
      Field.optional(
          "dateCode",
          "Date code",
          "last four digits of the DOT number on the sidewall",
          Codec.TEXT,
          Tire::dateCode,
          Tire::withDateCode);

  /** Tread, measured or as it is seen. */
  public static final Field<Tire, Entered<TreadDepth>> TREAD =
      Field.optional(
          "tread",
          "Tread",
          "least depth, by a tread gauge; “wear bars” where it is worn down to them, “penny” (2/32)"
              + " or “quarter” (4/32) where it just covers the head",
          Codec.figure(QuantityKind.TREAD_DEPTH).orSaid(TreadAsSeen.WORDS),
          Tire::tread,
          Tire::withTread);

  /** What tires of one purchase share. */
  public static final List<Field<Tire, ?>> OF_ONE_PURCHASE = List.of(TIRE_KIND, DATE_CODE, TREAD);

  /** Heat factor; 1 is not written. */
  public static final Field<Tire, Double> HEAT_FACTOR =
      Field.optional(
          "heatFactor",
          "Heat factor",
          "from readings of this tire, cold and after driving; 1 if left out",
          Codec.number(Tire.LEAST_HEAT_FACTOR, Tire.MOST_HEAT_FACTOR),
          tire -> tire.heatFactor() == 1 ? null : Double.valueOf(tire.heatFactor()),
          (tire, value) -> tire.withHeatFactor(value == null ? 1 : value));

  /** How warm it ran on earlier trips. */
  public static final Field<Tire, HeatRecord> HEAT_RECORD =
      Field.optional(
          "heatRecord",
          "Earlier trips",
          "heat factor by earlier trips, ± 1 σ; empty to drop it",
          TripCodecs.HEAT_RECORD,
          Tire::heatRecord,
          Tire::withHeatRecord);

  /** Known leak. */
  public static final Field<Tire, Entered<GaugePressure>> LOSS_PER_DAY =
      Field.optional(
          "lossPerDay",
          "Loss a day",
          "known leak at 68 °F, from readings days apart",
          Codec.figure(QuantityKind.GAUGE_PRESSURE),
          Tire::lossPerDay,
          Tire::withLossPerDay);

  /** What was seen on it. */
  public static final Texts<Tire, Tire.Damage> DAMAGE =
      new Texts<>(
          "damage",
          "Damage",
          "seen on the tire; also a repair that does not last",
          Codec.choice(Tire.Damage.class, Tire.Damage::word),
          tire -> tire.damage().stream().sorted().toList(),
          (tire, values) -> tire.withDamage(new HashSet<>(values)));

  /** A tire. */
  public static final Part<Tire> TIRE =
      Part.of(
          "tire",
          "tire",
          new Tire("", "", null, null, 1, null, Set.of(), Remarks.NONE),
          Tire::remarks,
          Tire::withRemarks,
          List.<Member<Tire>>of(
              TIRE_ID,
              TIRE_KIND,
              DATE_CODE,
              TREAD,
              HEAT_FACTOR,
              HEAT_RECORD,
              LOSS_PER_DAY,
              DAMAGE));

  /** Axles that a spare is meant for. */
  public static final Texts<Spare, AxleRef> SERVES =
      new Texts<>(
          "serves",
          "Serves",
          "axles it is meant for; every one of single wheels if left out",
          TripCodecs.AXLE,
          Spare::serves,
          Spare::withServes);

  /** Highest pressure of a spare's wheel. */
  public static final Field<Spare, Entered<GaugePressure>> SPARE_WHEEL_PRESSURE =
      Field.optional(
          "wheelMaxPressure",
          "Wheel max pressure",
          WHEEL,
          PRESSURE,
          Spare::wheelMaxPressure,
          Spare::withWheelMaxPressure);

  /** Highest load of a spare's wheel. */
  public static final Field<Spare, Entered<Mass>> SPARE_WHEEL_LOAD =
      Field.optional(
          "wheelMaxLoad",
          "Wheel max load",
          WHEEL,
          LOAD,
          Spare::wheelMaxLoad,
          Spare::withWheelMaxLoad);

  /** A spare. */
  public static final Part<Spare> SPARE =
      Part.of(
          "spare",
          "spare",
          new Spare("", List.of(), null, null, Remarks.NONE),
          Spare::remarks,
          Spare::withRemarks,
          List.<Member<Spare>>of(
              Field.required(
                  "tire", "Tire", "id of the tire", Codec.NAME, Spare::tire, Spare::withTire),
              SERVES,
              SPARE_WHEEL_PRESSURE,
              SPARE_WHEEL_LOAD));

  private TireFields() {}

  /** A tire with what it shares with one of the same purchase. */
  public static Tire ofOnePurchase(Tire from, Tire to) {
    Tire copied = to;
    for (Field<Tire, ?> field : OF_ONE_PURCHASE) {
      copied = field.copied(from, copied);
    }
    return copied;
  }

  private static List<Row> rows(TireSpec spec) {
    LoadInflationTable table = spec.rows();
    return table == null ? List.of() : table.rows();
  }

  /** The highest cold pressure may not be below the rated one. */
  private static List<Fault> orderFaults(TireSpec spec) {
    Entered<GaugePressure> rated = spec.ratedPressure();
    Entered<GaugePressure> most = spec.maxColdPressure();
    return rated != null && most != null && most.value().compareTo(rated.value()) < 0
        ? List.of(
            Fault.of(
                MAX_COLD_PRESSURE.key(),
                ProblemCode.BELOW_RATED_PRESSURE,
                most.text(),
                rated.text()))
        : List.of();
  }

  /** Two rows at least, and none may fall; one that could not be read is no fault of order. */
  private static List<Fault> rowFaults(List<Row> rows) {
    List<Fault> faults = new ArrayList<>();
    if (rows.size() < 2) {
      faults.add(Fault.of("", ProblemCode.TOO_FEW_ROWS, "" + rows.size()));
    }
    for (int i = 1; i < rows.size(); i++) {
      Row row = rows.get(i);
      Row before = rows.get(i - 1);
      if (isRead(before) && isRead(row) && !LoadInflationTable.rises(before, row)) {
        faults.add(Fault.of("" + i, ProblemCode.ROW_FALLS, words(row), words(before)));
      }
    }
    return faults;
  }

  private static boolean inOrder(List<Row> rows) {
    return rows.size() >= 2
        && IntStream.range(1, rows.size())
            .allMatch(i -> LoadInflationTable.rises(rows.get(i - 1), rows.get(i)));
  }

  private static boolean isRead(Row row) {
    return !row.pressure().text().isEmpty() && !row.single().text().isEmpty();
  }

  private static String words(Row row) {
    Entered<Mass> dual = row.dual();
    String single = row.pressure().text() + ": " + row.single().text();
    return dual == null ? single : single + " (dual " + dual.text() + ")";
  }
}
