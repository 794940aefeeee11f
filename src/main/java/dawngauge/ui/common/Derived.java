package dawngauge.ui.common;

import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.animation.PauseTransition;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.util.Duration;
import org.jspecify.annotations.Nullable;

/**
 * Something that follows from the trip and takes its time. It is computed beside the window: only
 * the answer to the newest question is taken, one question is worked on at a time, and what goes
 * wrong is said where the answer would stand. Work of over 300 ms says what it is and can be
 * stopped.
 *
 * @param <T> the answer
 */
public final class Derived<T> {

  /** What is answered sooner is not worth a word. */
  private static final Duration QUIET = Duration.millis(300);

  private final String doing;
  private final Consumer<T> taker;
  private final Consumer<String> none;
  private final Label text = new Label();
  private final ProgressBar bar = new ProgressBar();
  private final Button stop = new Button("Stop");
  private final HBox said = new HBox(8, text, bar, stop);
  private final PauseTransition quiet = new PauseTransition(QUIET);
  private Tasks.Job job = Tasks.none();
  private @Nullable Supplier<T> next;
  private boolean working;

  /**
   * Nothing asked yet.
   *
   * @param doing what is done, as "Looking for the fewest stops"
   * @param taker takes an answer on the window's thread
   */
  public Derived(String doing, Consumer<T> taker) {
    this(doing, taker, why -> {});
  }

  /**
   * Nothing asked yet.
   *
   * @param doing what is done, as "Looking for the fewest stops"
   * @param taker takes an answer on the window's thread
   * @param none told on the window's thread why there is no answer
   */
  public Derived(String doing, Consumer<T> taker, Consumer<String> none) {
    this.doing = doing;
    this.taker = taker;
    this.none = none;
    said.getStyleClass().add("derived");
    text.setWrapText(true);
    text.setMinWidth(60);
    bar.setPrefWidth(90);
    bar.setMinWidth(40);
    bar.managedProperty().bind(bar.visibleProperty());
    stop.getStyleClass().add("small-button");
    stop.setMinWidth(HBox.USE_PREF_SIZE);
    stop.managedProperty().bind(stop.visibleProperty());
    stop.setAccessibleText("Stop: " + doing);
    stop.setOnAction(event -> giveUp());
    said.managedProperty().bind(said.visibleProperty());
    said.setVisible(false);
    quiet.setOnFinished(event -> tell(doing + " …", true, "lesser"));
  }

  /** Says that it is worked on, or what went wrong; takes no room otherwise. */
  public HBox said() {
    return said;
  }

  /** Asks; an answer to an earlier question is not taken any more. */
  public void ask(Supplier<T> work) {
    if (working) {
      next = work;
    } else {
      start(work);
    }
  }

  /** Asks no more: the answer was found otherwise, or nobody wants it. Nothing stays said. */
  public void drop() {
    job.giveUp();
    quiet.stop();
    working = false;
    next = null;
    said.setVisible(false);
  }

  private void start(Supplier<T> work) {
    next = null;
    working = true;
    if (!bar.isVisible() || !said.isVisible()) {
      said.setVisible(false);
      quiet.playFromStart();
    }
    job =
        Tasks.work(going -> work.get(), answer -> ended(() -> taker.accept(answer)), this::failed);
  }

  /** Goes on with a question that came meanwhile; else the answer counts. */
  private void ended(Runnable taking) {
    working = false;
    Supplier<T> waiting = next;
    if (waiting != null) {
      start(waiting);
    } else {
      quiet.stop();
      said.setVisible(false);
      taking.run();
    }
  }

  private void failed(RuntimeException wrong) {
    String words = Texts.fault(doing, wrong) + " The next edit tries again.";
    ended(() -> tellNone(words, "field-error"));
  }

  private void giveUp() {
    drop();
    tellNone(doing + " was stopped; the next edit begins it anew.", "lesser");
  }

  private void tellNone(String words, String style) {
    tell(words, false, style);
    none.accept(words);
  }

  private void tell(String words, boolean going, String style) {
    text.setText(words);
    text.getStyleClass().setAll("label", style);
    bar.setVisible(going);
    stop.setVisible(going);
    said.setVisible(true);
  }
}
