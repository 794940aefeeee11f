package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.ui.common.Derived;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import org.junit.jupiter.api.Test;

/** What follows from a trip: only the newest answer counts, failures are seen, work can stop. */
class DerivedTest extends WindowTest {

  private final List<String> taken = new CopyOnWriteArrayList<>();

  private Derived<String> derived() {
    open(demo());
    return OpenWindow.onToolkit(() -> new Derived<>("Adding up", taken::add));
  }

  private static String after(CountDownLatch gate, String answer) {
    try {
      gate.await();
      return answer;
    } catch (InterruptedException stopped) {
      throw new IllegalStateException(stopped);
    }
  }

  private static String said(Derived<?> derived) {
    return OpenWindow.onToolkit(
        () ->
            derived.said().isVisible()
                ? ((Label) derived.said().getChildren().get(0)).getText()
                : "");
  }

  /** Three questions while the first is worked on: the second is never begun, the third counts. */
  @Test
  void onlyTheNewestAnswerIsTaken() {
    OpenWindow open = open(demo());
    Derived<String> derived = derived();
    CountDownLatch gate = new CountDownLatch(1);
    List<String> begun = new CopyOnWriteArrayList<>();
    open.run(
        () -> {
          for (String question : List.of("a", "b", "c")) {
            derived.ask(
                () -> {
                  begun.add(question);
                  return after(gate, question);
                });
          }
        });
    open.until("it says what it does", () -> "Adding up …".equals(said(derived)));
    gate.countDown();
    open.until("the answer is there", () -> !taken.isEmpty());
    assertThat(taken).containsExactly("c");
    assertThat(begun).containsExactly("a", "c");
    assertThat(said(derived)).isEmpty();
  }

  @Test
  void whatGoesWrongIsSaidWhereTheAnswerWouldStand() {
    OpenWindow open = open(demo());
    Derived<String> derived = derived();
    open.run(
        () ->
            derived.ask(
                () -> {
                  throw new IllegalStateException("planted");
                }));
    open.until("it is said", () -> said(derived).contains("planted"));
    assertThat(taken).isEmpty();
    open.run(() -> derived.ask(() -> "well"));
    open.until("the next is taken", () -> taken.equals(List.of("well")));
    assertThat(said(derived)).isEmpty();
  }

  @Test
  void workCanBeStopped() {
    OpenWindow open = open(demo());
    Derived<String> derived = derived();
    CountDownLatch gate = new CountDownLatch(1);
    open.run(() -> derived.ask(() -> after(gate, "late")));
    open.until("it says what it does", () -> "Adding up …".equals(said(derived)));
    open.run(() -> ((Button) derived.said().getChildren().get(2)).fire());
    assertThat(said(derived)).contains("stopped");
    gate.countDown();
    open.run(() -> derived.ask(() -> "later"));
    open.until("the next is taken", () -> taken.contains("later"));
    assertThat(taken).containsExactly("later");
  }
}
