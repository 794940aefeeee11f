package dawngauge.testdata;

import dawngauge.planner.TileAccess;
import dawngauge.planner.TileSource;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentSkipListSet;

/** A map server that has one picture for all squares, and the consent to ask it. */
public final class FakeTiles implements TileAccess, TileSource {

  private final byte[] picture;
  private final Set<String> asked = new ConcurrentSkipListSet<>();
  private String contact = "";

  /** A server of one picture. */
  public FakeTiles(byte[] picture) {
    this.picture = picture.clone();
  }

  /** The squares that were asked for, as level/x/y. */
  public Set<String> asked() {
    return asked;
  }

  @Override
  public List<String> told() {
    return List.of("the squares that are looked at");
  }

  @Override
  public boolean agreed() {
    return !contact.isEmpty();
  }

  @Override
  public String offered() {
    return contact;
  }

  @Override
  public Optional<Problem> agree(String given) {
    contact = given;
    return Optional.empty();
  }

  @Override
  public void withdraw() {
    contact = "";
  }

  @Override
  public Outcome<TileSource> tiles() {
    return agreed() ? Outcome.of(this) : Outcome.failed(Problem.of(ProblemCode.NO_CONSENT, ""));
  }

  @Override
  public String credit() {
    return "© invented map makers";
  }

  @Override
  public int finest() {
    return 12;
  }

  @Override
  public Optional<byte[]> tile(int level, int x, int y) {
    asked.add(level + "/" + x + "/" + y);
    return Optional.of(picture.clone());
  }
}
