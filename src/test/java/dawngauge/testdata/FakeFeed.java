package dawngauge.testdata;

import dawngauge.ambient.AirSeries;
import dawngauge.ambient.AmbientNeeds;
import dawngauge.ambient.AmbientSource;
import dawngauge.explain.Phrase;
import dawngauge.problem.Outcome;
import dawngauge.quantity.Temperature;
import dawngauge.quantity.Unit;
import dawngauge.trip.Provenance;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A weather service that knows one temperature for some places. */
public final class FakeFeed implements AmbientSource {

  /** What its answers say they came from. */
  public static final Provenance PROVENANCE =
      new Provenance(Provenance.Kind.FEED, "fake feed", Instant.parse("2027-05-31T18:00:00Z"));

  private final double kelvins;
  private final Set<String> places;

  /** A feed that knows some places, by name. */
  public FakeFeed(double fahrenheit, String... places) {
    this.kelvins = Temperature.of(fahrenheit, Unit.FAHRENHEIT).kelvins();
    this.places = Set.of(places);
  }

  @Override
  public Outcome<Map<AmbientNeeds.Need, AirSeries>> answer(AmbientNeeds needs) {
    Map<AmbientNeeds.Need, AirSeries> answers = new HashMap<>();
    for (AmbientNeeds.Need need : needs.needs()) {
      if (places.contains(need.place())) {
        answers.put(need, new Series(kelvins));
      }
    }
    return Outcome.of(answers);
  }

  private record Series(double kelvins) implements AirSeries {
    @Override
    public double kelvinsAt(double epochSeconds) {
      return kelvins;
    }

    @Override
    public double sigmaAt(double epochSeconds) {
      return 1.5;
    }

    @Override
    public double coldSideAt(double epochSeconds) {
      return 0;
    }

    @Override
    public List<Double> breakpoints() {
      return List.of();
    }

    @Override
    public Provenance provenance() {
      return PROVENANCE;
    }

    @Override
    public Phrase given() {
      return Phrase.of("fake feed");
    }
  }
}
