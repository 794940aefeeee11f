package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.scene.control.Label;
import org.junit.jupiter.api.Test;

/** A notice about an edit is seen on its page alone, one of the window on all. */
class NoticeBarTest extends WindowTest {

  private static List<String> seen(NoticeBar notices) {
    return notices.lookupAll(".notice").stream().map(node -> ((Label) node).getText()).toList();
  }

  @Test
  void noticesBelongToTheirPage() {
    OpenWindow open = open(demo());
    open.run(
        () -> {
          NoticeBar notices = new NoticeBar();
          notices.turnTo("route");
          notices.tellHere("edit", "refused");
          notices.tell("file", "saved elsewhere");
          assertThat(seen(notices)).containsExactly("refused", "saved elsewhere");
          notices.turnTo("rig");
          assertThat(seen(notices)).containsExactly("saved elsewhere");
          notices.clear("file");
          assertThat(notices.isVisible()).isFalse();
          notices.turnTo("route");
          assertThat(seen(notices)).containsExactly("refused");
          assertThat(notices.isVisible()).isTrue();
        });
  }
}
