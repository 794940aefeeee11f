package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import javafx.stage.Screen;
import org.junit.jupiter.api.Test;

/** The tests run on the screen and in the language that the build names. */
class ScreenTest extends WindowTest {

  @Test
  void theScreenHasTheScaleOfThisRun() {
    double wanted = Double.parseDouble(System.getProperty("dawngauge.test.scale", "1"));
    double scale = OpenWindow.onToolkit(() -> Screen.getPrimary().getOutputScaleX());
    assertThat(scale).isEqualTo(wanted, within(1e-9));
  }

  @Test
  void theLanguageIsThatOfThisRun() {
    String wanted =
        System.getProperty("dawngauge.test.language", Locale.getDefault().getLanguage());
    assertThat(Locale.getDefault().getLanguage()).isEqualTo(wanted);
  }
}
