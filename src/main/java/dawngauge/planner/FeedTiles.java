package dawngauge.planner;

import dawngauge.feed.Consent;
import dawngauge.feed.HttpLimits;
import dawngauge.feed.TileFeed;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.settings.FeedSettings;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The map server of the settings, with the user's consent kept in the user's own folder. */
final class FeedTiles implements TileAccess {

  private final UserFolder userFolder;
  private final FeedSettings settings;
  private final HttpLimits limits;
  private final Path cache;
  private final String program;
  private final Clock clock;
  private @Nullable TileFeed open;

  FeedTiles(
      UserFolder userFolder,
      FeedSettings settings,
      HttpLimits limits,
      Path cache,
      String program,
      Clock clock) {
    this.userFolder = userFolder;
    this.settings = settings;
    this.limits = limits;
    this.cache = cache;
    this.program = program;
    this.clock = clock;
  }

  @Override
  public List<String> told() {
    return List.of(
        "An online map comes picture by picture from "
            + settings.text("tiles")
            + " ("
            + settings.text("tilesCredit")
            + "). It has roads; the map that comes with the program has none.",
        "While it is shown, that server is asked for the pictures of the part of the earth that you"
            + " look at, and told the name of this program, your contact, and, as with any page, your"
            + " computer's internet address. It may keep these.",
        "Nothing of the trip is sent, and no picture is fetched ahead. Pictures are kept on this"
            + " computer for a time. In the settings file feeds.properties another server can be named.");
  }

  @Override
  public boolean agreed() {
    return !userFolder.latest().mapContact().isEmpty();
  }

  @Override
  public String offered() {
    String given = userFolder.latest().mapContact();
    return given.isEmpty() ? userFolder.latest().contact() : given;
  }

  @Override
  public Optional<Problem> agree(String contact) {
    Outcome<Consent> consent = Consent.parse(contact);
    consent.value().ifPresent(given -> userFolder.remember(s -> s.withMapContact(given.contact())));
    return consent.hasValue() ? Optional.empty() : Optional.of(consent.problems().get(0));
  }

  @Override
  public synchronized void withdraw() {
    userFolder.remember(s -> s.withMapContact(""));
    close();
  }

  private void close() {
    TileFeed known = open;
    if (known != null) {
      known.close();
    }
    open = null;
  }

  @Override
  public synchronized Outcome<TileSource> tiles() {
    Outcome<Consent> consent = Consent.parse(userFolder.latest().mapContact());
    if (!consent.hasValue()) {
      return Outcome.failed(Problem.of(ProblemCode.NO_CONSENT, ""));
    }
    close();
    Outcome<TileFeed> feed =
        TileFeed.open(
            settings.text("tiles"), consent.get(), program, limits, cache.resolve("tiles"), clock);
    feed.value().ifPresent(opened -> open = opened);
    return feed.map(opened -> new Named(opened, settings));
  }

  /** A server with what the settings say of it. */
  private record Named(TileFeed feed, FeedSettings settings) implements TileSource {
    @Override
    public String credit() {
      return settings.text("tilesCredit");
    }

    @Override
    public int finest() {
      return settings.number("tilesFinest");
    }

    @Override
    public Optional<byte[]> tile(int level, int x, int y) {
      return feed.tile(level, x, y);
    }
  }
}
