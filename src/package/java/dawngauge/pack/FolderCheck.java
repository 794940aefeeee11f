package dawngauge.pack;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpsConfigurator;
import com.sun.net.httpserver.HttpsServer;
import dawngauge.ledger.Credits;
import dawngauge.ledger.ProgramVersion;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.net.ssl.KeyManagerFactory;
import javax.net.ssl.SSLContext;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The folder with a runtime of its own does what the program folder does with the machine's. */
class FolderCheck {

  private static final Path FOLDER = Path.of("target", "packages", "dawngauge").toAbsolutePath();
  private static final Path JAVA = FOLDER.resolve("lib/runtime/bin/java");
  private static final String PASSWORD = "not-secret";

  private static final Pattern TIME = Pattern.compile("2027-04-[-0-9T:]+\\[[A-Za-z/_]+]");

  private Path home;
  private Program program;

  @BeforeEach
  void find(@TempDir Path folder) {
    home = folder;
    program = new Program(List.of(FOLDER.resolve("bin/dawngauge").toString()), home);
  }

  /** What is handed on holds no classes that were laid down here. */
  @AfterEach
  void tidy() throws IOException {
    Folders.remove(FOLDER.resolve("cache"));
  }

  @Test
  void itForecastsAsTheProgramFolderDoes() throws Exception {
    Path plain = Path.of("target", "dawngauge", "bin", "dawngauge").toAbsolutePath();
    String expected = Tool.run(List.of(plain.toString(), "forecast", Program.DEMO), Map.of());
    assertThat(expected).contains("Dalhart TX");
    assertThat(program.run("forecast", Program.DEMO)).isEqualTo(expected);
    assertThat(program.run("forecast", Program.DEMO)).isEqualTo(expected);
    assertThat(program.run("--version").strip()).isEqualTo("Dawngauge " + ProgramVersion.NUMBER);
  }

  @Test
  void itMakesTheSheet() throws Exception {
    Path sheet = home.resolve("sheet.pdf");
    program.run("sheet", Program.DEMO, "--out", sheet.toString());
    try (PDDocument document = Loader.loadPDF(sheet.toFile())) {
      assertThat(document.getNumberOfPages()).isPositive();
    }
  }

  /** Classes that are laid down: Java's own, mapped or the start is refused, and the program's. */
  @Test
  void itsClassesAreReadBack() throws Exception {
    assertThat(Tool.run(List.of(JAVA.toString(), "-Xshare:on", "-version"), Map.of()))
        .contains("sharing");
    program.run("forecast", Program.DEMO);
    try (Stream<Path> archives = Files.list(FOLDER.resolve("cache"))) {
      assertThat(archives).anyMatch(file -> file.getFileName().toString().startsWith("command-"));
    }
  }

  @Test
  void itsRuntimeHoldsWhatIsLookedUp() throws Exception {
    assertThat(Tool.run(List.of(JAVA.toString(), "--list-modules"), Map.of()))
        .contains("java.desktop@", "jdk.crypto.ec@", "jdk.localedata@", "jdk.charsets@")
        .doesNotContain("jdk.compiler@");
  }

  @Test
  void everyLicenseIsLaidOutAndEveryPartListed() throws Exception {
    Path licences = FOLDER.resolve("licences");
    JsonNode parts = new ObjectMapper().readTree(licences.resolve("parts.cdx.json").toFile());
    Set<String> listed = new TreeSet<>();
    parts.get("components").forEach(part -> listed.add(part.get("name").asText()));
    Set<String> credited = new TreeSet<>();
    for (Credits.Library library : Credits.libraries()) {
      credited.addAll(library.jars());
      Stream<Path> texts =
          Stream.concat(
              library.jars().stream().map(licences::resolve),
              Stream.of(library.license().split(" OR ", -1))
                  .map(license -> licences.resolve("texts/" + license + ".txt")));
      assertThat(texts).as(library.name()).anyMatch(Files::exists);
    }
    assertThat(listed).isEqualTo(credited);
    assertThat(parts.at("/metadata/component/version").asText()).isEqualTo(ProgramVersion.NUMBER);
    assertThat(licences.resolve("LICENSE.txt"))
        .hasSameTextualContentAs(Path.of("docs/LICENSE.txt"));
    assertThat(licences.resolve("credits.md")).content().contains("GeoNames", "CC BY 4.0");
  }

  @Test
  void theWindowLibraryOfAnotherSystemIsRefused() throws Exception {
    Jars jars = Jars.of(FOLDER.resolve("lib/app"));
    assertThatThrownBy(() -> jars.check("win"))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("is of another system than win");
  }

