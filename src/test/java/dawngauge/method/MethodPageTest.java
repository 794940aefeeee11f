package dawngauge.method;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.io.IOException;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The page is enough: what its sections 1 to 12 say, worked again, gives every figure of the
 * forecast. What is set, from section 13 on, is taken from the program; other tests hold it.
 */
class MethodPageTest {
  private static final double PSI = 6894.757;
  private static final double POUND = 0.45359237;

  /** In psi; most of it is that sunrise is computed otherwise here. */
  private static final double NEAR_PRESSURE = 0.005;

  /** The figure set at the check. */
  private static final String SET = "setAt";

  private static final double NEAR_LOAD = 0.02;
  private static final double NEAR_RATIO = 0.0001;

  private final Map<String, Double> worst = new LinkedHashMap<>();
  private final List<String> off = new ArrayList<>();
  private int compared;

  @ParameterizedTest
  @MethodSource("dawngauge.method.Haul#all")
  void everyFigureIsThatOfThePage(Haul haul) throws IOException {
    Trip trip = haul.trip();
    JsonNode told = haul.forecast();
    Times times = new Times(trip);
    Samples samples = new Samples(trip, times);
    Map<WheelPosition, OneTire> tires = new LinkedHashMap<>();
    for (WheelPosition position : trip.rig().positions()) {
      double[] set = new double[times.arrive.length];
      for (int i = 0; i < set.length; i++) {
        JsonNode figure = tire(told, i, position).get(SET);
        set[i] = figure.isNull() ? Double.NaN : figure.get("psi").asDouble() * PSI;
      }
      tires.put(position, new OneTire(trip, times, samples, position, set));
    }
    for (int i = 0; i < times.arrive.length; i++) {
      JsonNode stop = told.get("stops").get(i);
      compareTime(times.arrive[i], stop.get("arrive"), i);
      compareTime(times.leave[i], stop.get("leave"), i);
      for (WheelPosition position : tires.keySet()) {
        compare(trip, times, i, position, tires, tire(told, i, position));
      }
    }
    assertThat(off).as("largest differences: %s", worst).isEmpty();
    assertThat(compared).isGreaterThan(1000);
  }

  private static JsonNode tire(JsonNode told, int stop, WheelPosition position) {
    for (JsonNode tire : told.get("stops").get(stop).get("tires")) {
      if (tire.get("position").asText().equals(position.words())) {
        return tire;
      }
    }
    throw new IllegalArgumentException(position.words());
  }

  private void compare(
      Trip trip,
      Times times,
      int i,
      WheelPosition position,
      Map<WheelPosition, OneTire> tires,
      JsonNode told) {
    OneTire.AtStop at = at(tires, position, i);
    Weights weights = new Weights(trip);
    FloorAimCeiling limits = new FloorAimCeiling(trip.rig(), weights);
    Curves curves = new Curves(trip.rig(), position);
    int leg = Math.min(i, times.arrive.length - 2);
    double top = times.top[leg];
    WheelPosition mate = new WheelPosition(position.axle(), position.slot().mate());
    OneTire.Moment beside = weights.isFlat(mate) ? null : at(tires, mate, i).leaving();
    Weights.Load load = weights.carried(i, position).times(part(at.leaving(), beside));
    TwoChances chances = new TwoChances(curves, load, limits.forSpeed(i, position, top));
    String where = i + 1 + " " + told.get("tire").asText();
    OneTire.Moment arrival = at.arrival();
    pressure(where, "arriveReads", arrival == null ? null : arrival.reading(), told);
    pressure(where, "arriveReadsSigma", arrival == null ? null : arrival.readingSigma(), told);
    pressure(where, "arriveSettled", arrival == null ? null : arrival.settled(), told);
    OneTire.Moment leaving = at.leaving();
    pressure(where, "leaveReads", leaving == null ? null : leaving.reading(), told);
    pressure(where, "leaveReadsSigma", leaving == null ? null : leaving.readingSigma(), told);
    pressure(where, "leaveSettled", leaving == null ? null : leaving.settled(), told);
    OneTire.Moment low = at.low();
    pressure(where, "lowestAhead", low == null ? null : low.judged(), told);
    pressure(where, "floor", known(chances.floor()), told);
    pressure(where, "aim", limits.aim(i, position, top), told);
    pressure(where, "ceiling", limits.ceiling(position), told);
    compare(where, "load", chances.load().mean() / POUND, told, "lb", NEAR_LOAD);
    ratio(where, "margin", Math::min, each(leaving, low, chances::margin), told);
    ratio(where, "chanceUnderFloor", Math::max, ahead(at, chances::underFloor), told);
    ratio(where, "chanceNotShown", Math::max, ahead(at, chances::notShown), told);
  }

  private static OneTire.AtStop at(Map<WheelPosition, OneTire> tires, WheelPosition of, int stop) {
    OneTire tire = tires.get(of);
    if (tire == null) {
      throw new IllegalArgumentException(of.words());
    }
    return tire.stops.get(stop);
  }

  /** Of duals on leaving; 1 for a tire that is its own mate. */
  private static double part(OneTire.@Nullable Moment own, OneTire.@Nullable Moment mate) {
    return own == null || mate == null ? 1 : 2 * own.settled() / (own.settled() + mate.settled());
  }

  private interface OfAMoment {
    double at(OneTire.Moment moment);
  }

  private interface Better {
    double of(double a, double b);
  }

  private static List<Double> each(
      OneTire.@Nullable Moment leaving, OneTire.@Nullable Moment low, OfAMoment figure) {
    List<Double> all = new ArrayList<>();
    if (leaving != null) {
      all.add(figure.at(leaving));
    }
    if (low != null) {
      all.add(figure.at(low));
    }
    return all;
  }

  /** Section 12: none where the air of the leg ahead is not known. */
  private static List<Double> ahead(OneTire.AtStop at, OfAMoment chance) {
    return at.aheadKnown() ? each(at.leaving(), at.low(), chance) : List.of();
  }

  private static @Nullable Double known(double figure) {
    return Double.isNaN(figure) ? null : figure;
  }

  private void pressure(String where, String name, @Nullable Double pascals, JsonNode told) {
    Double psi = pascals == null ? null : pascals / PSI;
    compare(where, name, psi, told, "psi", NEAR_PRESSURE);
  }

  private void ratio(String where, String name, Better better, List<Double> each, JsonNode told) {
    Double percent = each.stream().reduce(better::of).map(part -> part * 100).orElse(null);
    compare(where, name, percent, told, "percent", NEAR_RATIO * 100);
  }

  private void compare(
      String where, String name, @Nullable Double ours, JsonNode told, String unit, double near) {
    JsonNode figure = told.get(name);
    compared++;
    if (ours == null || figure.isNull()) {
      if (ours != null || !figure.isNull()) {
        off.add(where + " " + name + ": page " + ours + ", program " + figure);
      }
      return;
    }
    double difference = Math.abs(ours - figure.get(unit).asDouble());
    worst.merge(name, difference, Math::max);
    if (!(difference <= near)) {
      off.add(where + " " + name + ": page " + ours + ", program " + figure.get(unit));
    }
  }

  private void compareTime(double ours, JsonNode told, int stop) {
    double program = ZonedDateTime.parse(told.asText()).toEpochSecond();
    if (!(Math.abs(ours - program) <= 1)) {
      off.add("stop " + (stop + 1) + ": page " + ours + ", program " + told);
    }
  }
}
