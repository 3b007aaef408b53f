package headcourse.bench;

import headcourse.job.AnchorKind;
import headcourse.job.Backing;
import headcourse.units.Length;

/**
 * What holds a screw in the wall. Depths are square to the wall.
 *
 * @param behind what stands behind the sheathing at the screw's height
 * @param hold how it holds there
 * @param kind the kind of anchor, or null where none at hand holds there
 * @param screw its length, or null where none at hand holds
 * @param penetration of the tip into what holds; zero without a screw
 * @param holdsIn what the tip ends in, or null without a screw
 * @param best penetration of the longest at hand; negative where it ends short of what would hold
 * @param needed the shortest length, in steps that screws are sold in, that reaches the embedment
 *     from this slot; null where none would
 */
public record Anchor(
    Backing behind,
    Hold hold,
    AnchorKind kind,
    Length screw,
    Length penetration,
    Backing.Kind holdsIn,
    Length best,
    Length needed) {
  /** How an anchor holds. */
  public enum Hold {
    /** It reaches the job's embedment. */
    HOLDS,
    /** None at hand is long enough. */
    SHORT,
    /** What stands behind takes another kind of anchor. */
    OTHER_KIND,
    /** The sheathing that would hold is thinner than the embedment. */
    THIN,
    /** Nothing that stands behind holds an anchor. */
    NOTHING
  }
}
