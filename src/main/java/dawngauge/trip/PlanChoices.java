package dawngauge.trip;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What the crew wants of the adjustment plan. The plan itself is not kept: it is computed again.
 *
 * @param followed whether the plan is accepted, so that what to do follows it
 * @param wishes at most one a stop
 * @param remarks note and extras
 */
public record PlanChoices(boolean followed, List<Wish> wishes, Remarks remarks) {

  /** Nothing chosen. */
  public static final PlanChoices NONE = new PlanChoices(false, List.of(), Remarks.NONE);

  /** Whether the tires are set at a stop. */
  public enum Kind {
    /** They are set there in any case. */
    HERE("set here"),
    /** They are not. */
    NOT_HERE("not here");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** In words. */
    public String word() {
      return word;
    }
  }

  /**
   * What is wanted at one stop.
   *
   * @param stop id of the stop
   * @param kind whether the tires are set there
   * @param figures what the gauge is to show on some tires, in their own order; only where they are
   *     set
   * @param remarks note and extras
   */
  public record Wish(
      String stop, Kind kind, Map<WheelPosition, Entered<GaugePressure>> figures, Remarks remarks) {

    /** Keeps the order. */
    public Wish {
      figures = Collections.unmodifiableMap(new LinkedHashMap<>(figures));
    }
  }

  /** Copies the list. */
  public PlanChoices {
    wishes = List.copyOf(wishes);
  }

  /** What is wanted at a stop. */
  public Optional<Wish> at(String stop) {
    return wishes.stream().filter(wish -> wish.stop().equals(stop)).findFirst();
  }

  /** The same, followed or not. */
  public PlanChoices following(boolean follow) {
    return new PlanChoices(follow, wishes, remarks);
  }

  /** The same with something else wanted at a stop: null takes the wish and its figures away. */
  public PlanChoices with(String stop, @Nullable Kind kind) {
    List<Wish> others = without(stop);
    if (kind != null) {
      Map<WheelPosition, Entered<GaugePressure>> figures =
          kind == Kind.HERE ? at(stop).map(Wish::figures).orElse(Map.of()) : Map.of();
      others.add(new Wish(stop, kind, figures, noted(stop)));
    }
    return new PlanChoices(followed, others, remarks);
  }

  /** The same with another figure for a tire at a stop; null leaves it to the plan. */
  public PlanChoices withFigure(
      String stop, WheelPosition tire, @Nullable Entered<GaugePressure> figure) {
    Map<WheelPosition, Entered<GaugePressure>> figures =
        new LinkedHashMap<>(at(stop).map(Wish::figures).orElse(Map.of()));
    if (figure == null) {
      figures.remove(tire);
    } else {
      figures.put(tire, figure);
    }
    List<Wish> others = without(stop);
    others.add(new Wish(stop, Kind.HERE, figures, noted(stop)));
    return new PlanChoices(followed, others, remarks);
  }

  private List<Wish> without(String stop) {
    return new ArrayList<>(wishes.stream().filter(wish -> !wish.stop().equals(stop)).toList());
  }

  private Remarks noted(String stop) {
    return at(stop).map(Wish::remarks).orElse(Remarks.NONE);
  }

  /** What still makes sense with a route. */
  PlanChoices on(Route route) {
    return new PlanChoices(
        followed,
        wishes.stream().filter(wish -> route.stop(wish.stop()).isPresent()).toList(),
        remarks);
  }

  /** What still makes sense with a rig. */
  PlanChoices on(Rig rig) {
    List<Wish> kept = new ArrayList<>();
    for (Wish wish : wishes) {
      Map<WheelPosition, Entered<GaugePressure>> figures = new LinkedHashMap<>(wish.figures());
      figures.keySet().retainAll(rig.positions());
      kept.add(new Wish(wish.stop(), wish.kind(), figures, wish.remarks()));
    }
    return new PlanChoices(followed, kept, remarks);
  }
}
