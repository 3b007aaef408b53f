package headcourse.sheet.elevation;

import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Pen;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.sheet.Ink;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds how large the mark and the setting number of every stone can be set inside its outline. */
final class StoneLabels {
  /** Heights of capitals, largest first. */
  static final double[] HEIGHTS = {20, 14, 10, 7, 5, 3.5, 2.5};

  private static final double MARGIN = 0.6;

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
   * What to write on a stone.
   *
   * @param face its outline on paper
   * @param mark its mark
   * @param order its setting number, or empty
   */
  record Text(Path face, String mark, String order) {}

  private final Ink ink;

  /**
   * Labels on paper that already has ink.
   *
   * @param ink outlines and screws
   */
  StoneLabels(Ink ink) {
    this.ink = ink;
  }

  private record Manner(double cap, Style style) {}

  // Upright with the number first, then turned, then small; the number is given up last.
  private static List<Manner> manners(double largest) {
    List<Manner> manners = new ArrayList<>();
    for (double cap : HEIGHTS) {
      if (cap >= 3.5) {
        manners.add(new Manner(cap, Style.RINGED));
        manners.add(new Manner(cap, Style.STACKED));
      }
    }
    manners.add(new Manner(5, Style.TURNED));
    manners.add(new Manner(3.5, Style.TURNED));
    manners.add(new Manner(2.5, Style.STACKED));
    manners.add(new Manner(2.5, Style.TURNED));
    for (double cap : new double[] {5, 3.5, 2.5}) {
      manners.add(new Manner(cap, Style.MARK_ONLY));
      manners.add(new Manner(cap, Style.MARK_TURNED));
    }
    List<Manner> small = new ArrayList<>();
    for (Manner m : manners) {
      if (m.cap <= largest + 1e-9) {
        small.add(m);
      }
    }
    return small;
  }

  /** The marks for each of some stones, all in the one largest manner that suits every one. */
  List<List<Mark>> alike(List<Text> texts, double largest) {
    for (Manner m : manners(largest)) {
      Optional<List<List<Mark>>> all = all(texts, m.cap, m.style);
      if (all.isPresent()) {
        return all.get();
      }
    }
    // Not one manner for all: each as it can.
    return texts.stream().map(t -> one(t, largest)).toList();
  }

  /** The marks for one stone, as large as they go; none where nothing fits. */
  List<Mark> one(Text text, double largest) {
    for (Manner m : manners(largest)) {
      Optional<List<Mark>> set = set(text, m.cap, m.style);
      if (set.isPresent()) {
        return set.get();
      }
    }
    return List.of();
  }

  private Optional<List<List<Mark>>> all(List<Text> texts, double cap, Style style) {
    List<List<Mark>> all = new ArrayList<>();
    for (Text t : texts) {
      Optional<List<Mark>> set = set(t, cap, style);
      if (set.isEmpty()) {
        return Optional.empty();
      }
      all.add(set.get());
    }
    return Optional.of(all);
  }

  private static double smaller(double cap) {
    return cap >= 14 ? 7 : cap >= 10 ? 5 : cap >= 5 ? 3.5 : 2.5;
  }

  private Optional<List<Mark>> set(Text text, double cap, Style style) {
    Box box = text.face.bounds();
    double reach = box.height() / 2;
    // The middle first, then lower and higher.
    for (double shift : new double[] {0, 0.12, -0.12, 0.24, -0.24, 0.36, 0.48, -0.36, 0.6}) {
      Point at = middle(text.face, box, box.centre().y() + shift * reach);
      List<Mark> marks = style(text, cap, style, at);
      if (free(marks, box)) {
        return Optional.of(marks);
      }
    }
    return Optional.empty();
  }

  // The middle of the outline at a height, so that labels of a row line up and follow a rake.
  private static Point middle(Path face, Box box, double y) {
    double x0 = Double.POSITIVE_INFINITY;
    double x1 = Double.NEGATIVE_INFINITY;
    List<Point> v = face.vertices(0.05);
    for (int i = 0; i < v.size(); i++) {
      Point a = v.get(i);
      Point b = v.get((i + 1) % v.size());
      if ((a.y() - y) * (b.y() - y) <= 0 && Math.abs(a.y() - b.y()) > 1e-9) {
        double x = a.x() + (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y());
        x0 = Math.min(x0, x);
        x1 = Math.max(x1, x);
      }
    }
    return x0 <= x1 ? new Point((x0 + x1) / 2, y) : new Point(box.centre().x(), y);
  }

  private boolean free(List<Mark> marks, Box face) {
    for (Mark m : marks) {
      if (!free(m, face)) {
        return false;
      }
    }
    return true;
  }

  private boolean free(Mark mark, Box face) {
    if (mark instanceof Mark.Label label) {
      List<Point> corners = LabelShape.corners(label);
      return face.contains(Box.around(corners)) && ink.free(corners, MARGIN);
    }
    if (mark instanceof Mark.Stroke stroke) {
      Box b = stroke.path().bounds();
      List<Point> corners =
          List.of(
              new Point(b.minX(), b.minY()),
              new Point(b.maxX(), b.minY()),
              new Point(b.maxX(), b.maxY()),
              new Point(b.minX(), b.maxY()));
      return face.contains(b) && ink.free(corners, 0.2);
    }
    return true;
  }

  private static List<Mark> style(Text text, double cap, Style style, Point at) {
    Lettering big = new Lettering(cap, true);
    Lettering small = new Lettering(smaller(cap), false);
    double order = small.height();
    boolean plain = text.order.isEmpty() || style == Style.MARK_ONLY || style == Style.MARK_TURNED;
    boolean turned = style == Style.TURNED || style == Style.MARK_TURNED;
    double x = at.x();
    double y = at.y();
    if (plain) {
      return List.of(
          turned
              ? new Mark.Label(new Point(x + cap / 2, y), text.mark, big, Align.MIDDLE, 90)
              : new Mark.Label(new Point(x, y + cap / 2), text.mark, big, Align.MIDDLE, 0));
    }
    if (turned) {
      double mark = LabelShape.width(text.mark, big);
      double number = LabelShape.width(text.order, small);
      double gap = Math.max(1.5, cap * 0.6);
      double bottom = y + (mark + gap + number) / 2;
      return List.of(
          new Mark.Label(
              new Point(x + cap / 2, bottom - number - gap), text.mark, big, Align.START, 90),
          new Mark.Label(new Point(x + order / 2, bottom), text.order, small, Align.START, 90));
    }
    double width = LabelShape.width(text.order, small);
    double ring = style == Style.RINGED ? Math.hypot(width / 2, order / 2) + order * 0.22 : 0;
    double below = style == Style.RINGED ? 2 * ring : order;
    double gap = cap * 0.35 + 0.3;
    double top = y - (cap + gap + below) / 2;
    List<Mark> marks = new ArrayList<>();
    marks.add(new Mark.Label(new Point(x, top + cap), text.mark, big, Align.MIDDLE, 0));
    double base = top + cap + gap + (below + order) / 2;
    marks.add(new Mark.Label(new Point(x, base), text.order, small, Align.MIDDLE, 0));
    if (ring > 0) {
      Path circle = Path.circle(new Point(x, base - order / 2), ring);
      marks.add(new Mark.Stroke(circle, Pen.DIMENSION));
    }
    return marks;
  }
}
