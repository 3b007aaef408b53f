package headcourse.render.svg;

import java.util.HashMap;
import java.util.Map;

/** Makes ids that are XML names and stand only once in the file. */
final class Ids {
  private final Map<String, Integer> used = new HashMap<>();

  String unique(String wanted) {
    StringBuilder s = new StringBuilder();
    for (int i = 0; i < wanted.length(); i++) {
      char c = wanted.charAt(i);
      boolean letter = c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c == '_';
      boolean more = c >= '0' && c <= '9' || c == '-' || c == '.';
      if (i == 0 && !letter) {
        s.append('_');
      }
      s.append(letter || more ? c : '_');
    }
    String id = s.toString();
    while (used.containsKey(id)) {
      int n = used.merge(s.toString(), 1, Integer::sum);
      id = s + "-" + n;
    }
    used.put(id, 1);
    return id;
  }
}
