package dawngauge.phone;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.logging.Level;
import org.jspecify.annotations.Nullable;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** A browser without a window and without a network, of the size of a phone. */
final class PhoneBrowser implements AutoCloseable {

  private static final Duration PATIENCE = Duration.ofSeconds(60);

  /** None yet. */
  static final PhoneBrowser NONE = new PhoneBrowser(null);

  private final @Nullable ChromeDriver driver;

  private PhoneBrowser(@Nullable ChromeDriver driver) {
    this.driver = driver;
  }

  static PhoneBrowser open() {
    ChromeOptions options = new ChromeOptions();
    options.setBinary(NeedsBrowser.BROWSER.toFile());
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--disable-dev-shm-usage",
        "--disable-gpu",
        "--hide-scrollbars",
        "--host-resolver-rules=MAP * ~NOTFOUND");
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.PERFORMANCE, Level.ALL);
    logs.enable(LogType.BROWSER, Level.ALL);
    options.setCapability("goog:loggingPrefs", logs);
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(NeedsBrowser.DRIVER.toFile())
            .usingAnyFreePort()
            .build();
    PhoneBrowser browser = new PhoneBrowser(new ChromeDriver(service, options));
    browser.size(390, 844);
    return browser;
  }

  /** Width and height of the screen. */
  void size(int width, int height) {
    driver.manage().window().setSize(new Dimension(width, height));
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 2, "mobile", true));
  }

  void dark(boolean dark) {
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of(
            "features",
            List.of(Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light"))));
  }

  /** As somebody sees it who has no script. */
  void scripts(boolean run) {
    driver.executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", !run));
  }

  void show(Path page) {
    driver.get(page.toUri().toString());
  }

  Object run(String script, Object... arguments) {
    return driver.executeScript(script, arguments);
  }

  /** Text of all that is seen. */
  String seen() {
    return driver.findElement(By.tagName("body")).getText();
  }

  void press(String label) {
    WebElement button = button(label);
    run("arguments[0].scrollIntoView({block: 'center'});", button);
    button.click();
  }

  private WebElement button(String label) {
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (System.nanoTime() < end) {
      Object found =
          run(
              "return [...document.querySelectorAll('button')].find(button =>"
                  + " button.checkVisibility() && button.innerText === arguments[0]);",
              label);
      if (found instanceof WebElement button && button.isDisplayed()) {
        return button;
      }
      Thread.onSpinWait();
    }
    throw new AssertionError("no button " + label + " in: " + seen());
  }

  /** Types a figure by the keys of the page. */
  void type(String figure) {
    figure.chars().forEach(key -> press(String.valueOf((char) key)));
  }

  /** Chooses by the words of a label and of a choice. */
  void choose(String label, String choice) {
    run(
        "const label = [...document.querySelectorAll('label')].find(l =>"
            + " l.firstChild.textContent === arguments[0]); const select ="
            + " label.querySelector('select'); select.value = [...select.options].find(o => o.text"
            + " === arguments[1]).value; select.dispatchEvent(new Event('change'));",
        label,
        choice);
  }

  /** Begun then, by the clock of the stop. */
  void begun(String at) {
    run(
        "const field = document.querySelector('input[type=datetime-local]'); field.value ="
            + " arguments[0]; field.dispatchEvent(new Event('change'));",
        at);
  }

  /** Addresses that the page asked for since this was last asked. */
  List<String> asked() {
    List<String> asked = new ArrayList<>();
    driver.manage().logs().get(LogType.PERFORMANCE).getAll().stream()
        .map(entry -> entry.getMessage())
        .filter(message -> message.contains("Network.requestWillBeSent\""))
        .map(message -> message.replaceAll("(?s).*\"request\":\\{.*?\"url\":\"([^\"]*)\".*", "$1"))
        .forEach(asked::add);
    return asked;
  }

  /** What the browser complains of. */
  List<String> complaints() {
    return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
        .map(entry -> entry.getMessage())
        .toList();
  }

  /** What a checker finds against the success criteria of WCAG 2.0 to 2.2, levels A and AA. */
  @SuppressWarnings("unchecked")
  List<String> barriers() throws IOException {
    try (InputStream in = PhoneBrowser.class.getResourceAsStream("/axe.min.js")) {
      run(new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8));
    }
    driver.manage().timeouts().scriptTimeout(PATIENCE);
    return (List<String>)
        driver.executeAsyncScript(
            "const done = arguments[0]; axe.run(document, {runOnly: {type: 'tag', values: ['wcag2a',"
                + " 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']}}).then(r => done(r.violations.map(v"
                + " => v.id + ': ' + v.nodes.map(n => n.html + ' ' + n.failureSummary).join(' | '))));");
  }

  void picture(Path file) throws IOException {
    Files.createDirectories(file.getParent());
    Files.write(file, driver.getScreenshotAs(OutputType.BYTES));
  }

  @Override
  public void close() {
    if (driver != null) {
      driver.quit();
    }
  }
}
