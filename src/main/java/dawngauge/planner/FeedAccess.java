package dawngauge.planner;

import dawngauge.ambient.WeatherService;
import dawngauge.feed.Consent;
import dawngauge.feed.FeedChain;
import dawngauge.feed.FeedOptions;
import dawngauge.feed.HttpLimits;
import dawngauge.feed.Pause;
import dawngauge.feed.ServiceAddress;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.settings.FeedSettings;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The way to the open weather services, with the user's consent kept in the user's own folder. */
public final class FeedAccess implements WeatherAccess {

  private static final int MEBIBYTE = 1 << 20;

  private final UserFolder userFolder;
  private final FeedSettings settings;
  private final Path cache;
  private final String program;
  private final Clock clock;
  private final TileAccess map;
  private @Nullable FeedChain open;
  private String openFor = "";

  /**
   * A way to them.
   *
   * @param userFolder where the consent is kept
   * @param settings which services, where and how
   * @param cache folder for answers
   * @param program name and version of this program
   * @param clock tells the time
   */
  public FeedAccess(
      UserFolder userFolder, FeedSettings settings, Path cache, String program, Clock clock) {
    this.userFolder = userFolder;
    this.settings = settings;
    this.cache = cache;
    this.program = program;
    this.clock = clock;
    this.map = new FeedTiles(userFolder, settings, limits(), cache, program, clock);
  }

  @Override
  public TileAccess map() {
    return map;
  }

  @Override
  public List<String> told() {
    return List.of(
        "Expected temperatures come from open weather services over the internet: the U.S. National Weather"
            + " Service ("
            + settings.text(FeedOptions.NWS)
            + ", public domain) in the United States, MET Norway ("
            + settings.text(FeedOptions.MET)
            + ", CC BY 4.0) elsewhere and where the first has nothing.",
        "Each time you ask for it, and never else, they are sent the latitude and longitude of the"
            + " places on the way, to four decimals, and their elevations; the name of this program; your"
            + " contact, which they require so that they can reach whoever asks; and, as with any page,"
            + " your computer's internet address. They may keep these.",
        "Nothing else of the trip is sent: no names of places, no rig, no readings.");
  }

  @Override
  public Optional<String> contact() {
    String contact = userFolder.latest().contact();
    return contact.isEmpty() ? Optional.empty() : Optional.of(contact);
  }

  @Override
  public Optional<Problem> agree(String contact) {
    Outcome<Consent> consent = Consent.parse(contact);
    consent.value().ifPresent(given -> userFolder.remember(s -> s.withContact(given.contact())));
    return consent.hasValue() ? Optional.empty() : Optional.of(consent.problems().get(0));
  }

  @Override
  public Instant now() {
    return clock.instant();
  }

  @Override
  public synchronized void withdraw() {
    userFolder.remember(s -> s.withContact(""));
    close();
  }

  @Override
  public synchronized Outcome<WeatherService> service() {
    Optional<String> contact = contact();
    if (contact.isEmpty()) {
      return Outcome.failed(Problem.of(ProblemCode.NO_CONSENT, ""));
    }
    FeedChain known = open;
    if (known != null && openFor.equals(contact.get())) {
      return Outcome.of(known);
    }
    close();
    Outcome<Consent> consent = Consent.parse(contact.get());
    Outcome<FeedOptions> options = options();
    if (!consent.hasValue() || !options.hasValue()) {
      return Outcome.failed(consent.hasValue() ? options.problems() : consent.problems());
    }
    FeedChain chain =
        FeedChain.open(options.get(), consent.get(), program, cache, clock, Pause.WAITING);
    open = chain;
    openFor = contact.get();
    return Outcome.of(chain);
  }

  private void close() {
    FeedChain known = open;
    if (known != null) {
      known.close();
    }
    open = null;
  }

  private Outcome<FeedOptions> options() {
    Map<String, ServiceAddress> addresses = new HashMap<>();
    List<String> order = settings.order();
    for (String name : order) {
      boolean known = name.equals(FeedOptions.NWS) || name.equals(FeedOptions.MET);
      if (!known || addresses.containsKey(name)) {
        return Outcome.failed(
            Problem.of(
                ProblemCode.NOT_A_SERVICE, "", name, FeedOptions.NWS + ", " + FeedOptions.MET));
      }
      Outcome<ServiceAddress> address = ServiceAddress.parse(settings.text(name));
      if (!address.hasValue()) {
        return Outcome.failed(address.problems());
      }
      addresses.put(name, address.get());
    }
    return Outcome.of(new FeedOptions(order, addresses, limits()));
  }

  private HttpLimits limits() {
    return new HttpLimits(
        seconds("connectSeconds"),
        seconds("readSeconds"),
        seconds("wholeSeconds"),
        seconds("refreshSeconds"),
        seconds("hostSeconds"),
        Duration.ofMillis(settings.number("paceMillis")),
        settings.number("parallel"),
        settings.number("attempts"),
        Duration.ofMillis(settings.number("retryPauseMillis")),
        seconds("longestWaitSeconds"),
        seconds("restSeconds"),
        seconds("reuseSeconds"),
        Math.min(settings.number("answerMebibytes"), 64) * MEBIBYTE,
        (long) settings.number("cacheMebibytes") * MEBIBYTE);
  }

  private Duration seconds(String key) {
    return Duration.ofSeconds(settings.number(key));
  }
}
