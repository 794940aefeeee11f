package dawngauge.planner;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.util.List;
import java.util.Optional;

/** The way to a map on the internet. Nothing leaves before the user has agreed. */
public interface TileAccess {

  /** No map and no way to agree to one. */
  TileAccess NONE =
      new TileAccess() {
        @Override
        public List<String> told() {
          return List.of();
        }

        @Override
        public boolean agreed() {
          return false;
        }

        @Override
        public String offered() {
          return "";
        }

        @Override
        public Optional<Problem> agree(String contact) {
          return Optional.of(Problem.of(ProblemCode.NO_CONSENT, ""));
        }

        @Override
        public void withdraw() {
          // there is nothing to withdraw
        }

        @Override
        public Outcome<TileSource> tiles() {
          return Outcome.failed(Problem.of(ProblemCode.NO_CONSENT, ""));
        }
      };

  /** What is sent to whom, in sentences, as it is told before the user agrees. */
  List<String> told();

  /** Whether the user has agreed. */
  boolean agreed();

  /** A contact that the user gave before; empty where none. */
  String offered();

  /**
   * The user agrees, for good, and gives a contact.
   *
   * @return what is wrong with the contact
   */
  Optional<Problem> agree(String contact);

  /** The user no longer agrees; nothing is asked any more. */
  void withdraw();

  /** The map; why there is none as long as the user has not agreed, or settings are wrong. */
  Outcome<TileSource> tiles();
}
