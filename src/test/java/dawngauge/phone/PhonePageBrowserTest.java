package dawngauge.phone;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.planner.Planner;
import dawngauge.planner.SentBack;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Route;
import dawngauge.trip.Trip;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** The page for the phone in a browser of a phone's size, without a network. */
@ExtendWith(NeedsBrowser.class)
class PhonePageBrowserTest {

  private static final Planner PLANNER = PhoneDemo.PLANNER;
  private static final Trip DEMO = PhoneDemo.TRIP;

  @TempDir private static Path folder;
  private static Path page = Path.of("");
  private static PhoneBrowser browser = PhoneBrowser.NONE;

  @BeforeAll
  static void make() throws IOException {
    page = PhoneDemo.page(folder.resolve("trip.html"), DEMO, UnitSystem.US);
    browser = PhoneBrowser.open();
  }

  @AfterAll
  static void close() {
    browser.close();
  }

  @BeforeEach
  void fresh() {
    browser.show(page);
    browser.run("localStorage.clear();");
    browser.size(390, 844);
    browser.dark(false);
    browser.show(page);
  }

  private static void begin(String stop, String at) {
    browser.choose("Stop", stop);
    browser.press("Gauge the tires here");
    browser.begun(at);
    browser.press("Begin");
  }

  @Test
  void itAsksForNothingAndBreaksNoPolicy() {
    browser.asked();
    browser.show(page);
    begin("1. Alamosa CO", "2027-04-06T05:15");
    browser.type("72");
    browser.press("Next");
    assertThat(browser.asked())
        .isNotEmpty()
        .allMatch(own -> own.startsWith("file:") || own.startsWith("data:"));
    assertThat(browser.complaints()).isEmpty();
  }

  @Test
  void aMorningRoundComesBackAndTheReviewCountsIt() {
    begin("1. Alamosa CO", "2027-04-06T05:30");
    for (String figure : List.of("60", "60", "65", "60", "65", "65", "80", "80", "80", "71")) {
      browser.type(figure);
      browser.press("Next");
    }
    assertThat(browser.seen()).contains("trailer axle 2 right (t2r)").contains("71 psi");
    browser.press("Done: send back");
    String sent = String.valueOf(browser.run("return window.dawngauge.sent();"));
    SentBack back = PLANNER.store().with(DEMO, PLANNER.store().sentBack(sent).get());
    assertThat(back.problems()).isEmpty();
    assertThat(back.added()).isEqualTo(10);
    assertThat(back.trip().log()).hasSize(DEMO.log().size() + 10);
    LogEvent.Reading first = null;
    for (LogEvent event : back.trip().log()) {
      boolean sentNow = event.time().text().startsWith("2027-04-06T05:30");
      first = sentNow && event instanceof LogEvent.Reading reading ? reading : first;
    }
    assertThat(first).isNotNull();
    assertThat(first.pressure().text()).isEqualTo("60 psi");
    assertThat(first.state()).isEqualTo(ReadingState.COLD);
    assertThat(readings(back.trip())).isEqualTo(readings(DEMO) + 10);
    // Each thing once: the same text again brings nothing.
    SentBack again = PLANNER.store().with(back.trip(), PLANNER.store().sentBack(sent).get());
    assertThat(again.added()).isZero();
    assertThat(again.known()).isEqualTo(10);
    assertThat(again.trip()).isEqualTo(back.trip());
  }

  /** How many readings the review holds against what was expected of them. */
  private static int readings(Trip trip) {
    return PLANNER.plan(trip).review().orElseThrow().tires().stream()
        .mapToInt(tire -> tire.all().size())
        .sum();
  }

  @Test
  void whatWasTypedSurvivesClosing() {
    begin("1. Alamosa CO", "2027-04-06T05:15");
    browser.type("72.5");
    browser.press("Next");
    browser.show(page);
    browser.press("Send back (1)");
    assertThat(String.valueOf(browser.run("return window.dawngauge.sent();")))
        .contains("\"figure\": \"72.5 psi\"")
        .contains("\"at\": \"2027-04-06T05:15\"")
        .contains("\"state\": \"cold\"");
  }

