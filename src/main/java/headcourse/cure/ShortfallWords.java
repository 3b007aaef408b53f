package headcourse.cure;

import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.HeadLayout;
import headcourse.layout.JointLine;
import headcourse.layout.PlacedStone;
import headcourse.layout.Role;
import headcourse.layout.Side;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import java.util.Comparator;
import java.util.stream.Stream;

/** Says in the mason's words how a head that could be set out falls short of what was asked. */
final class ShortfallWords {
  private final Job job;
  private final HeadSpec head;
  private final LengthFormat format;

  ShortfallWords(Job job, Opening opening) {
    this.job = job;
    this.head = opening.head();
    this.format = new LengthFormat(job.units(), job.grid());
  }

  private String size(Length length) {
    return format.plainWithUnit(length);
  }

  /** {@code 6 stones a side}. */
  private static String stones(HeadLayout h) {
    long left = h.stones().stream().filter(s -> s.side() == Side.LEFT).count();
    long right = h.stones().stream().filter(s -> s.side() == Side.RIGHT).count();
    return left == right
        ? left + (left == 1 ? " stone" : " stones") + " a side"
        : left + " stones on the left and " + right + " on the right";
  }

  private static String bear(HeadLayout h) {
    String stones = stones(h);
    return stones + (stones.startsWith("1 stone a") ? " bears " : " bear ");
  }

  String tooNear(HeadLayout h) {
    String best = "";
    Length least = null;
    for (JointLine j : h.joints()) {
      boolean end = j.outer().isEmpty();
      Length half = h.jamb(j.side());
      if (end && j.soffitMark().minus(half).compareTo(job.grid().tick()) < 0) {
        // A skewback that springs from the jamb itself.
        continue;
      }
      Length from = j.soffitMark();
      Length to = end ? from : from.plus(job.setting().joint());
      Length off = from.minus(half).abs().min(to.minus(half).abs());
      if (least == null || off.compareTo(least) < 0) {
        least = off;
        best =
            end
                ? "the end of " + j.inner()
                : "the joint outside "
                    + j.inner()
                    + (from.equals(to)
                        ? ", " + size(from) + " from the centre,"
                        : ", " + size(from) + " to " + size(to) + " from the centre,");
      }
    }
    if (least == null || least.compareTo(head.clear()) >= 0) {
      // It is the top of a joint that stands too near.
      return "";
    }
    return bear(h)
        + size(h.bearing(Side.RIGHT).onWall())
        + ", but "
        + best
        + (least.isZero() ? " stands in line with the jamb" : " stands " + size(least))
        + (least.isZero() ? "" : " from the jamb line")
        + ": "
        + size(head.clear().minus(least))
        + " less than the clear "
        + size(head.clear());
  }

  String shortBearing(HeadLayout h) {
    Length b = h.bearing(Side.LEFT).onWall().min(h.bearing(Side.RIGHT).onWall());
    return bear(h)
        + size(b)
        + ": "
        + size(head.bearing().min().minus(b))
        + " less than the least bearing, "
        + size(head.bearing().min());
  }

  String longBearing(HeadLayout h) {
    Length b = h.bearing(Side.LEFT).onWall().max(h.bearing(Side.RIGHT).onWall());
    return bear(h)
        + size(b)
        + ": "
        + size(b.minus(head.bearing().max()))
        + " more than the greatest bearing, "
        + size(head.bearing().max());
  }

  String tooWide(HeadLayout h) {
    Length w = widths(h).max(Comparator.naturalOrder()).orElseThrow();
    return stones(h)
        + " would be up to "
        + size(w)
        + " wide: "
        + size(w.minus(head.stones().max()))
        + " more than the widest allowed, "
        + size(head.stones().max());
  }

  String tooNarrow(HeadLayout h) {
    Length w = widths(h).min(Comparator.naturalOrder()).orElseThrow();
    return stones(h)
        + " would be as little as "
        + size(w)
        + " wide: "
        + size(head.stones().min().minus(w))
        + " less than the narrowest allowed, "
        + size(head.stones().min());
  }

  private Stream<Length> widths(HeadLayout h) {
    boolean top =
        head.shape().equals("jack") && head.params().word("divide").orElse("soffit").equals("top");
    return h.stones().stream()
        .filter(s -> s.role() != Role.KEY)
        .map(
            (PlacedStone s) ->
                top
                    ? s.feet().rightTop().minus(s.feet().leftTop())
                    : s.feet().rightSoffit().minus(s.feet().leftSoffit()));
  }

  String otherCount(HeadLayout h) {
    return "each-side: "
        + head.stones().eachSide()
        + " is given, but "
        + stones(h)
        + " would do, bearing "
        + size(h.bearing(Side.RIGHT).onWall());
  }
}
