package dawngauge.ledger;

import dawngauge.advice.Advice;
import dawngauge.advice.Mark;
import dawngauge.advice.StopAdvice;
import dawngauge.advice.TireAdvice;
import dawngauge.explain.Terms;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Air;
import dawngauge.trip.Itinerary;
import dawngauge.trip.Trip;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The stops and the tires as rows and columns, without a toolkit. Each cell has one figure, that of
 * the ledger's row; its text is made when it is asked for. Rows and columns are counted from 0.
 */
public final class StopGrid {

  /** What is not known is shown so, and is never given a figure. */
  public static final String NOT_KNOWN = "·";

  private static final String NONE = "–";

  /** Which figure the cells show. */
  public enum Display {
    /** What the gauge reads on arrival, or was read there. */
    READS("reads"),
    /** What it reads once as cool as the air there. */
    COLD_HERE(Terms.COLD_HERE),
    /** Load margin until the next stop, in percent. */
    MARGIN("margin");

    private final String word;

    Display(String word) {
      this.word = word;
    }

    /** What it is called. */
    public String word() {
      return word;
    }
  }

  /** Compressed air at a stop. */
  public enum Hose {
    /** None. */
    NONE,
    /** Only the rig's own compressor. */
    OWN,
    /** A hose that reaches up to a pressure. */
    LIMITED,
    /** A hose. */
    FREE
  }

  /**
   * A row.
   *
   * @param day heading of the day, where the stop is the first of one; else empty
   * @param timed whether its time is known
   * @param passed whether the rig passes without standing
   * @param pass whether the leg ahead goes over a pass or another named point
   * @param caution whether there is something to heed on the leg ahead
   * @param last whether no leg follows
   */
  public record Row(
      String day, boolean timed, boolean passed, boolean pass, boolean caution, boolean last) {}

  /**
   * One figure.
   *
   * @param text the figure without its unit; a dot where it is not known, empty where none belongs
   * @param mark the tire's mark there
   * @param framed whether the figure is one to set
   * @param read whether it was read there, else it is expected
   * @param tire short form of the tire whose figure it is; of several the one that is worst off
   */
  public record Cell(String text, Mark mark, boolean framed, boolean read, String tire) {}

  private final Trip trip;
  private final Ledger ledger;
  private final @Nullable Advice advice;
  private final Display display;
  private final List<TireColumn> columns;
  private final @Nullable StopLines lines;
  private final List<@Nullable List<StopLine.TireRow>> figures;
  private final @Nullable Cell[] cells;
  private final @Nullable StopGrid other;

  private StopGrid(
      Trip trip,
      Ledger ledger,
      @Nullable Advice advice,
      Display display,
      List<TireColumn> columns,
      @Nullable StopGrid other) {
    this.trip = trip;
    this.ledger = ledger;
    this.advice = advice;
    this.display = display;
    this.columns = columns;
    this.other = other;
    this.lines = advice == null ? null : new StopLines(trip, advice, ledger.units(), null);
    this.figures = new ArrayList<>(Collections.nCopies(trip.route().stops().size(), null));
    this.cells = new Cell[trip.route().stops().size() * columns.size()];
  }

  /**
   * The grid of a trip.
   *
   * @param advice what was computed, or null where no time is known
   * @param unfolded axles, by the head of their column, whose tires have a column each although
   *     there are many
   */
  public static StopGrid of(
      Trip trip, Ledger ledger, @Nullable Advice advice, Display display, Set<String> unfolded) {
    return new StopGrid(trip, ledger, advice, display, TireColumn.all(trip.rig(), unfolded), null);
  }

  /**
   * The same trip with what another forecast of it would change beside each figure.
   *
   * @param changed the other forecast
   */
  public StopGrid beside(Advice changed) {
    Ledger told = Ledger.of(trip, changed, List.of(), List.of(), ledger.units(), null);
    StopGrid grid = new StopGrid(trip, told, changed, display, columns, null);
    return new StopGrid(trip, ledger, advice, display, columns, grid);
  }

  /** The same trip with another figure in each cell. */
  public StopGrid shown(Display other) {
    StopGrid beside = this.other == null ? null : this.other.shown(other);
    return new StopGrid(trip, ledger, advice, other, columns, beside);
  }

