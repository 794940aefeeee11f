package dawngauge.ledger;

import dawngauge.page.Block;
import java.util.ArrayList;
import java.util.List;

/** What is taken along of a stop: what to do, what each tire should read, the leg ahead. */
public final class TakenPage {

  private static final List<String> HEADS = List.of("tires", "arrives", "leaves", "set");

  private TakenPage() {}

  /** "2. Walsenburg CO". */
  public static String place(StopLine stop) {
    return ForecastPage.place(stop);
  }

  /** A stop without its name. */
  public static List<Block> of(StopLine stop) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Note(Block.Weight.MAIN, ForecastPage.when(stop)));
    blocks.add(ForecastPage.card(stop, ""));
    if (!stop.rows().isEmpty()) {
      blocks.add(
          Block.Table.ofFigures(
              "Tires at " + stop.place() + ": what 9 of 10 gauges show, what is set",
              HEADS,
              stop.rows().stream().map(TakenPage::row).toList()));
    }
    if (!stop.leg().isEmpty()) {
      blocks.add(new Block.Note(Block.Weight.PLAIN, "Then " + stop.leg()));
      stop.cautions().forEach(it -> blocks.add(new Block.Note(Block.Weight.CAUTION, it)));
    }
    return blocks;
  }

  private static List<String> row(StopLine.TireRow row) {
    return List.of(
        row.tires(),
        row.arriveRange().isEmpty() ? row.arriveReads() : row.arriveRange(),
        row.checkRange().isEmpty() ? row.checkReads() : row.checkRange(),
        row.sets() ? row.figure() + " " + row.when() : "");
  }
}
