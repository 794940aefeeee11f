package dawngauge.ui;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** What the window asks its user about files; tests answer in the user's place. */
public interface FileAsker {

  /** Which trip file to open. */
  Optional<Path> fileToOpen();

  /**
   * Where to save.
   *
   * @param name the name offered
   */
  Optional<Path> fileToSave(String name);

  /**
   * Which file of another kind to read.
   *
   * @param what what it is
   * @param ending its ending, such as ".gpx"
   */
  Optional<Path> fileToRead(String what, String ending);

  /**
   * Where to write something that is no trip file.
   *
   * @param what what it is
   * @param name the name offered, whose ending tells its kind
   */
  Optional<Path> fileToWrite(String what, String name);

  /**
   * What to do with edits that are not saved.
   *
   * @param trip name of the trip
   */
  Leave unsaved(String trip);

  /**
   * Whether to save although something typed could not be taken.
   *
   * @param drafts each as "field: text"
   */
  boolean saveWithout(List<String> drafts);

  /**
   * Whether to replace a file that another program changed.
   *
   * @param file its name
   */
  boolean replaceChanged(String file);

  /**
   * A name for a rig that is kept.
   *
   * @param offered the name offered
   */
  Optional<String> rigName(String offered);

  /**
   * Whether the user agrees to what services are sent, with a contact for them.
   *
   * @param what what comes from them
   * @param told what is sent where
   * @param offered the contact offered, perhaps empty
   * @param wrong what was wrong with the contact given before; empty the first time
   * @return the contact; empty where the user does not agree
   */
  Optional<String> agree(String what, List<String> told, String offered, String wrong);

  /**
   * Whether to keep with the rig how warm its tires ran.
   *
   * @param told what would be kept, and what comes of it
   */
  boolean keepHeat(String told);

  /** What becomes of edits that are not saved. */
  enum Leave {
    /** They are saved first. */
    SAVE,
    /** They are dropped. */
    DROP,
    /** Nothing is left. */
    STAY
  }
}