  /** Which figure the cells show. */
  public Display display() {
    return display;
  }

  /** The ledger whose figures these are. */
  public Ledger ledger() {
    return ledger;
  }

  /** Number of the stops. */
  public int rows() {
    return trip.route().stops().size();
  }

  /** The columns of the tires. */
  public List<TireColumn> columns() {
    return columns;
  }

  /** What a row is, without its figures. */
  public Row row(int row) {
    StopAdvice stop = stop(row);
    boolean last = row == rows() - 1;
    boolean pass = !last && !trip.route().legs().get(row).profile().isEmpty();
    return stop == null || advice == null
        ? new Row("", false, false, pass, false, last)
        : new Row(
            StopLines.newDay(advice, row),
            true,
            stop.stop().visit().passes(),
            pass,
            !stop.legCautions().isEmpty() || (!last && !stop.stop().airAheadKnown()),
            last);
  }

  /** The stop of a row as the ledger tells it. */
  public StopLine line(int row) {
    return ledger.stops().get(row);
  }

  /** Name of a stop. */
  public String place(int row) {
    return trip.route().stops().get(row).place();
  }

  /** Unit of the figures shown. */
  public String unit() {
    return display == Display.MARGIN
        ? "%"
        : ledger.units().unitOf(QuantityKind.GAUGE_PRESSURE).symbol();
  }

  /** Whether figures have decimals, which take more room. */
  public boolean decimals() {
    return ledger.units() == UnitSystem.SI;
  }

  /** Unit of the temperatures. */
  public String airUnit() {
    return ledger.units().unitOf(QuantityKind.TEMPERATURE).symbol();
  }

  /** The clock on arrival, at the start on leaving; a dot where it is not known. */
  public String clock(int row) {
    StopAdvice stop = stop(row);
    if (stop == null) {
      return NOT_KNOWN;
    }
    Itinerary.Visit visit = stop.stop().visit();
    return row == 0 ? StopLines.leave(visit) : StopLines.arrive(visit);
  }

  /** Letters of the zone on arrival, where they are new; else empty. */
  public String zone(int row) {
    StopAdvice stop = stop(row);
    return stop == null || lines == null
        ? ""
        : lines.zone(stop.stop().visit()).replaceFirst(",.*", "");
  }

  /** Temperature on arrival and on leaving without unit, "31→45". */
  public String air(int row) {
    StopAdvice stop = stop(row);
    return stop == null ? NOT_KNOWN : StopLines.briefAir(stop.stop(), ledger.units());
  }

  /** Compressed air at a stop. */
  public Hose hose(int row) {
    Air air = trip.route().stops().get(row).air();
    if (!air.available()) {
      return trip.rig().compressorTop() == null ? Hose.NONE : Hose.OWN;
    }
    return air.upTo() == null ? Hose.FREE : Hose.LIMITED;
  }

  /** The strongest mark at a stop. */
  public Mark mark(int row) {
    StopAdvice stop = stop(row);
    return stop == null ? Mark.UNKNOWN : stop.mark();
  }

  /** The lowest margin of its tires until the next stop; a dot where it is not known. */
  public String margin(int row) {
    StopLine.TireRow tightest = StopLine.tightest(figures(row));
    return tightest == null ? "" : margin(tightest);
  }

  /** The figures at a stop as the ledger's line has them, which has much else to tell besides. */
  private List<StopLine.TireRow> figures(int row) {
    List<StopLine.TireRow> known = figures.get(row);
    if (known == null) {
      StopAdvice stop = stop(row);
      known = stop == null || lines == null ? List.of() : lines.rows(stop);
      figures.set(row, known);
    }
    return known;
  }

  /** One figure. */
  public Cell cell(int row, int column) {
    int at = row * columns.size() + column;
    Cell cell = cells[at];
    if (cell == null) {
      cell = make(row, columns.get(column));
      cells[at] = cell;
    }
    return cell;
  }

  /** What the other forecast makes of a figure; empty without one. See {@link GridDifference}. */
  public String change(int row, int column) {
    Cell now = cell(row, column);
    return other == null ? "" : GridDifference.between(now, other.of(row, now.tire()));
  }

