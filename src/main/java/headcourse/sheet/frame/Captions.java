package headcourse.sheet.frame;

import headcourse.text.Words;
import java.util.Map;
import java.util.TreeMap;

/** What the captions of a frame's fields say in a language. */
public final class Captions {
  private Captions() {}

  /** The captions by their ids, {@code caption-title} and so on, to be placed like fields. */
  public static Map<String, String> of(Words words) {
    Map<String, String> captions = new TreeMap<>();
    for (String field : FieldNames.ALL) {
      captions.put("caption-" + field, words.say("frame." + field));
    }
    return captions;
  }
}
