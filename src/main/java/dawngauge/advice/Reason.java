package dawngauge.advice;

import dawngauge.explain.Phrase;

/**
 * Why a mark is given.
 *
 * @param mark the mark it asks for
 * @param todo what to do, in a few words; empty where nothing is, and where a figure to set says it
 * @param text the same with its reasons, in full
 * @param rank order among reasons of one mark, lower first
 * @param ofTheRig whether it follows from the rig as it is, so that the check of its fitness tells
 *     it too
 */
public record Reason(Mark mark, Phrase todo, Phrase text, int rank, boolean ofTheRig) {

  /** A reason that follows from air and readings. */
  Reason(Mark mark, Phrase todo, Phrase text, int rank) {
    this(mark, todo, text, rank, false);
  }

  /** A reason that asks for nothing, or for a figure to be set. */
  Reason(Mark mark, Phrase text, int rank) {
    this(mark, Phrase.of(""), text, rank, false);
  }
}
