package dawngauge.tire;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.explain.Authority;
import dawngauge.quantity.Speed;
import dawngauge.quantity.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Load index, speed symbol and load range against the published tables. */
class SidewallTablesTest {

  // ISO 4000-1; UN R30 and R54. Both ends, round figures, and where the step between rows changes.
  @ParameterizedTest
  @CsvSource({
    "70, 335",
    "75, 387",
    "80, 450",
    "88, 560",
    "99, 775",
    "100, 800",
    "108, 1000",
    "115, 1215",
    "121, 1450",
    "126, 1700",
    "129, 1850",
    "132, 2000",
    "139, 2430",
    "142, 2650"
  })
  void loadIndexStandsForPublishedLoad(int index, double kilograms) {
    assertThat(kilograms(index)).isEqualTo(kilograms);
    assertThat(LoadIndex.authority(index).kind()).isEqualTo(Authority.Kind.STANDARD);
  }

  // From memory.
  @ParameterizedTest
  @CsvSource({
    "0, 45",
    "1, 46.2",
    "20, 80",
    "40, 140",
    "60, 250",
    "140, 2500",
    "141, 2575",
    "143, 2725",
    "146, 3000",
    "150, 3350",
    "160, 4500",
    "180, 8000",
    "200, 14000",
    "240, 45000",
    "279, 136000"
  })
  void rowsFromMemorySaySo(int index, double kilograms) {
    assertThat(kilograms(index)).isEqualTo(kilograms);
    assertThat(LoadIndex.authority(index).kind()).isEqualTo(Authority.Kind.INFERRED);
    assertThat(LoadIndex.authority(index).text()).contains("from memory");
  }

  // ISO 4000-1 is a rounded geometric series of about 3 % a step (ratio 10^(1/80), from memory).
  @Test
  void loadIndexRisesWithoutGapsByTwoToFourPercent() {
    for (int index = LoadIndex.LEAST + 1; index <= LoadIndex.MOST; index++) {
      assertThat(kilograms(index) / kilograms(index - 1))
          .as("load index %d", index)
          .isBetween(1.02, 1.04);
    }
  }

  // From memory: the series of preferred numbers begins anew at ten times the load; loads below 100
  // are cut to a tenth of a kilogram, below 1000 to a whole one.
  @Test
  void eightyIndicesMakeTenTimesTheLoad() {
    for (int index = LoadIndex.LEAST; index + 80 <= LoadIndex.MOST; index++) {
      double tenth = kilograms(index + 80) / 10;
      double cut = tenth < 100 ? Math.floor(tenth * 10) / 10 : Math.floor(tenth);
      double load = kilograms(index);
      assertThat(load).as("load index %d of %s", index, tenth).isIn(cut, tenth);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {-1, 280, 1000})
  void loadIndexOutsideTheTableHasNoLoad(int index) {
    assertThat(LoadIndex.mass(index)).isEmpty();
  }

  private static double kilograms(int index) {
    return LoadIndex.mass(index).orElseThrow().kilograms();
  }

  // From memory.
  @ParameterizedTest
  @CsvSource({
    "A1, 5",
    "A2, 10",
    "A3, 15",
    "A4, 20",
    "A5, 25",
    "A6, 30",
    "A7, 35",
    "A8, 40",
    "B, 50",
    "C, 60",
    "D, 65",
    "E, 70",
    "a8, 40",
    "(Y), 300"
  })
  void speedSymbolsFromMemory(String symbol, double kilometersPerHour) {
    assertThat(SpeedSymbol.top(symbol))
        .contains(Speed.of(kilometersPerHour, Unit.KILOMETER_PER_HOUR));
  }

  // ISO 4000-1; UN R30 and R54. H stands out of the alphabet, between U and V.
  @ParameterizedTest
  @CsvSource({
    "F, 80", "G, 90", "J, 100", "K, 110", "L, 120", "M, 130", "N, 140", "P, 150", "Q, 160",
    "R, 170", "S, 180", "T, 190", "U, 200", "H, 210", "V, 240", "W, 270", "Y, 300", "' m ', 130"
  })
  void speedSymbolStandsForPublishedSpeed(String symbol, double kilometersPerHour) {
    assertThat(SpeedSymbol.top(symbol))
        .contains(Speed.of(kilometersPerHour, Unit.KILOMETER_PER_HOUR));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "A", "A0", "A9", "I", "O", "X", "Z", "(V)", "MM", "#"})
  void unknownSpeedSymbolHasNoSpeed(String symbol) {
    assertThat(SpeedSymbol.top(symbol)).isEmpty();
  }

  // Load range letters as reproduced in the trade from the Tire and Rim Association; no I, no K.
  @ParameterizedTest
  @CsvSource({
    "A, 2", "B, 4", "C, 6", "D, 8", "E, 10", "F, 12", "G, 14", "H, 16", "J, 18", "L, 20", "M, 22",
    "N, 24", "e, 10"
  })
  void loadRangeStandsForPlyRating(String letter, int plies) {
    assertThat(LoadRange.plyRating(letter)).hasValue(plies);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "I", "K", "O", "EE"})
  void unusedLoadRangeHasNoPlyRating(String letter) {
    assertThat(LoadRange.plyRating(letter)).isEmpty();
  }

  // Tire and Rim Association, as reproduced: special trailer tires without a speed symbol.
  @ParameterizedTest
  @CsvSource({
    "0, 0, 1, true",
    "65, 0, 1, true",
    "65.01, 10, 1, true",
    "66, 10, 1, true",
    "75, 10, 1, true",
    "75.01, 10, 0.9, true",
    "85, 10, 0.9, true",
    "85.01, 10, 0.9, false"
  })
  void trailerTireWithoutSymbolAsksForMoreAirThenLessLoad(
      double milesPerHour, double extraPsi, double loadFactor, boolean allowed) {
    TrailerSpeedRule.Effect effect =
        TrailerSpeedRule.at(Speed.of(milesPerHour, Unit.MILE_PER_HOUR));
    assertThat(effect)
        .isEqualTo(new TrailerSpeedRule.Effect(extraPsi * 6894.757293168361, loadFactor, allowed));
  }
}
