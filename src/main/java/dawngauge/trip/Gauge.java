package dawngauge.trip;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Ratio;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A pressure gauge.
 *
 * @param name how readings refer to it
 * @param kind what it measures against
 * @param span highest figure on its scale
 * @param grade its accuracy as a part of the span (2 % for ASME B40.100 grade A), or null if not
 *     known
 * @param step smallest step that can be read and set
 * @param lastCheck day on which it was last held against a better one, or null if not known
 * @param remarks note and extras
 */
@RecordBuilder
public record Gauge(
    String name,
    Kind kind,
    @Nullable Entered<GaugePressure> span,
    @Nullable Entered<Ratio> grade,
    Entered<GaugePressure> step,
    @Nullable LocalDate lastCheck,
    Remarks remarks)
    implements GaugeBuilder.With {

  /** A gauge of which no check is known. */
  public Gauge(
      String name,
      Kind kind,
      @Nullable Entered<GaugePressure> span,
      @Nullable Entered<Ratio> grade,
      Entered<GaugePressure> step,
      Remarks remarks) {
    this(name, kind, span, grade, step, null, remarks);
  }

  /** What a gauge measures against. */
  public enum Kind {
    /** Open to the air around: shows pressure above it. */
    OPEN("open to the air"),
    /** Sealed or electronic: shows absolute pressure less 101.325 kPa, wherever it is. */
    SEA_LEVEL_SUBTRACTED("absolute, sea level subtracted");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** Its name in files. */
    public String word() {
      return word;
    }
  }
}
