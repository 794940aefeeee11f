package dawngauge.report;

import dawngauge.ledger.StopLine;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What stands on one page of a day: stops beside each other, tires under each other.
 *
 * @param day heading of the day; empty where no time is known
 * @param continued whether an earlier page began it
 * @param stops in order
 * @param tires short forms in walking order; empty where no tire is forecast
 * @param sideways whether the page is turned
 */
record SheetPart(
    String day, boolean continued, List<StopLine> stops, List<String> tires, boolean sideways) {

  /**
   * What a page holds.
   *
   * @param stops beside each other
   * @param tires under each other
   * @param sideways whether it is turned
   */
  private record Room(int stops, int tires, boolean sideways) {
    int pages(int ofStops, List<List<String>> vehicles) {
      return up(ofStops, stops) * tirePages(vehicles, tires).size();
    }
  }

  private static final Room UPRIGHT = new Room(6, 16, false);
  private static final Room SIDEWAYS = new Room(9, 10, true);
  private static final Room LARGE = new Room(4, 10, false);

  /**
   * All pages of the days, in order.
   *
   * @param stops of the whole trip
   * @param vehicles tires of each vehicle in walking order
   */
  static List<SheetPart> all(List<StopLine> stops, List<List<String>> vehicles, boolean large) {
    List<SheetPart> parts = new ArrayList<>();
    List<StopLine> day = new ArrayList<>();
    String heading = "";
    for (StopLine stop : stops) {
      if (!stop.newDay().isEmpty() && !day.isEmpty()) {
        parts.addAll(ofDay(heading, day, vehicles, large));
        day.clear();
      }
      heading = stop.newDay().isEmpty() ? heading : stop.newDay();
      day.add(stop);
    }
    if (!day.isEmpty()) {
      parts.addAll(ofDay(heading, day, vehicles, large));
    }
    return parts;
  }

  private static List<SheetPart> ofDay(
      String heading, List<StopLine> stops, List<List<String>> vehicles, boolean large) {
    int count = stops.size();
    Room room =
        large
            ? LARGE
            : List.of(UPRIGHT, SIDEWAYS).stream()
                .min(Comparator.comparingInt(one -> one.pages(count, vehicles)))
                .orElseThrow();
    int pages = up(count, room.stops());
    int most = up(count, pages);
    // Where all pages have few stops, they have room for more tires upright.
    Room taken = room.sideways() && most <= UPRIGHT.stops() ? UPRIGHT : room;
    List<SheetPart> parts = new ArrayList<>();
    for (int page = 0; page < pages; page++) {
      // As many on each page, to one.
      List<StopLine> here = stops.subList(page * count / pages, (page + 1) * count / pages);
      for (List<String> tires : tirePages(vehicles, taken.tires())) {
        boolean turned = taken.sideways() && here.size() > UPRIGHT.stops();
        parts.add(new SheetPart(heading, !parts.isEmpty(), List.copyOf(here), tires, turned));
      }
    }
    return parts;
  }

  /** The same on two pages, half of the stops on each. */
  List<SheetPart> halves() {
    int half = (stops.size() + 1) / 2;
    boolean turned = sideways && half > UPRIGHT.stops();
    return List.of(
        new SheetPart(day, continued, stops.subList(0, half), tires, turned),
        new SheetPart(day, true, stops.subList(half, stops.size()), tires, turned));
  }

  /** Vehicles are kept whole where one fits on a page. */
  private static List<List<String>> tirePages(List<List<String>> vehicles, int most) {
    List<List<String>> pages = new ArrayList<>();
    List<String> page = new ArrayList<>();
    for (List<String> vehicle : vehicles) {
      if (!page.isEmpty() && page.size() + vehicle.size() > most) {
        pages.add(List.copyOf(page));
        page.clear();
      }
      for (String tire : vehicle) {
        if (page.size() == most) {
          pages.add(List.copyOf(page));
          page.clear();
        }
        page.add(tire);
      }
    }
    if (!page.isEmpty() || pages.isEmpty()) {
      pages.add(List.copyOf(page));
    }
    return pages;
  }

  private static int up(int count, int by) {
    return (count + by - 1) / by;
  }
}
