package dawngauge.planner;

import dawngauge.exchange.GpxFile;
import dawngauge.exchange.ReadingsCsv;
import dawngauge.geo.TrackLine;
import dawngauge.geo.TracksTogether;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Unit;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Itinerary;
import dawngauge.trip.TableHead;
import dawngauge.trip.TableLayout;
import dawngauge.trip.TableReadings;
import dawngauge.trip.Taken;
import dawngauge.trip.Trip;
import dawngauge.trip.TripSize;
import dawngauge.tripfile.SafeFile;
import dawngauge.tripfile.TakenFile;
import dawngauge.tripfile.TextLengths;
import dawngauge.tripfile.TripFile;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Opens and saves: trip files, results, and what other programs write and read. */
public final class TripStore {

  /** A pressure as a trip file has it: number and unit between quotation marks. */
  private static final Pattern PRESSURE =
      Pattern.compile(
          "\"[0-9.]+\\s*("
              + QuantityKind.GAUGE_PRESSURE.units().stream()
                  .flatMap(unit -> unit.spellings().stream())
                  .collect(Collectors.joining("|"))
              + ")\"");

  /** Letters of a fingerprint that tells one trip from another by. */
  private static final int SHORT = 16;

  /** Longest result that is read again, in bytes; ours. */
  private static final long LONGEST_RESULT = 8 << 20;

  TripStore() {}

  /** Reads a trip file. */
  public Outcome<Trip> open(Path file) {
    return TripFile.read(file);
  }

  /** Reads a trip from a stream, such as standard input. */
  public Outcome<Trip> open(InputStream stream) {
    return TripFile.readFrom(stream);
  }

  /**
   * Writes a trip file, aside and moved into place. A trip that could not be opened again, such as
   * one whose typed times run backwards, is not written: what stood there stays.
   *
   * @return what kept it from being written; empty if it was
   */
  public List<Problem> save(Trip trip, Path file) {
    Outcome<Trip> again = TripFile.parse(TripFile.text(trip));
    return again.hasValue()
        ? TripFile.write(trip, file).map(List::of).orElse(List.of())
        : again.problems();
  }

  /** A fingerprint of what stands in a file; empty where it cannot be read. */
  public Optional<String> fingerprint(Path file) {
    return SafeFile.fingerprint(file);
  }

  /** A fingerprint of a trip without its log: it stays while nothing but that goes on. */
  public String fingerprint(Trip trip) {
    return SafeFile.fingerprint(TripFile.text(trip.withLog(List.of()))).substring(0, SHORT);
  }

  /** A trip as its file has it. */
  public String text(Trip trip) {
    return TripFile.text(trip);
  }

  /** Text of a starter trip file, whose notes say where each figure is read. */
  public String starter() {
    return TripFile.starter();
  }

  /** The starter as a trip. */
  public Outcome<Trip> starterTrip() {
    return TripFile.parse(starter());
  }

  /**
   * The units of a trip: those in which most of its pressures are written; US where it has none.
   */
  public UnitSystem units(Trip trip) {
    Map<Boolean, Long> pressures =
        PRESSURE
            .matcher(TripFile.text(trip))
            .results()
            .collect(
                Collectors.partitioningBy(
                    found -> found.group(1).equals(Unit.PSI.symbol()), Collectors.counting()));
    return pressures.getOrDefault(false, 0L) > pressures.getOrDefault(true, 0L)
        ? UnitSystem.SI
        : UnitSystem.US;
  }

  /** A trip with names and notes that are too long shortened, as it is shown. */
  public Trip shown(Trip trip) {
    return TextLengths.shortened(trip);
  }

  /** Why an edit is refused that brings too much, or texts that are too long; empty where not. */
  public List<Problem> refused(Trip before, Trip after) {
    List<Problem> over = TripSize.over(after);
    return over.isEmpty() ? TextLengths.refused(before, after) : over;
  }

  /**
   * Writes a result to a file; see {@link SafeFile#save}.
   *
   * @param read the file that the trip was read from, which is never replaced, or null
   * @param replace whether another file that exists may be replaced
   * @return what went wrong, if anything
   */
  public Optional<Problem> write(String text, Path file, @Nullable Path read, boolean replace) {
    return isTrip(file, read).or(() -> SafeFile.save(text, file, replace));
  }

  /** The same with a result in bytes. */
  public Optional<Problem> write(byte[] result, Path file, @Nullable Path read, boolean replace) {
    return isTrip(file, read).or(() -> SafeFile.save(ByteBuffer.wrap(result), file, replace));
  }

  private static Optional<Problem> isTrip(Path file, @Nullable Path read) {
    return read != null && SafeFile.same(read, file)
        ? Optional.of(Problem.of(ProblemCode.IS_THE_TRIP_FILE, "", file.toString()))
        : Optional.empty();
  }

  /** What stands in a file that is to be brought up to date; empty where there is none. */
  public Optional<Outcome<String>> existing(Path file) {
    return SafeFile.read(file, LONGEST_RESULT);
  }

  /**
   * Lines of somebody else's GPX file, as {@link TracksTogether} offers them; the problems tell
   * what was left out of them, heights that cannot be those of the ground among it.
   */
  public Outcome<List<TrackLine>> tracks(Path file) {
    Outcome<List<TrackLine>> read = GpxFile.open(file);
    if (!read.hasValue()) {
      return read;
    }
    List<Heights> checked = read.get().stream().map(Heights::checked).toList();
    List<Problem> problems = new ArrayList<>(read.problems());
    checked.forEach(heights -> problems.addAll(heights.problems()));
    return Outcome.of(TracksTogether.of(checked.stream().map(Heights::line).toList()), problems);
  }

  /** A trip's route for other programs, as GPX. */
  public String gpx(Trip trip) {
    return GpxFile.write(trip);
  }

  /** What a page for the phone saved as a file. */
  public Outcome<Taken> sentBack(Path file) {
    return TakenFile.read(file);
  }

  /** The same as a text that was copied. */
  public Outcome<Taken> sentBack(String text) {
    return TakenFile.parse(text);
  }

  /** A trip with what was sent back; nothing that was noted already is changed. */
  public SentBack with(Trip trip, Taken taken) {
    return SentBack.into(trip, taken, fingerprint(trip));
  }

  /** How a table of readings begins. */
  public Outcome<TableHead> table(Path file) {
    return ReadingsCsv.head(file);
  }

  /** Reads a table of readings for a trip; nothing of the trip is changed. */
  public Outcome<TableReadings> readings(
      Path file, TableHead head, TableLayout layout, Trip trip, TableReadings.Progress progress) {
    Outcome<Itinerary> itinerary = Itinerary.of(trip);
    return itinerary.hasValue()
        ? ReadingsCsv.read(file, head, layout, trip, itinerary.get(), progress)
        : Outcome.failed(itinerary.problems());
  }
}
