package dawngauge.planner;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.ambient.WeatherService;
import dawngauge.problem.Outcome;
import dawngauge.problem.ProblemCode;
import dawngauge.settings.FailureLog;
import dawngauge.settings.FeedSettings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Consent, and which services it opens; nothing is asked here. */
class FeedAccessTest {

  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2027-04-06T12:00:00Z"), ZoneOffset.UTC);

  private Path folder = Path.of("");

  @BeforeEach
  void own(@TempDir Path own) {
    folder = own;
  }

  private FeedAccess access() {
    UserFolder user =
        new UserFolder(folder, CLOCK, "1", run -> false, new FailureLog(folder, CLOCK));
    return new FeedAccess(
        user, FeedSettings.of(folder), folder.resolve("cache"), "Dawngauge/test", CLOCK);
  }

  @Test
  void thereIsNoServiceWithoutConsent() {
    FeedAccess access = access();
    assertThat(access.contact()).isEmpty();
    assertThat(access.service().problems().get(0).code()).isEqualTo(ProblemCode.NO_CONSENT);
    assertThat(String.join(" ", access.told()))
        .contains("api.weather.gov")
        .contains("api.met.no")
        .contains("contact")
        .contains("Nothing else of the trip");
    assertThat(folder.resolve("cache")).doesNotExist();
  }

  @Test
  void consentIsKeptAndCanBeWithdrawn() {
    FeedAccess access = access();
    assertThat(access.agree("nobody").orElseThrow().code()).isEqualTo(ProblemCode.NOT_A_CONTACT);
    assertThat(access.contact()).isEmpty();
    assertThat(access.agree(" crew@example.org ")).isEmpty();
    FeedAccess again = access();
    assertThat(again.contact()).contains("crew@example.org");
    Outcome<WeatherService> service = again.service();
    assertThat(service.get().name()).isEqualTo("U.S. National Weather Service, MET Norway");
    assertThat(again.service().get()).isSameAs(service.get());
    again.withdraw();
    assertThat(again.service().hasValue()).isFalse();
    assertThat(access().contact()).isEmpty();
  }

  /** Two windows: what one withdraws the other asks for no more, whatever it remembers later. */
  @Test
  void aConsentWithdrawnInOneWindowIsWithdrawnInAll() {
    UserFolder first =
        new UserFolder(folder, CLOCK, "1", run -> true, new FailureLog(folder, CLOCK));
    FeedAccess one =
        new FeedAccess(
            first, FeedSettings.of(folder), folder.resolve("cache"), "Dawngauge/test", CLOCK);
    FeedAccess other = access();
    assertThat(one.agree("crew@example.org")).isEmpty();
    assertThat(other.contact()).isPresent();
    other.withdraw();
    assertThat(one.service().hasValue()).isFalse();
    first.remember(state -> state.withRecent("haul.dawngauge"));
    assertThat(access().contact()).isEmpty();
  }

  @Test
  void aUsersSettingsGoBeforeAndWrongOnesAreNamed() throws IOException {
    Path file = folder.resolve("feeds.properties");
    Files.writeString(file, "order = met\nmet = http://127.0.0.1:9/mirror\nparallel = many\n");
    FeedAccess access = access();
    access.agree("crew@example.org");
    assertThat(access.service().get().name()).isEqualTo("MET Norway");
    Files.writeString(file, "met = http://weather.invalid\n");
    assertThat(access().service().problems().get(0).code())
        .isEqualTo(ProblemCode.NOT_A_SERVICE_ADDRESS);
    Files.writeString(file, "order = nws, nws\n");
    assertThat(access().service().problems().get(0).text()).contains("\"nws\"");
    Files.writeString(file, "order = \\u00\n");
    assertThat(access().service().get().name()).startsWith("U.S. National");
  }
}
