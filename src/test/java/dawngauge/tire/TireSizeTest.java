package dawngauge.tire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Size texts of the trade; diameters are the definition: rim + 2 · width · aspect. */
class TireSizeTest {

  @ParameterizedTest
  @CsvSource({
    "ST235/80R16, SPECIAL_TRAILER, RADIAL, 235, 80, 16, 782.4",
    "LT245/75R17, LIGHT_TRUCK, RADIAL, 245, 75, 17, 799.3",
    "P235/70R16, PASSENGER, RADIAL, 235, 70, 16, 735.4",
    "235/85R16, , RADIAL, 235, 85, 16, 805.9",
    "ST205/75D15, SPECIAL_TRAILER, BIAS, 205, 75, 15, 688.5",
    "205/55ZR16, , RADIAL, 205, 55, 16, 631.9",
    "275/80R22.5, , RADIAL, 275, 80, 22.5, 1011.5",
    "225/70R15C, COMMERCIAL, RADIAL, 225, 70, 15, 696",
    "235/85R16LT, LIGHT_TRUCK, RADIAL, 235, 85, 16, 805.9",
    "225/90-16, , BIAS, 225, 90, 16, 811.4",
    "' st235/80r16  E 123/119M', SPECIAL_TRAILER, RADIAL, 235, 80, 16, 782.4",
    "LT265/75R16/E, LIGHT_TRUCK, RADIAL, 265, 75, 16, 803.9",
    "ST235/80R16 LRE, SPECIAL_TRAILER, RADIAL, 235, 80, 16, 782.4"
  })
  void metricSize(
      String text,
      TireClass tireClass,
      Construction construction,
      double width,
      double aspect,
      double rim,
      double diameter) {
    TireSize size = TireSize.parse(text).orElseThrow();
    assertThat(size.impliedClass()).isEqualTo(tireClass);
    assertThat(size.construction()).isEqualTo(construction);
    assertThat(size.sectionWidthMillimeters()).isEqualTo(width);
    assertThat(size.aspectPercent()).hasValue(aspect);
    assertThat(size.rimInches()).isEqualTo(rim);
    assertThat(size.overallDiameterMillimeters().orElseThrow()).isCloseTo(diameter, within(0.001));
  }

  @ParameterizedTest
  @CsvSource({
    "7.00-15LT, LIGHT_TRUCK, BIAS, 177.8, 15",
    "7.50R16LT, LIGHT_TRUCK, RADIAL, 190.5, 16",
    "8-14.5, , BIAS, 203.2, 14.5",
    "8-14.5MH, , BIAS, 203.2, 14.5",
    "4.80-12, , BIAS, 121.92, 12",
    "ST7.00-15, SPECIAL_TRAILER, BIAS, 177.8, 15",
    "11R22.5, , RADIAL, 279.4, 22.5"
  })
  void conventionalSizeGivesNoDiameter(
      String text, TireClass tireClass, Construction construction, double width, double rim) {
    TireSize size = TireSize.parse(text).orElseThrow();
    assertThat(size.impliedClass()).isEqualTo(tireClass);
    assertThat(size.construction()).isEqualTo(construction);
    assertThat(size.sectionWidthMillimeters()).isCloseTo(width, within(1e-9));
    assertThat(size.rimInches()).isEqualTo(rim);
    assertThat(size.aspectPercent()).isEmpty();
    assertThat(size.overallDiameterMillimeters()).isEmpty();
  }

  @Test
  void flotationSizeGivesItsDiameter() {
    TireSize size = TireSize.parse("31x10.50R15LT").orElseThrow();
    assertThat(size)
        .isEqualTo(
            new TireSize(
                TireClass.LIGHT_TRUCK,
                Construction.RADIAL,
                10.5 * 25.4,
                OptionalDouble.empty(),
                15,
                OptionalDouble.of(31 * 25.4)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "ST", "235", "ST235/80", "ST235-80-16", "235/80X16", "ST235/80R16 new", "E"})
  void otherTextIsNoSize(String text) {
    assertThat(TireSize.parse(text)).isEmpty();
  }

  @Test
  void whatIsTypedStandsOverTheSizeText() {
    TireSpec silent = Tires.named("a").size("ST205/75D15").spec();
    assertThat(silent.classOrFromSize()).isEqualTo(TireClass.SPECIAL_TRAILER);
    assertThat(silent.constructionOrFromSize()).isEqualTo(Construction.BIAS);
    TireSpec typed =
        Tires.named("a")
            .size("ST205/75D15")
            .tireClass(TireClass.COMMERCIAL)
            .construction(Construction.RADIAL)
            .spec();
    assertThat(typed.classOrFromSize()).isEqualTo(TireClass.COMMERCIAL);
    assertThat(typed.constructionOrFromSize()).isEqualTo(Construction.RADIAL);
    assertThat(Tires.named("a").size("unreadable").spec().classOrFromSize()).isNull();
    assertThat(Tires.named("a").spec().constructionOrFromSize()).isNull();
  }
}
