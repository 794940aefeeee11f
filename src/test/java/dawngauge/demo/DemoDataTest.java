package dawngauge.demo;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dawngauge.advice.Mark;
import dawngauge.advice.OfferAdvice;
import dawngauge.problem.ProblemCode.Severity;
import dawngauge.tripfile.TripFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The demo hauls are sound files, and between them they show every mark. */
class DemoDataTest {

  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(schemaText(), InputFormat.JSON);

  static List<String> files() {
    try (Stream<Path> all = Files.list(Path.of("demo-data"))) {
      return all.map(Path::getFileName)
          .map(Path::toString)
          .filter(name -> name.endsWith(TripFile.ENDING))
          .sorted()
          .toList();
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  @Test
  void eachHaulHasItsTest() {
    assertThat(files())
        .containsExactly(
            AutumnStockHaulTest.FILE,
            GapHaulTest.FILE,
            LoggedHaulTest.FILE,
            SpringFleeceHaulTest.FILE);
  }

  @ParameterizedTest
  @MethodSource("files")
  void opensWithoutAnyProblem(String name) {
    assertThat(Demo.file(name).opened().problems()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("files")
  void holdsAgainstTheSchema(String name) {
    assertThat(SCHEMA.validate(Demo.file(name).text(), InputFormat.JSON)).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("files")
  void isPlannedToItsEndWithoutErrors(String name) {
    Demo demo = Demo.file(name);
    assertThat(demo.stops()).hasSameSizeAs(demo.trip().route().stops());
    assertThat(demo.problems()).noneMatch(p -> p.code().severity() == Severity.ERROR);
  }

  @ParameterizedTest
  @MethodSource("files")
  void saysThatItIsInvented(String name) {
    assertThat(Demo.file(name).trip().remarks().note()).contains("invented trip");
  }

  @ParameterizedTest
  @MethodSource("files")
  void noTireIsOnHoldOnTheOnlyWayHome(String name) {
    assertThat(Demo.file(name).tireMarks()).doesNotContain(Mark.HOLD);
  }

  @Test
  void everyMarkAppears() {
    Set<Mark> seen = EnumSet.noneOf(Mark.class);
    List<OfferAdvice> offers = new ArrayList<>();
    for (String name : files()) {
      Demo demo = Demo.file(name);
      seen.addAll(demo.tireMarks());
      offers.addAll(demo.offers());
    }
    assertThat(seen).containsExactlyInAnyOrder(Mark.CLEAR, Mark.UNKNOWN, Mark.RECHECK, Mark.ADJUST);
    assertThat(offers).extracting(OfferAdvice::mark).contains(Mark.HOLD, Mark.CLEAR);
  }

  private static String schemaText() {
    try (InputStream in =
        Objects.requireNonNull(TripFile.class.getResourceAsStream("trip-2.schema.json"))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
