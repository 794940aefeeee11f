package dawngauge.geo;

import dawngauge.quantity.Elevation;
import java.time.ZoneId;
import java.util.Locale;

/**
 * A place of the gazetteer: a town, or a pass.
 *
 * @param name its name, accents included
 * @param state state, province or other first division: its postal code in the United States and
 *     Canada, its name elsewhere; empty where there is none
 * @param country two letters by ISO 3166-1
 * @param coordinate its middle; of a pass its highest point
 * @param elevation of the ground at the coordinate, rough: a town spreads over slopes
 * @param zone the time zone of its clocks
 * @param population inhabitants, by the last figure known to the source; 0 of a pass
 * @param kind what it is
 */
public record Place(
    String name,
    String state,
    String country,
    Coordinate coordinate,
    Elevation elevation,
    ZoneId zone,
    int population,
    Kind kind) {

  /** What a place is. */
  public enum Kind {
    /** A populated place. */
    TOWN,
    /** A pass, its height within 60 m of a terrain model. */
    PASS,
    /** A pass, its height within 130 m of one, to be shown as "about". */
    PASS_ABOUT
  }

  /**
   * Name and state, and elsewhere the country too: "Dodge City KS", "Saltillo, Coahuila, Mexico".
   */
  public String label() {
    if (country.equals("US") || country.equals("CA")) {
      return name + " " + state;
    }
    return name + (state.isEmpty() ? "" : ", " + state) + ", " + countryName();
  }

  /** Name, state and country wherever it is: "Dodge City KS, United States". */
  public String labelWithCountry() {
    return label().endsWith(", " + countryName()) ? label() : label() + ", " + countryName();
  }

  private String countryName() {
    return new Locale("", country).getDisplayCountry(Locale.ENGLISH);
  }
}
