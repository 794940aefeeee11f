package dawngauge.fuzz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What the search begins with, and what it failed on before: each is read without failing. */
class SeedsTest {

  private static final Path SEEDS = Path.of("src", "test", "resources", "dawngauge", "fuzz");

  static Stream<Arguments> seeds() {
    return Stream.of(Reader.values())
        .flatMap(reader -> files(reader).stream().map(file -> Arguments.of(reader, file)));
  }

  private static List<Path> files(Reader reader) {
    Path folder = SEEDS.resolve(reader.name().toLowerCase(Locale.ROOT));
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    } catch (IOException missing) {
      throw new UncheckedIOException(missing);
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void noneFails(Reader reader, Path seed, @TempDir Path folder) {
    assertThatCode(() -> reader.read(Files.readAllBytes(seed), folder)).doesNotThrowAnyException();
  }

  @ParameterizedTest
  @EnumSource
  void everyReaderHasSomethingToBeginWith(Reader reader) {
    assertThat(files(reader)).isNotEmpty();
  }

  /** An empty file. */
  @Test
  void nothingAtAllIsReadByAll(@TempDir Path folder) {
    for (Reader reader : Reader.values()) {
      assertThatCode(() -> reader.read(new byte[0], folder))
          .as(reader.name())
          .doesNotThrowAnyException();
    }
  }
}
