package dawngauge.derive;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Time zones that GeoNames has wrong. Found by comparing the clocks of every place of the United
 * States, Canada and Mexico with the zone borders of OpenStreetMap; corrected where the law named
 * beside it decides.
 */
final class ZoneCorrections {

  /** Zone by law, for GeoNames' number, division and name of a place. Laws from memory. */
  private static final Map<String, String> ZONES =
      Map.ofEntries(
          // Knox County went back to eastern time in 2007 (72 FR 54371).
          Map.entry("4266307 US.IN Vincennes", "America/Indiana/Vincennes"),
          // Roane County: eastern time (49 CFR 71.5).
          Map.entry("4653999 US.TN Rockwood", "America/New_York"),
          // Mountain time since 1999 (64 FR 56705).
          Map.entry("5710035 US.NV West Wendover", "America/Denver"),
          // The municipality of Bahía de Banderas keeps central time since 2010.
          Map.entry("4029304 MX.14 El Colomo", "America/Bahia_Banderas"),
          Map.entry("4029309 MX.14 El Porvenir", "America/Bahia_Banderas"),
          Map.entry("4029308 MX.14 San José del Valle", "America/Bahia_Banderas"),
          Map.entry("4029337 MX.18 Las Jarretaderas", "America/Bahia_Banderas"),
          Map.entry("3985572 MX.18 Lo de Marcos", "America/Bahia_Banderas"),
          Map.entry("3985912 MX.18 San Juan de Abajo", "America/Bahia_Banderas"),
          // Border municipalities with the clocks of the United States (Ley de los Husos
          // Horarios, Diario Oficial de la Federación, 28 October 2022).
          Map.entry("4018761 MX.07 Allende", "America/Matamoros"),
          Map.entry("8858928 MX.07 Chula Vista", "America/Matamoros"),
          Map.entry("8858271 MX.07 Colonia Venustiano Carranza", "America/Matamoros"),
          Map.entry("3527116 MX.07 Hidalgo", "America/Matamoros"),
          Map.entry("4003937 MX.07 Jiménez", "America/Matamoros"),
          Map.entry("8858502 MX.07 Laguna del Rey (Químicas del Rey)", "America/Matamoros"),
          Map.entry("3998238 MX.07 Los Álamos", "America/Matamoros"),
          Map.entry("3995395 MX.07 Morelos", "America/Matamoros"),
          Map.entry("3995050 MX.07 Nava", "America/Matamoros"),
          Map.entry("3994534 MX.07 Ocampo", "America/Matamoros"),
          Map.entry("3988628 MX.07 Río Bravo", "America/Matamoros"),
          Map.entry("3987473 MX.07 San Carlos", "America/Matamoros"),
          Map.entry("3980123 MX.07 Villa Union", "America/Matamoros"),
          Map.entry("3980122 MX.07 Villa Unión", "America/Matamoros"),
          Map.entry("3979706 MX.07 Zaragoza", "America/Matamoros"),
          Map.entry("3530602 MX.28 Ciudad Camargo", "America/Matamoros"),
          Map.entry("3483393 MX.28 Ciudad Gustavo Díaz Ordaz", "America/Matamoros"),
          Map.entry("3530590 MX.28 Ciudad Miguel Alemán", "America/Matamoros"),
          Map.entry("3520271 MX.28 Ciudad Río Bravo", "America/Matamoros"),
          Map.entry("3530383 MX.28 Comales", "America/Matamoros"),
          Map.entry("3528341 MX.28 El Realito", "America/Matamoros"),
          Map.entry("3524051 MX.28 Los Guerra", "America/Matamoros"),
          Map.entry("3523222 MX.28 Mier", "America/Matamoros"),
          Map.entry("3522617 MX.28 Nueva Ciudad Guerrero", "America/Matamoros"),
          Map.entry("3522525 MX.28 Nuevo Progreso", "America/Matamoros"),
          Map.entry("3483310 MX.28 Santa Apolonia", "America/Matamoros"),
          Map.entry("3514886 MX.28 Valadeces", "America/Matamoros"),
          Map.entry("3514868 MX.28 Valle Hermoso", "America/Matamoros"),
          // The Navajo Nation keeps daylight saving time.
          Map.entry("7261646 US.AZ LeChee", "America/Denver"));

  private ZoneCorrections() {}

  /**
   * The rows with their zones mended; refuses a correction that meets no row or changes nothing.
   */
  static List<SourceRow> applied(List<SourceRow> rows) {
    Set<String> open = new TreeSet<>(ZONES.keySet());
    List<SourceRow> mended = rows.stream().map(row -> mended(row, open)).toList();
    if (!open.isEmpty()) {
      throw new IllegalStateException("corrections without use: " + open);
    }
    return mended;
  }

  private static SourceRow mended(SourceRow row, Set<String> open) {
    String key = row.number() + " " + row.division() + " " + row.name();
    String zone = ZONES.getOrDefault(key, row.zone());
    if (zone.equals(row.zone())) {
      return row;
    }
    open.remove(key);
    return row.withZone(zone);
  }
}
