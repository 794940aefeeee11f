package dawngauge.trip;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Names that nothing in the rig has yet. */
final class FreshNames {

  private FreshNames() {}

  /** The word with the lowest number, from a given one on, that makes a name not yet taken. */
  static String numbered(String word, int first, Collection<String> taken) {
    return Stream.iterate(first, number -> number + 1)
        .map(number -> word + number)
        .filter(name -> !taken.contains(name))
        .findFirst()
        .orElseThrow();
  }

  /** A word, or where it is taken the word with a number from 2 on. */
  static String name(String word, Collection<String> taken) {
    return taken.contains(word) ? numbered(word + " ", 2, taken) : word;
  }

  /** A letter that no vehicle has: one of the word where there is one, else any; empty for none. */
  static Optional<String> letter(String word, List<Vehicle> vehicles) {
    List<String> taken = vehicles.stream().map(Vehicle::letter).toList();
    return IntStream.concat(word.chars(), IntStream.rangeClosed('a', 'z'))
        .filter(letter -> letter >= 'a' && letter <= 'z')
        .mapToObj(letter -> "" + (char) letter)
        .filter(letter -> !taken.contains(letter))
        .findFirst();
  }
}
