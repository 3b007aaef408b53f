package headcourse.sheet.section;

import headcourse.drawing.Board;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.job.Backing;

/** Fills of cut material: lines for stone, dots for mortar, crossed corners for framing. */
public final class Hatch {
  private Hatch() {}

  /** Lines at 45°, rising to the right. */
  public static void lines(Board board, Box box, double spacing) {
    double from = box.minX() + box.minY();
    double to = box.maxX() + box.maxY();
    double step = spacing * Math.sqrt(2);
    // Rising to the right as seen means x + y is constant on paper.
    for (double c = Math.ceil(from / step) * step; c < to; c += step) {
      double x0 = Math.max(box.minX(), c - box.maxY());
      double x1 = Math.min(box.maxX(), c - box.minY());
      if (x1 - x0 > 0.3) {
        board.line(new Point(x0, c - x0), new Point(x1, c - x1), Pen.FINE);
      }
    }
  }

  /** Dots, in rows that are set off from each other. */
  public static void dots(Board board, Box box, double spacing) {
    int row = 0;
    for (double y = box.minY() + spacing * 0.4; y < box.maxY() - 0.2; y += spacing * 0.8) {
      double shift = row++ % 2 == 0 ? 0.3 : 0.8;
      for (double x = box.minX() + spacing * shift; x < box.maxX() - 0.2; x += spacing) {
        if (x - 0.2 >= box.minX()) {
          board.fill(Path.circle(new Point(x, y), 0.2), Shade.BLACK);
        }
      }
    }
  }

  /** Both diagonals, as cut timber is shown. */
  public static void crossed(Board board, Box box) {
    board.line(box.minX(), box.minY(), box.maxX(), box.maxY(), Pen.FINE);
    board.line(box.minX(), box.maxY(), box.maxX(), box.minY(), Pen.FINE);
  }

  /** Fills what stands behind a wall's face: grey where an anchor holds in it. */
  public static void backing(Board board, Box box, Backing.Kind kind) {
    if (box.width() < 0.05 || box.height() < 0.05) {
      return;
    }
    Path area = Path.rect(box.minX(), box.minY(), box.width(), box.height());
    board.outline(area, kind.holds() ? Shade.STONE : Shade.WHITE, Pen.EDGE);
    switch (kind) {
      case WOOD -> crossed(board, box);
      case CONCRETE -> dots(board, box, 3.4);
      case BLOCK -> lines(board, box, 4);
      case STEEL -> lines(board, box, 1.2);
      default -> {}
    }
  }
}
