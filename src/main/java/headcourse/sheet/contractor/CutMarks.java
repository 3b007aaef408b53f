package headcourse.sheet.contractor;

import headcourse.bench.HeadWork;
import headcourse.drawing.Board;
import headcourse.drawing.LabelSpacing;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Link;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.geom.Vec;
import headcourse.sheet.SheetContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Circles over an elevation, each led to where a section is cut: its letter over the sheet that it
 * is drawn on.
 */
final class CutMarks {
  private static final double ROUND = 9.6;
  private static final double AIR = 1.5;
  private static final double JOG = 3;

  private record Target(Cuts.Cut cut, Point at) {}

  private final SheetContext context;
  private final List<Target> targets = new ArrayList<>();

  /** Those of a head among the sections of the set. */
  CutMarks(SheetContext context, HeadWork head, List<Cuts.Cut> cuts) {
    this.context = context;
    String mark = head.layout().opening().mark();
    for (Cuts.Cut c : cuts) {
      if (c.places().containsKey(mark)) {
        targets.add(new Target(c, c.places().get(mark)));
      }
    }
    targets.sort(Comparator.comparingDouble(t -> t.at.x()));
  }

  /** Height of their band, mm. */
  double depth() {
    return targets.isEmpty() ? 0 : ROUND + JOG;
  }

  /**
   * Draws them.
   *
   * @param view from model space to paper
   */
  void draw(Board board, double left, double top, double width, Similarity view) {
    if (targets.isEmpty()) {
      return;
    }
    double[] wanted = targets.stream().mapToDouble(t -> view.apply(t.at).x()).toArray();
    double low = left + ROUND / 2;
    double[] at = LabelSpacing.along(wanted, ROUND + AIR, low, left + width - ROUND / 2);
    for (int i = 0; i < at.length; i++) {
      circle(board, new Point(at[i], top + ROUND / 2), targets.get(i).cut);
    }
    for (int i = 0; i < at.length; i++) {
      Point foot = view.apply(targets.get(i).at);
      Point from = new Point(at[i], top + ROUND);
      Point over = new Point(foot.x(), top + ROUND + JOG - 1);
      board.lineAround(from, over, Pen.FINE);
      board.lineAround(over, foot, Pen.FINE);
      // The heavy stroke lies the way the cut goes.
      Vec way = targets.get(i).cut.level() ? new Vec(2, 0) : new Vec(0, 2);
      board.lineAround(foot.plus(way.times(-1)), foot.plus(way), Pen.OUTLINE);
    }
  }

  private void circle(Board board, Point middle, Cuts.Cut cut) {
    String code = context.index().code(cut.anchor());
    board.group(
        Role.NOTES,
        "",
        context.say("contractor.section-mark", cut.letter(), code),
        b -> {
          double r = ROUND / 2;
          b.stroke(Path.circle(middle, r), Pen.EDGE);
          b.line(middle.x() - r, middle.y(), middle.x() + r, middle.y(), Pen.EDGE);
          Lettering big = new Lettering(2.5, true);
          b.text(middle.x(), middle.y() - 0.8, cut.letter(), big, Align.MIDDLE);
          b.text(middle.x(), middle.y() + 3.2, code, Lettering.NOTE, Align.MIDDLE);
          b.add(new Link(Box.of(middle.x() - r, middle.y() - r, 2 * r, 2 * r), cut.anchor()));
        });
  }
}
