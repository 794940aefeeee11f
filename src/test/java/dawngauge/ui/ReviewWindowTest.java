package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Trip;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.GridPane;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The review in the window: findings, accounts, both unit systems, nothing to review. */
class ReviewWindowTest extends WindowTest {

  private OpenWindow review(Trip trip) {
    OpenWindow open = open(trip);
    open.keys(KeyCode.SHORTCUT, KeyCode.DIGIT6);
    open.until(
        "it is reviewed",
        () -> !open.texts("card-title").isEmpty() || !open.texts("page-main").isEmpty());
    return open;
  }

  @Test
  void theLoggedHaulIsReviewedAndAnAccountAddsUpAsShownInBothUnitSystems() {
    Trip logged =
        planner().store().open(Path.of("demo-data", "spring-fleece-haul-logged.dawngauge")).get();
    OpenWindow open = review(logged);
    assertThat(open.texts("card-title").get(0))
        .startsWith("Trailer axle 2 right (t2r) leaks steadily");
    choose(open, "trailer axle 2 right");
    open.until("its account is shown", () -> sum(open) == 10); // 72 to 73 psi, in tenths
    open.run(() -> open.document.unitsProperty().set(UnitSystem.SI));
    open.until("in bar too", () -> open.texts("table-head").contains("bar"));
    open.until("it adds up there too", () -> sum(open) == 7); // 4.96 to 5.03 bar, in hundredths
  }

  private static void choose(OpenWindow open, String position) {
    open.run(
        () -> {
          @SuppressWarnings("unchecked")
          ChoiceBox<String> box =
              (ChoiceBox<String>)
                  open.nodes(
                          ChoiceBox.class, b -> "Tire of the account".equals(b.getAccessibleText()))
                      .get(0);
          box.setValue(position);
        });
  }

  /** The parts of the account as shown, in the smallest step shown. */
  private static long sum(OpenWindow open) {
    long sum = 0;
    for (GridPane account : open.nodes(GridPane.class, ReviewWindowTest::isAccount)) {
      for (Node cell : account.getChildren()) {
        String text = cell instanceof Label label ? label.getText() : "";
        if (text.matches("[+-]\\d+\\.\\d+")) {
          sum += Long.parseLong(text.replaceAll("[^\\d-]", ""));
        }
      }
    }
    return sum;
  }

  private static boolean isAccount(GridPane grid) {
    return "What made the difference between two readings".equals(grid.getAccessibleText());
  }

  @Test
  void whatWasMeasuredIsAskedForAndTheReviewIsWritten(@TempDir Path here) {
    Trip logged =
        planner().store().open(Path.of("demo-data", "spring-fleece-haul-logged.dawngauge")).get();
    OpenWindow open = review(logged);
    open.weather.time(Instant.parse("2027-04-09T12:00:00Z"));
    open.run(
        () ->
            open.nodes(Button.class, b -> b.getText().startsWith("Ask what was measured"))
                .get(0)
                .fire());
    open.until(
        "it is shown",
        () ->
            open.texts("figure-line").stream()
                .anyMatch(text -> text.contains("measured by Test service")));
    assertThat(open.texts("figure-line"))
        .anyMatch(text -> text.contains("Test service measured") && text.contains("colder"));
    Path file = here.resolve("review.pdf");
    open.answers.file = Optional.of(file);
    open.choosePaper("Review of the trip, A4…");
    open.until("it is there", () -> Files.exists(file));
    assertThat(open.answers.asked).contains("write review Spring fleece haul, logged review.pdf");
  }

  @Test
  void aTripThatWasReadOnceSaysWhatIsMissing() {
    OpenWindow open = review(demo());
    assertThat(open.texts("page-main").get(0)).startsWith("Not enough cold readings");
  }
}
