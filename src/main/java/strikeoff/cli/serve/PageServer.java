package strikeoff.cli.serve;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.concurrent.SynchronousQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/**
 * Shows pages by HTTP on the loopback address. It gives what it was handed and reads no file, so
 * that no request can name one.
 */
public final class PageServer implements AutoCloseable {

  /** IPv4's own loopback address (RFC 1122, 3.2.1.3): no other machine reaches it. */
  private static final byte[] LOOPBACK = {127, 0, 0, 1};

  /** Requests that are answered at a time; the waiting ones are fewer, see {@link Answers}. */
  private static final int MOST_REQUESTS = 64;

  private static final long IDLE_SECONDS = 30;

  /** Who takes longer to send a request is hung up on: each holds a thread meanwhile. */
  private static final int MOST_SECONDS_TO_ASK = 5;

  static {
    // The JDK's server waits for ever unless it is told, and reads this once.
    System.setProperty("sun.net.httpserver.maxReqTime", Integer.toString(MOST_SECONDS_TO_ASK));
  }

  private final HttpServer server;
  private final ShownPages pages;
  private final ThreadPoolExecutor threads =
      new ThreadPoolExecutor(
          0,
          MOST_REQUESTS,
          IDLE_SECONDS,
          TimeUnit.SECONDS,
          new SynchronousQueue<>(),
          work -> {
            Thread thread = new Thread(work, "page");
            thread.setDaemon(true);
            return thread;
          });

  /**
   * Takes the port and answers from now on.
   *
   * @param port the port; 0 for one that is free
   * @throws IOException if the port is taken, or not for everybody to take
   */
  public PageServer(int port, ShownPages pages) throws IOException {
    this.pages = pages;
    InetAddress loopback = InetAddress.getByAddress("127.0.0.1", LOOPBACK);
    this.server = HttpServer.create(new InetSocketAddress(loopback, port), 0);
    server.createContext("/", new Answers(pages, server.getAddress().getPort()));
    server.setExecutor(threads);
    server.start();
  }

  /** What a browser is to open. */
  public String address() {
    return "http://127.0.0.1:" + server.getAddress().getPort() + "/";
  }

  /** Ends all that waits, and gives the port back. */
  @Override
  public void close() {
    pages.end();
    server.stop(0);
    threads.shutdownNow();
  }
}
