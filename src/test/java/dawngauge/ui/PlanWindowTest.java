package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.advice.Advice;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.PlanChoices;
import java.util.List;
import java.util.Objects;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.TextField;
import javafx.scene.control.TitledPane;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;

/** The adjustment plan in the window: seen, followed, changed by hand and undone. */
class PlanWindowTest extends WindowTest {

  private OpenWindow planned() {
    OpenWindow open = open(demo());
    open.keys(KeyCode.SHORTCUT, KeyCode.DIGIT4);
    open.until("the plan is there", () -> !open.texts("page-main").isEmpty());
    return open;
  }

  private static ChoiceBox<?> wish(OpenWindow open, String stop) {
    return open.nodes(ChoiceBox.class, box -> spoken(box).contains(stop)).get(0);
  }

  private static String spoken(ChoiceBox<?> box) {
    return String.valueOf(box.getAccessibleText());
  }

  @Test
  void thePlanNamesItsStopsAndWhyNoneIsBetter() {
    OpenWindow open = planned();
    assertThat(open.texts("page-main"))
        .containsExactly("2 stops with gauge and hose: Dalhart TX and Graham TX.");
    assertThat(open.texts("plan-used")).containsExactly("5. Dalhart TX", "10. Graham TX");
    assertThat(open.texts("plan-line"))
        .anySatisfy(
            line ->
                assertThat(line)
                    .startsWith("Add: trailer axle 2 right (t2r) to 89 psi on arrival (83 at ")
                    .endsWith(", 80 cold)"))
        .anySatisfy(
            line ->
                assertThat(line)
                    .startsWith("Let out, only cold: trailer axle 1 left (t1l), trailer"));
    assertThat(open.texts("lesser")).anyMatch(text -> text.contains("Never let air out of a warm"));
  }

  @Test
  void followedByKeyboardItDecidesWhereAdjustStandsAndIsUndone() {
    OpenWindow open = planned();
    List<String> marks = open.column("mark");
    CheckBox follow =
        open.nodes(CheckBox.class, box -> "Follow this plan".equals(box.getText())).get(0);
    open.until("the keyboard is on it", follow::isFocused);
    open.keys(KeyCode.SPACE);
    open.until("it is followed", () -> open.document.trip().plan().followed());
    List<String> followed = open.column("mark");
    assertThat(reasons(open)).anyMatch(text -> text.contains("by the plan that you follow"));
    assertThat(followed.stream().filter("adjust"::equals)).hasSize(2);
    open.keys(KeyCode.SHORTCUT, KeyCode.Z);
    open.until("it is undone", () -> open.column("mark").equals(marks));
    assertThat(reasons(open)).noneMatch(text -> text.contains("by the plan that you follow"));
    assertThat(follow.isSelected()).isFalse();
  }

  @Test
  void aStopIsRuledOutAndTakenBack() {
    OpenWindow open = planned();
    open.run(() -> wish(open, "Dalhart").getSelectionModel().select(2));
    open.until(
        "another stop takes its place", () -> !open.texts("plan-used").contains("5. Dalhart TX"));
    assertThat(open.document.trip().plan().wishes())
        .extracting(PlanChoices.Wish::kind)
        .containsExactly(PlanChoices.Kind.NOT_HERE);
    open.run(() -> wish(open, "Dalhart").getSelectionModel().select(0));
    open.until("it is back", () -> open.texts("plan-used").contains("5. Dalhart TX"));
    assertThat(open.document.trip()).isEqualTo(demo());
  }

  @Test
  void aFigureIsChosenByHandOrRefused() {
    OpenWindow open = planned();
    open.write("Figure for t2r at 5. Dalhart TX", "82");
    open.keys(KeyCode.ENTER);
    open.until(
        "it is the plan's",
        () ->
            open.texts("plan-line").stream()
                .anyMatch(
                    line ->
                        line.matches("Add: .* \\(t2r\\) to [0-9]+ psi on arrival \\(82 at .*")));
    open.write("Figure for t2r at 5. Dalhart TX", "95");
    open.keys(KeyCode.ENTER);
    open.until(
        "it is refused",
        () ->
            open.texts("figure-line").stream()
                .anyMatch(line -> line.contains("the 95 psi that you chose at Dalhart TX is not")));
    assertThat(open.texts("plan-line"))
        .anySatisfy(line -> assertThat(line).contains("t2r", "on arrival (83 at "));
  }

  @Test
  void eachFieldOfThePlanSaysWhatItIsFor() {
    OpenWindow open = planned();
    for (ChoiceBox<?> box : open.nodes(ChoiceBox.class, box -> true)) {
      assertThat(spoken(box)).isNotBlank().isNotEqualTo("null");
    }
    for (TextField field : open.nodes(TextField.class, field -> true)) {
      assertThat(field.getAccessibleText()).isNotBlank();
    }
  }

  private static List<String> reasons(OpenWindow open) {
    Advice advice = Objects.requireNonNull(open.document.planned().advice());
    return advice.stops().stream()
        .flatMap(stop -> stop.tires().stream())
        .flatMap(tire -> tire.reasons().stream())
        .map(reason -> reason.text().in(UnitSystem.US))
        .toList();
  }

  @Test
  void whatAReadingMeansIsToldBesideTheFiguresToSet() {
    OpenWindow open = open(demo());
    TitledPane pane =
        open.nodes(TitledPane.class, known -> known.getText().startsWith("Set a tire here")).get(0);
    open.focusStop(0);
    open.keys(KeyCode.DOWN);
    open.until("the second stop is chosen", () -> open.chosen() == 1);
    open.run(() -> pane.setExpanded(true));
    open.until("the figures are there", () -> !open.texts("card-do").isEmpty());
    assertThat(open.texts("card-do")).contains("Cold: 60 psi");
    assertThat(open.texts("figure-line"))
        .anySatisfy(line -> assertThat(line).contains("never let air out"));
    open.write("Reading to be explained", "69");
    open.keys(KeyCode.ENTER);
    open.until(
        "the reading is explained",
        () ->
            open.texts("figure-line").stream()
                .anyMatch(line -> line.startsWith("69 psi warm is 61 psi cold")));
    assertThat(open.document.dirtyProperty().get()).as("nothing of it is an edit").isFalse();
  }
}
