package dawngauge.trip;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A spare wheel.
 *
 * @param tire id of its tire
 * @param serves axles it is meant for; empty means every axle of single wheels
 * @param wheelMaxPressure highest cold pressure its wheel allows
 * @param wheelMaxLoad highest load its wheel may carry
 * @param remarks note and extras
 */
@RecordBuilder
public record Spare(
    String tire,
    List<AxleRef> serves,
    @Nullable Entered<GaugePressure> wheelMaxPressure,
    @Nullable Entered<Mass> wheelMaxLoad,
    Remarks remarks)
    implements SpareBuilder.With {

  /** Copies the list. */
  public Spare {
    serves = List.copyOf(serves);
  }
}
