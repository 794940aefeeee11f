package dawngauge.ui.rig;

import dawngauge.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Supplier;

/** The lists of findings beside the places of a form. */
final class FindingBook {

  private final List<BiConsumer<RigFindings, UnitSystem>> lists = new ArrayList<>();

  /** A list of what is found at a place, as that is called now. */
  FindingList list(Supplier<String> place) {
    FindingList list = new FindingList();
    lists.add((findings, units) -> list.show(findings.at(place.get()), place.get(), units));
    return list;
  }

  /** Shows other findings. */
  void show(RigFindings findings, UnitSystem units) {
    lists.forEach(list -> list.accept(findings, units));
  }
}
