package headcourse.sheet.elevation;

import headcourse.drawing.Board;
import headcourse.drawing.LabelShape;
import headcourse.drawing.LabelSpacing;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Pen;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.layout.JointLine;
import headcourse.layout.Side;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Heights above the springing line at which joints run out on the plumb end of a curved head. Their
 * distance from the centre line is that of the end for all of them, so it would tell nothing.
 */
final class EndHeights {
  private static final double AWAY = 2.8;

  // Ink of a number with a fraction, above and below its base line.
  private static final String TALLEST = "⁰⁄₀\"";

  private final HeadFigures figures;
  private final Lettering lettering;

  EndHeights(HeadFigures figures, Lettering lettering) {
    this.figures = figures;
    this.lettering = lettering;
  }

  /** Those of a head, smaller where the paper beside it, mm, is narrow. */
  static EndHeights beside(HeadFigures figures, double room) {
    EndHeights large = new EndHeights(figures, new Lettering(3.5, true));
    return large.depth() <= room ? large : new EndHeights(figures, new Lettering(2.5, true));
  }

  /** Whether a joint runs out on the plumb end of its side. */
  static boolean onEnd(HeadFigures figures, JointLine joint) {
    if (!figures.curved() || joint.outer().isEmpty()) {
      return false;
    }
    double end = 0;
    for (JointLine j : figures.layout().joints()) {
      if (j.side() == joint.side()) {
        end = Math.max(end, Math.abs(j.head().x()));
      }
    }
    return Math.abs(Math.abs(joint.head().x()) - end) < 0.05 && joint.head().y() > 0.05;
  }

  private List<JointLine> joints(Side side) {
    if (!figures.curved()) {
      return List.of();
    }
    return figures.joints(side).stream()
        .filter(j -> onEnd(figures, j))
        .sorted(Comparator.comparingDouble(j -> -j.head().y()))
        .toList();
  }

  private String text(JointLine joint) {
    return "↑ " + figures.format().tape(figures.format().grid().snapMm(joint.head().y()));
  }

  /** How much paper beside an end they take, mm. */
  double depth() {
    double most = 0;
    for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
      for (JointLine j : joints(side)) {
        most = Math.max(most, LabelShape.width(text(j), lettering) + AWAY + 1);
      }
    }
    return most;
  }

  /**
   * Draws those of one side, between the springing line and the topmost of them; where they stand
   * too close, only as many as there is room for.
   */
  void draw(Board board, Similarity view, Side side, HeadPart part) {
    List<JointLine> all = joints(side).stream().filter(part::holds).toList();
    if (all.isEmpty()) {
      return;
    }
    double low = view.apply(all.get(0).head()).y();
    double high = Math.max(low, view.apply(Point.ORIGIN).y() - 2);
    double pitch =
        LabelShape.above(TALLEST, lettering) + LabelShape.below(TALLEST, lettering) + 0.5;
    int room = 1 + (int) Math.floor((high - low) / pitch);
    int every = (all.size() + room - 1) / room;
    List<Point> at = new ArrayList<>();
    List<String> texts = new ArrayList<>();
    for (int i = 0; i < all.size(); i += every) {
      at.add(view.apply(all.get(i).head()));
      texts.add(text(all.get(i)));
    }
    double[] wanted = at.stream().mapToDouble(Point::y).toArray();
    double[] places = LabelSpacing.along(wanted, pitch, low, high);
    for (int i = 0; i < wanted.length; i++) {
      double x = at.get(i).x();
      board.line(
          new Point(x + side.sign() * 0.6, wanted[i]),
          new Point(x + side.sign() * (AWAY - 0.6), places[i]),
          Pen.FINE);
      double base = places[i] + LabelShape.above("0", lettering) / 2;
      Align align = side == Side.LEFT ? Align.END : Align.START;
      board.text(new Point(x + side.sign() * AWAY, base), texts.get(i), lettering, align, 0);
    }
  }
}
