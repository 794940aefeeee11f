package dawngauge.advice;

import dawngauge.explain.Phrase;

/**
 * Why a mark is given.
 *
 * @param mark the mark it asks for
 * @param text in words
 * @param rank order among reasons of one mark, lower first
 */
public record Reason(Mark mark, Phrase text, int rank) {}
