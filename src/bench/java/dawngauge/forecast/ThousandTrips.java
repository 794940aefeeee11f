package dawngauge.forecast;

import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.settings.SettingsFile;
import dawngauge.testdata.BenchTrip;
import dawngauge.trip.Trip;
import java.util.List;

/** Plans a thousand trips one after another; to be run with little memory (-Xmx64m). */
public final class ThousandTrips {

  private ThousandTrips() {}

  /** Prints how many stops were planned and how much memory is in use at the end. */
  public static void main(String[] args) {
    Planner planner = new Planner(SettingsFile.defaults(), List.of());
    long stops = 0;
    for (int i = 0; i < 1000; i++) {
      Trip trip = BenchTrip.of(30 + i % 21, 1);
      Plan planned = planner.plan(trip);
      stops += planned.advice() == null ? 0 : planned.advice().stops().size();
    }
    Runtime runtime = Runtime.getRuntime();
    long used = (runtime.totalMemory() - runtime.freeMemory()) >> 20;
    System.out.println(
        "1000 trips, "
            + stops
            + " stops, "
            + used
            + " MiB in use, at most "
            + (runtime.maxMemory() >> 20));
  }
}
