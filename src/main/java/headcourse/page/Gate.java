package headcourse.page;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.List;

/**
 * Who is let in: whoever knows the token of the address, by the address itself. A page from
 * elsewhere in the same browser knows no token; one that a name server points here bears another
 * host (DNS rebinding); one that posts here names its origin (RFC 6454).
 */
final class Gate {
  /** Bytes of the token: 128 bits can't be guessed. */
  private static final int TOKEN = 16;

  private final String token;
  private final List<String> hosts;

  private Gate(String token, List<String> hosts) {
    this.token = token;
    this.hosts = hosts;
  }

  /** A gate with a token of its own. */
  static Gate at(int port) {
    byte[] bytes = new byte[TOKEN];
    new SecureRandom().nextBytes(bytes);
    return new Gate(
        HexFormat.of().formatHex(bytes), List.of("127.0.0.1:" + port, "localhost:" + port));
  }

  /** The address of the page. */
  String address() {
    return "http://" + hosts.get(0) + "/" + token + "/";
  }

  /** What is asked for, after the token; null where nobody is let in. */
  String let(HttpExchange exchange) {
    Headers headers = exchange.getRequestHeaders();
    List<String> host = headers.getOrDefault("Host", List.of());
    if (host.size() != 1 || !hosts.contains(host.get(0))) {
      return null;
    }
    String own = "http://" + host.get(0);
    List<String> origins = headers.getOrDefault("Origin", List.of());
    boolean posts = !exchange.getRequestMethod().equals("GET");
    if (!origins.equals(List.of(own)) && (posts || !origins.isEmpty())) {
      return null;
    }
    String site = headers.getFirst("Sec-Fetch-Site");
    if (site != null && !site.equals("same-origin") && !site.equals("none")) {
      return null;
    }
    return after(exchange.getRequestURI());
  }

  private String after(URI uri) {
    String path = uri.getRawPath() == null ? "" : uri.getRawPath();
    int end = path.indexOf('/', 1);
    String given = end < 0 || !path.startsWith("/") ? "" : path.substring(1, end);
    boolean known =
        MessageDigest.isEqual(
            given.getBytes(StandardCharsets.UTF_8), token.getBytes(StandardCharsets.UTF_8));
    return known ? path.substring(end + 1) : null;
  }
}