  @Test
  void outsideOfItsTimesItAsksForTheProgram() {
    begin("2. Walsenburg CO", "2027-04-06T11:00");
    browser.type("80");
    assertThat(browser.seen()).contains("Not made for this minute: ask the program.");
  }

  @Test
  void whereAPlanIsFollowedItSaysSo() throws IOException {
    Trip followed = DEMO.withPlan(DEMO.plan().following(true));
    browser.show(PhoneDemo.ownPage(folder.resolve("followed.html"), followed, UnitSystem.US));
    begin("1. Alamosa CO", "2027-04-06T05:15");
    browser.type("80");
    assertThat(browser.seen()).contains("A plan is followed: ask the program.");
  }

  /** One key goes on; with a figure it is never the one that drops it. */
  @Test
  void aTypedFigureIsNeverSkipped() {
    begin("1. Alamosa CO", "2027-04-06T05:15");
    browser.press("Skip");
    browser.type("72");
    assertThat(browser.seen()).contains("Next").doesNotContain("Skip");
    browser.press("Next");
    browser.press("Leave round");
    assertThat(browser.seen()).contains("p1r 72 psi, cold").doesNotContain("p1l");
  }

  /** A recorder that subtracts the pressure at sea level shows something else of the same tire. */
  @Test
  void ofAGaugeThatWasNotTriedItTellsNothing() {
    String ask =
        "const d = window.dawngauge; const t = d.data.stops[1].tables[0];"
            + " return d.lookUp(d.data.stops[1], t.state, 'T4', t.times[0], 80, arguments[0]);";
    assertThat(browser.run(ask, DEMO.rig().gauges().get(0).name())).isNotNull();
    assertThat(browser.run(ask, "another gauge")).isNull();
  }

  /**
   * In Denver clocks go from 02:00 to 03:00 MDT on 14 March 2027, at 09:00 UTC, and from 02:00 to
   * 01:00 MST on 7 November 2027, at 08:00 UTC (IANA time zone database).
   */
  @Test
  void theClockOfAStopMayChangeWhileTheRigStands() {
    String script =
        "const turn = Date.parse(arguments[0]) / 60000; const stop = {offset: arguments[1], turn:"
            + " turn, after: arguments[2]}; return [turn - 1, turn, turn + 120].map(m =>"
            + " window.dawngauge.local(stop, m) + ' ' + (window.dawngauge.minuteAt(stop,"
            + " window.dawngauge.local(stop, m)) - m)).join(', ');";
    assertThat(browser.run(script, "2027-03-14T09:00Z", -420, -360))
        .isEqualTo("2027-03-14T01:59 0, 2027-03-14T03:00 0, 2027-03-14T05:00 0");
    assertThat(browser.run(script, "2027-11-07T08:00Z", -360, -420))
        .asString()
        .endsWith("2027-11-07T03:00 0");
  }

  @Test
  void whatWasMistypedIsForgottenAndARoundGoesOn() {
    begin("1. Alamosa CO", "2027-04-06T05:15");
    browser.type("7");
    browser.press("Next");
    browser.press("Leave round");
    assertThat(browser.seen()).contains("05:15 p1l 7 psi, cold");
    browser.press("Forget");
    assertThat(browser.seen()).doesNotContain("7 psi, cold");
    browser.press("Go on with the last");
    assertThat(browser.seen()).contains("Press a tire to change it.").doesNotContain("7 psi");
  }

  /** A point without a figure is not a flat tire. */
  @Test
  void aPointAloneIsNoFigure() {
    begin("1. Alamosa CO", "2027-04-06T05:15");
    browser.type(".");
    browser.press("Next");
    browser.press("Leave round");
    assertThat(browser.seen()).doesNotContain("Typed here");
  }

