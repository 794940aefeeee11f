package dawngauge.trip;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.quantity.Ratio;
import dawngauge.tire.TireSpec;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One axle: what the certification label says of it, what its wheels allow, which tires it has.
 *
 * @param dual whether each side carries a pair of wheels
 * @param gawr gross axle weight rating from the label
 * @param label tire sizes with cold pressure that the label gives for this axle
 * @param wheelMaxPressure highest cold pressure its wheels allow
 * @param wheelMaxLoad highest load one of its wheels may carry
 * @param valveMaxPressure highest cold pressure its valves allow
 * @param leftShare part of the axle's load on the left side, if known
 * @param target load-based cold pressure chosen by the user in place of the label's, or null
 * @param fitted tire ids by slot at the start of the trip
 * @param remarks note and extras
 */
@RecordBuilder
public record Axle(
    boolean dual,
    @Nullable Entered<Mass> gawr,
    List<LabelFitment> label,
    @Nullable Entered<GaugePressure> wheelMaxPressure,
    @Nullable Entered<Mass> wheelMaxLoad,
    @Nullable Entered<GaugePressure> valveMaxPressure,
    @Nullable Entered<Ratio> leftShare,
    @Nullable Entered<GaugePressure> target,
    Map<WheelSlot, String> fitted,
    Remarks remarks)
    implements AxleBuilder.With {

  /** Copies list and map. */
  public Axle {
    label = List.copyOf(label);
    fitted = Map.copyOf(fitted);
  }

  /** The first line of the label that speaks for a tire; empty where none does. */
  public Optional<LabelFitment> labelFor(TireSpec spec) {
    return label.stream().filter(line -> line.speaksFor(spec)).findFirst();
  }

  /** Tires on one side. */
  public int tiresPerSide() {
    return dual ? 2 : 1;
  }
}
