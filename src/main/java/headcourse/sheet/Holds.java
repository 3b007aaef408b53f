package headcourse.sheet;

import headcourse.bench.Anchor;
import headcourse.job.Backing;
import headcourse.rules.AnchorWords;
import headcourse.text.Words;
import headcourse.units.Limit;
import java.util.Locale;

/** Says on paper which screw there is and what it holds in. */
public final class Holds {
  private Holds() {}

  /** {@code wood screw 4"}; of an anchor with a screw. */
  public static String screw(SheetContext c, Words words, Anchor a) {
    return words.say(
        "anchor.screw", AnchorWords.type(words, a.kind()), c.format().withUnit(a.screw()));
  }

  /** {@code 1 1/8" in the lintel (wood)}, never rounded up; of an anchor with a screw. */
  public static String hold(SheetContext c, Words words, Anchor a) {
    String deep = Limit.MOST.withUnit(c.format(), a.penetration());
    return words.say("anchor.hold", deep, AnchorWords.holds(words, a));
  }

  /** Why there is no screw. */
  public static String none(Words words, Anchor a) {
    String why = a.hold().name().toLowerCase(Locale.ROOT).replace('_', '-');
    return words.say("anchor.none-" + why, AnchorWords.behind(words, a.behind()));
  }

  /** What stands behind the sheathing, as a layer is named. */
  public static String layer(Words words, Backing behind) {
    boolean loose = !behind.kind().holds();
    return words.say(loose ? "anchor.layer-loose" : "anchor.layer-holds", name(words, behind));
  }

  /** Its name alone: {@code lintel (wood)}. */
  public static String name(Words words, Backing behind) {
    String kind = AnchorWords.kind(words, behind);
    return behind.name().isEmpty() ? kind : words.say("anchor.layer-named", behind.name(), kind);
  }
}
