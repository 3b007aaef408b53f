package headcourse.sheet.section;

import headcourse.drawing.Board;
import headcourse.drawing.Lettering;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.drawing.TextFlow;
import headcourse.geom.Path;
import headcourse.geom.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Names beside a section, each led to its place. Names stand in one column in the order of their
 * places from the top, so leaders never cross.
 */
public final class Callouts {
  private static final double AIR = 1.6;

  private record Name(Point at, List<String> lines) {}

  private final List<Name> names = new ArrayList<>();
  private final double width;
  private final Lettering lettering;

  /** Names in a column of so much width, mm. */
  public Callouts(double width) {
    this.width = width;
    this.lettering = new Lettering(width >= 105 ? 3.5 : 2.5, false);
  }

  /** Names a place on paper. */
  public void add(Point at, String text) {
    names.add(new Name(at, TextFlow.lines(text, width, lettering)));
  }

  /** Height of all names. */
  public double height() {
    return names.stream().mapToDouble(this::block).sum();
  }

  private double block(Name n) {
    double lines = n.lines.size() * lettering.height() * TextFlow.LEADING;
    return lines - lettering.height() * 0.75 + AIR;
  }

  /**
   * Draws names and leaders.
   *
   * @param elbow x up to which leaders run level
   * @param x left end of the names
   * @param top upper end of the room, {@code bottom} its lower end
   */
  void draw(Board board, double elbow, double x, double top, double bottom) {
    List<Name> order = new ArrayList<>(names);
    order.sort(Comparator.comparingDouble(n -> n.at.y()));
    double[] y = places(order, top, bottom);
    for (int i = 0; i < order.size(); i++) {
      TextFlow.paragraph(board, x, y[i], order.get(i).lines, lettering);
    }
    for (int i = 0; i < order.size(); i++) {
      Name n = order.get(i);
      double middle = y[i] + lettering.height() / 2;
      board.lineAround(n.at, new Point(elbow, n.at.y()), Pen.FINE);
      board.lineAround(new Point(elbow, n.at.y()), new Point(x - 1, middle), Pen.FINE);
      board.fill(Path.circle(n.at, 0.6), Shade.BLACK);
    }
  }

  // Each as near to its place as the ones above and below allow: down from the top, then up again.
  private double[] places(List<Name> order, double top, double bottom) {
    double[] y = new double[order.size()];
    double low = top;
    for (int i = 0; i < y.length; i++) {
      y[i] = Math.max(low, order.get(i).at.y() - lettering.height() / 2);
      low = y[i] + block(order.get(i));
    }
    double high = bottom;
    for (int i = y.length - 1; i >= 0; i--) {
      high -= block(order.get(i));
      y[i] = Math.max(top, Math.min(y[i], high));
      high = y[i];
    }
    return y;
  }
}
