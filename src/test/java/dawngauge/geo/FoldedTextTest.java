package dawngauge.geo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Isolated
class FoldedTextTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Cañon City | canon city",
        "QUÉBEC | quebec",
        "St. John's | st johns",
        "Coeur d’Alene | coeur dalene",
        "Winston-Salem | winston salem",
        "Łódź | lodz",
        "Tromsø | tromso",
        "Gießen | giessen",
        "Þorlákshöfn | thorlakshofn",
        "Ærøskøbing | aeroskobing",
        "İzmir | izmir",
        "Iğdır | igdir",
        "Washington, D.C. | washington dc",
        "Hanamā‘ulu | hanamaulu",
        "' Kreis 11 / (Seebach) ' | kreis 11 seebach",
        "ﬁeld | field",
      })
  void foldsAccentsCaseAndPunctuation(String text, String folded) {
    assertThat(FoldedText.of(text)).isEqualTo(folded);
  }

  @Test
  void nothingButMarksFoldsToNothing() {
    assertThat(FoldedText.of("")).isEmpty();
    assertThat(FoldedText.of(" \n\t.,;-'\u0301\u0000")).isEmpty();
  }

  @Test
  void lettersOutsideTheBasicPlaneStay() {
    assertThat(FoldedText.of("𐐀 x")).isEqualTo("𐐨 x");
  }

  /** In Turkish the small letter of I has no dot; names are not in the language of the computer. */
  @Test
  void theLanguageOfTheComputerDoesNotMatter() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      assertThat(FoldedText.of("ILLINOIS")).isEqualTo("illinois");
    } finally {
      Locale.setDefault(before);
    }
  }
}
