package dawngauge.tripfile;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.trip.Trip;
import org.junit.jupiter.api.Test;

/** A file with faults in every part is read to its end, and each fault named at its place. */
class AllProblemsAtOnceTest {
  @Test
  void everyFaultIsNamed() {
    Outcome<Trip> outcome = TripFile.parse(Samples.text("many-faults.dawngauge"));
    assertThat(outcome.hasValue()).isFalse();
    assertThat(outcome.problems().stream().map(p -> p.code() + " " + p.where()))
        .containsExactly(
            "NOT_A_CHOICE /rig/vehicles/0/kind",
            "UNKNOWN_UNIT /rig/vehicles/0/gvwr",
            "MISSING_FIELD /rig/vehicles/0/axles/0",
            "UNKNOWN_FIELD /rig/vehicles/0/axles/0/wheelMaxPresure",
            "MISSING_FIELD /rig/tires/1",
            "WRONG_KIND /rig/gauges",
            "OFFSET_AGAINST_ZONE /route/stops/0/leave",
            "NOT_ABOVE_ZERO /route/stops/0/leg/averageSpeed",
            "NOT_A_DURATION /route/stops/1/stay",
            "LOW_ABOVE_HIGH /ambient/0/low",
            "NOT_A_QUANTITY /log/0/pressure",
            "FITTED_TWICE /rig/vehicles/0/axles/0/tires/right",
            "NO_SUCH_NAME /rig/tires/0/type",
            "NO_SUCH_NAME /log/0/gauge",
            "TIMES_OUT_OF_ORDER /log/1/time");
  }

  @Test
  void aMissingHalfIsNamedAndTheRestStillRead() {
    Outcome<Trip> outcome =
        TripFile.parse("{\"format\": \"dawngauge trip\", \"version\": 2, \"nam\": \"a\"}");
    assertThat(outcome.problems().stream().map(Problem::message))
        .contains(
            "\"name\" is missing; write a text, such as \"as you like\"",
            "\"rig\" is missing; write an object",
            "\"route\" is missing; write an object",
            "/nam: there is no field \"nam\" here; the nearest is \"name\"; a name that begins with"
                + " \"x-\" is kept unread");
  }
}
