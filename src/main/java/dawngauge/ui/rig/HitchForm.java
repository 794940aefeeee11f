package dawngauge.ui.rig;

import dawngauge.field.RigFields;
import dawngauge.field.WeightFields;
import dawngauge.trip.Hitch;
import dawngauge.trip.Rig;
import dawngauge.trip.Trip;
import dawngauge.ui.common.PageDrafts;
import dawngauge.ui.fields.Cells;
import dawngauge.ui.fields.FormFields;
import java.util.List;
import java.util.Objects;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** The rig's own fields: its name, the compressor aboard, and the hitch. */
final class HitchForm extends VBox {

  private final FormFields book;

  HitchForm(FormFields book) {
    this.book = book;
    PageDrafts.mark(this, "hitch");
    getStyleClass().add("rig-section");
    Cells<Rig> rig =
        new Cells<>(
            book,
            RigFields.RIG,
            book::rig,
            List::of,
            () -> "the rig",
            changed -> book.trip().withRig(changed));
    getChildren()
        .add(
            FormFields.cells(
                rig.wideCell(RigFields.RIG_NAME),
                rig.cell(RigFields.COMPRESSOR_TOP),
                rig.cell(RigFields.COMPRESSOR_FLOW),
                rig.cell(RigFields.COMPRESSOR_FLOW_AT)));
    boolean there = book.rig().hitch() != null;
    getChildren()
        .add(
            book.headed(
                "rig-heading",
                () -> "Hitch",
                there
                    ? book.adding("Remove", "Remove the hitch", () -> with(null))
                    : book.adding(
                        "+ hitch", "Add a hitch", () -> with(WeightFields.HITCH.blank()))));
    if (there) {
      Cells<Hitch> hitch =
          new Cells<>(
              book, WeightFields.HITCH, this::hitch, List::of, () -> "the hitch", this::with);
      getChildren()
          .add(
              FormFields.cells(
                  hitch.cell(WeightFields.HITCH_KIND),
                  hitch.cell(WeightFields.HITCH_LOAD),
                  hitch.cell(WeightFields.HITCH_LEVER),
                  hitch.cell(WeightFields.HITCH_WEIGHED)));
    }
  }

  private Hitch hitch() {
    return Objects.requireNonNullElse(book.rig().hitch(), WeightFields.HITCH.blank());
  }

  private Trip with(@Nullable Hitch hitch) {
    return book.trip().withRig(RigFields.HITCH.with().apply(book.rig(), hitch));
  }
}
