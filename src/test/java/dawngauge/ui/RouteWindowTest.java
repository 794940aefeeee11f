package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.advice.Mark;
import dawngauge.ledger.Card;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.StopLine;
import dawngauge.planner.Plan;
import dawngauge.testdata.Forecasts;
import dawngauge.trip.Stop;
import dawngauge.ui.common.TaskLine;
import dawngauge.ui.route.StopGridPane;
import dawngauge.ui.route.TracePane;
import java.time.Duration;
import java.util.List;
import java.util.stream.IntStream;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.control.TitledPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;

/** The route as it is seen and walked through. */
class RouteWindowTest extends WindowTest {

  @Test
  void theDemoShowsEveryStopWithItsMarkAndTheTireTable() {
    OpenWindow open = open(demo());
    List<String> places = demo().route().stops().stream().map(Stop::place).toList();
    assertThat(open.column("stop")).containsExactlyElementsOf(places);
    assertThat(open.column("mark"))
        .hasSameSizeAs(places)
        .contains("adjust", "re-check")
        .doesNotContain("", "not known");
    assertThat(open.grid().columnCount()).isEqualTo(4 + 10 + 2);
    List<String> t2r = ledger(open).stops().stream().map(RouteWindowTest::ofT2r).toList();
    assertThat(open.column("t2r")).isEqualTo(t2r);
    assertThat(open.tireTable()).hasSize(10 * 7);
    open.focusStop(1);
    assertThat(open.tireTable()).hasSize(10 * 7).anySatisfy(text -> assertThat(text).contains("±"));
    assertThat(open.onTitle()).isEqualTo("Spring fleece haul (not saved) – Dawngauge");
  }

  /** The figure to set, or else the one on arrival; none where the rig passes. */
  private static String ofT2r(StopLine line) {
    StopLine.TireRow row = line.row("t2r");
    return row == null
        ? ""
        : row.mark() == Mark.ADJUST && row.sets() ? row.figure() : row.arriveReads();
  }

  @Test
  void whatIsNotKnownSaysSo() {
    OpenWindow open = open(gap());
    assertThat(open.column("mark"))
        .containsExactly("re-check", "re-check", "not known", "not known", "adjust", "re-check");
  }

  @Test
  void arrowKeysChooseAnotherStop() {
    OpenWindow open = open(demo());
    List<String> first = open.tireTable();
    open.focusStop(0);
    open.keys(KeyCode.DOWN);
    open.until("the second stop is chosen", () -> open.chosen() == 1);
    assertThat(open.tireTable()).hasSameSizeAs(first).isNotEqualTo(first);
    assertThat(open.texts("chosen-stop")).containsExactly("Walsenburg CO");
    assertThat(open.field("Place").getText()).isEqualTo("Walsenburg CO");
    open.keys(KeyCode.UP);
    open.until("the first stop is chosen again", () -> open.chosen() == 0);
    assertThat(open.tireTable()).isEqualTo(first);
  }

  @Test
  void aStopSaysWhatToDoAndWhatToWatchBesideItsRow() {
    OpenWindow open = open(demo());
    List<StopLine> stops = ledger(open).stops();
    StopGridPane grid = open.grid();
    for (int i = 0; i < stops.size(); i++) {
      int row = i;
      Card card = stops.get(i).card();
      open.run(() -> grid.choose(row));
      if (!card.todo().isEmpty() || !card.watch().isEmpty()) {
        assertThat(shown(section(open, "What to do here")))
            .containsAll(card.todo().stream().map(Card.Line::text).toList())
            .containsAll(card.watch());
      }
      assertThat(card.todo().stream().map(Card.Line::text))
          .as("all of it is read out")
          .allMatch(OpenWindow.onToolkit(() -> grid.spoken(row, 1))::contains);
    }
  }

