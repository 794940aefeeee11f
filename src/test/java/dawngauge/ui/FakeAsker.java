package dawngauge.ui;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Answers in the user's place, and notes what was asked. */
final class FakeAsker implements FileAsker {

  final List<String> asked = new ArrayList<>();
  Optional<Path> file = Optional.empty();
  Leave leave = Leave.DROP;
  boolean agrees = true;
  String contact = "crew@example.org";

  /** So many questions for consent are answered before it is refused. */
  int refuseAfter = Integer.MAX_VALUE;

  @Override
  public Optional<Path> fileToOpen() {
    asked.add("open");
    return file;
  }

  @Override
  public Optional<Path> fileToSave(String name) {
    asked.add("save " + name);
    return file;
  }

  @Override
  public Optional<Path> fileToRead(String what, String ending) {
    asked.add("read " + what + " " + ending);
    return file;
  }

  @Override
  public Optional<Path> fileToWrite(String what, String name) {
    asked.add("write " + what + " " + name);
    return file;
  }

  @Override
  public Leave unsaved(String trip) {
    asked.add("unsaved " + trip);
    return leave;
  }

  @Override
  public boolean saveWithout(List<String> drafts) {
    asked.add("without " + String.join(", ", drafts));
    return agrees;
  }

  @Override
  public boolean replaceChanged(String name) {
    asked.add("replace " + name);
    return agrees;
  }

  @Override
  public Optional<String> agree(String what, List<String> told, String offered, String wrong) {
    asked.add("agree " + offered + wrong);
    return agrees && asked.size() < refuseAfter ? Optional.of(contact) : Optional.empty();
  }

  @Override
  public boolean keepHeat(String told) {
    asked.add("heat " + told);
    return agrees;
  }

  @Override
  public Optional<String> rigName(String offered) {
    asked.add("rig " + offered);
    return Optional.of("Kept");
  }
}
