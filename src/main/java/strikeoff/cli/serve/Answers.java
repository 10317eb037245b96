package strikeoff.cli.serve;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpHandler;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Semaphore;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strikeoff.report.ServedPages;

/**
 * Answers requests for pages, and for word of a page that is there anew: {@code
 * /saved/mina.html?MARK} waits until the page stands otherwise than the mark says and tells the new
 * mark, with what keeps pages from being made in the lines after it.
 *
 * <p>Status codes as in RFC 9110, section 15.
 */
final class Answers implements HttpHandler {

  private static final Pattern PAGE = Pattern.compile("/([a-z0-9-]+\\.html)");
  private static final Pattern SAVED = Pattern.compile("/saved/([a-z0-9-]+\\.html)");

  /** Shorter than most patience on the way; whoever waits asks again. */
  private static final long WAIT_MILLIS = 20_000;

  /** Each holds a thread while it waits. */
  private static final int MOST_WAITING = 32;

  private final ShownPages pages;
  private final Set<String> hosts;
  private final Semaphore waiting = new Semaphore(MOST_WAITING);

  Answers(ShownPages pages, int port) {
    this.pages = pages;
    this.hosts = Set.of("127.0.0.1:" + port, "localhost:" + port);
  }

  @Override
  public void handle(HttpExchange exchange) throws IOException {
    try {
      answer(exchange);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } finally {
      exchange.close();
    }
  }

  private void answer(HttpExchange exchange) throws IOException, InterruptedException {
    String path = exchange.getRequestURI().getRawPath();
    Matcher page = PAGE.matcher(path == null ? "" : path);
    Matcher saved = SAVED.matcher(path == null ? "" : path);
    if (!isForUs(exchange.getRequestHeaders())) {
      // A name that somebody else's page made lead here (DNS rebinding) is none of ours.
      text(exchange, 421, "This answers to 127.0.0.1 and localhost alone.");
    } else if (!Set.of("GET", "HEAD").contains(exchange.getRequestMethod())) {
      exchange.getResponseHeaders().set("Allow", "GET, HEAD");
      text(exchange, 405, "There is nothing to do here but to read.");
    } else if ("/".equals(path)) {
      exchange.getResponseHeaders().set("Location", "/" + pages.front());
      text(exchange, 302, "See " + pages.front());
    } else if (page.matches()) {
      byte[] found = pages.page(page.group(1)).orElse(null);
      html(exchange, found == null ? 404 : 200, found == null ? ServedPages.absent() : found);
    } else if (saved.matches()) {
      saved(exchange, saved.group(1));
    } else {
      text(exchange, 404, "There is no such page.");
    }
  }

  /** How the page stands once it is otherwise than the one who asks knows. */
  private void saved(HttpExchange exchange, String page) throws IOException, InterruptedException {
    if (!exchange
        .getRequestHeaders()
        .getOrDefault("Sec-Fetch-Site", List.of("same-origin"))
        .equals(List.of("same-origin"))) {
      text(exchange, 403, "Only pages from here are told.");
      return;
    }
    if (!waiting.tryAcquire()) {
      text(exchange, 503, "Too many wait.");
      return;
    }
    try {
      String known = exchange.getRequestURI().getRawQuery();
      ShownPages.State state = pages.after(page, known == null ? "" : known, WAIT_MILLIS);
      text(exchange, 200, (state.mark() + "\n" + state.note()).strip());
    } finally {
      waiting.release();
    }
  }

  private boolean isForUs(Headers asked) {
    List<String> host = asked.getOrDefault("Host", List.of());
    return host.size() == 1 && hosts.contains(host.get(0).toLowerCase(Locale.ROOT));
  }

  private static void text(HttpExchange exchange, int status, String text) throws IOException {
    exchange.getResponseHeaders().set("Content-Type", "text/plain; charset=utf-8");
    send(exchange, status, text.getBytes(StandardCharsets.UTF_8));
  }

  private static void html(HttpExchange exchange, int status, byte[] page) throws IOException {
    exchange.getResponseHeaders().set("Content-Type", "text/html; charset=utf-8");
    send(exchange, status, page);
  }

  private static void send(HttpExchange exchange, int status, byte[] body) throws IOException {
    Headers headers = exchange.getResponseHeaders();
    headers.set("Cache-Control", "no-store");
    headers.set("X-Content-Type-Options", "nosniff");
    headers.set("Cross-Origin-Resource-Policy", "same-origin");
    // The page's own policy can't say this: frame-ancestors counts in a header only.
    headers.set("Content-Security-Policy", "frame-ancestors 'none'");
    if (exchange.getRequestMethod().equals("HEAD")) {
      headers.set("Content-Length", Integer.toString(body.length));
      exchange.sendResponseHeaders(status, -1);
    } else {
      exchange.sendResponseHeaders(status, body.length == 0 ? -1 : body.length);
      exchange.getResponseBody().write(body);
    }
  }
}