  @Test
  void ofManyLinesTheFirstAreShownAndHowManyThereAreMore() {
    Card.Line hold = new Card.Line(Mark.HOLD, "t1l", "Hold t1l: worn", false);
    Card.Line check = new Card.Line(Mark.RECHECK, "t2r", "Check t2r: find its leak", false);
    Card card = new Card(List.of(hold, check, check, check, check), List.of());
    List<String> few =
        OpenWindow.onToolkit(
            () -> TaskLine.few(card).stream().flatMap(node -> labels(node).stream()).toList());
    assertThat(few).containsExactly(hold.text(), check.text(), check.text(), "and 2 more");
  }

  @Test
  void theReasonsOfAStopAreFoldedAndStayAsTheyWereLeft() {
    OpenWindow open = open(demo());
    List<StopLine> stops = ledger(open).stops();
    StopLine first = stops.get(0);
    assertThat(first.tasks()).isNotEmpty();
    TitledPane why = section(open, "Why");
    open.focusStop(0);
    assertThat(why.isExpanded()).isFalse();
    assertThat(shown(section(open, "What to do here")))
        .containsAll(first.card().todo().stream().map(Card.Line::text).toList())
        .containsAll(first.card().watch())
        .contains(Ledger.CAUTIONS.get(1));
    assertThat(why.isFocusTraversable()).isTrue();
    open.focus(why);
    open.keys(KeyCode.SPACE);
    open.until("the reasons are told", why::isExpanded);
    assertThat(shown(why)).contains(reasons(first)).contains("Temperature " + first.airFrom());
    open.focusStop(0);
    open.keys(KeyCode.DOWN);
    open.until("the second stop is chosen", () -> open.chosen() == 1);
    assertThat(why.isExpanded()).isTrue();
    assertThat(shown(why)).contains(reasons(stops.get(1)));
  }

  private static Ledger ledger(OpenWindow open) {
    Plan planned = open.document.planned();
    return Ledger.of(
        planned.trip(),
        planned.advice(),
        planned.problems(),
        planned.fitness(),
        open.document.units(),
        null);
  }

  private static String[] reasons(StopLine line) {
    return line.tasks().stream()
        .map(task -> task.tires() + ": " + task.text())
        .toArray(String[]::new);
  }

  private static TitledPane section(OpenWindow open, String title) {
    return open.nodes(TitledPane.class, pane -> title.equals(pane.getText())).get(0);
  }

  private static List<String> shown(TitledPane section) {
    return OpenWindow.onToolkit(() -> labels(section.getContent()));
  }

  private static List<String> labels(Node node) {
    if (node instanceof Label label) {
      return List.of(label.getText());
    }
    return node instanceof Parent parent
        ? parent.getChildrenUnmodifiable().stream().flatMap(n -> labels(n).stream()).toList()
        : List.of();
  }

  @Test
  void theRowThatIsChosenIsAlwaysSeen() {
    OpenWindow open = open(demo());
    open.focusStop(0);
    open.keys(KeyCode.END);
    int last = demo().route().stops().size() - 1;
    open.until("the last stop is chosen", () -> open.chosen() == last);
    open.until("it is seen", () -> seen(open, last));
    open.keys(KeyCode.HOME);
    open.until("the first stop is seen", () -> open.chosen() == 0 && seen(open, 0));
  }

  private static boolean seen(OpenWindow open, int row) {
    return open.grid().sees(row);
  }

  /** All stops of the demo with their four days, at the size of the first start. */
  @Test
  void theWholeHaulIsSeenAtOnce() {
    OpenWindow open = open(demo());
    open.run(
        () -> {
          open.stage.setWidth(1280);
          open.stage.setHeight(820);
        });
    open.until("all rows are seen", () -> IntStream.range(0, 13).allMatch(row -> seen(open, row)));
    StopGridPane grid = open.grid();
    for (int column = 0; column < grid.columnCount(); column++) {
      var at = grid.bounds(0, column);
      assertThat(at.getMinX()).isNotNegative();
      assertThat(at.getMaxX()).as("column %s", column).isLessThanOrEqualTo(grid.getWidth());
    }
    assertThat(open.nodes(TracePane.class, pane -> pane.getWidth() > 100)).hasSize(1);
    assertThat(open.texts("chosen-stop")).hasSize(1);
  }

