package headcourse.page;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** Serves the page of one job, to this machine alone. */
public final class PageServer implements AutoCloseable {
  /** A larger request is none of the page's. */
  private static final int LARGEST = 64 << 10;

  private static final int LONGEST_ADDRESS = 2000;
  private static final int HANDS = 12;

  private final HttpServer server;
  private final ExecutorService hands;
  private final Gate gate;
  private final Routes routes;

  private PageServer(HttpServer server, Routes routes) {
    this.server = server;
    this.routes = routes;
    this.gate = Gate.at(server.getAddress().getPort());
    this.hands =
        Executors.newFixedThreadPool(
            HANDS,
            work -> {
              Thread hand = new Thread(work, "page");
              hand.setDaemon(true);
              return hand;
            });
  }

  /**
   * Begins to serve.
   *
   * @param desk the job and what belongs to it
   * @param language of the page; empty for the job's own
   * @param port where, or 0 for any that is free
   */
  public static PageServer of(Desk desk, String language, int port) throws IOException {
    HttpServer server =
        HttpServer.create(new InetSocketAddress(InetAddress.getByName("127.0.0.1"), port), 50);
    PageServer page = new PageServer(server, new Routes(new Session(desk, language)));
    server.createContext("/", page::handle);
    server.setExecutor(page.hands);
    server.start();
    return page;
  }

  /** What to open in a browser. */
  public String address() {
    return gate.address();
  }

  @Override
  public void close() {
    server.stop(0);
    hands.shutdownNow();
  }

  private void handle(HttpExchange exchange) throws IOException {
    try (exchange) {
      Answer answer = answer(exchange);
      Headers headers = exchange.getResponseHeaders();
      headers.set("Content-Type", answer.type());
      headers.set("Content-Security-Policy", answer.policy());
      headers.set("X-Content-Type-Options", "nosniff");
      headers.set("Referrer-Policy", "no-referrer");
      headers.set("Cross-Origin-Resource-Policy", "same-origin");
      headers.set("Cross-Origin-Opener-Policy", "same-origin");
      headers.set("Cache-Control", "no-store");
      exchange.sendResponseHeaders(
          answer.status(), answer.body().length == 0 ? -1 : answer.body().length);
      exchange.getResponseBody().write(answer.body());
    }
  }

  private Answer answer(HttpExchange exchange) throws IOException {
    String route = gate.let(exchange);
    if (route == null) {
      return Answer.refused(403, "not from here");
    }
    String method = exchange.getRequestMethod();
    boolean posts = method.equals("POST");
    if (!posts && !method.equals("GET")) {
      return Answer.refused(405, "only GET and POST");
    }
    String query = exchange.getRequestURI().getRawQuery();
    if (exchange.getRequestURI().toString().length() > LONGEST_ADDRESS) {
      return Answer.refused(414, "too long");
    }
    String form = query == null || posts ? "" : query;
    if (posts) {
      try (InputStream in = exchange.getRequestBody()) {
        byte[] body = in.readNBytes(LARGEST + 1);
        if (body.length > LARGEST) {
          return Answer.refused(413, "too large");
        }
        form = new String(body, StandardCharsets.UTF_8);
      }
    }
    try {
      return routes.answer(Ask.of(route, form), posts);
    } catch (IllegalArgumentException e) {
      return Answer.refused(400, "not understood");
    } catch (IOException e) {
      return Answer.refused(500, String.valueOf(e.getMessage()));
    } catch (RuntimeException | LinkageError | StackOverflowError e) {
      return Answer.refused(500, "a fault of the program, not of your job: " + e);
    }
  }
}
