package dawngauge.ui.rig;

import dawngauge.ledger.DealerPage;
import dawngauge.planner.Planner;
import dawngauge.report.PageText;
import dawngauge.trip.AxleRef;
import dawngauge.ui.common.PageView;
import dawngauge.ui.fields.FormFields;
import dawngauge.weights.TireNeed;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** What the tires are and have to carry, to read out or hand over to a tire dealer. */
final class DealerCard extends VBox {

  private static final String ALL = "all axles";

  private final FormFields book;
  private final Planner planner;
  private final ChoiceBox<String> axle = new ChoiceBox<>();
  private final PageView page = new PageView("For the tire dealer");

  private DealerCard(FormFields book, Planner planner) {
    this.book = book;
    this.planner = planner;
    getStyleClass().add("rig-part");
    axle.setAccessibleText("Axle on the dealer's card");
    axle.setOnAction(event -> show());
    Button copy = new Button("Copy");
    copy.getStyleClass().add("small-button");
    copy.setAccessibleText("Copy the dealer's card as text");
    copy.setOnAction(event -> copy());
    Label print = new Label("To print it: Paper, Dealer's card.");
    print.getStyleClass().add("lesser");
    HBox bar = new HBox(8, new Label("Tires of"), axle, copy, print);
    bar.setAlignment(Pos.CENTER_LEFT);
    getChildren().addAll(bar, page);
    book.onRefresh(this::refresh);
  }

  /** The card under its heading. */
  static Fold fold(FormFields book, Set<String> open, Planner planner) {
    return new Fold(
        book,
        open,
        "dealer",
        () -> "Dealer's card",
        () -> "size, load a tire carries, pressure asked for",
        () -> new DealerCard(book, planner));
  }

  private void refresh() {
    List<String> items = new ArrayList<>(List.of(ALL));
    ScaleForm.axles(book.rig()).forEach(ref -> items.add(ref.words()));
    if (!axle.getItems().equals(items)) {
      axle.getItems().setAll(items);
      axle.setValue(ALL);
    }
    show();
  }

  private void show() {
    page.show(DealerPage.blocks(book.trip(), needs(), book.units()));
  }

  private List<TireNeed> needs() {
    List<TireNeed> all = planner.plan(book.trip()).tireNeeds();
    @Nullable AxleRef chosen =
        ScaleForm.axles(book.rig()).stream()
            .filter(ref -> ref.words().equals(axle.getValue()))
            .findFirst()
            .orElse(null);
    return chosen == null ? all : all.stream().filter(need -> need.axle().equals(chosen)).toList();
  }

  private void copy() {
    ClipboardContent content = new ClipboardContent();
    content.putString(PageText.of(DealerPage.of(book.trip(), needs(), book.units()), false));
    Clipboard.getSystemClipboard().setContent(content);
  }
}
