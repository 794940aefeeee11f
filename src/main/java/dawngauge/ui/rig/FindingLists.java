package dawngauge.ui.rig;

import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Rig;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** The lists of findings beside the places of a form. */
final class FindingLists {

  private final List<Consumer<RigFindings>> lists = new ArrayList<>();
  private RigFindings shown;
  private UnitSystem units = UnitSystem.US;

  FindingLists(Rig rig) {
    shown = new RigFindings(rig, List.of());
  }

  /** A list of what is found at a place, as that is called now. */
  FindingList list(Supplier<String> place) {
    FindingList list = new FindingList();
    Consumer<RigFindings> show =
        findings -> list.show(findings.at(place.get()), place.get(), units);
    lists.add(show);
    show.accept(shown);
    return list;
  }

  /** How many of each severity there are at an axle and its tires; empty for none. */
  String countAt(String axle) {
    return shown.countAt(axle);
  }

  /** Shows other findings. */
  void show(RigFindings findings, UnitSystem shownUnits) {
    shown = findings;
    units = shownUnits;
    lists.forEach(list -> list.accept(findings));
  }
}
