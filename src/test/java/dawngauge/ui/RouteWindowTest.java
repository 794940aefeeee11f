package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.trip.Stop;
import java.util.List;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.Test;

/** The route as it is seen and walked through. */
class RouteWindowTest extends WindowTest {

  @Test
  void theDemoShowsEveryStopWithItsMarkAndTheTireTable() {
    OpenWindow open = open(demo());
    List<String> places = demo().route().stops().stream().map(Stop::place).toList();
    assertThat(open.texts("place")).containsExactlyElementsOf(places);
    assertThat(open.texts("mark-word"))
        .hasSameSizeAs(places)
        .contains("not known", "adjust", "re-check")
        .doesNotContain("");
    assertThat(open.tireTable()).hasSize(10 * 8).anySatisfy(text -> assertThat(text).contains("±"));
    assertThat(open.onTitle()).isEqualTo("Spring fleece haul (not saved) – Dawngauge");
  }

  @Test
  void arrowKeysChooseAnotherStop() {
    OpenWindow open = open(demo());
    List<Region> rows = open.rows();
    List<String> first = open.tireTable();
    open.focus(rows.get(0));
    open.keys(KeyCode.DOWN);
    open.until("the second stop is chosen", () -> open.chosen() == 1);
    assertThat(open.tireTable()).hasSameSizeAs(first).isNotEqualTo(first);
    assertThat(open.texts("chosen-stop")).containsExactly("Walsenburg CO");
    assertThat(open.field("Place").getText()).isEqualTo("Walsenburg CO");
    open.keys(KeyCode.UP);
    open.until("the first stop is chosen again", () -> open.chosen() == 0);
    assertThat(open.tireTable()).isEqualTo(first);
  }
}
