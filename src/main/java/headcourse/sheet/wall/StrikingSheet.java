package headcourse.sheet.wall;

import headcourse.bench.HeadWork;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.geom.Point;
import headcourse.geom.Vec;
import headcourse.job.Bundle;
import headcourse.job.Opening;
import headcourse.layout.HeadLayout;
import headcourse.layout.JointLine;
import headcourse.layout.Side;
import headcourse.sheet.PageDraft;
import headcourse.sheet.Scale;
import headcourse.sheet.SheetComposer;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetFlow;
import headcourse.sheet.Table.Column;
import headcourse.sheet.elevation.HeadFigures;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** How a curved head is struck out on site with a level line, a plumb line and a rod. */
public final class StrikingSheet implements SheetComposer {
  private static final Lettering TEXT = new Lettering(3.5, false);
  private static final Lettering FIGURES = new Lettering(5, false);

  /** The striking-out sheets of a wall bundle. */
  public StrikingSheet() {}

  @Override
  public Bundle bundle() {
    return Bundle.WALL;
  }

  @Override
  public List<PageDraft> compose(SheetContext context) {
    List<PageDraft> pages = new ArrayList<>();
    for (HeadWork head : context.work().heads()) {
      if (new HeadFigures(head, context.format()).curved()) {
        pages.addAll(pages(context, head));
      }
    }
    return pages;
  }

  private static List<PageDraft> pages(SheetContext context, HeadWork head) {
    HeadLayout layout = head.layout();
    Opening opening = layout.opening();
    String title = context.say("wall.striking-out");
    SheetFlow flow =
        new SheetFlow(
            context, SheetFlow.bestTurn(context), opening.mark() + "-A", title, opening.mark());
    flow.page().bookmark(2, title, "striking-" + opening.mark(), flow.page().area().minY());
    flow.say("wall.striking-text", TEXT);
    List<StrikingPoint> points = StrikingFigure.points(layout);
    StrikingFigure figure = new StrikingFigure(context, layout, points);
    double room = Math.min(flow.left() - 30, flow.tallest() * 0.55);
    Scale scale = figure.scale(flow.width(), room);
    flow.paragraph(scale.name(), TEXT);
    flow.figure(
        figure.height(scale) + 3,
        (b, x, y) ->
            b.group(Role.FIGURE, "", title, f -> figure.draw(f, scale, x, y, flow.width())));
    centres(flow, context, layout, points);
    points(flow, context, points);
    joints(flow, context, head);
    return flow.pages();
  }

  private static Column column(SheetContext context, String key, double width, boolean bold) {
    return new Column(context.say("wall." + key), width, Align.START, bold);
  }

  private static String across(SheetContext context, double x) {
    Length l = context.format().grid().snapMm(x);
    if (l.isZero()) {
      return context.say("wall.on-it");
    }
    String text = context.format().withUnit(l.abs());
    return context.say(l.isPositive() ? "wall.right-by" : "wall.left-by", text);
  }

  private static String up(SheetContext context, double y) {
    Length l = context.format().grid().snapMm(y);
    if (l.isZero()) {
      return context.say("wall.on-it");
    }
    String text = context.format().withUnit(l.abs());
    return context.say(l.isPositive() ? "wall.up" : "wall.down", text);
  }

  private static void centres(
      SheetFlow flow, SheetContext context, HeadLayout layout, List<StrikingPoint> points) {
    List<List<String>> rows = new ArrayList<>();
    for (HeadLayout.Centre c : layout.curve().centres()) {
      rows.add(
          List.of(
              c.name(),
              across(context, c.at().x()),
              up(context, c.at().y()),
              context.format().withUnit(Length.mm(c.trammel())),
              nearest(points, tip(c, c.toAngle()))
                  + " – "
                  + nearest(points, tip(c, c.fromAngle()))));
    }
    if (rows.isEmpty()) {
      return;
    }
    flow.space(3);
    flow.table(
        List.of(
            column(context, "centre", 22, true),
            column(context, "from-centre-line", 44, false),
            column(context, "from-springing", 44, false),
            column(context, "rod", 40, true),
            column(context, "arc-from", 34, false)),
        rows,
        FIGURES);
  }

  private static Point tip(HeadLayout.Centre c, double angle) {
    return c.at().plus(Vec.direction(angle).times(c.trammel()));
  }

  private static String nearest(List<StrikingPoint> points, Point at) {
    return points.stream()
        .min(Comparator.comparingDouble(p -> p.at().distance(at)))
        .filter(p -> p.at().distance(at) < 0.5)
        .map(StrikingPoint::name)
        .orElse("?");
  }

  private static void points(SheetFlow flow, SheetContext context, List<StrikingPoint> points) {
    flow.say("wall.points-text", TEXT);
    List<List<String>> rows = new ArrayList<>();
    for (StrikingPoint p : points) {
      rows.add(List.of(p.name(), across(context, p.at().x()), up(context, p.at().y())));
    }
    flow.table(
        List.of(
            column(context, "point", 22, true),
            column(context, "from-centre-line", 60, false),
            column(context, "from-springing", 60, false)),
        rows,
        FIGURES);
  }

  private static List<String> row(SheetContext context, JointLine j, String name) {
    return List.of(
        name,
        across(context, j.foot().x()),
        up(context, j.foot().y()),
        across(context, j.head().x()),
        up(context, j.head().y()));
  }

  private static void joints(SheetFlow flow, SheetContext context, HeadWork work) {
    HeadLayout layout = work.layout();
    flow.heading(context.say("wall.joint-points"), 25);
    List<List<String>> rows = new ArrayList<>();
    List<JointLine> all = new ArrayList<>(layout.joints());
    all.sort(Comparator.comparingDouble(j -> j.head().x()));
    boolean keyed = new HeadFigures(work, context.format()).keyed();
    for (JointLine j : all) {
      if (!keyed && j.index() == 0) {
        // The joint on the centre line belongs to both sides; it is said once.
        if (j.side() == Side.RIGHT) {
          rows.add(row(context, j, "L1 | R1"));
        }
        continue;
      }
      String name = j.inner() + (j.outer().isEmpty() ? " |" : " | " + j.outer());
      if (j.side() == Side.LEFT) {
        name = (j.outer().isEmpty() ? "" : j.outer() + " ") + "| " + j.inner();
      }
      rows.add(row(context, j, name.strip()));
    }
    flow.table(
        List.of(
            column(context, "joint", 26, true),
            column(context, "soffit-across", 40, false),
            column(context, "soffit-up", 36, false),
            column(context, "back-across", 40, false),
            column(context, "back-up", 36, false)),
        rows,
        TEXT);
  }
}
