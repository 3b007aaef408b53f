package headcourse.sheet.solid;

import headcourse.bench.HeadWork;
import headcourse.job.Change;
import headcourse.sheet.SheetContext;
import headcourse.text.Words;
import headcourse.units.LengthParser;
import headcourse.units.NotationException;
import java.util.List;
import java.util.Map;

/** What would make a head stand that reads as hanging, in words. */
final class SolidCures {
  /** What may be changed in a head, and the sentence for it. */
  private static final Map<String, String> LENGTHS =
      Map.of(
          "height", "height",
          "rise", "rise",
          "striking", "striking",
          "key.bottom", "key-bottom",
          "key.top", "key-top",
          "key.rise", "key-rise",
          "key.drop", "key-drop",
          "bearing.target", "bearing");

  private final SheetContext c;
  private final HeadWork head;

  SolidCures(SheetContext c, HeadWork head) {
    this.c = c;
    this.head = head;
  }

  /** One sentence a language; none where there is nothing to cure, or nothing that was found. */
  List<String> all() {
    List<List<Change>> cures = head.asSolid().cures();
    if (cures.isEmpty()) {
      return List.of();
    }
    String key = cures.size() == 1 ? "solid.cured-one" : "solid.cured-any";
    return c.words()
        .each(w -> w.say(key, String.join("; ", cures.stream().map(x -> one(w, x)).toList())));
  }

  private String one(Words w, List<Change> cure) {
    String said = "";
    for (Change change : cure) {
      String part = part(w, change);
      if (!part.isEmpty()) {
        said = said.isEmpty() ? part : w.say("solid.cured-with", said, part);
      }
    }
    return said;
  }

  /** Empty for what only goes with another change. */
  private String part(Words w, Change change) {
    String own = head.layout().opening().path() + ".head.";
    String key = change.path().substring(own.length());
    if (key.equals("bearing.min") || key.equals("bearing.max")) {
      return "";
    }
    if (LENGTHS.containsKey(key)) {
      return w.say("solid.cure-" + LENGTHS.get(key), length(change.value()));
    }
    return w.say("solid.cure-" + key, change.value());
  }

  private String length(String value) {
    try {
      return c.format().withUnit(LengthParser.parse(value, c.job().units()));
    } catch (NotationException e) {
      throw new IllegalStateException(value, e);
    }
  }
}
