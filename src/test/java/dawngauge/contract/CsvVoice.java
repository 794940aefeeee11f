package dawngauge.contract;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.LinkedHashMap;
import java.util.Map;

/** The forecast as comma-separated values. */
final class CsvVoice implements Voice {

  private static final double WITHIN = 0.0005;

  @Override
  public String name() {
    return "forecast table";
  }

  @Override
  public Map<Place, Saying> of(Grid.Haul haul) {
    Map<Place, Saying> said = new LinkedHashMap<>();
    String text = Page.of(haul, "forecast", "--format", "csv");
    for (NamedCsvRecord row : CsvReader.builder().ofNamedCsvRecord(text)) {
      int stop = Integer.parseInt(row.getField("stop")) - 1;
      Saying saying = Saying.NOTHING.with(Field.HOLD, row.getField("mark").equals("hold"));
      saying = figure(saying, Field.FLOOR, row, "floor_psi");
      saying = figure(saying, Field.AIM, row, "aim_psi");
      saying = figure(saying, Field.CEILING, row, "ceiling_psi");
      saying = figure(saying, Field.SET_COLD, row, "setCold_psi");
      saying = figure(saying, Field.SET_ON_ARRIVAL, row, "setOnArrival_psi");
      boolean sets = saying.says(Field.SET_COLD) || saying.says(Field.SET_ON_ARRIVAL);
      saying = saying.with(Field.SETS, sets);
      if (row.findField("loadBasis").filter(basis -> !basis.isEmpty()).isPresent()) {
        saying = saying.with(Field.LOAD_BASIS, LoadBasis.of(row.getField("loadBasis")));
      }
      said.put(new Place(row.getField("tire"), stop), saying);
    }
    return said;
  }

  private static Saying figure(Saying saying, Field field, NamedCsvRecord row, String name) {
    return row.findField(name)
        .filter(cell -> !cell.isEmpty())
        .map(cell -> saying.with(field, new Figure(Double.parseDouble(cell), WITHIN)))
        .orElse(saying);
  }
}
