package headcourse.rules;

import headcourse.bench.Anchor;
import headcourse.job.AnchorKind;
import headcourse.job.Backing;
import headcourse.text.Words;

/** Says what an anchor holds in. */
public final class AnchorWords {
  private AnchorWords() {}

  /** What the tip ends in, as in {@code the lintel (wood)}; of an anchor with a screw. */
  public static String holds(Words words, Anchor anchor) {
    return anchor.holdsIn() == Backing.Kind.SHEATHING
        ? words.say("anchor.in-sheathing")
        : behind(words, anchor.behind());
  }

  /** What stands behind, by the job's own word for it where there is one. */
  public static String behind(Words words, Backing backing) {
    return backing.name().isEmpty()
        ? words.say("anchor.in-" + backing.kind().word())
        : words.say("anchor.named", backing.name(), kind(words, backing));
  }

  /** What kind of thing it is. */
  public static String kind(Words words, Backing backing) {
    return words.say("anchor.kind-" + backing.kind().word());
  }

  /** The kind of anchor. */
  public static String type(Words words, AnchorKind kind) {
    return words.say("anchor.type-" + kind.word());
  }
}
