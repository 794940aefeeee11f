package dawngauge.settings;

import dawngauge.quantity.Entered;
import dawngauge.quantity.Quantity;
import dawngauge.quantity.QuantityKind;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Properties;

/** Reads the settings that come with the program. */
public final class SettingsFile {

  private static final String DEFAULTS = "/dawngauge/config/defaults.properties";

  private final Properties properties = new Properties();

  private SettingsFile() {
    InputStream stream = SettingsFile.class.getResourceAsStream(DEFAULTS);
    if (stream == null) {
      throw new IllegalStateException("the program lacks its own " + DEFAULTS);
    }
    try (Reader reader = new InputStreamReader(stream, StandardCharsets.UTF_8)) {
      properties.load(reader);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The defaults. */
  public static Settings defaults() {
    SettingsFile file = new SettingsFile();
    return new Settings(
        file.figure(QuantityKind.RATIO, "confidence"),
        file.figure(QuantityKind.RATIO, "reserve"),
        file.figure(QuantityKind.GAUGE_PRESSURE, "recheck.change"),
        file.figure(QuantityKind.RATIO, "recheck.changePart"),
        file.figure(QuantityKind.GAUGE_PRESSURE, "duals.apart"),
        file.figure(QuantityKind.RATIO, "plan.underAim"),
        Integer.parseInt(file.text("shortStopMinutes")));
  }

  private <Q extends Quantity> Q figure(QuantityKind<Q> kind, String key) {
    return Entered.of(kind, text(key)).value();
  }

  private String text(String key) {
    String text = properties.getProperty(key);
    if (text == null) {
      throw new IllegalStateException(DEFAULTS + " lacks " + key);
    }
    return text.strip();
  }
}
