package dawngauge.weights;

/**
 * One thing that is not known for sure, such as a scale's error or where a load's middle is. Two
 * loads with the same doubt go wrong together.
 *
 * @param about what it is about; equal for the same doubt alone
 */
record Doubt(String about) {}
