package dawngauge.ui.common;

import javafx.application.Platform;
import javafx.scene.Scene;

/** Work for which the next picture does not wait. */
public final class Pulses {

  private Pulses() {}

  /** Has something done as soon as a scene was laid out next. */
  public static void after(Scene scene, Runnable work) {
    Runnable listener =
        new Runnable() {
          @Override
          public void run() {
            scene.removePostLayoutPulseListener(this);
            Platform.runLater(work);
          }
        };
    scene.addPostLayoutPulseListener(listener);
    Platform.requestNextPulse();
  }
}
