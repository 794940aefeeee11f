package dawngauge.contract;

import java.util.Map;

/** One page of the program, made to speak in {@link Saying}s. Key words alone count. */
interface Voice {

  /** Its name in the tables of the test. */
  String name();

  /** What it says of the tires of a trip. */
  Map<Place, Saying> of(Grid.Haul haul);
}
