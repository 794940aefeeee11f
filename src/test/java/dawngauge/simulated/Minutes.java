package dawngauge.simulated;

/** What surrounds the rig, minute by minute, from ten hours before it first leaves. */
final class Minutes {

  private static final double BEFORE = 10 * Units.HOUR;
  private static final double MINUTE = 60;

  private final double from;
  private final double[] air;
  private final double[] pressure;
  private final double[] speed;
  private final double[] wind;
  private final double[] sky;
  private final double[] descent;
  private final boolean[] rain;

  Minutes(SimulatedHaul haul) {
    from = haul.stops().get(0).leave() - BEFORE;
    double to = haul.stops().get(haul.stops().size() - 1).leave();
    int count = (int) Math.round((to - from) / MINUTE) + 1;
    air = new double[count];
    pressure = new double[count];
    speed = new double[count];
    wind = new double[count];
    sky = new double[count];
    descent = new double[count];
    rain = new boolean[count];
    int stop = 0;
    for (int i = 0; i < count; i++) {
      double at = from + MINUTE * i;
      while (stop + 1 < haul.stops().size() && at >= haul.stops().get(stop + 1).arrive()) {
        stop++;
      }
      SimulatedHaul.Stop here = haul.stops().get(stop);
      if (at <= here.leave()) {
        stands(haul, here, i, at);
      } else {
        rolls(haul, stop, i, at);
      }
    }
  }

  private void stands(SimulatedHaul haul, SimulatedHaul.Stop here, int i, double at) {
    Weather weather = haul.weather();
    air[i] = weather.air(here.place(), at);
    pressure[i] = weather.pressure(here.place(), haul.elevation(here.place()), at);
    wind[i] = weather.wind(at);
    sky[i] = weather.sky(at);
  }

  private void rolls(SimulatedHaul haul, int leg, int i, double at) {
    SimulatedHaul.Stop last = haul.stops().get(leg);
    SimulatedHaul.Stop next = haul.stops().get(leg + 1);
    double time = next.arrive() - last.leave();
    double part = (at - last.leave()) / time;
    double height = haul.height(leg, part);
    double later = haul.height(leg, Math.min(1, part + MINUTE / time));
    air[i] = haul.weather().air(last.place(), next.place(), part, height, at);
    int near = part < 0.5 ? last.place() : next.place();
    pressure[i] = haul.weather().pressure(near, height, at);
    speed[i] = haul.legs().get(leg).meters() / time;
    descent[i] = Math.max(0, height - later) / MINUTE;
    rain[i] = haul.legs().get(leg).rain();
  }

  int count() {
    return air.length;
  }

  /** The minute of a time. */
  int of(double seconds) {
    return (int) Math.max(0, Math.min(air.length - 1, Math.round((seconds - from) / MINUTE)));
  }

  /** Temperature of the air in kelvin. */
  double air(int minute) {
    return air[minute];
  }

  /** Its pressure in pascal. */
  double pressure(int minute) {
    return pressure[minute];
  }

  /** Speed in m/s; 0 where it stands. */
  double speed(int minute) {
    return speed[minute];
  }

  /** Wind where it stands, m/s. */
  double wind(int minute) {
    return wind[minute];
  }

  /** By how much the surroundings are colder than the air, in kelvin. */
  double sky(int minute) {
    return sky[minute];
  }

  /** Meters that it goes down in a second. */
  double descent(int minute) {
    return descent[minute];
  }

  boolean rain(int minute) {
    return rain[minute];
  }
}
