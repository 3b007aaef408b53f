package headcourse.sheet.elevation;

import headcourse.drawing.Ink;
import headcourse.drawing.LabelSize;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Pen;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import java.util.ArrayList;
import java.util.List;

/** The mark and the setting number of a stone in one manner, measured, to be put anywhere. */
final class StoneLabel {
  private static final double MARGIN = 0.6;
  private static final double RING_MARGIN = 0.2;

  /** A way to set the two. */
  enum Style {
    /** The number in a ring below the mark. */
    RINGED,
    /** The number below the mark. */
    STACKED,
    /** Both turned to read from the right. */
    TURNED,
    /** The mark alone. */
    MARK_ONLY,
    /** The mark alone, turned. */
    MARK_TURNED
  }

  /**
   * How large, and which way.
   *
   * @param cap height of the mark's capitals, mm
   * @param style which way
   */
  record Manner(double cap, Style style) {
    boolean markOnly() {
      return style == Style.MARK_ONLY || style == Style.MARK_TURNED;
    }

    boolean turned() {
      return style == Style.TURNED || style == Style.MARK_TURNED;
    }

    private Lettering small() {
      return new Lettering(cap >= 14 ? 7 : cap >= 10 ? 5 : cap >= 5 ? 3.5 : 2.5, false);
    }
  }

  private final String mark;
  private final String order;
  private final Lettering large;
  private final Lettering small;
  private final boolean plain;
  private final boolean turned;
  private final LabelSize markSize;
  private final LabelSize orderSize;
  private final double ring;
  private final double gap;
  private final double below;

  /**
   * A mark and a setting number, or an empty one, set in a manner.
   *
   * @param manner how
   */
  StoneLabel(String mark, String order, Manner manner) {
    double cap = manner.cap;
    this.mark = mark;
    this.order = order;
    this.large = new Lettering(cap, true);
    this.small = manner.small();
    this.plain = order.isEmpty() || manner.markOnly();
    this.turned = manner.turned();
    this.markSize = LabelSize.of(mark, large);
    this.orderSize = LabelSize.of(plain ? "" : order, small);
    double number = small.height();
    boolean ringed = !plain && manner.style == Style.RINGED;
    this.ring = ringed ? Math.hypot(orderSize.width() / 2, number / 2) + number * 0.22 : 0;
    this.below = plain ? 0 : ringed ? 2 * ring : number;
    this.gap = plain ? 0 : turned ? Math.max(1.5, cap * 0.6) : cap * 0.35 + 0.3;
  }

  /** Whether both the mark and a setting number are written. */
  boolean both() {
    return !plain;
  }

  /** Whether so large a box may have room for it. */
  boolean mayFit(Box box) {
    double cap = large.height();
    double row = markSize.width() + gap + orderSize.width();
    double wide = Math.max(markSize.width(), Math.max(orderSize.width(), 2 * ring));
    double width = turned ? cap : wide;
    double height = turned ? row : cap + gap + below;
    return width <= box.width() + 1e-6 && height <= box.height() + 1e-6;
  }

  /** Whether it lies within a box and clear of all ink when its middle is at a place. */
  boolean fits(Box box, Ink ink, Point at) {
    List<Point> first = corners(markAt(at), markSize);
    if (!box.contains(Box.around(first))) {
      return false;
    }
    if (plain) {
      return ink.free(first, MARGIN);
    }
    List<Point> second = corners(orderAt(at), orderSize);
    if (!box.contains(Box.around(second))) {
      return false;
    }
    if (ring > 0) {
      Point c = ringAt(at);
      Box round = new Box(c.x() - ring, c.y() - ring, c.x() + ring, c.y() + ring);
      if (!box.contains(round) || !ink.free(round.corners(), RING_MARGIN)) {
        return false;
      }
    }
    return ink.free(first, MARGIN) && ink.free(second, MARGIN);
  }

  private List<Point> corners(Point at, LabelSize size) {
    return size.corners(at, align(), degrees());
  }

  /** What is drawn when its middle is at a place. */
  List<Mark> marks(Point at) {
    List<Mark> marks = new ArrayList<>();
    marks.add(new Mark.Label(markAt(at), mark, large, align(), degrees()));
    if (!plain) {
      marks.add(new Mark.Label(orderAt(at), order, small, align(), degrees()));
    }
    if (ring > 0) {
      marks.add(new Mark.Stroke(Path.circle(ringAt(at), ring), Pen.DIMENSION));
    }
    return marks;
  }

  private Align align() {
    return turned && !plain ? Align.START : Align.MIDDLE;
  }

  private double degrees() {
    return turned ? 90 : 0;
  }

  private Point markAt(Point at) {
    double cap = large.height();
    if (plain) {
      return turned ? new Point(at.x() + cap / 2, at.y()) : new Point(at.x(), at.y() + cap / 2);
    }
    return turned
        ? new Point(at.x() + cap / 2, bottom(at) - orderSize.width() - gap)
        : new Point(at.x(), top(at) + cap);
  }

  private Point orderAt(Point at) {
    double number = small.height();
    return turned
        ? new Point(at.x() + number / 2, bottom(at))
        : new Point(at.x(), top(at) + large.height() + gap + (below + number) / 2);
  }

  private Point ringAt(Point at) {
    Point order = orderAt(at);
    return new Point(order.x(), order.y() - small.height() / 2);
  }

  // Where a turned row begins, and where a stack does.
  private double bottom(Point at) {
    return at.y() + (markSize.width() + gap + orderSize.width()) / 2;
  }

  private double top(Point at) {
    return at.y() - (large.height() + gap + below) / 2;
  }
}
