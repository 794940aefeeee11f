package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.testdata.Contrast;
import dawngauge.ui.common.Palette;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Text has a contrast of at least 4.5:1 against its ground, lines of at least 3:1 (WCAG 2.1, 2018,
 * success criteria 1.4.3 and 1.4.11).
 */
class ContrastTest {

  private static final double TEXT = 4.5;
  private static final double LINES = 3;
  private static final String CSS = css("planner.css");
  private static final List<String> GROUNDS = List.of("paper", "raised", "chosen");

  @Test
  void theFormulaIsThePublishedOne() {
    assertThat(contrast(Color.BLACK, Color.WHITE)).isEqualTo(21, within(1e-9));
    // Well-known pair of the guideline's techniques: #767676 is the lightest gray on white.
    assertThat(contrast(Color.web("#767676"), Color.WHITE)).isEqualTo(4.54, within(0.005));
    assertThat(contrast(Color.web("#777777"), Color.WHITE)).isLessThan(TEXT);
  }

  @ParameterizedTest
  @MethodSource("themes")
  void textInTheStyleSheet(String theme) {
    Map<String, Color> colors = colors(theme);
    List<String> texts = used("-fx-text-fill");
    assertThat(texts).contains("ink", "lesser", "accent", "hold");
    for (String text : texts) {
      for (String ground : GROUNDS) {
        assertThat(contrast(color(colors, text), color(colors, ground)))
            .as("%s: %s on %s", theme, text, ground)
            .isGreaterThanOrEqualTo(TEXT);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("themes")
  void marksAndTheFrameOfWhatHasTheKeyboard(String theme) {
    Map<String, Color> colors = colors(theme);
    for (String mark : List.of("ink", "accent", "hold", "info")) {
      for (String ground : GROUNDS) {
        assertThat(contrast(color(colors, mark), color(colors, ground)))
            .as("%s: %s on %s", theme, mark, ground)
            .isGreaterThanOrEqualTo(LINES);
      }
    }
  }

  @Test
  void noColorIsWrittenOutsideTheThemes() {
    assertThat(CSS).doesNotContain("#", "rgb", "hsb");
    assertThat(used("-fx-background-color")).isSubsetOf(GROUNDS);
  }

  static Stream<String> themes() {
    return Stream.of("light", "dark");
  }

  /** What is drawn by hand beside what the style sheet paints. */
  @ParameterizedTest
  @MethodSource("themes")
  void aColorDrawnByHandIsTheOneOfTheTheme(String theme) {
    Map<String, Color> colors = colors(theme);
    Palette palette = theme.equals("dark") ? Palette.DARK : Palette.LIGHT;
    assertThat(palette.paper()).isEqualTo(color(colors, "paper"));
    assertThat(palette.ink()).isEqualTo(color(colors, "ink"));
    assertThat(palette.lesser()).isEqualTo(color(colors, "lesser"));
    assertThat(palette.raised()).isEqualTo(color(colors, "raised"));
    assertThat(palette.chosen()).isEqualTo(color(colors, "chosen"));
    assertThat(palette.accent()).isEqualTo(color(colors, "accent"));
    assertThat(palette.hold()).isEqualTo(color(colors, "hold"));
    assertThat(palette.info()).isEqualTo(color(colors, "info"));
    assertThat(contrast(palette.paper(), palette.hold()))
        .as("the figure of a tire on hold is written in the color of the paper")
        .isGreaterThanOrEqualTo(TEXT);
  }

  static Stream<Palette> palettes() {
    return Stream.of(Palette.LIGHT, Palette.DARK);
  }

  @ParameterizedTest
  @MethodSource("palettes")
  void whatIsDrawnByHand(Palette palette) {
    for (Color ground : List.of(palette.paper(), palette.night())) {
      assertThat(contrast(palette.lesser(), ground)).isGreaterThanOrEqualTo(TEXT);
      assertThat(contrast(palette.ink(), ground)).isGreaterThanOrEqualTo(TEXT);
      for (Color line : List.of(palette.settled(), palette.warm(), palette.limit())) {
        assertThat(contrast(line, ground)).isGreaterThanOrEqualTo(LINES);
        assertThat(contrast(line, over(palette.band(), ground))).isGreaterThanOrEqualTo(LINES);
      }
    }
  }

  private static Map<String, Color> colors(String theme) {
    Map<String, Color> colors = new HashMap<>();
    Matcher color = Pattern.compile("-dg-([a-z]+): (#[0-9a-f]{6});").matcher(css(theme + ".css"));
    while (color.find()) {
      colors.put(color.group(1), Color.web(color.group(2)));
    }
    assertThat(colors).hasSize(9);
    return colors;
  }

  private static Color color(Map<String, Color> colors, String name) {
    return Objects.requireNonNull(colors.get(name), name);
  }

  /** The theme's colours that the style sheet uses for something. */
  private static List<String> used(String property) {
    Matcher matcher = Pattern.compile(property + ": -dg-([a-z]+);").matcher(CSS);
    return matcher.results().map(result -> result.group(1)).distinct().toList();
  }

  private static Color over(Color shade, Color ground) {
    return ground.interpolate(
        new Color(shade.getRed(), shade.getGreen(), shade.getBlue(), 1), shade.getOpacity());
  }

  private static double contrast(Color a, Color b) {
    return Contrast.of(rgb(a), rgb(b));
  }

  private static int rgb(Color color) {
    return (eight(color.getRed()) << 16) | (eight(color.getGreen()) << 8) | eight(color.getBlue());
  }

  private static int eight(double channel) {
    return (int) Math.rint(channel * 255);
  }

  private static String css(String name) {
    try (InputStream stream = PlannerWindow.class.getResourceAsStream(name)) {
      return new String(Objects.requireNonNull(stream).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
