/**
 * The field catalogue: every part of a rig and every figure of it, once. The trip file, the
 * window's forms and the comparison with an earlier trip go over it, and a test holds schema and
 * documents to it. Start at {@link dawngauge.field.RigFields}.
 */
@org.jspecify.annotations.NullMarked
package dawngauge.field;
