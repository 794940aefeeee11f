package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Trip;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The review in the window: findings, accounts, both unit systems, nothing to review. */
class ReviewWindowTest extends WindowTest {

  private OpenWindow review(Trip trip) {
    OpenWindow open = open(trip);
    open.keys(KeyCode.SHORTCUT, KeyCode.DIGIT6);
    open.until(
        "it is reviewed",
        () -> open.texts("review-headline").stream().anyMatch(text -> !text.isEmpty()));
    return open;
  }

  @Test
  void theLoggedHaulIsReviewedAndAnAccountAddsUpAsShownInBothUnitSystems() {
    Trip logged = planner().open(Path.of("demo-data", "spring-fleece-haul-logged.dawngauge")).get();
    OpenWindow open = review(logged);
    assertThat(open.texts("review-headline").get(0)).startsWith("t2r leaks steadily");
    choose(open, "trailer axle 2 right");
    open.until("its account is shown", () -> sum(open) == 10); // 72 to 73 psi, in tenths
    open.run(() -> open.document.unitsProperty().set(UnitSystem.SI));
    open.until(
        "in bar too",
        () -> open.texts("figure-line").stream().anyMatch(text -> text.endsWith(" bar")));
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
    for (String text : open.texts("figure-line")) {
      if (text.matches("[+-]\\d+\\.\\d+ (psi|bar)")) {
        sum += Long.parseLong(text.replaceAll("[^\\d-]", ""));
      }
    }
    return sum;
  }

  @Test
  void whatWasMeasuredIsAskedForAndTheReviewIsWritten(@TempDir Path here) {
    Trip logged = planner().open(Path.of("demo-data", "spring-fleece-haul-logged.dawngauge")).get();
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
    assertThat(open.texts("review-headline").get(0)).startsWith("Not enough cold readings");
  }
}
