package dawngauge.advice;

import dawngauge.explain.Phrase;

/**
 * Why a mark is given.
 *
 * @param mark the mark it asks for
 * @param text in words
 * @param rank order among reasons of one mark, lower first
 * @param ofTheRig whether it follows from the rig as it is, so that the check of its fitness tells
 *     it too
 */
public record Reason(Mark mark, Phrase text, int rank, boolean ofTheRig) {

  /** A reason that follows from air and readings. */
  public Reason(Mark mark, Phrase text, int rank) {
    this(mark, text, rank, false);
  }
}