  @Test
  void inANarrowWindowTheStopComesByEnterAndGoesByEscape() {
    OpenWindow open = open(demo());
    assertThat(open.nodes(TracePane.class, pane -> true)).hasSize(1);
    assertThat(open.tireTable()).isNotEmpty();
    open.run(() -> open.stage.setWidth(900));
    open.until("the stop gave way", () -> open.texts("chosen-stop").isEmpty());
    assertThat(open.nodes(TracePane.class, pane -> true)).hasSize(1);
    open.focusStop(1);
    open.keys(KeyCode.ENTER);
    open.until("the stop came", () -> !open.texts("chosen-stop").isEmpty());
    open.until("its place has the keyboard", () -> open.field("Place").isFocused());
    assertThat(open.tireTable()).isNotEmpty();
    open.keys(KeyCode.ESCAPE);
    open.until("it went", () -> open.texts("chosen-stop").isEmpty());
    open.until("the grid has the keyboard", () -> open.grid().isFocused());
    ToggleButton stop =
        open.nodes(ToggleButton.class, button -> "Stop".equals(button.getText())).get(0);
    open.run(stop::fire);
    open.until("the stop came by its button", () -> !open.texts("chosen-stop").isEmpty());
    open.run(() -> open.stage.setWidth(1300));
    open.until("both are there", () -> !open.nodes(TracePane.class, pane -> true).isEmpty());
    assertThat(open.tireTable()).isNotEmpty();
  }

  /** The clock that a field computes is the one that the grid shows, to the same minute. */
  @Test
  void aComputedTimeIsThatOfTheGrid() {
    OpenWindow open = open(demo());
    List<String> times = open.column("time");
    for (int row : new int[] {1, 4, 8, 9}) {
      open.focusStop(row);
      open.until(
          "the field has its time",
          () -> open.field("Arrival time").getPromptText().endsWith(" " + times.get(row)));
    }
  }

  @Test
  void theTraceTellsItsFiguresByKeyboard() {
    OpenWindow open = open(demo());
    open.focus(open.nodes(TracePane.class, pane -> true).get(0));
    open.keys(KeyCode.DOWN);
    open.until("a figure is explained", () -> !open.texts("steps-heading").isEmpty());
    String first = open.texts("steps-heading").get(0);
    assertThat(first).startsWith("pickup axle 1 left, Tue 6 Apr").contains("reads", "cold here");
    assertThat(
            OpenWindow.onToolkit(
                () -> open.stage.getScene().getRoot().lookupAll(".steps .figure-line").size()))
        .isGreaterThan(5);
    open.keys(KeyCode.PAGE_DOWN);
    open.until("it is a later one", () -> !open.texts("steps-heading").get(0).equals(first));
  }

  @Test
  void aRowIsDraggedToAnotherPlaceAndBackByKeyboard() {
    OpenWindow open = open(demo());
    List<String> places = open.column("stop");
    open.drag(1, 0);
    open.until("it stands elsewhere", () -> !open.column("stop").equals(places));
    assertThat(open.column("stop").subList(0, 3))
        .containsExactly(places.get(1), places.get(0), places.get(2));
    open.focusStop(0);
    open.keys(KeyCode.ALT, KeyCode.DOWN);
    open.until("it is back", () -> open.column("stop").equals(places));
  }

