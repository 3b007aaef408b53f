package headcourse.page;

import java.util.List;

/**
 * A field of the page.
 *
 * @param path where its value stands in the job file; {@code openings[]} for the opening shown
 * @param name the key, or for a key within a key both
 * @param about what it means
 * @param place its number on the measuring sheet's picture, 0 for none
 * @param words the words that it may be; none where anything may be typed
 */
record Field(String path, String name, String about, int place, List<String> words) {
  Field {
    words = List.copyOf(words);
  }

  /** The path for an opening. */
  String path(int opening) {
    return path.replace("[]", "[" + opening + "]");
  }
}
