package headcourse.sheet.wall;

import headcourse.drawing.Board;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.geom.Box;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.layout.PlacedStone;
import headcourse.sheet.elevation.HeadFigures;
import headcourse.sheet.elevation.HeadPart;

/** The whole head drawn small, with the part that a page shows shaded. */
final class KeyPlan {
  private static final double WIDTH = 90;

  private KeyPlan() {}

  /** Draws it at the right, between the drawing and a lowest y, where there is room for it. */
  static void draw(
      Board board, HeadFigures figures, HeadPart part, Box area, double under, double lowest) {
    Box all = figures.box();
    double f = WIDTH / all.width();
    double height = all.height() * f;
    double bottom = lowest;
    if (bottom - height < under + 3) {
      return;
    }
    Point origin = new Point(area.maxX() - 1 - all.maxX() * f, bottom + all.minY() * f);
    Similarity view = Similarity.toPaper(f, origin);
    for (PlacedStone s : figures.layout().stones()) {
      boolean shown = part.stones().contains(s);
      board.outline(
          s.outline().transformed(view),
          shown ? Shade.KEY : Shade.WHITE,
          shown ? Pen.EDGE : Pen.FINE);
    }
  }
}
