package dawngauge.tripfile;

import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.trip.Axle;
import dawngauge.trip.AxleRef;
import dawngauge.trip.Rig;
import dawngauge.trip.ScaleTicket;
import dawngauge.trip.Spare;
import dawngauge.trip.Vehicle;
import dawngauge.trip.WheelSlot;
import dawngauge.trip.Worksheet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Holds the parts of a rig against each other. */
final class RigCheck {
  private final Rig rig;
  private final DeclaredNames names;
  private final FileProblems problems;
  private final Map<String, String> placeOfTire = new HashMap<>();

  private RigCheck(Rig rig, DeclaredNames names, FileProblems problems) {
    this.rig = rig;
    this.names = names;
    this.problems = problems;
  }

  static void check(Rig rig, DeclaredNames names, FileProblems problems) {
    RigCheck check = new RigCheck(rig, names, problems);
    check.fittedTires();
    check.tireTypes();
    check.spares();
    check.tickets(rig.tickets(), "/rig/tickets/");
    check.worksheet();
  }

  private void fittedTires() {
    for (int v = 0; v < rig.vehicles().size(); v++) {
      Vehicle vehicle = rig.vehicles().get(v);
      for (int a = 0; a < vehicle.axles().size(); a++) {
        Axle axle = vehicle.axles().get(a);
        AxleRef ref = new AxleRef(vehicle.name(), a + 1);
        String place = "/rig/vehicles/" + v + "/axles/" + a + "/tires/";
        for (WheelSlot slot : WheelSlot.values()) {
          String tire = axle.fitted().get(slot);
          if (tire != null) {
            slotFits(slot, axle, ref, place + slot.words(), problems);
            names.require("tire", tire, place + slot.words());
            takesPlace(tire, place + slot.words(), ref.words() + " " + slot.words());
          }
        }
      }
    }
  }

  /** Reports a place that an axle does not have. */
  static void slotFits(
      WheelSlot slot, Axle axle, AxleRef ref, String place, FileProblems problems) {
    List<WheelSlot> slots = WheelSlot.of(axle.dual());
    if (!slots.contains(slot)) {
      String words = slots.stream().map(WheelSlot::words).collect(Collectors.joining(", "));
      problems.add(
          Problem.of(ProblemCode.SLOT_DOES_NOT_FIT, place, slot.words(), ref.words(), words));
    }
  }

  private void takesPlace(String tire, String place, String words) {
    String earlier = tire.isEmpty() ? null : placeOfTire.putIfAbsent(tire, words);
    if (earlier != null) {
      problems.add(Problem.of(ProblemCode.FITTED_TWICE, place, tire, earlier));
    }
  }

  private void tireTypes() {
    for (int i = 0; i < rig.tires().size(); i++) {
      names.require("tire type", rig.tires().get(i).type(), "/rig/tires/" + i + "/type");
    }
  }

  private void spares() {
    for (int i = 0; i < rig.spares().size(); i++) {
      Spare spare = rig.spares().get(i);
      String place = "/rig/spares/" + i;
      names.require("tire", spare.tire(), place + "/tire");
      takesPlace(spare.tire(), place + "/tire", "the spares");
      axles(spare.serves(), place + "/serves");
    }
  }

  private void tickets(List<ScaleTicket> tickets, String list) {
    for (int t = 0; t < tickets.size(); t++) {
      ScaleTicket ticket = tickets.get(t);
      String place = list + t;
      for (int i = 0; i < ticket.platforms().size(); i++) {
        axles(ticket.platforms().get(i).axles(), place + "/platforms/" + i + "/axles");
      }
      for (int i = 0; i < ticket.wheels().size(); i++) {
        names.requireAxle(ticket.wheels().get(i).axle(), place + "/wheels/" + i + "/axle");
      }
    }
  }

  private void worksheet() {
    Worksheet sheet = rig.worksheet();
    if (sheet != null) {
      tickets(sheet.empty(), "/rig/worksheet/empty/");
      for (int i = 0; i < sheet.loads().size(); i++) {
        String vehicle = sheet.loads().get(i).vehicle();
        names.require("vehicle", vehicle, "/rig/worksheet/loads/" + i + "/vehicle");
      }
    }
  }

  private void axles(List<AxleRef> axles, String place) {
    for (int i = 0; i < axles.size(); i++) {
      names.requireAxle(axles.get(i), place + "/" + i);
    }
  }
}
