package dawngauge.ui;

import dawngauge.planner.UserFolder;
import dawngauge.problem.Problem;
import dawngauge.trip.RigSwap;
import dawngauge.ui.common.Tasks;
import dawngauge.ui.common.Texts;
import dawngauge.ui.common.TripDocument;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;

/** Rigs that are kept under a name: keep this one, take one into the trip, remove one. */
final class KeptRigsMenu {

  private static final String ABOUT = "rig";

  private final TripDocument document;
  private final UserFolder userFolder;
  private final FileAsker asker;
  private final NoticeBar notices;
  private final EarlierTrips earlier;
  private final Menu menu = new Menu("Rigs");

  KeptRigsMenu(
      TripDocument document,
      UserFolder userFolder,
      FileAsker asker,
      NoticeBar notices,
      EarlierTrips earlier) {
    this.earlier = earlier;
    this.document = document;
    this.userFolder = userFolder;
    this.asker = asker;
    this.notices = notices;
    menu.setOnShowing(event -> fill());
    fill();
  }

  Menu menu() {
    return menu;
  }

  private void fill() {
    MenuItem keep = new MenuItem("Keep this rig…");
    keep.setOnAction(event -> keep());
    Menu take = new Menu("Take a kept rig");
    Menu remove = new Menu("Remove a kept rig");
    for (UserFolder.KeptRig rig : userFolder.rigs().value().orElse(List.of())) {
      MenuItem taken = new MenuItem(Texts.shortened(rig.name()) + "  (kept " + rig.kept() + ")");
      taken.setOnAction(event -> take(rig));
      take.getItems().add(taken);
      MenuItem removed = new MenuItem(Texts.shortened(rig.name()));
      removed.setOnAction(event -> userFolder.removeRig(rig.name()));
      remove.getItems().add(removed);
    }
    take.setDisable(take.getItems().isEmpty());
    remove.setDisable(remove.getItems().isEmpty());
    MenuItem compare = new MenuItem("Compare with its last trip…");
    compare.setOnAction(event -> earlier.compare());
    menu.getItems()
        .setAll(keep, new SeparatorMenuItem(), take, remove, new SeparatorMenuItem(), compare);
  }

  /** Keeps the trip's rig under a name that is asked for. */
  void keep() {
    asker
        .rigName(document.trip().rig().name())
        .ifPresent(
            name -> {
              var rig = document.trip().rig();
              Tasks.compute(
                  () -> userFolder.keepRig(name, rig),
                  problem ->
                      notices.tell(
                          ABOUT,
                          problem
                              .map(Problem::message)
                              .orElse("The rig is kept as “" + Texts.shortened(name) + "”.")),
                  wrong -> notices.tell(ABOUT, Texts.fault("Keeping the rig", wrong)));
            });
  }

  /** Takes a kept rig into the trip, in one step that can be undone. */
  void take(UserFolder.KeptRig kept) {
    RigSwap.Swapped swapped = RigSwap.to(document.trip(), kept.rig());
    document.edit(swapped.trip());
    long days =
        ChronoUnit.DAYS.between(
            kept.kept(),
            userFolder.clock().instant().atZone(userFolder.clock().getZone()).toLocalDate());
    String lost =
        swapped.lost().isEmpty()
            ? ""
            : " Gone with the rig before, undo brings it back: "
                + swapped.lost().stream().collect(Collectors.joining("; "))
                + " that this rig does not have.";
    notices.tellEdit(
        document,
        ABOUT,
        "“"
            + Texts.shortened(kept.name())
            + "” was kept "
            + (days <= 0 ? "today" : days == 1 ? "yesterday" : days + " days ago")
            + ": its scale tickets, tread and tires are as of then. Weigh it, look at the tires, and"
            + " read them cold before the start."
            + lost);
  }
}
