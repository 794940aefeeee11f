package dawngauge.cli;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.UnmatchedArgumentException;

/** What somebody may have meant who mistyped a command or an option. */
final class Suggestions {

  /** A word is taken for a mistyped one that differs by so many letters in length at most. */
  private static final int LONGER = 2;

  private Suggestions() {}

  /** The command that a word is like; empty where none is. */
  static Optional<String> command(CommandLine all, String typed) {
    return like(new UnmatchedArgumentException(all, List.of(typed)), typed);
  }

  /** The option that was meant; empty where none is like it. */
  static Optional<String> option(UnmatchedArgumentException problem) {
    String typed = problem.getUnmatched().get(0);
    return problem.isUnknownOption() ? like(problem, typed) : Optional.empty();
  }

  /** Says that a word is no command, and what it is like. */
  static String noCommand(CommandLine all, String typed) {
    return "there is no command \""
        + typed
        + "\""
        + command(all, typed).map(Suggestions::question).orElse("; see: dawngauge --help");
  }

  /** The question behind a message. */
  static String question(String meant) {
    return "; did you mean \"" + meant + "\"?";
  }

  private static Optional<String> like(UnmatchedArgumentException problem, String typed) {
    return problem.getSuggestions().stream()
        .filter(word -> Math.abs(word.length() - typed.length()) <= LONGER)
        .filter(word -> beginning(word) == beginning(typed))
        .findFirst();
  }

  /** The first letter, dashes left aside. */
  private static char beginning(String word) {
    String letters = word.replaceFirst("^-+", "");
    return letters.isEmpty() ? '-' : letters.charAt(0);
  }
}
