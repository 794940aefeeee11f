package dawngauge.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Temperature;
import dawngauge.quantity.TreadDepth;
import dawngauge.quantity.Unit;
import dawngauge.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Sentences with figures, in either system of units. */
class PhraseTest {
  private static final GaugePressure EIGHTY = GaugePressure.of(80, Unit.PSI);

  @Test
  void figuresInTheReadersUnits() {
    Phrase phrase =
        Phrase.of("set to {0} at {1}, {0} cold", EIGHTY, Temperature.of(5, Unit.CELSIUS));
    assertThat(phrase.in(UnitSystem.US)).isEqualTo("set to 80.0 psi at 41 °F, 80.0 psi cold");
    assertThat(phrase.in(UnitSystem.SI)).isEqualTo("set to 5.52 bar at 5 °C, 5.52 bar cold");
  }

  @Test
  void statedFiguresHaveTheirOwnDecimals() {
    Phrase phrase = Phrase.of("set to {0}", new Phrase.Stated(EIGHTY, 0, 1));
    assertThat(phrase.in(UnitSystem.US)).isEqualTo("set to 80 psi");
    assertThat(phrase.in(UnitSystem.SI)).isEqualTo("set to 5.5 bar");
    TreadDepth tread = TreadDepth.of(4, Unit.THIRTY_SECOND_INCH);
    assertThat(Phrase.of("{0}", new Phrase.Stated(tread, 0, 0)).in(UnitSystem.US))
        .isEqualTo("4/32 in");
  }

  @Test
  void phrasesInPhrasesWordsAndWholeNumbers() {
    Phrase inner = Phrase.of("{0} of {1}", EIGHTY, "the label");
    Phrase outer = Phrase.of("{1} axle {2}: {0}", inner, "trailer", 2);
    assertThat(outer.in(UnitSystem.US)).isEqualTo("trailer axle 2: 80.0 psi of the label");
    assertThat(outer.in(UnitSystem.SI)).isEqualTo("trailer axle 2: 5.52 bar of the label");
  }

  /** What a person typed is not read as a template, nor as a replacement pattern. */
  @Test
  void bracesDollarsAndBackslashesInFiguresStayAsTheyAre() {
    String odd = "{1} $1 \\ {0}";
    assertThat(Phrase.of("tire \"{0}\" at {1}", odd, EIGHTY).in(UnitSystem.US))
        .isEqualTo("tire \"" + odd + "\" at 80.0 psi");
  }

  @Test
  void moreThanTenFigures() {
    Object[] figures = new Object[12];
    for (int i = 0; i < figures.length; i++) {
      figures[i] = i * i;
    }
    assertThat(Phrase.of("{11} {1}", figures).in(UnitSystem.US)).isEqualTo("121 1");
  }

  @Test
  void unknownIndexFailsLoudly() {
    Phrase phrase = Phrase.of("{0} and {1}", EIGHTY);
    assertThatThrownBy(() -> phrase.in(UnitSystem.US))
        .isInstanceOf(IndexOutOfBoundsException.class);
    assertThatNullPointerException().isThrownBy(() -> Phrase.of("{0}", new Object[] {null}));
  }

  @Test
  void listsAreCopied() {
    List<Object> figures = new ArrayList<>(List.of(EIGHTY));
    Phrase phrase = new Phrase("{0}", figures);
    figures.clear();
    assertThat(phrase.in(UnitSystem.US)).isEqualTo("80.0 psi");
    List<Step> steps = new ArrayList<>(List.of(new Step(phrase, EIGHTY, Authority.typed("label"))));
    Explained<GaugePressure> explained = new Explained<>(EIGHTY, steps);
    steps.clear();
    assertThat(explained.steps()).hasSize(1);
  }

  @Test
  void everyAuthoritySaysWhatItIs() {
    assertThat(Authority.typed("label").text()).isEqualTo("typed: label");
    assertThat(Authority.regulation("49 CFR 393.75").text()).isEqualTo("49 CFR 393.75");
    assertThat(Authority.inferred("a rule").text()).isEqualTo("inferred here: a rule");
    assertThat(Authority.commonPractice().text()).isEqualTo("common practice, no source");
    for (Authority.Kind kind : Authority.Kind.values()) {
      assertThat(new Authority(kind, "citation").text()).contains("citation");
    }
  }
}
