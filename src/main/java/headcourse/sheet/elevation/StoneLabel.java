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
import headcourse.geom.Vec;
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
    /** Both on one line along the longer axis of the stone. */
    ALONG,
    /** The mark alone along it. */
    MARK_ALONG,
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
      return style == Style.MARK_ONLY || style == Style.MARK_TURNED || style == Style.MARK_ALONG;
    }

    boolean along() {
      return style == Style.ALONG || style == Style.MARK_ALONG;
    }

    boolean turned() {
      return style == Style.TURNED || style == Style.MARK_TURNED || along();
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
  private final boolean along;
  private final double degrees;
  private final Vec ahead;
  private final LabelSize markSize;
  private final LabelSize orderSize;
  private final double ring;
  private final double gap;
  private final double below;

  /**
   * A mark and a setting number, or an empty one, set in a manner.
   *
   * @param manner how
   * @param axis of the stone, degrees as seen from level
   */
  StoneLabel(String mark, String order, Manner manner, double axis) {
    double cap = manner.cap;
    this.mark = mark;
    this.order = order;
    this.large = new Lettering(cap, true);
    this.small = manner.small();
    this.plain = order.isEmpty() || manner.markOnly();
    this.turned = manner.turned();
    this.along = manner.along();
    this.degrees = manner.along() ? axis : turned ? 90 : 0;
    this.ahead = new Vec(Math.cos(Math.toRadians(degrees)), -Math.sin(Math.toRadians(degrees)));
    this.markSize = LabelSize.of(mark, large);
    this.orderSize = LabelSize.of(plain ? "" : order, small);
    double number = small.height();
    boolean ringed = !plain && manner.style == Style.RINGED;
    this.ring = ringed ? Math.hypot(orderSize.width() / 2, number / 2) + number * 0.22 : 0;
    this.below = plain ? 0 : ringed ? 2 * ring : number;
    this.gap = plain ? 0 : turned ? Math.max(1.3, cap * 0.55) : cap * 0.35 + 0.3;
  }

  /** A place on a stone's face where its middle may be. */
  Point place(StoneFace face, int number) {
    return along ? face.along(number) : face.place(number);
  }

  /** Whether both the mark and a setting number are written. */
  boolean both() {
    return !plain;
  }

  /** Whether so large a box may have room for it. */
  boolean mayFit(Box box) {
    double cap = large.height();
    double row = row();
    if (degrees != 0 && degrees != 90) {
      return row * Math.abs(ahead.x()) <= box.width() && row * Math.abs(ahead.y()) <= box.height();
    }
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
    return size.corners(at, align(), degrees);
  }

  /** What is drawn when its middle is at a place. */
  List<Mark> marks(Point at) {
    List<Mark> marks = new ArrayList<>();
    marks.add(new Mark.Label(markAt(at), mark, large, align(), degrees));
    if (!plain) {
      marks.add(new Mark.Label(orderAt(at), order, small, align(), degrees));
    }
    if (ring > 0) {
      marks.add(new Mark.Stroke(Path.circle(ringAt(at), ring), Pen.DIMENSION));
    }
    return marks;
  }

  private Align align() {
    return turned && !plain ? Align.START : Align.MIDDLE;
  }

  private double row() {
    return plain ? markSize.width() : markSize.width() + gap + orderSize.width();
  }

  // On the base line of a turned row, so far from its beginning.
  private Point onRow(Point middle, double from, double cap) {
    Vec below = new Vec(-ahead.y(), ahead.x());
    return middle.plus(ahead.times(from - row() / 2)).plus(below.times(cap / 2));
  }

  private Point markAt(Point at) {
    double cap = large.height();
    if (plain) {
      return turned ? onRow(at, row() / 2, cap) : new Point(at.x(), at.y() + cap / 2);
    }
    if (!turned) {
      return new Point(at.x(), top(at) + cap);
    }
    // Upwards the number comes first, so that it stands under the mark.
    double first = degrees == 90 ? orderSize.width() + gap : 0;
    return onRow(at, first, cap);
  }

  private Point orderAt(Point at) {
    double number = small.height();
    if (!turned) {
      return new Point(at.x(), top(at) + large.height() + gap + (below + number) / 2);
    }
    return onRow(at, degrees == 90 ? 0 : markSize.width() + gap, number);
  }

  private Point ringAt(Point at) {
    Point order = orderAt(at);
    return new Point(order.x(), order.y() - small.height() / 2);
  }

  // Where a stack begins.
  private double top(Point at) {
    return at.y() - (large.height() + gap + below) / 2;
  }
}