  @Test
  void severalRowsTakenTogetherHaveFieldsInCommon() {
    OpenWindow open = open(demo());
    open.focusStop(1);
    open.keys(KeyCode.SPACE);
    open.keys(KeyCode.SHIFT, KeyCode.DOWN);
    open.keys(KeyCode.SHIFT, KeyCode.DOWN);
    open.keys(KeyCode.SHIFT, KeyCode.DOWN);
    open.until("four are taken", () -> open.texts("chosen-stop").equals(List.of("4 stops")));
    open.keys(KeyCode.SHIFT, KeyCode.UP);
    open.until("three are taken", () -> open.texts("chosen-stop").equals(List.of("3 stops")));
    assertThat(open.field("Stay of all").getPromptText()).isEqualTo("differs");
    open.write("Stay of all", "55 min");
    open.keys(KeyCode.ENTER);
    open.until("it is an edit", () -> open.document.dirtyProperty().get());
    assertThat(stays(open).subList(1, 4)).containsOnly(Duration.ofMinutes(55));
    assertThat(stays(open).get(4)).isEqualTo(demo().route().stops().get(4).stay());
    open.write("High of all", "-80 °F");
    open.keys(KeyCode.ENTER);
    open.until(
        "the stop is named whose low is above it",
        () ->
            open.texts("field-error").stream()
                .anyMatch(text -> text.startsWith(demo().route().stops().get(1).place())));
    open.keys(KeyCode.ESCAPE);
    open.press(open.buttons("Undo").get(0));
    assertThat(open.document.trip().equals(demo())).isTrue();
    open.focusStop(2);
    open.keys(KeyCode.SPACE);
    open.until("one is taken", () -> open.texts("chosen-stop").equals(List.of("Raton NM")));
    assertThat(open.field("Stay").isVisible()).isTrue();
  }

  private static List<Duration> stays(OpenWindow open) {
    return open.document.trip().route().stops().stream().map(Stop::stay).toList();
  }

  @Test
  void aPastedListIsShownAsUnderstoodAndAddedAsOneEdit() {
    OpenWindow open = open(demo());
    open.focusStop(2);
    open.keys(KeyCode.SPACE);
    open.keys(KeyCode.SHORTCUT, KeyCode.L);
    open.until("the page is there", () -> open.nodes(TextArea.class, area -> true).size() == 1);
    TextArea area = open.nodes(TextArea.class, known -> true).get(0);
    open.until("it has the keyboard", area::isFocused);
    open.run(() -> area.setText("Trinidad CO @ 25 min\nNowhereville QQ"));
    open.until("both lines are read", () -> open.texts("place-line").size() == 2);
    assertThat(open.texts("field-error")).hasSize(1);
    assertThat(open.buttons("Add after stop 3").get(0).isDisabled()).isTrue();
    open.run(() -> area.setText("Trinidad CO @ 25 min, hose\nClayton NM @ overnight 06:00"));
    open.until("the list can be used", () -> !open.buttons("Add after stop 3").get(0).isDisabled());
    open.press(open.buttons("Add after stop 3").get(0));
    assertThat(open.document.trip().route().stops().subList(3, 5))
        .extracting(Stop::place)
        .containsExactly("Trinidad CO", "Clayton NM");
    assertThat(open.document.trip().route().stops().get(3).air().available()).isTrue();
    assertThat(Forecasts.known(open.document.trip().route().stops().get(4).leave()).time())
        .hasToString("2027-04-07T06:00-06:00[America/Denver]");
    assertThat(Forecasts.known(open.document.planned().advice()).stops())
        .as("typical air is there at once")
        .allSatisfy(stop -> assertThat(stop.stop().airOnLeaving()).isNotNaN());
    assertThat(open.nodes(TextArea.class, known -> true)).isEmpty();
    open.press(open.buttons("Undo").get(0));
    assertThat(open.document.trip().equals(demo())).isTrue();
  }

  @Test
  void enterGoesToTheFieldsOfAStopThatWasClicked() {
    OpenWindow open = open(demo());
    open.clickStop(1);
    open.until("it is chosen", () -> open.chosen() == 1);
    assertThat(open.grid().isFocused()).isTrue();
    open.keys(KeyCode.ENTER);
    open.until("its place has the keyboard", () -> open.field("Place").isFocused());
    assertThat(open.field("Place").getText()).isEqualTo("Walsenburg CO");
  }
}
