package dawngauge.report;

import dawngauge.advice.Advice;
import dawngauge.advice.StopReadTables;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.StopLine;
import dawngauge.ledger.TakenPage;
import dawngauge.ledger.Wording;
import dawngauge.page.Page;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Trip;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Base64;
import java.util.List;
import java.util.Objects;

/**
 * A page for the phone, one file that asks for nothing else: the stops ahead, a round to type, what
 * a reading means as the program tells it, a flat tire, and what was typed to be sent back. Without
 * its script it is still read.
 */
public final class PhonePage {

  /**
   * What stands in it.
   *
   * @param advice forecast and what to do
   * @param stops those it has, in order
   * @param flat what to do about a flat tire
   * @param fingerprint of the trip, by which it is known when it comes back
   * @param made when it was made
   */
  public record Parts(
      Trip trip,
      Advice advice,
      Ledger ledger,
      List<StopReadTables> stops,
      Page flat,
      String fingerprint,
      Instant made,
      UnitSystem units) {

    /** Copies the list. */
    public Parts {
      stops = List.copyOf(stops);
    }
  }

  private final StringBuilder out = new StringBuilder();
  private final Parts parts;

  private PhonePage(Parts parts) {
    this.parts = parts;
  }

  /** The document. */
  public static String of(Parts parts) {
    PhonePage page = new PhonePage(parts);
    page.head(resource("phone.css"), resource("phone.js"));
    parts.stops().forEach(page::stop);
    page.foot();
    return page.out.toString();
  }

  private void head(String style, String script) {
    String title = PageHtml.text(parts.ledger().title());
    out.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n")
        .append("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; ")
        .append("script-src '")
        .append(hash(script))
        .append("'; style-src '")
        .append(hash(style))
        .append("'; base-uri 'none'; form-action 'none'\">\n")
        .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
        .append("<meta name=\"color-scheme\" content=\"light dark\">\n<title>")
        .append(title)
        .append(" – Dawngauge</title>\n<style>")
        .append(style)
        .append("</style>\n</head>\n<body>\n<header><h1>")
        .append(title)
        .append("</h1>\n");
    line("caution", Ledger.CAUTIONS.get(0));
    out.append("<details><summary>Made ").append(PageHtml.text(made())).append("</summary>\n");
    line("", parts.ledger().summary());
    line(
        "",
        "What is typed here changes no figure of this page: take it back to the program and make a"
            + " new one.");
    parts.ledger().go().forEach(go -> line("caution", go));
    parts.ledger().putRight().forEach(right -> line("caution", right));
    out.append("</details>\n");
    out.append("</header>\n<main id=\"main\">\n<noscript>");
    line("caution", "This program shows no script: no round can be typed here. All else is below.");
    out.append("</noscript>\n<div id=\"app\" hidden></div>\n<div id=\"read\">\n");
  }

  /** By the clock of the first stop that it has. */
  private String made() {
    int first = parts.stops().isEmpty() ? 0 : parts.stops().get(0).visit();
    ZoneId zone = parts.advice().stops().get(first).stop().visit().zone();
    return Wording.day(parts.made(), zone) + ", " + Wording.clock(parts.made(), zone);
  }

  private void line(String style, String text) {
    out.append("<p class=\"").append(style).append("\">").append(PageHtml.text(text));
    out.append("</p>\n");
  }

  private void stop(StopReadTables stop) {
    StopLine line = parts.ledger().stops().get(stop.visit());
    out.append("<section class=\"stop\" aria-labelledby=\"s")
        .append(stop.visit())
        .append("\">\n<h2 id=\"s")
        .append(stop.visit())
        .append("\">")
        .append(PageHtml.text(TakenPage.place(line)))
        .append("</h2>\n")
        .append(PageHtml.of(TakenPage.of(line), 2))
        .append("</section>\n");
  }

  private void foot() {
    out.append("<section id=\"flat\" aria-labelledby=\"f\">\n<h2 id=\"f\">")
        .append(PageHtml.text(parts.flat().title()))
        .append("</h2>\n")
        .append(PageHtml.of(parts.flat(), 3))
        .append("</section>\n</div>\n</main>\n<footer>");
    line("caution", Ledger.AT_THE_VALVE);
    out.append("</footer>\n<script type=\"application/json\" id=\"data\">")
        .append(PhoneData.of(parts))
        .append("</script>\n<script>")
        .append(resource("phone.js"))
        .append("</script>\n</body>\n</html>\n");
  }

  private static String resource(String name) {
    try (InputStream in = PhonePage.class.getResourceAsStream(name)) {
      return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /** As a content policy names a script or a style. */
  private static String hash(String text) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return "sha256-" + Base64.getEncoder().encodeToString(digest);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
