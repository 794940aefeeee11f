package dawngauge.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Only with --check does the exit code speak of the tires. */
class CheckTest {
  @Test
  void withoutCheckAForecastOfTiresOnHoldIsDone() {
    assertThat(Run.of("forecast", Run.sample("full")).code()).isZero();
    assertThat(Run.of("forecast", Run.DEMO).code()).isZero();
  }

  @Test
  void someTireMustBeAdjusted() {
    Run run = Run.of("forecast", Run.GAP, "--check");
    assertThat(run.out()).contains("  adjust\n").contains("mark\n");
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.err()).contains("not known: ");
  }

  @Test
  void someTireIsOnHold() {
    Run run = Run.of("forecast", Run.sample("full"), "--check");
    assertThat(run.out()).contains("  hold\n");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("stops without a known time: 1");
  }

  @Test
  void withOneTireOnlyThatOneIsJudged() {
    assertThat(Run.of("forecast", Run.DEMO, "--check", "--tire", "p1l").code()).isZero();
    assertThat(Run.of("forecast", Run.DEMO, "--check", "--tire", "t2r").code()).isEqualTo(1);
  }

  @Test
  void whereNothingIsKnownItIsNoSuccess() {
    for (String name : new String[] {"no-departure", "small"}) {
      Run run = Run.of("forecast", Run.sample(name), "--check");
      assertThat(run.code()).as(name).isEqualTo(65);
      assertThat(run.err()).contains("nothing is known of any tire");
      assertThat(Run.of("forecast", Run.sample(name)).code()).isZero();
    }
  }
}