  @Test
  void aLowTireIsHeldWithItsCautions() {
    begin("2. Walsenburg CO", "2027-04-06T07:20");
    browser.type("40");
    assertThat(browser.seen())
        .contains("hold")
        .contains("ran low: do not add air, have it inspected inside")
        .contains("Never let air out of a warm tire");
    browser.press("I set it to");
    assertThat(browser.seen()).contains("It read 40 psi:").contains("do not add air");
    browser.press("Leave round");
    browser.press("Send back (1)");
    browser.press("Stops");
  }

  @Test
  void whoSeesOrTouchesBadlyIsNotKeptOut() throws IOException {
    for (boolean dark : new boolean[] {false, true}) {
      browser.dark(dark);
      browser.show(page);
      seen("stops", dark);
      begin("2. Walsenburg CO", "2027-04-06T07:20");
      browser.type("40");
      seen("hold", dark);
      browser.press("Leave round");
      browser.press("Flat tire");
      seen("flat", dark);
      browser.press("Gauge");
      seen("begin", dark);
      browser.run("[...document.querySelectorAll('nav button')].pop().click();");
      seen("back", dark);
    }
  }

  private static void seen(String name, boolean dark) throws IOException {
    browser.picture(Path.of("target/pictures/phone-" + name + (dark ? "-dark" : "") + ".png"));
    assertThat(browser.barriers()).as(name).isEmpty();
  }

  /** WCAG 2.2, 1.4.10: at 320 pixels nothing but tables is moved sideways. */
  @Test
  void aNarrowScreenIsNotMovedSideways() {
    browser.size(320, 844);
    for (String each : List.of("Stops", "Gauge", "Flat tire", "Send back")) {
      browser.press(each);
      assertThat(((Number) browser.run("return document.documentElement.scrollWidth;")).intValue())
          .as(each)
          .isLessThanOrEqualTo(320);
    }
  }

  /** All keys are in sight, upright and on the side, and the figure with them. */
  @Test
  void theKeysAreInSight() {
    for (int[] size : new int[][] {{390, 844}, {360, 640}, {844, 390}}) {
      browser.size(size[0], size[1]);
      browser.show(page);
      begin("2. Walsenburg CO", "2027-04-06T07:20");
      browser.type("40");
      browser.run("window.scrollTo(0, 0);");
      assertThat(
              browser.run(
                  "return [...document.querySelectorAll('.keys button, #gauged')].filter(each => {"
                      + " const box = each.getBoundingClientRect(); return box.top < 0 || box.bottom >"
                      + " innerHeight || box.width < 44 || box.height < 44; }).length;"))
          .as("%d × %d", size[0], size[1])
          .isEqualTo(0L);
      browser.press("Leave round");
    }
  }

  @Test
  void withoutItsScriptItIsRead() {
    browser.scripts(false);
    browser.show(page);
    assertThat(browser.seen())
        .contains("no round can be typed here")
        .contains("2. Walsenburg CO")
        .contains("7. Quanah TX")
        .contains("Nobody drives on a flat tire");
    browser.scripts(true);
  }

  @Test
  void aNameThatIsATagIsShownAsItIs() throws IOException {
    String name = "<img src=x onerror=alert(1)></script><b>'\"&";
    Trip odd =
        DEMO.withName(name)
            .withRoute(
                new Route(
                    DEMO.route().stops().stream().map(stop -> stop.withPlace(name)).toList(),
                    DEMO.route().legs()));
    browser.show(PhoneDemo.page(folder.resolve("odd.html"), odd, UnitSystem.SI));
    assertThat(browser.seen()).contains(name).contains("1. " + name);
    assertThat(browser.run("return document.querySelectorAll('img, b').length;")).isEqualTo(0L);
    assertThat(browser.run("return document.title;")).isEqualTo(name + " – Dawngauge");
  }
}
