package dawngauge.ui.rig;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.explain.Authority;
import dawngauge.explain.Phrase;
import dawngauge.fitness.Defect;
import dawngauge.fitness.FindingKind;
import dawngauge.fitness.Severity;
import dawngauge.testdata.RigBuilder;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each finding stands at one place of the form. */
class RigFindingsTest {

  private static Defect defect(String where, Severity severity) {
    return new Defect(
        FindingKind.NO_TREAD,
        severity,
        where,
        Phrase.of("found"),
        Phrase.of("do"),
        Authority.commonPractice());
  }

  @ParameterizedTest
  @CsvSource({
    "trailer, trailer",
    "trailer axle 1, trailer axle 1",
    "trailer axle 1 left, trailer axle 1 left",
    "trailer axle 1 left and right, trailer axle 1",
    "trailer axle 10 left and right, trailer axle 10",
    "trailer axle 99 left, ''",
    "trip, ''",
    "spare S9, ''"
  })
  void aFindingStandsWhereItBelongsAndNoneIsLost(String where, String place) {
    Defect found = defect(where, Severity.KNOW);
    RigFindings findings = new RigFindings(RigBuilder.trailer().axles(12).rig(), List.of(found));
    assertThat(findings.at(place)).containsExactly(found);
  }

  @Test
  void summaryCountsWorstFirst() {
    List<Defect> found =
        List.of(
            defect("trailer", Severity.STOP),
            defect("trip", Severity.KNOW),
            defect("trailer", Severity.KNOW)); // alike: it is told, and counted, once
    assertThat(new RigFindings(RigBuilder.trailer().rig(), found).summary())
        .isEqualTo("Is the rig fit to go? 1 do not go · 1 worth knowing");
    assertThat(new RigFindings(RigBuilder.trailer().rig(), List.of()).summary())
        .isEqualTo(
            "Nothing was found in the figures of the file. Walk round and look all the same.");
  }
}