  /** Over elliptic curves, as from a service on the internet; only its certificate is our own. */
  @Test
  void itAsksAWeatherServiceOverTls() throws Exception {
    Path keys = keys();
    Path trip = home.resolve("trip.dawngauge");
    Files.writeString(trip, tripOfTomorrow());
    ConcurrentLinkedQueue<String> asked = new ConcurrentLinkedQueue<>();
    HttpsServer server = server(keys, asked);
    try {
      Path own = Files.createDirectories(home.resolve("own"));
      Files.writeString(
          own.resolve("feeds.properties"),
          "order = met\nmet = https://localhost:%d/met\n".formatted(server.getAddress().getPort()));
      Path filled = home.resolve("filled.dawngauge");
      Map<String, String> trusting =
          Map.of(
              "JAVA_TOOL_OPTIONS",
              "-Ddawngauge.folder=%s -Djavax.net.ssl.trustStore=%s -Djavax.net.ssl.trustStorePassword=%s"
                  .formatted(own, keys, PASSWORD));
      program.run(
          trusting,
          "weather",
          trip.toString(),
          "--out",
          filled.toString(),
          "--agree",
          "a@b.example");
      assertThat(filled).content().contains("MET Norway");
    } finally {
      server.stop(0);
    }
    assertThat(asked)
        .isNotEmpty()
        .allMatch(by -> by.startsWith("Dawngauge/" + ProgramVersion.NUMBER));
  }

  /** The demo haul without its air and log, begun tomorrow. */
  private static String tripOfTomorrow() throws IOException {
    String demo = Files.readString(Path.of(Program.DEMO));
    long later =
        ChronoUnit.DAYS.between(LocalDate.parse("2027-04-06"), LocalDate.now(ZoneOffset.UTC)) + 1;
    demo =
        TIME.matcher(demo)
            .replaceAll(match -> ZonedDateTime.parse(match.group()).plusDays(later).toString());
    ObjectNode trip = (ObjectNode) new ObjectMapper().readTree(demo);
    trip.remove(List.of("ambient", "log"));
    return trip.toString();
  }

  private Path keys() throws IOException, InterruptedException {
    Path keys = home.resolve("keys.p12");
    Tool.ofJdk(
        "keytool",
        List.of(
            "-genkeypair",
            "-alias",
            "server",
            "-keyalg",
            "EC",
            "-groupname",
            "secp256r1",
            "-dname",
            "CN=localhost",
            "-ext",
            "SAN=dns:localhost",
            "-keystore",
            keys.toString(),
            "-storepass",
            PASSWORD));
    return keys;
  }

  private static HttpsServer server(Path keys, ConcurrentLinkedQueue<String> asked)
      throws IOException, GeneralSecurityException {
    KeyStore store = KeyStore.getInstance("PKCS12");
    try (InputStream in = Files.newInputStream(keys)) {
      store.load(in, PASSWORD.toCharArray());
    }
    KeyManagerFactory managers =
        KeyManagerFactory.getInstance(KeyManagerFactory.getDefaultAlgorithm());
    managers.init(store, PASSWORD.toCharArray());
    SSLContext context = SSLContext.getInstance("TLS");
    context.init(managers.getKeyManagers(), null, null);
    HttpsServer server =
        HttpsServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    server.setHttpsConfigurator(new HttpsConfigurator(context));
    server.createContext("/", exchange -> answer(exchange, asked));
    server.start();
    return server;
  }

  /** Ten days of hours at 3.5 °C, which are invented. */
  private static void answer(HttpExchange exchange, ConcurrentLinkedQueue<String> asked)
      throws IOException {
    asked.add(String.valueOf(exchange.getRequestHeaders().getFirst("User-Agent")));
    Instant now = Instant.now().truncatedTo(ChronoUnit.HOURS);
    StringBuilder hours = new StringBuilder();
    for (int hour = 0; hour < 240; hour++) {
      hours
          .append(hour == 0 ? "" : ",")
          .append("{\"time\": \"")
          .append(now.plus(hour, ChronoUnit.HOURS))
          .append("\", \"data\": {\"instant\": {\"details\": {\"air_temperature\": 3.5}}}}");
    }
    String text =
        "{\"properties\": {\"meta\": {\"updated_at\": \"%s\", \"units\": {\"air_temperature\": \"celsius\"}}, \"timeseries\": [%s]}}"
            .formatted(now, hours);
    byte[] body = text.getBytes(UTF_8);
    exchange.getResponseHeaders().add("Content-Type", "application/json");
    exchange.sendResponseHeaders(200, body.length);
    exchange.getResponseBody().write(body);
    exchange.close();
  }
}
