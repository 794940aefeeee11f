/**
 * The field catalogue: every part of a rig and every figure of it, once. The trip file, the
 * window's forms, the comparison with an earlier trip and a test of the documents go over it. Start
 * at {@link dawngauge.field.RigFields}.
 */
@org.jspecify.annotations.NullMarked
package dawngauge.field;
