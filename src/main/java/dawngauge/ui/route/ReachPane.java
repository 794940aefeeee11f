package dawngauge.ui.route;

import dawngauge.advice.Advice;
import dawngauge.ledger.ReachPage;
import dawngauge.page.Block;
import dawngauge.planner.Plan;
import dawngauge.quantity.UnitSystem;
import dawngauge.ui.common.Derived;
import dawngauge.ui.common.PageView;
import dawngauge.ui.common.TripDocument;
import java.util.List;
import javafx.scene.layout.VBox;

/** How far the air in the tires reaches from the chosen stop. */
final class ReachPane extends VBox {

  private static final String NOTHING =
      "Nothing is known of the way ahead: type departure, air and a cold reading first.";

  private final TripDocument document;
  private final PageView page = new PageView("How far the air reaches");
  private final Derived<List<Block>> blocks =
      new Derived<>("Looking how far the air reaches", page::show);

  ReachPane(TripDocument document) {
    this.document = document;
    getChildren().addAll(blocks.said(), page);
  }

  /** Shows what the air reaches from a stop, counted from 0. */
  void show(int stop) {
    Plan plan = document.shown();
    UnitSystem units = document.units();
    blocks.ask(() -> blocks(plan, stop, units));
  }

  private static List<Block> blocks(Plan plan, int stop, UnitSystem units) {
    Advice advice = plan.advice();
    return advice == null
        ? List.of(new Block.Note(Block.Weight.LESSER, NOTHING))
        : plan.reach(stop)
            .map(reach -> ReachPage.beside(plan.trip(), advice, reach, units))
            .orElse(List.of(new Block.Note(Block.Weight.LESSER, NOTHING)));
  }
}
