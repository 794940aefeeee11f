package dawngauge.planner;

import dawngauge.ambient.WeatherService;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * The way to the weather services. Nothing leaves before the user has agreed to what is sent where
 * and has given a contact, which the services ask for.
 */
public interface WeatherAccess {

  /** What is sent to whom, in sentences, as it is told before the user agrees. */
  List<String> told();

  /** The contact that the user gave; empty as long as the user has not agreed. */
  Optional<String> contact();

  /**
   * The user agrees, for good, and gives a contact.
   *
   * @param contact an address or site at which a service can reach the user
   * @return what is wrong with the contact, or what kept it from being stored
   */
  Optional<Problem> agree(String contact);

  /** The time. */
  Instant now();

  /** The user no longer agrees. */
  void withdraw();

  /** The way to a map on the internet, with a consent of its own. */
  default TileAccess map() {
    return TileAccess.NONE;
  }

  /** The services; why there are none as long as the user has not agreed, or settings are wrong. */
  Outcome<WeatherService> service();
}
