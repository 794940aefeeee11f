package dawngauge.trip;

import dawngauge.quantity.Entered;
import dawngauge.quantity.Ratio;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Renames or removes what refers to parts of a rig that were renamed or removed. */
final class ReferenceCleanup {

  private final Trip trip;
  private final RigDraft draft;
  private final Function<AxleRef, Optional<AxleRef>> axles;
  private final Function<WheelPosition, Optional<WheelPosition>> positions;
  private final List<String> lost = new ArrayList<>();

  /**
   * A cut.
   *
   * @param trip the trip as it was
   * @param draft its rig with vehicles, tires, spares and gauges as they are to be
   * @param axles how an axle is called now; empty where it is gone
   * @param positions how a place of a wheel is called now; empty where it is gone
   */
  private ReferenceCleanup(
      Trip trip,
      RigDraft draft,
      Function<AxleRef, Optional<AxleRef>> axles,
      Function<WheelPosition, Optional<WheelPosition>> positions) {
    this.trip = trip;
    this.draft = draft;
    this.axles = axles;
    this.positions = positions;
  }

  /** Tires, spares or gauges go; all axles stay as they are. */
  static RigParts.Changed ofParts(Trip trip, RigDraft draft) {
    return new ReferenceCleanup(trip, draft, Optional::of, Optional::of).changed();
  }

  /** Axles go or are called otherwise. */
  static RigParts.Changed ofAxles(
      Trip trip, RigDraft draft, Function<AxleRef, Optional<AxleRef>> axles) {
    return new ReferenceCleanup(
            trip,
            draft,
            axles,
            at -> axles.apply(at.axle()).map(axle -> new WheelPosition(axle, at.slot())))
        .changed();
  }

  /** Places of wheels go or are called otherwise; all axles stay. */
  static RigParts.Changed ofPlaces(
      Trip trip, RigDraft draft, Function<WheelPosition, Optional<WheelPosition>> positions) {
    return new ReferenceCleanup(trip, draft, Optional::of, positions).changed();
  }

  private RigParts.Changed changed() {
    List<LogEvent> log = log();
    boolean unhitched = unhitch();
    List<Stop> stops = stops(unhitched);
    tickets();
    worksheet();
    spares();
    if (unhitched) {
      lost.add("the hitch");
    }
    Route route = new Route(stops, trip.route().legs());
    Trip changed = trip.withRoute(route).withRig(draft.rig()).withLog(log);
    return new RigParts.Changed(changed, lost);
  }

  private List<LogEvent> log() {
    List<LogEvent> kept = new ArrayList<>();
    int readings = 0;
    int adjustments = 0;
    int changes = 0;
    for (LogEvent event : trip.log()) {
      LogEvent moved = moved(event);
      if (moved != null) {
        kept.add(moved);
      } else if (event instanceof LogEvent.Reading) {
        readings++;
      } else if (event instanceof LogEvent.Adjustment) {
        adjustments++;
      } else {
        changes++;
      }
    }
    count(readings, "reading");
    count(adjustments, "adjustment");
    count(changes, "wheel change");
    return kept;
  }

  private @Nullable LogEvent moved(LogEvent event) {
    if (event instanceof LogEvent.Reading reading) {
      return hasTire(reading.tire()) && hasGauge(reading.gauge()) ? event : null;
    } else if (event instanceof LogEvent.Adjustment adjustment) {
      return hasTire(adjustment.tire()) && hasGauge(adjustment.gauge()) ? event : null;
    } else if (event instanceof LogEvent.TireChange change) {
      return hasTire(change.off()) && hasTire(change.on())
          ? positions
              .apply(change.position())
              .map(
                  at ->
                      new LogEvent.TireChange(
                          change.time(), at, change.off(), change.on(), change.remarks()))
              .orElse(null)
          : null;
    }
    return event;
  }

  private boolean hasTire(String id) {
    return draft.tires.stream().anyMatch(tire -> tire.id().equals(id));
  }

  private boolean hasGauge(String name) {
    return draft.gauges.stream().anyMatch(gauge -> gauge.name().equals(name));
  }

  /** The hitch goes where it held tow vehicle and trailer together and one of them went. */
  private boolean unhitch() {
    boolean goes = draft.hitch != null && joins(trip.rig().vehicles()) && !joins(draft.vehicles);
    if (goes) {
      draft.hitch = null;
    }
    return goes;
  }

