package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.ui.common.Tasks;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;

/** Long work beside the window. */
class TasksTest extends WindowTest {

  private final List<String> told = new CopyOnWriteArrayList<>();

  @Test
  void theWindowAnswersWhileLongWorkGoesOnAndTakesItsResult() {
    OpenWindow open = open(demo());
    CountDownLatch gate = new CountDownLatch(1);
    Tasks.work(job -> waited(gate), told::add, wrong -> told.add("wrong"));
    open.press(open.buttons("Remove").get(0));
    assertThat(open.document.dirtyProperty().get()).isTrue();
    assertThat(told).isEmpty();
    gate.countDown();
    open.until("the result is there", () -> told.equals(List.of("done")));
  }

  @Test
  void workThatWasGivenUpTellsNothing() {
    OpenWindow open = open(demo());
    CountDownLatch gate = new CountDownLatch(1);
    Tasks.Job job = Tasks.work(going -> waited(gate), told::add, wrong -> told.add("wrong"));
    job.giveUp();
    gate.countDown();
    Tasks.work(going -> "later", told::add, wrong -> told.add("wrong"));
    open.until("the other is there", () -> told.contains("later"));
    open.run(() -> {}); // whatever the first one wanted to tell is behind this
    assertThat(told).containsExactly("later");
  }

  @Test
  void whatGoesWrongIsTold() {
    OpenWindow open = open(demo());
    Tasks.work(
        job -> {
          throw new IllegalStateException("planted");
        },
        result -> told.add("done"),
        wrong -> told.add(String.valueOf(wrong.getMessage())));
    open.until("it is told", () -> told.equals(List.of("planted")));
  }

  private static String waited(CountDownLatch gate) {
    try {
      gate.await();
      return "done";
    } catch (InterruptedException stopped) {
      throw new IllegalStateException(stopped);
    }
  }
}
