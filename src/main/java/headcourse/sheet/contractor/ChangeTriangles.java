package headcourse.sheet.contractor;

import headcourse.bench.HeadWork;
import headcourse.drawing.Board;
import headcourse.drawing.LabelShape;
import headcourse.drawing.LabelSpacing;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.geom.Edge;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.layout.FaceEdge;
import headcourse.layout.PlacedStone;
import headcourse.revision.Changes;
import headcourse.sheet.SheetContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Triangles with the revision's letter in a band over an elevation, each with a leader to a stone
 * that changed since the revision before, and clouds around those stones; a triangle without a
 * leader at the band's left end stands for the opening itself, and the cloud is around it all.
 */
final class ChangeTriangles {
  private static final Lettering NUMBER = new Lettering(Lettering.LEAST, true);
  private static final double AIR = 0.8;
  private static final double JOG = 4;

  private record Target(int number, Point foot) {}

  private final SheetContext context;
  private final HeadWork head;
  private final String letter;
  private final Integer whole;
  private final List<Target> targets = new ArrayList<>();
  private final double base;
  private final double height;
  private final int rows;
  private final boolean leftOut;

  /** The triangles of a head in a band of some width, mm. */
  ChangeTriangles(SheetContext context, HeadWork head, double width) {
    this.context = context;
    this.head = head;
    this.letter = context.job().info().revision();
    Changes changes = context.work().changes();
    String opening = head.layout().opening().mark();
    this.whole =
        changes.items().stream()
            .filter(i -> i.opening().equals(opening) && i.stone().isEmpty())
            .map(Changes.Item::number)
            .findFirst()
            .orElse(null);
    for (var p : head.pieces()) {
      changes.number(p.mark()).ifPresent(n -> targets.add(new Target(n, top(p.stone()))));
    }
    targets.sort(Comparator.comparingDouble(t -> t.foot.x()));
    // As wide at the lettering's upper edge as the letter, and air beside it.
    double wide = LabelShape.width(letter, NUMBER);
    this.base = Math.max(9, wide * 1.6 + 4);
    this.height = base * 0.88;
    double need = (targets.size() + 2) * (base + AIR);
    this.rows = need <= width ? 1 : 2;
    this.leftOut = need / 2 > width;
  }

  private static Point top(PlacedStone stone) {
    List<Edge> edges = stone.edges(FaceEdge.Where.TOP);
    return edges.isEmpty()
        ? new Point(stone.outline().bounds().centre().x(), stone.outline().bounds().maxY())
        : edges.get(edges.size() / 2).at(edges.size() % 2 == 0 ? 0 : 0.5);
  }

  /** Whether there are more than the band holds, so that none is drawn. */
  boolean leftOut() {
    return leftOut;
  }

  /** Height of the band, mm; 0 where nothing is drawn. */
  double depth() {
    return leftOut || whole == null && targets.isEmpty() ? 0 : rows * (height + 1) + JOG;
  }

  /**
   * Draws the band.
   *
   * @param view from model space to paper
   */
  void draw(Board board, double left, double top, double width, Similarity view) {
    if (depth() == 0) {
      return;
    }
    if (whole != null) {
      triangle(board, left + base / 2, top + height, whole);
    }
    double[] wanted = targets.stream().mapToDouble(t -> view.apply(t.foot).x()).toArray();
    double low = left + base * (whole == null ? 0.5 : 1.5) + AIR;
    double[] at = LabelSpacing.along(wanted, (base + AIR) / rows, low, left + width - base / 2);
    for (int i = 0; i < at.length; i++) {
      double under = top + height + (i % rows) * (height + 1);
      triangle(board, at[i], under, targets.get(i).number);
    }
    double bend = top + rows * (height + 1);
    for (int i = 0; i < at.length; i++) {
      double under = top + height + (i % rows) * (height + 1);
      Point foot = view.apply(targets.get(i).foot);
      Point knee = new Point(at[i], bend);
      Point over = new Point(foot.x(), bend + JOG - 1);
      board.line(new Point(at[i], under), knee, Pen.FINE);
      board.line(knee, over, Pen.FINE);
      board.lineAround(over, foot, Pen.FINE);
    }
    Set<String> changed = new HashSet<>();
    for (var p : head.pieces()) {
      if (whole != null || context.work().changes().number(p.mark()).isPresent()) {
        changed.add(p.stone().mark());
      }
    }
    RevisionCloud.around(head.layout(), changed).forEach(c -> c.draw(board, view));
  }

  private void triangle(Board board, double x, double under, int number) {
    board.group(
        Role.NOTES,
        "",
        context.say("contractor.c-mark", number),
        b -> {
          Point apex = new Point(x, under - height);
          b.stroke(
              Path.polygon(
                  List.of(new Point(x - base / 2, under), new Point(x + base / 2, under), apex)),
              Pen.EDGE);
          b.text(x, under - 0.9, letter, NUMBER, Align.MIDDLE);
        });
  }
}
