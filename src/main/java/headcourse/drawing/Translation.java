package headcourse.drawing;

import headcourse.geom.Box;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import java.util.List;
import java.util.Optional;

/** Marks at another place of the paper, and the room that marks take. */
public final class Translation {
  private Translation() {}

  /**
   * A mark moved.
   *
   * @param dx to the right, mm
   * @param dy downwards, mm
   */
  public static Mark by(double dx, double dy, Mark mark) {
    if (mark instanceof Mark.Group g) {
      List<Mark> inner = g.marks().stream().map(m -> by(dx, dy, m)).toList();
      return new Mark.Group(g.role(), g.id(), g.title(), inner);
    }
    Similarity move = Similarity.move(dx, dy);
    if (mark instanceof Mark.Stroke s) {
      return new Mark.Stroke(s.path().transformed(move), s.pen());
    }
    if (mark instanceof Mark.Fill f) {
      return new Mark.Fill(f.path().transformed(move), f.shade());
    }
    if (mark instanceof Mark.Label l) {
      return new Mark.Label(move.apply(l.at()), l.text(), l.lettering(), l.align(), l.degrees());
    }
    if (mark instanceof Mark.Picture p) {
      return new Mark.Picture(by(dx, dy, p.box()), p.type(), p.data());
    }
    if (mark instanceof Mark.Link l) {
      return new Mark.Link(by(dx, dy, l.box()), l.target());
    }
    Mark.Coloured c = (Mark.Coloured) mark;
    return new Mark.Coloured(by(dx, dy, c.mark()), c.rgb());
  }

  private static Box by(double dx, double dy, Box box) {
    return Box.of(box.minX() + dx, box.minY() + dy, box.width(), box.height());
  }

  /** The box around all that marks show; empty where they show nothing. */
  public static Optional<Box> room(List<Mark> marks) {
    Box all = null;
    for (Mark mark : marks) {
      Box one = room(mark);
      all = all == null || one == null ? (all == null ? one : all) : all.union(one);
    }
    return Optional.ofNullable(all);
  }

  private static Box room(Mark mark) {
    if (mark instanceof Mark.Group g) {
      return room(g.marks()).orElse(null);
    }
    if (mark instanceof Mark.Stroke s) {
      return around(s.path().vertices(0.1));
    }
    if (mark instanceof Mark.Fill f) {
      return around(f.path().vertices(0.1));
    }
    if (mark instanceof Mark.Label l) {
      return LabelShape.bounds(l);
    }
    if (mark instanceof Mark.Picture p) {
      return p.box();
    }
    return mark instanceof Mark.Coloured c ? room(c.mark()) : null;
  }

  private static Box around(List<Point> points) {
    return points.isEmpty() ? null : Box.around(points);
  }
}
