package headcourse.sheet.elevation;

import headcourse.drawing.Board;
import headcourse.drawing.Dimensions;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * The chain of widths under a head: over the line where the sizes fit between their ticks, few that
 * don't under it; else all turned and spread under it; left out where there are too many even for
 * that.
 */
final class WidthChain {
  private static final double[] HEIGHTS = {3.5, 2.5};

  /** Air between two sizes under the line, mm. */
  private static final double BETWEEN = 2;

  /** Ticks stand so far apart at least where a leader passes between them, mm. */
  private static final double LEADER = 4;

  private final List<WidthRuns.Run> runs;
  private final LengthFormat format;
  private final Similarity flat;
  private Lettering level;
  private boolean someUnder;
  private MarkBand band;
  private MarkBand.Plan plan;

  WidthChain(HeadFigures figures, Similarity flat, double room, boolean shown) {
    this.runs = figures.curved() ? List.of() : WidthRuns.of(figures);
    this.format = figures.format();
    this.flat = flat;
    if (!shown) {
      return;
    }
    for (double cap : HEIGHTS) {
      Lettering l = new Lettering(cap, true);
      if (level == null && runs.stream().allMatch(r -> fits(r, l))) {
        level = l;
      }
    }
    for (double cap : HEIGHTS) {
      Lettering l = new Lettering(cap, true);
      if (level == null && apart(l, room)) {
        level = l;
        someUnder = true;
      }
    }
    if (level == null) {
      turned(room);
    }
  }

  private boolean fits(WidthRuns.Run r, Lettering l) {
    double room = r.to().minus(r.from()).mm() * flat.scale();
    return Dimensions.fits(r.text(format), l, room);
  }

  /** Whether the sizes that don't fit stand clear of each other under the line. */
  private boolean apart(Lettering l, double room) {
    double free = 0;
    for (WidthRuns.Run r : runs) {
      if (!fits(r, l)) {
        double half = LabelShape.width(r.text(format), l) / 2;
        double middle = middle(r);
        boolean between = r.to().minus(r.from()).mm() * flat.scale() >= LEADER;
        if (!between || middle - half < free || middle + half > room) {
          return false;
        }
        free = middle + half + BETWEEN;
      }
    }
    return true;
  }

  private double middle(WidthRuns.Run r) {
    return flat.apply(new Point((r.from().mm() + r.to().mm()) / 2, 0)).x();
  }

  private void turned(double room) {
    List<MarkBand.Item> items = new ArrayList<>();
    for (WidthRuns.Run r : runs) {
      double x = middle(r);
      items.add(new MarkBand.Item(new Point(x, 0), x, r.text(format)));
    }
    band = new MarkBand(items, List.of(), 0, room);
    for (double cap : HEIGHTS) {
      for (int rows = 1; rows <= 2 && plan == null; rows++) {
        Optional<MarkBand.Plan> p = band.plan(cap, rows);
        plan = p.orElse(null);
      }
    }
  }

  /** Whether there are sizes that are not shown. */
  boolean leftOut() {
    return !runs.isEmpty() && level == null && plan == null;
  }

  double height() {
    if (runs.isEmpty() || leftOut()) {
      return 0;
    }
    if (level == null) {
      return 7 + plan.depth();
    }
    return level.height() * 1.4 + 5 + (someUnder ? Dimensions.under(level) : 0);
  }

  void draw(Board board, double left, double objectY, double top, Similarity view) {
    if (runs.isEmpty() || leftOut()) {
      return;
    }
    double y = level != null ? top + level.height() * 1.4 + 2 : top + 3;
    double[] xs = new double[runs.size() + 1];
    for (int i = 0; i < runs.size(); i++) {
      xs[i] = view.apply(new Point(runs.get(i).from().mm(), 0)).x();
      xs[i + 1] = view.apply(new Point(runs.get(i).to().mm(), 0)).x();
    }
    Dimensions dimensions = new Dimensions(board);
    if (level != null) {
      List<String> texts = runs.stream().map(r -> r.text(format)).toList();
      dimensions.chain(xs, objectY, y, texts, level);
      return;
    }
    dimensions.chain(xs, objectY, y, Collections.nCopies(runs.size(), ""), Lettering.NOTE);
    double[] slots = plan.slots().clone();
    for (int i = 0; i < slots.length; i++) {
      slots[i] += left;
    }
    MarkBand.Plan there =
        new MarkBand.Plan(plan.cap(), plan.rows(), slots, plan.jog(), plan.near(), plan.depth());
    band.moved(Similarity.move(left, y)).draw(board, there, y + 2, 1);
  }
}
