package dawngauge.trip;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.TreadDepth;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One tire, wherever it is fitted; readings follow it.
 *
 * @param id how positions and readings refer to it
 * @param type name of its kind in the rig's list
 * @param dateCode date code or whole identification number, as read
 * @param tread least tread depth measured
 * @param heatFactor scales the modelled rise by running; 1 unless fitted from the user's readings
 * @param lossPerDay a known leak: gauge pressure lost a day at 68 °F at the present pressure
 * @param damage what was seen on it
 * @param heatRecord how warm it ran on earlier trips, or null where nothing is kept of that
 * @param remarks note and extras
 */
@RecordBuilder
public record Tire(
    String id,
    String type,
    @Nullable String dateCode,
    @Nullable Entered<TreadDepth> tread,
    double heatFactor,
    @Nullable Entered<GaugePressure> lossPerDay,
    Set<Damage> damage,
    @Nullable HeatRecord heatRecord,
    Remarks remarks)
    implements TireBuilder.With {

  /** What scales the modelled rise is no less than this. */
  public static final double LEAST_HEAT_FACTOR = 0.3;

  /** And no more than this. */
  public static final double MOST_HEAT_FACTOR = 3;

  /** What makes a tire unfit at sight (49 CFR 393.75(a)), and poor repairs. */
  public enum Damage {
    /** Flat. */
    FLAT("flat"),
    /** A leak that can be heard. */
    AUDIBLE_LEAK("audible leak"),
    /** Cord or ply material showing. */
    CORD_SHOWING("cord showing"),
    /** Tread or sidewall separating, or a bulge. */
    BULGE("bulge or separation"),
    /** A hole that was plugged from outside and never patched inside. */
    PLUG("plugged, not patched"),
    /** A repair outside of the tread. */
    SIDEWALL_REPAIR("sidewall repaired");

    private final String word;

    Damage(String word) {
      this.word = word;
    }

    /** Whether it is a poor repair, which holds for now, and nothing to be taken off for. */
    public boolean isRepair() {
      return this == PLUG || this == SIDEWALL_REPAIR;
    }

    /** Its name in files and sentences. */
    public String word() {
      return word;
    }
  }

  /** A tire without earlier trips. */
  public Tire(
      String id,
      String type,
      @Nullable String dateCode,
      @Nullable Entered<TreadDepth> tread,
      double heatFactor,
      @Nullable Entered<GaugePressure> lossPerDay,
      Set<Damage> damage,
      Remarks remarks) {
    this(id, type, dateCode, tread, heatFactor, lossPerDay, damage, null, remarks);
  }

  /** Copies the set. */
  public Tire {
    damage = Set.copyOf(damage);
  }
}
