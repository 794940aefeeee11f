package dawngauge.fuzz;

import dawngauge.exchange.GpxFile;
import dawngauge.exchange.ReadingsCsv;
import dawngauge.feed.AnswerReader;
import dawngauge.geo.Gazetteer;
import dawngauge.geo.PlaceList;
import dawngauge.geo.TrackLine;
import dawngauge.problem.Outcome;
import dawngauge.quantity.Unit;
import dawngauge.settings.FeedSettings;
import dawngauge.settings.TableLayoutsFile;
import dawngauge.settings.UserStateFile;
import dawngauge.trip.Itinerary;
import dawngauge.trip.TableHead;
import dawngauge.trip.TableLayout;
import dawngauge.trip.Trip;
import dawngauge.tripfile.Recovery;
import dawngauge.tripfile.TripFile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Map;

/** Each reader of what comes from outside. None may throw, whatever the bytes. */
public enum Reader {
  /** A trip file; one that is read at all is written back as the same trip. */
  TRIP {
    @Override
    void read(byte[] bytes, Path folder) {
      Trip trip = told(TripFile.readFrom(new ByteArrayInputStream(bytes))).valueOrNull();
      if (trip != null) {
        Trip again = TripFile.parse(TripFile.text(trip)).get();
        require(again.equals(trip), "a trip is written and read as the same");
      }
    }
  },
  /** A GPX file, and what is offered of its lines. */
  GPX {
    @Override
    void read(byte[] bytes, Path folder) {
      told(GpxFile.read(bytes)).value().ifPresent(lines -> lines.forEach(TrackLine::offers));
    }
  },
  /** A table of readings, read in both ways. */
  TABLE {
    @Override
    void read(byte[] bytes, Path folder) throws IOException {
      Path file = Files.write(folder.resolve("table.csv"), bytes);
      TableHead head = told(ReadingsCsv.head(file)).valueOrNull();
      if (head == null) {
        return;
      }
      Map<TableLayout.Column, Integer> first =
          Map.of(
              TableLayout.Column.TIME, 0,
              TableLayout.Column.TIRE, 1,
              TableLayout.Column.PRESSURE, 2);
      read(file, head, TableLayout.own(head.columns()).orElse(first), false);
      read(file, head, first, true);
    }

    private void read(
        Path file, TableHead head, Map<TableLayout.Column, Integer> columns, boolean recorder) {
      TableLayout layout =
          new TableLayout(
              columns,
              Map.of(),
              ZoneId.of("America/Denver"),
              Unit.PSI,
              Unit.FAHRENHEIT,
              "",
              recorder);
      told(ReadingsCsv.read(file, head, layout, HAUL, TIMES, (rows, part) -> true));
    }
  },
  /** What a weather service answers. */
  ANSWER {
    @Override
    void read(byte[] bytes, Path folder) {
      AnswerReaders.ONE.read(bytes);
    }
  },
  /** A list of places. */
  PLACES {
    @Override
    void read(byte[] bytes, Path folder) {
      told(
          PlaceList.read(
              Gazetteer.load(), new String(bytes, StandardCharsets.UTF_8), null, Map.of()));
    }
  },
  /** All that is kept in the user's own folder beside trips. */
  SETTINGS {
    @Override
    void read(byte[] bytes, Path folder) throws IOException {
      Path copies = Files.createDirectories(folder.resolve("unsaved"));
      Files.write(folder.resolve("window.properties"), bytes);
      Files.write(folder.resolve("tables.properties"), bytes);
      Files.write(folder.resolve("feeds.properties"), bytes);
      Files.writeString(copies.resolve("unsaved-1.dawngauge"), "{}");
      Files.write(copies.resolve("unsaved-1.dawngauge.about"), bytes);
      new UserStateFile(folder).load();
      new TableLayoutsFile(folder).layout("time,tire");
      FeedSettings.of(folder);
      require(
          new Recovery(copies, "1", run -> false).found().size() == 1,
          "a broken record hides no copy");
    }
  };

  private static final Trip HAUL =
      TripFile.read(Path.of("demo-data", "spring-fleece-haul.dawngauge")).get();

  private static final Itinerary TIMES = Itinerary.of(HAUL).get();

  /** Opened when it is first asked for. */
  private static final class AnswerReaders {
    static final AnswerReader ONE = new AnswerReader(temporary());
  }

  /**
   * Reads bytes.
   *
   * @param folder a folder of its own
   */
  abstract void read(byte[] bytes, Path folder) throws IOException;

  static Path temporary() {
    try {
      return Files.createTempDirectory("read");
    } catch (IOException unwritable) {
      throw new java.io.UncheckedIOException(unwritable);
    }
  }

  private static void require(boolean holds, String what) {
    if (!holds) {
      throw new IllegalStateException("not so: " + what);
    }
  }

  /** An outcome is either a value or says why there is none. */
  static <T> Outcome<T> told(Outcome<T> outcome) {
    require(outcome.hasValue() || !outcome.problems().isEmpty(), "it is told why");
    return outcome;
  }
}