  private static boolean joins(List<Vehicle> vehicles) {
    return vehicles.stream()
            .map(vehicle -> vehicle.kind() == Vehicle.Kind.TRAILER)
            .distinct()
            .count()
        == 2;
  }

  private List<Stop> stops(boolean unhitched) {
    int gone = 0;
    List<Stop> stops = new ArrayList<>();
    for (Stop stop : trip.route().stops()) {
      List<LoadChange> kept = new ArrayList<>();
      for (LoadChange change : stop.loadChanges()) {
        if (unhitched && change.hitch() != null) {
          gone++;
          continue;
        }
        Optional<LoadChange> moved = moved(change);
        moved.ifPresent(kept::add);
        gone += moved.isPresent() ? 0 : 1;
      }
      stops.add(stop.loadChanges().equals(kept) ? stop : stop.withLoadChanges(kept));
    }
    count(gone, "load change");
    return stops;
  }

  /** A load that stood partly on what is gone goes whole: how it would stand now is not known. */
  private Optional<LoadChange> moved(LoadChange change) {
    Map<AxleRef, Entered<Ratio>> parts = new LinkedHashMap<>();
    change.axles().forEach((ref, part) -> axles.apply(ref).ifPresent(now -> parts.put(now, part)));
    return parts.size() < change.axles().size()
        ? Optional.empty()
        : Optional.of(change.withAxles(parts));
  }

  private void tickets() {
    List<ScaleTicket> kept = moved(draft.tickets, "scale weight");
    draft.tickets.clear();
    draft.tickets.addAll(kept);
  }

  /** What stood on a vehicle that goes is not loaded any more. */
  private void worksheet() {
    Worksheet sheet = draft.worksheet;
    if (sheet != null) {
      List<DeckLoad> loads =
          sheet.loads().stream()
              .filter(
                  load ->
                      draft.vehicles.stream()
                          .anyMatch(vehicle -> vehicle.name().equals(load.vehicle())))
              .toList();
      count(sheet.loads().size() - loads.size(), "load of the worksheet", "loads of the worksheet");
      draft.worksheet = sheet.withEmpty(moved(sheet.empty(), "empty weight")).withLoads(loads);
    }
  }

  private List<ScaleTicket> moved(List<ScaleTicket> tickets, String what) {
    int weights = 0;
    List<ScaleTicket> kept = new ArrayList<>();
    for (ScaleTicket old : tickets) {
      ScaleTicket now = moved(old);
      int gone =
          old.platforms().size()
              + old.wheels().size()
              - now.platforms().size()
              - now.wheels().size();
      weights += gone;
      if (gone == 0 || !RigEdits.isBlank(now)) {
        kept.add(now);
      }
    }
    count(weights, what);
    return kept;
  }

  private ScaleTicket moved(ScaleTicket ticket) {
    return ticket
        .withPlatforms(ticket.platforms().stream().flatMap(old -> moved(old).stream()).toList())
        .withWheels(
            ticket.wheels().stream()
                .flatMap(
                    old ->
                        axles
                            .apply(old.axle())
                            .map(now -> new ScaleTicket.WheelWeight(now, old.left(), old.weight()))
                            .stream())
                .toList());
  }

  /** The weight of several axles together says nothing of those that are left. */
  private Optional<ScaleTicket.Platform> moved(ScaleTicket.Platform platform) {
    List<AxleRef> now = now(platform.axles());
    return now.size() < platform.axles().size()
        ? Optional.empty()
        : Optional.of(new ScaleTicket.Platform(now, platform.weight()));
  }

  /** No axle left to serve would mean every axle of single wheels: that is told. */
  private void spares() {
    for (int i = 0; i < draft.spares.size(); i++) {
      Spare old = draft.spares.get(i);
      List<AxleRef> now = now(old.serves());
      if (now.isEmpty() && !old.serves().isEmpty()) {
        lost.add("the axles that spare " + old.tire() + " serves (now any of single wheels)");
      }
      draft.spares.set(i, old.withServes(now));
    }
  }

  private List<AxleRef> now(List<AxleRef> refs) {
    return refs.stream().flatMap(ref -> axles.apply(ref).stream()).toList();
  }

  private void count(int number, String what) {
    count(number, what, what + "s");
  }

  private void count(int number, String one, String several) {
    if (number > 0) {
      lost.add(number + " " + (number == 1 ? one : several));
    }
  }
}
