package strikeoff.cli;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.management.ManagementFactory;
import java.lang.management.OperatingSystemMXBean;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import strikeoff.cli.commands.Strikeoff;
import strikeoff.cli.text.Surroundings;

/** What a browser on this machine gets from a watch, and what nobody gets from it. */
@Timeout(60)
class ServedTest {

  private static final Pattern ADDRESS = Pattern.compile("pages: http://127\\.0\\.0\\.1:(\\d+)/");

  @TempDir private Path folder;
  private Path plan;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private final HttpClient browser = HttpClient.newHttpClient();
  private CompletableFuture<Integer> watch;
  private int port;

  @BeforeEach
  void watchAPlan() throws Exception {
    plan = Files.createDirectory(folder.resolve("plans")).resolve("ivo.yaml");
    Files.copy(Path.of("plans/class/ivo.yaml"), plan);
    // The fourth round ends it; what isn't needed is saved after the test.
    watch = watching("plans", "--serve", "--rounds", "4");
    Matcher address = ADDRESS.matcher("");
    while (!address.reset(out.toString()).find()) {
      Thread.sleep(20);
    }
    port = Integer.parseInt(address.group(1));
    while (get("/ivo.html").statusCode() != 200 || get("/index.html").statusCode() != 200) {
      Thread.sleep(20);
    }
  }

  private CompletableFuture<Integer> watching(String... words) {
    Surroundings here =
        new Surroundings(
            new PrintWriter(out),
            new PrintWriter(err),
            InputStream.nullInputStream(),
            Map.of(),
            false,
            folder,
            2);
    String[] command = new String[words.length + 1];
    command[0] = "watch";
    System.arraycopy(words, 0, command, 1, words.length);
    return CompletableFuture.supplyAsync(() -> Strikeoff.run(here, command));
  }

  @AfterEach
  void endIt() throws Exception {
    for (int i = 0; !watch.isDone(); i++) {
      save(Files.readString(Path.of("plans/class/ivo.yaml")) + "# " + i + "\n");
      Thread.sleep(200);
    }
    assertThat(watch.get(30, TimeUnit.SECONDS)).isZero();
    // The port is given back.
    new ServerSocket(port, 1, InetAddress.getByName("127.0.0.1")).close();
  }

  private void save(String text) throws IOException {
    Path fresh = Files.writeString(folder.resolve("fresh"), text);
    Files.move(fresh, plan, StandardCopyOption.REPLACE_EXISTING);
  }

