package dawngauge.ui.rig;

import dawngauge.field.Member;
import dawngauge.field.TireFields;
import dawngauge.field.VehicleFields;
import dawngauge.field.WeightFields;
import dawngauge.fitness.Defect;
import dawngauge.fitness.FindingKind;
import dawngauge.fitness.Severity;
import dawngauge.quantity.UnitSystem;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** What is found about the rig, at the head of the page: a link each to the field it is about. */
final class FindingLinks extends VBox {

  private static final int MOST = 6;

  private final Consumer<Defect> follow;

  /** Links; told which finding is followed. */
  FindingLinks(Consumer<Defect> follow) {
    this.follow = follow;
    getStyleClass().add("finding-links");
  }

  void show(RigFindings findings, UnitSystem units) {
    getChildren().clear();
    List<Defect> asked =
        findings.all().stream().filter(d -> d.severity() != Severity.KNOW).toList();
    for (Defect defect : asked.subList(0, Math.min(MOST, asked.size()))) {
      Hyperlink link =
          new Hyperlink(
              (defect.severity() == Severity.STOP ? "NO-GO: " : "")
                  + defect.where()
                  + ": "
                  + defect.what().in(units));
      link.setWrapText(true);
      link.setOnAction(event -> follow.accept(defect));
      getChildren().add(link);
    }
    if (asked.size() > MOST) {
      getChildren().add(new Label("and " + (asked.size() - MOST) + " more, at their places below"));
    }
  }

  /** The label of the field that a finding is about; empty where it is about none. */
  static String label(FindingKind code) {
    Member<?> member =
        switch (code) {
          case OLD_TIRE, DATE_CODE_UNREADABLE, NO_DATE_CODE -> TireFields.DATE_CODE;
          case TREAD_BELOW_LEGAL, TREAD_LOW, NO_TREAD -> TireFields.TREAD;
          case DAMAGE, POOR_REPAIR -> TireFields.DAMAGE;
          case NO_GAWR, AXLE_OVER_GAWR, RATINGS_BELOW_GAWR, NOTHING_TO_SPARE -> VehicleFields.GAWR;
          case NO_GVWR, VEHICLE_OVER_GVWR -> VehicleFields.GVWR;
          case HITCH_LOAD_UNKNOWN -> WeightFields.HITCH_LOAD;
          case NOT_WEIGHED -> WeightFields.PLATFORM_WEIGHT;
          case TARGET_NOT_USED -> VehicleFields.TARGET;
          case NO_LABEL, LABEL_OF_OTHER_TIRE, PRESSURE_ABOVE_LIMIT -> VehicleFields.LABEL_PRESSURE;
          case WHEEL_OVERLOADED -> VehicleFields.WHEEL_MAX_LOAD;
          case RIM_LIMIT_UNKNOWN, SPARE_WHEEL_UNKNOWN -> VehicleFields.WHEEL_MAX_PRESSURE;
          case SPEED_SYMBOL_UNKNOWN -> TireFields.SPEED_SYMBOL;
          case MIXED_TIRES, DUAL_DIAMETERS, TIRE_OVERLOADED, RATING_UNKNOWN, RATING_ASSUMED ->
              TireFields.TIRE_KIND;
          default -> null;
        };
    return member == null ? "" : member.label();
  }
}
