package dawngauge.ui.common;

import java.util.Map;

/** Fields that tell what is typed in them and not taken, and take it up again after a crash. */
public interface DraftKeeper {

  /**
   * What is typed and not taken: by what the fields belong to, a stop or a part of the rig, the
   * fields' names and texts.
   */
  Map<String, Map<String, String>> drafts();

  /** Puts such texts back into their fields, not taken; leaves out what belongs elsewhere. */
  void restore(Map<String, Map<String, String>> kept);
}
