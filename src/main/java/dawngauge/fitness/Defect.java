package dawngauge.fitness;

import dawngauge.explain.Authority;
import dawngauge.explain.Phrase;

/**
 * One finding about the rig.
 *
 * @param code its family
 * @param severity how bad it is
 * @param where in words: "trailer axle 2 left", "pickup", "spare S1"
 * @param what is found, with its figures
 * @param toDo what the crew does about it
 * @param authority on whose word
 */
public record Defect(
    FindingKind code,
    Severity severity,
    String where,
    Phrase what,
    Phrase toDo,
    Authority authority) {}