  /** The figure of one tire, which need not be the worst off of its column. */
  private Cell of(int row, String tire) {
    StopAdvice stop = stop(row);
    return stop == null
        ? new Cell(NOT_KNOWN, Mark.UNKNOWN, false, false, tire)
        : stop.tires().stream()
            .filter(advised -> name(advised).equals(tire))
            .findFirst()
            .map(advised -> made(row, advised))
            .orElseGet(() -> new Cell(NOT_KNOWN, Mark.UNKNOWN, false, false, tire));
  }

  private Cell make(int row, TireColumn column) {
    TireAdvice advised = worst(row, column);
    if (advised == null) {
      return new Cell(NOT_KNOWN, Mark.UNKNOWN, false, false, column.tires().get(0));
    }
    return made(row, advised);
  }

  private Cell made(int row, TireAdvice advised) {
    String tire = name(advised);
    Mark mark = advised.mark();
    StopLine.TireRow figures = StopLine.row(figures(row), tire);
    if (figures == null) {
      return new Cell(mark == Mark.UNKNOWN ? NOT_KNOWN : "", mark, false, false, tire);
    }
    // Asked of the tire: the card of a stop also judges what is offered there, which takes long.
    boolean sets =
        mark == Mark.ADJUST && figures.sets() && Cards.condition(advised, ledger.units()).isEmpty();
    String toSet = !sets ? "" : toSet(figures);
    String text =
        switch (display) {
          case READS -> reads(figures);
          case COLD_HERE -> coldHere(figures);
          case MARGIN -> margin(figures);
        };
    boolean framed = !toSet.isEmpty();
    boolean read = !framed && display == Display.READS && figures.read();
    return new Cell(framed ? toSet : text, mark, framed, read, tire);
  }

  /** A figure to set is told as of the moment that the other cells are of; never as a margin. */
  private String toSet(StopLine.TireRow figures) {
    return switch (display) {
      case READS -> figures.figure();
      case COLD_HERE -> figures.setCold();
      case MARGIN -> "";
    };
  }

  static String known(String... figures) {
    return Stream.of(figures)
        .filter(figure -> !figure.isEmpty() && !figure.equals(NONE))
        .findFirst()
        .orElse(NOT_KNOWN);
  }

  /** Before the start there is no arrival; after a setting the gauge shows what was set. */
  static String reads(StopLine.TireRow figures) {
    return known(figures.arriveReads(), figures.set() ? "" : figures.checkReads());
  }

  static String coldHere(StopLine.TireRow figures) {
    return known(figures.arriveSettled(), figures.set() ? "" : figures.checkSettled());
  }

  private static String margin(StopLine.TireRow figures) {
    return known(figures.margin()).replace(" %", "");
  }

  /** Which tire a column stands for at a stop: the strongest mark, then the lowest margin. */
  @Nullable TireAdvice worst(int row, TireColumn column) {
    StopAdvice stop = stop(row);
    TireAdvice worst = null;
    if (stop != null) {
      for (TireAdvice tire : stop.tires()) {
        boolean here = column.positions().contains(tire.tire().fitted().position());
        if (here && (worst == null || isWorse(tire, worst))) {
          worst = tire;
        }
      }
    }
    return worst;
  }

  private static boolean isWorse(TireAdvice tire, TireAdvice than) {
    int stronger = tire.mark().compareTo(than.mark());
    return stronger > 0 || (stronger == 0 && tire.tire().worstMargin() < than.tire().worstMargin());
  }

  private @Nullable StopAdvice stop(int row) {
    return advice == null || row >= advice.stops().size() ? null : advice.stops().get(row);
  }

  String name(TireAdvice tire) {
    return trip.rig().shortForm(tire.tire().fitted().position());
  }

  /** A tire at a stop as it is read out; see {@link GridWords#spoken(int, int)}. */
  public String spoken(int row, int column) {
    return words().spoken(row, column);
  }

  /** Two lines about a cell: all its figures with their range, and the strongest reason. */
  public String tip(int row, int column) {
    return words().tip(row, column);
  }

  /** Two lines about a stop: its place and facts, the leg ahead. */
  public String tip(int row) {
    return words().tip(row);
  }

  /** A whole stop as it is read out: its strongest mark, what to do, what to watch. */
  public String spoken(int row) {
    return words().spoken(row);
  }

  private GridWords words() {
    return new GridWords(this);
  }
}