  private HttpResponse<String> get(String path) throws IOException, InterruptedException {
    return browser.send(
        HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path)).build(),
        HttpResponse.BodyHandlers.ofString());
  }

  private CompletableFuture<String> next(String page, String mark) {
    return browser
        .sendAsync(
            HttpRequest.newBuilder(
                    URI.create("http://127.0.0.1:" + port + "/saved/" + page + "?" + mark))
                .build(),
            HttpResponse.BodyHandlers.ofString())
        .thenApply(HttpResponse::body);
  }

  private String mark(String page) throws IOException, InterruptedException {
    return get("/saved/" + page).body().lines().findFirst().orElseThrow();
  }

  @Test
  void aPageTellsWhenItIsThereAnewAlsoThroughASaveThatBreaksThePlan() throws Exception {
    String plan = Files.readString(this.plan);
    assertThat(get("/").uri().getPath()).isEqualTo("/");
    assertThat(get("/").headers().firstValue("Location")).contains("/ivo.html");
    assertThat(get("/ivo.html").body()).contains(": printable</title>");
    String mark = mark("ivo.html");
    CompletableFuture<String> broken = next("ivo.html", mark);
    Thread.sleep(100);
    assertThat(broken).isNotDone();

    save(plan + "\nshade: [red\n");
    String second = broken.get(20, TimeUnit.SECONDS);
    assertThat(second).isNotEqualTo(mark);
    assertThat(get("/ivo.html").body())
        .contains(": unreadable</title>")
        .containsPattern("Line \\d+, column \\d+");

    CompletableFuture<String> whole = next("ivo.html", second);
    save(plan);
    assertThat(whole.get(20, TimeUnit.SECONDS)).isEqualTo(mark);
    assertThat(get("/ivo.html").body()).contains(": printable</title>");
  }

  /**
   * On a quiet machine within 0.3 s of the save; a busy one takes as many times longer as more want
   * its processors than there are. How long it took here is told in what the test prints.
   */
  @Test
  void thePageOfASaveIsSoonThereAndHowSoonIsTold() throws Exception {
    String plan = Files.readString(this.plan);
    List<Long> millis = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      CompletableFuture<String> anew = next("ivo.html", mark("ivo.html"));
      Thread.sleep(100);
      String edited = plan.replace("plan: ", "plan: " + "Edited ".repeat(i + 1));
      long begun = System.nanoTime();
      save(edited);
      anew.get(20, TimeUnit.SECONDS);
      millis.add(TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - begun));
    }
    Collections.sort(millis);
    OperatingSystemMXBean machine = ManagementFactory.getOperatingSystemMXBean();
    double busy = machine.getSystemLoadAverage() / machine.getAvailableProcessors();
    System.out.println(
        "from save to page: "
            + millis.get(1)
            + " ms, the median of "
            + millis
            + "; load per processor "
            + busy);
    assertThat(millis.get(1)).isLessThan((long) (2 * 300 * Math.max(1, busy)));
  }

  @Test
  void aPolicyThatIsBrokenIsToldAboveThePage() throws Exception {
    String mark = mark("ivo.html");
    Files.writeString(folder.resolve("plans/studio.yaml"), "studio: [\n");
    String told = next("ivo.html", mark).get(20, TimeUnit.SECONDS);
    if (told.startsWith(mark)) {
      assertThat(told).contains("studio.yaml");
    } else {
      // It holds for these plans alone, so that their pages say it.
      assertThat(get("/ivo.html").body()).contains("studio.yaml");
    }
  }

  @Test
  void theServedCopyMayAskHereAloneAndIsElseThePageThatCheckWrites() throws Exception {
    Scenario.run(folder, Map.of(), List.of("check", "plans", "--reports", "out"));
    String written = Files.readString(folder.resolve("out/ivo.html"));
    String served = get("/ivo.html").body();
    assertThat(written).doesNotContain("connect-src").doesNotContain("/saved");
    assertThat(served)
        .contains("default-src &#39;none&#39;")
        .contains("; connect-src &#39;self&#39;; script-src &#39;sha256-");
    assertThat(
            served
                .replaceFirst("(?s)<script data-version=.*?</script>\n", "")
                .replaceFirst("connect-src &#39;self&#39;; ", "")
                .replaceFirst("(script-src )&#39;[^&]+&#39; ", "$1"))
        .isEqualTo(written);
  }

  @Test
  void nothingIsKeptNorGuessedNorShownInOtherPages() throws Exception {
    HttpResponse<String> page = get("/ivo.html");
    assertThat(page.headers().map())
        .containsEntry("cache-control", List.of("no-store"))
        .containsEntry("x-content-type-options", List.of("nosniff"))
        .containsEntry("cross-origin-resource-policy", List.of("same-origin"))
        .containsEntry("content-security-policy", List.of("frame-ancestors 'none'"))
        .doesNotContainKey("access-control-allow-origin");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/ivo.yaml",
        "/plans/ivo.yaml",
        "/../plans/ivo.yaml",
        "/%2e%2e/plans/ivo.yaml",
        "/..%2fplans%2fivo.yaml",
        "//etc/passwd",
        "/saved/../ivo.yaml",
        "/ivo.html/",
        "/otis.html"
      })
  void whatWasNotHandedOverIsNotThere(String path) throws Exception {
    assertThat(raw("GET " + path + " HTTP/1.1\r\nHost: 127.0.0.1:" + port))
        .startsWith("HTTP/1.1 404 ")
        .doesNotContain("linen");
  }

  /** RFC 9110, 9.1 and 15.5.6: a method that isn't allowed is answered by 405 with Allow. */
  @ParameterizedTest
  @CsvSource({
    "GET,200",
    "HEAD,200",
    "POST,405",
    "PUT,405",
    "DELETE,405",
    "OPTIONS,405",
    "BREW,405"
  })
  void pagesAreReadAndNothingElse(String method, int status) throws Exception {
    String answer = raw(method + " /ivo.html HTTP/1.1\r\nHost: localhost:" + port);
    assertThat(answer).startsWith("HTTP/1.1 " + status + " ");
    assertThat(answer.contains("Allow: GET, HEAD")).isEqualTo(status == 405);
    assertThat(answer.contains("<!doctype html>")).isEqualTo(method.equals("GET"));
  }

  /** RFC 9110, 7.4 and 15.5.20: a request for another host is misdirected. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "Host: pages.example",
        "Host: pages.example:PORT",
        "Host: 127.0.0.1",
        "Host: 127.0.0.1:1",
        "Host: 127.0.0.1.pages.example:PORT",
        "Host: localhost.pages.example:PORT",
        "Host: 0.0.0.0:PORT",
        "X: none"
      })
  void aHostThatIsNotThisMachineGetsNothing(String host) throws Exception {
    for (String path : List.of("/", "/ivo.html", "/saved/ivo.html")) {
      assertThat(raw("GET " + path + " HTTP/1.1\r\n" + host.replace("PORT", "" + port)))
          .startsWith("HTTP/1.1 421 ")
          .doesNotContain("linen");
    }
  }

  @Test
  void pagesFromElsewhereAreNotTold() throws Exception {
    String asked = "GET /saved/ivo.html HTTP/1.1\r\nHost: 127.0.0.1:" + port + "\r\n";
    assertThat(raw(asked + "Sec-Fetch-Site: cross-site")).startsWith("HTTP/1.1 403 ");
    assertThat(raw(asked + "Sec-Fetch-Site: same-origin")).startsWith("HTTP/1.1 200 ");
  }

  @Test
  void manyThatWaitLeaveRoomForThoseThatRead() throws Exception {
    String mark = mark("ivo.html");
    List<CompletableFuture<String>> waiting =
        java.util.stream.IntStream.range(0, 80).mapToObj(i -> next("ivo.html", mark)).toList();
    Thread.sleep(300);
    assertThat(waiting.stream().filter(w -> !w.isDone()).count()).isPositive();
    assertThat(get("/ivo.html").statusCode()).isEqualTo(200);
  }

  @Test
  void aPortThatIsTakenIsTold() throws Exception {
    Scenario.Outcome second =
        Scenario.run(folder, Map.of(), List.of("watch", "plans", "--serve", "--port", "" + port));
    assertThat(second.exit()).isEqualTo(4);
    assertThat(second.err()).contains("--port " + port + ": this port can't be used");
    assertThat(Scenario.run(folder, Map.of(), List.of("watch", "plans", "--port", "8017")).exit())
        .isEqualTo(2);
    assertThat(
            Scenario.run(folder, Map.of(), List.of("watch", "plans", "--serve", "--port", "65536"))
                .exit())
        .isEqualTo(2);
  }

  @Test
  void whoeverSendsHalfARequestKeepsNobodyOut() throws Exception {
    List<Socket> halves = new ArrayList<>();
    try {
      for (int i = 0; i < 100; i++) {
        Socket half = new Socket(InetAddress.getByName("127.0.0.1"), port);
        halves.add(half);
        half.getOutputStream().write("GET /ivo.html HTTP/1.1\r\nHost:".getBytes(US_ASCII));
      }
      int status = 0;
      while (status != 200) { // The timeout ends it.
        Thread.sleep(200);
        try {
          status = get("/ivo.html").statusCode();
        } catch (IOException hungUp) {
          status = 0;
        }
      }
    } finally {
      for (Socket half : halves) {
        half.close();
      }
    }
  }

  /** A request as it stands, since clients mend what is wrong with one. */
  private String raw(String head) throws IOException {
    try (Socket socket = new Socket()) {
      socket.connect(new InetSocketAddress(InetAddress.getByName("127.0.0.1"), port), 5000);
      socket.setSoTimeout(10_000);
      OutputStream to = socket.getOutputStream();
      to.write((head + "\r\nConnection: close\r\n\r\n").getBytes(US_ASCII));
      to.flush();
      StringBuilder answer = new StringBuilder();
      BufferedReader from =
          new BufferedReader(
              new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
      from.lines().forEach(line -> answer.append(line).append('\n'));
      return answer.toString();
    }
  }
}
