package headcourse.sheet.wall;

import headcourse.bench.HeadWork;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.geom.Point;
import headcourse.job.Bundle;
import headcourse.job.Opening;
import headcourse.layout.HeadLayout;
import headcourse.sheet.PageDraft;
import headcourse.sheet.Scale;
import headcourse.sheet.SheetComposer;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetFlow;
import headcourse.sheet.Table.Column;
import headcourse.sheet.elevation.HeadFigures;
import java.util.ArrayList;
import java.util.List;

/** How a curved head is struck out on site with a level line, a plumb line and a rod. */
public final class StrikingSheet implements SheetComposer {
  private static final Lettering TEXT = new Lettering(3.5, false);

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
        pages.addAll(pages(context.of(head), head));
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
    StrikingRows rows = new StrikingRows(context, head);
    List<HeadLayout.Place> foci = rows.foci();
    if (foci.isEmpty()) {
      flow.say("wall.striking-rods", TEXT);
    } else {
      string(flow, context, rows, foci);
    }
    StrikingFigure figure = new StrikingFigure(context, layout, rows.points());
    double room = Math.min(flow.left() - 30, flow.tallest() * 0.5);
    Scale scale = figure.scale(flow.width(), room);
    flow.paragraph(scale.name(), TEXT);
    flow.figure(
        figure.height(scale) + 3,
        (b, x, y) ->
            b.group(Role.FIGURE, "", title, f -> figure.draw(f, scale, x, y, flow.width())));
    flow.space(2);
    List<List<String>> centres = rows.centres();
    if (!centres.isEmpty()) {
      flow.table(
          List.of(
              column(context, "centre", 18, true),
              column(context, "from-centre-line", 46, false),
              column(context, "from-springing", 42, false),
              column(context, "rod", 36, true),
              column(context, "arc-from", 30, false)),
          centres,
          TEXT);
    }
    flow.say("wall.points-text", TEXT);
    flow.table(
        List.of(
            column(context, "point", 22, true),
            column(context, "from-centre-line", 60, false),
            column(context, "from-springing", 60, false)),
        rows.places(),
        TEXT);
    flow.heading(context.say("wall.joint-points"), 30);
    flow.say("wall.joints-text", Lettering.NOTE);
    flow.table(
        List.of(
            column(context, "joint", 24, true),
            column(context, "around", 34, true),
            column(context, "soffit-across", 30, false),
            column(context, "soffit-up", 28, false),
            column(context, "back-across", 30, false),
            column(context, "back-up", 28, false)),
        rows.joints(),
        TEXT);
    return flow.pages();
  }

  private static Column column(SheetContext context, String key, double width, boolean bold) {
    return new Column(context.say("wall." + key), width, Align.START, bold);
  }

  // Two nails and a string: from nail to pencil to nail it is as long as the longer axis.
  private static void string(
      SheetFlow flow, SheetContext context, StrikingRows rows, List<HeadLayout.Place> foci) {
    Point nail = foci.get(foci.size() - 1).at();
    boolean level = Math.abs(nail.y()) < 1e-6;
    double focus = level ? Math.abs(nail.x()) : Math.abs(nail.y());
    flow.say(
        focus < context.job().grid().tick().mm() / 2
            ? "wall.string-round"
            : level ? "wall.string-level" : "wall.string-plumb",
        TEXT,
        rows.exact(focus),
        rows.exact(rows.string()),
        rows.exact(rows.crown()));
    flow.say("wall.string-check", TEXT);
  }
}
