package headcourse.page;

import java.nio.charset.StandardCharsets;

/**
 * What is answered to a request.
 *
 * @param status of HTTP
 * @param type media type
 * @param body content
 * @param policy what the answer may load and run, as a content security policy
 */
record Answer(int status, String type, byte[] body, String policy) {
  private static final String NOTHING = "default-src 'none'; frame-ancestors 'none'";

  static Answer json(String text) {
    return of(200, "application/json; charset=utf-8", text.getBytes(StandardCharsets.UTF_8));
  }

  static Answer of(int status, String type, byte[] body) {
    return new Answer(status, type, body, NOTHING);
  }

  /** A picture; it is styled by attributes of its own. */
  static Answer svg(byte[] body) {
    return of(200, "image/svg+xml", body);
  }

  /** Why there is nothing else. */
  static Answer refused(int status, String why) {
    return of(status, "text/plain; charset=utf-8", (why + "\n").getBytes(StandardCharsets.UTF_8));
  }
}
