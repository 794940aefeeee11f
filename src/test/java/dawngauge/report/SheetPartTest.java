package dawngauge.report;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.advice.Mark;
import dawngauge.ledger.Card;
import dawngauge.ledger.StopLine;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How days go on pages. */
class SheetPartTest {

  private static StopLine stop(int number) {
    return new StopLine(
        true,
        number == 1 ? "Tuesday" : "",
        number,
        "10:00",
        "11:00",
        "",
        "place",
        "rest",
        "0 ft",
        "50 °F",
        "",
        "hose",
        Mark.CLEAR,
        List.of(),
        "",
        Card.EMPTY,
        List.of(),
        "",
        List.of(),
        List.of(),
        "",
        List.of());
  }

  private static List<List<String>> vehicles(String sizes) {
    List<List<String>> vehicles = new ArrayList<>();
    for (String size : sizes.split("\\+", -1)) {
      char vehicle = (char) ('a' + vehicles.size());
      vehicles.add(
          IntStream.range(0, Integer.parseInt(size)).mapToObj(i -> vehicle + "" + i).toList());
    }
    return vehicles;
  }

  /** Six stops upright, to nine sideways, more on a second page; 16 tires upright, 10 sideways. */
  @ParameterizedTest
  @CsvSource({
    "1, 4+4, false, 1x8",
    "6, 6+4, false, 6x10",
    "7, 6+4, false, 7x10 sideways",
    "9, 6+4, false, 9x10 sideways",
    "10, 6+4, false, 5x10 5x10",
    "13, 6+4, false, 6x10 7x10 sideways",
    "7, 6+8, false, 3x14 4x14",
    "6, 10+6, false, 6x16",
    "6, 10+8+4, false, 6x10 6x12",
    "5, 22, false, 5x16 5x6",
    "4, 6+4, true, 4x10",
    "5, 6+8, true, 2x6 2x8 3x6 3x8"
  })
  void stopsAndTiresShareOutEvenly(int stops, String vehicles, boolean large, String pages) {
    List<SheetPart> parts =
        SheetPart.all(
            IntStream.rangeClosed(1, stops).mapToObj(SheetPartTest::stop).toList(),
            vehicles(vehicles),
            large);
    assertThat(parts.stream().map(SheetPart::day)).containsOnly("Tuesday");
    assertThat(parts.stream().map(SheetPart::continued).toList())
        .isEqualTo(IntStream.range(0, parts.size()).mapToObj(i -> i > 0).toList());
    assertThat(
            String.join(
                " ",
                parts.stream()
                    .map(
                        part ->
                            part.stops().size()
                                + "x"
                                + part.tires().size()
                                + (part.sideways() ? " sideways" : ""))
                    .toList()))
        .isEqualTo(pages);
  }
}
