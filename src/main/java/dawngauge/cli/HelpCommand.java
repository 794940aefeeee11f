package dawngauge.cli;

import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows the help of the program or of one command. */
@Command(name = "help", description = "Show the help of the program or of one command.")
final class HelpCommand implements Callable<Integer> {

  private final CommandLine all;
  private final Console console;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "COMMAND",
      description = "The command; without it the program.")
  private @Nullable String command;

  HelpCommand(CommandLine all, Console console) {
    this.all = all;
    this.console = console;
  }

  @Override
  public Integer call() {
    String named = command;
    CommandLine one = named == null ? all : all.getSubcommands().get(named);
    if (one == null) {
      console.err().println(Suggestions.noCommand(all, String.valueOf(named)));
      return ExitCode.USAGE;
    }
    one.usage(console.out());
    return ExitCode.DONE;
  }
}
