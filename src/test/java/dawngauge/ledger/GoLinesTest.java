package dawngauge.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.explain.Authority;
import dawngauge.explain.Phrase;
import dawngauge.fitness.Defect;
import dawngauge.fitness.FindingKind;
import dawngauge.fitness.Severity;
import dawngauge.quantity.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The head of a page names what forbids going and how far it goes, and counts the rest. */
class GoLinesTest {

  private static Defect defect(FindingKind code, Severity severity, String where) {
    return new Defect(
        code,
        severity,
        where,
        Phrase.of("what of {0}", where),
        Phrase.of("do"),
        Authority.inferred("test"));
  }

  private static final List<Defect> LIST =
      List.of(
          defect(FindingKind.HOLD_HERE, Severity.STOP, "a"),
          defect(FindingKind.HOLD_AHEAD, Severity.MEND, "b"),
          defect(FindingKind.SET_HERE, Severity.MEND, "c"),
          defect(FindingKind.LOOK_HERE, Severity.MEND, "d"),
          defect(FindingKind.NO_TREAD, Severity.KNOW, "e"));

  @Test
  void holdsAreNamedAndWhatIsToBePutRightIsCounted() {
    assertThat(GoLines.of(LIST, UnitSystem.US))
        .containsExactly(
            "NO-GO: a: what of a",
            "b: what of b",
            "2 more to put right before leaving: see the rig");
    assertThat(GoLines.putRight(LIST, UnitSystem.US))
        .containsExactly("c: what of c", "d: what of d");
  }

  @Test
  void whereNothingIsNamedThereIsNoMore() {
    assertThat(GoLines.of(LIST.subList(2, 4), UnitSystem.US))
        .containsExactly("2 to put right before leaving: see the rig");
  }

  /** As its card: one thing to put right, in two places. */
  @Test
  void whatIsAlikeInTwoPlacesIsCountedOnce() {
    Defect first = defect(FindingKind.SET_HERE, Severity.MEND, "c");
    Defect alike =
        new Defect(
            FindingKind.SET_HERE,
            Severity.MEND,
            "d",
            first.what(),
            first.toDo(),
            first.authority());
    assertThat(GoLines.of(List.of(first, alike), UnitSystem.US))
        .containsExactly("1 to put right before leaving: see the rig");
    assertThat(GoLines.putRight(List.of(first, alike), UnitSystem.US))
        .containsExactly("c, d: what of c");
    assertThat(FitnessPage.summary(List.of(first, alike))).startsWith("1 ");
  }

  @Test
  void aRigThatMayGoHasNoLine() {
    assertThat(GoLines.of(LIST.subList(4, 5), UnitSystem.US)).isEmpty();
  }

  @Test
  void ofManyLinesTheFirstThreeStandThereAndTheRestIsCounted() {
    List<String> three = List.of("1", "2", "3");
    assertThat(GoLines.few(three)).isEqualTo(three);
    assertThat(GoLines.few(List.of("1", "2", "3", "4", "5")))
        .containsExactly("1", "2", "3 (and 2 more, see the rig)");
  }
}
