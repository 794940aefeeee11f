package dawngauge.advice;

import dawngauge.explain.Phrase;

/**
 * Gauging that is good habit for the whole rig at a stop; no mark of a single tire.
 *
 * @param todo in a few words
 * @param text with the reason
 */
public record Habit(Phrase todo, Phrase text) {}
