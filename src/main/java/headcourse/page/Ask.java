package headcourse.page;

import headcourse.job.Change;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a request asks.
 *
 * @param route after the token
 * @param values by name, of the address or of the body
 */
record Ask(String route, Map<String, String> values) {
  /** What is before the path of a value that is to be written. */
  private static final String SET = "set.";

  /** More values than these no form has. */
  private static final int MOST = 200;

  /**
   * A request.
   *
   * @param form names and values as a form writes them
   * @throws IllegalArgumentException where it is none
   */
  static Ask of(String route, String form) {
    Map<String, String> values = new LinkedHashMap<>();
    for (String pair : form.isEmpty() ? new String[0] : form.split("&")) {
      int equals = pair.indexOf('=');
      if (equals < 0 || values.size() >= MOST) {
        throw new IllegalArgumentException("no form");
      }
      values.put(decoded(pair.substring(0, equals)), decoded(pair.substring(equals + 1)));
    }
    return new Ask(route, values);
  }

  private static String decoded(String text) {
    return URLDecoder.decode(text, StandardCharsets.UTF_8);
  }

  String value(String name) {
    return values.getOrDefault(name, "");
  }

  /** The number of the opening that is shown. */
  int opening() {
    String number = value("opening");
    return number.matches("[0-9]{1,4}") ? Integer.parseInt(number) : 0;
  }

  /** What is to be written. */
  List<Change> changes() {
    List<Change> all = new ArrayList<>();
    values.forEach(
        (name, value) -> {
          if (name.startsWith(SET)) {
            all.add(new Change(name.substring(SET.length()), value, "typed"));
          }
        });
    return all;
  }
}
