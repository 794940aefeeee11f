package dawngauge.tire;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a kind of tire says of itself on the sidewall, and the rows of its maker's table if they
 * were typed. Everything but the name may be missing.
 *
 * @param name how the rig's tires refer to it
 * @param size size text, such as "ST235/80R16"
 * @param tireClass class of the tire
 * @param construction radial or bias; from the size text where not typed
 * @param loadRange load range letter, such as "E"
 * @param loadIndexSingle load index for single fitment
 * @param loadIndexDual load index for dual fitment
 * @param speedSymbol speed symbol, such as "M"
 * @param ratedLoadSingle load the tire may carry alone at the rated pressure
 * @param ratedLoadDual load of each tire of a dual pair at the rated pressure
 * @param ratedPressure cold pressure at which the rated load holds
 * @param maxColdPressure highest cold pressure the sidewall allows; the rated one where not typed
 * @param rows rows of the maker's table
 */
@RecordBuilder
public record TireSpec(
    String name,
    @Nullable String size,
    @Nullable TireClass tireClass,
    @Nullable Construction construction,
    @Nullable String loadRange,
    @Nullable Integer loadIndexSingle,
    @Nullable Integer loadIndexDual,
    @Nullable String speedSymbol,
    @Nullable Entered<Mass> ratedLoadSingle,
    @Nullable Entered<Mass> ratedLoadDual,
    @Nullable Entered<GaugePressure> ratedPressure,
    @Nullable Entered<GaugePressure> maxColdPressure,
    @Nullable LoadInflationTable rows)
    implements TireSpecBuilder.With {

  /** Highest cold pressure the sidewall allows: as typed, else the rated pressure, else null. */
  public @Nullable GaugePressure sidewallLimit() {
    Entered<GaugePressure> typed = maxColdPressure != null ? maxColdPressure : ratedPressure;
    return typed == null ? null : typed.value();
  }

  /** Class as typed, else as the size text implies, else null. */
  public @Nullable TireClass classOrFromSize() {
    return tireClass != null ? tireClass : parsedSize().map(TireSize::impliedClass).orElse(null);
  }

  /** Construction as typed, else as in the size text, else null. */
  public @Nullable Construction constructionOrFromSize() {
    return construction != null
        ? construction
        : parsedSize().map(TireSize::construction).orElse(null);
  }

  /** What the size text says; empty where there is none or it cannot be read. */
  public Optional<TireSize> parsedSize() {
    return size == null ? Optional.empty() : TireSize.parse(size);
  }
}
