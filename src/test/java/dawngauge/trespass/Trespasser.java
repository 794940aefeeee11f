package dawngauge.trespass;

import com.fasterxml.jackson.databind.ObjectMapper;
import dawngauge.Main;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.net.http.HttpClient;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import javax.swing.JLabel;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.util.FastMath;
import org.jspecify.annotations.Nullable;
import org.shredzone.commons.suncalc.SunTimes;
import picocli.CommandLine;

/** Breaks the side rules, one nested class a way; never run. */
final class Trespasser {
  private Trespasser() {}

  static final class UsesRoot {
    void start() {
      Main.main(new String[0]);
    }
  }

  static final class Json {
    @Nullable ObjectMapper mapper;
  }

  static final class Swing {
    @Nullable JLabel label;
  }

  static final class Awt {
    java.awt.@Nullable Color color;
  }

  static final class Tracks {
    Object point() {
      return io.jenetics.jpx.WayPoint.of(0, 0);
    }
  }

  static final class Tables {
    Object reader() {
      return de.siegmar.fastcsv.reader.CsvReader.builder();
    }
  }

  static final class Calendars {
    Object calendar() {
      return new biweekly.ICalendar();
    }
  }

  static final class PaperSheet {
    Object page() {
      return com.lowagie.text.PageSize.A4;
    }
  }

  static final class Sun {
    @Nullable SunTimes times;
  }

  static final class Statistics {
    double sine() {
      return FastMath.sin(0);
    }
  }

  static final class Chances {
    double chance() {
      return new NormalDistribution().cumulativeProbability(0);
    }
  }

  static final class Arguments {
    @Nullable CommandLine line;
  }

  static final class Reads {
    byte[] all(Path file) throws IOException {
      return Files.readAllBytes(file);
    }
  }

  static final class ReadsResource {
    int size() throws IOException {
      try (InputStream table = Trespasser.class.getResourceAsStream("table.tsv")) {
        return table == null ? 0 : table.readAllBytes().length;
      }
    }
  }

  static final class WritesByName {
    PrintWriter open() throws IOException {
      return new PrintWriter("out.txt", StandardCharsets.UTF_8);
    }
  }

  static final class Prints {
    Object out() {
      return System.out;
    }
  }

  static final class Connects {
    HttpClient client() {
      return HttpClient.newHttpClient();
    }
  }

  static final class AsksNow {
    Instant time() {
      return Instant.now();
    }
  }

  static final class AsksNowByReference {
    Supplier<Instant> time() {
      return Instant::now;
    }
  }

  static final class AsksForToday {
    LocalDate day(ZoneId zone) {
      return LocalDate.now(zone);
    }
  }

  static final class AsksForTheTimeOfAPlace {
    ZonedDateTime time(ZoneId zone) {
      return ZonedDateTime.now(zone);
    }
  }

  static final class AsksForMillis {
    long time() {
      return System.currentTimeMillis();
    }
  }

  static final class AsksForTheClock {
    Clock clock() {
      return Clock.systemUTC();
    }
  }

  static final class StartsThread {
    Thread thread(Runnable task) {
      return new Thread(task);
    }
  }

  static final class WorksElsewhere {
    CompletableFuture<Void> task(Runnable task) {
      return CompletableFuture.runAsync(task);
    }
  }

  static final class WorksInParallel {
    long count(List<String> list) {
      return list.parallelStream().count();
    }
  }

  /** Allowed anywhere: naming a file, being handed a clock. */
  static final class Harmless {
    Instant time(Clock clock, Path file, PrintWriter out) {
      out.println(file.getFileName());
      return Instant.now(clock);
    }
  }
}
