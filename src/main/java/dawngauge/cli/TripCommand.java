package dawngauge.cli;

import dawngauge.planner.Planner;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Trip;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A command that answers from a trip file, which is opened, or refused, before it runs. */
abstract class TripCommand implements Callable<Integer> {

  final Planner planner;
  final Console console;

  @Parameters(index = "0", paramLabel = "FILE", description = "Trip file; - is standard input.")
  private String file = "";

  @Option(
      names = "--units",
      paramLabel = "us|si",
      description = "Units shown; unless given those of the trip's pressures, psi or bar.")
  private @Nullable UnitSystem units;

  private List<Problem> told = List.of();

  TripCommand(Planner planner, Console console) {
    this.planner = planner;
    this.console = console;
  }

  @Override
  public final Integer call() {
    Optional<String> clash = clash();
    return clash.isPresent() ? misused(clash.get()) : answer(file, opened());
  }

  /** Answers from what a trip file gave, and gives the exit code. */
  final int answer(String name, Outcome<Trip> opened) {
    file = name;
    told = opened.problems();
    if (!opened.hasValue()) {
      return TripArgument.refuse(console, file, told);
    }
    Trip trip = opened.get();
    return run(trip, units == null ? planner.store().units(trip) : units);
  }

  /** Which options do not go together, said before the file is read. */
  Optional<String> clash() {
    return Optional.empty();
  }

  /** The trip of the file, as it is printed. */
  Outcome<Trip> opened() {
    return TripArgument.toShow(planner, console, file);
  }

  /** The trip of the file as it is, for what is written out or where nothing may be shortened. */
  final Outcome<Trip> whole() {
    return TripArgument.open(planner, console, file);
  }

  /** Answers for a sound trip in the units asked for, and gives the exit code. */
  abstract int run(Trip trip, UnitSystem units);

  /** What the reader of the file told of the trip and what came up after it, each once. */
  final List<Problem> problems(List<Problem> later) {
    return TripArgument.problems(told, later);
  }

  /** Says what is wrong with what was typed, all of it; false where nothing is. */
  final boolean isMistyped(Outcome<?>... typed) {
    List<Problem> wrong =
        Stream.of(typed)
            .filter(one -> !one.hasValue())
            .flatMap(one -> one.problems().stream())
            .toList();
    wrong.forEach(problem -> console.err().println(problem.text()));
    return !wrong.isEmpty();
  }

  /** Says why nothing can be done as it was asked. */
  final int misused(String why) {
    console.err().println(why);
    return ExitCode.USAGE;
  }

  /** Says what is not known of a trip. */
  final int unknown(String what) {
    console.err().println(what);
    return ExitCode.CONTENT;
  }

  /** Says what keeps the times of the trip from being known. */
  final int untimed(List<Problem> problems) {
    return TripArgument.untimed(console, file, problems);
  }

  /** Prints the answer. */
  final int print(String text) {
    return write(text, TripArgument.STANDARD, false);
  }

  /** Puts the answer where it is wanted, by the rules of {@link Output}. */
  final int write(String text, String target, boolean force) {
    return output().write(text, target, file, force);
  }

  /** The same with an answer in bytes. */
  final int write(byte[] answer, String target, boolean force) {
    return output().write(answer, target, file, force);
  }

  /** The same where {@code --out} says. */
  final int write(String text, OutOption out) {
    return write(text, out.target(), out.force());
  }

  /** The same with an answer in bytes. */
  final int write(byte[] answer, OutOption out) {
    return write(answer, out.target(), out.force());
  }

  final Output output() {
    return new Output(planner, console);
  }
}
