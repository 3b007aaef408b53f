package headcourse.sheet.solid;

import headcourse.bench.HeadWork;
import headcourse.drawing.Lettering;
import headcourse.job.Bundle;
import headcourse.sheet.PageDraft;
import headcourse.sheet.SheetComposer;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetContext.Turn;
import headcourse.sheet.SheetFlow;
import java.util.List;

/** Every head of a contractor's set read as if it were solid: how it looks, not what it bears. */
public final class SolidSheet implements SheetComposer {
  private static final Lettering TEXT = new Lettering(3.5, false);
  private static final double GAP = 5;

  /** The narrowest columns, mm: the widest that costs no page. */
  private static final double[] COLUMNS = {170, 110};

  /** The sheet of a contractor's set. */
  public SolidSheet() {}

  @Override
  public Bundle bundle() {
    return Bundle.CONTRACTOR;
  }

  @Override
  public List<PageDraft> compose(SheetContext context) {
    List<HeadWork> read = context.work().heads().stream().filter(h -> h.asSolid() != null).toList();
    if (read.isEmpty()) {
      return List.of();
    }
    String title = context.say("solid.title");
    // Lying, as all of a contractor's set does.
    List<PageDraft> best = null;
    for (double least : COLUMNS) {
      List<PageDraft> pages =
          SheetFlow.pages(context, Turn.LANDSCAPE, title, least, flow -> all(flow, context, read));
      best = best == null || pages.size() < best.size() ? pages : best;
    }
    return best;
  }

  private static void all(SheetFlow flow, SheetContext context, List<HeadWork> heads) {
    flow.page().bookmark(1, context.say("solid.title"), "solid", flow.page().area().minY());
    SolidWords any = new SolidWords(context, heads.get(0));
    any.caution().forEach(t -> flow.paragraph(t, TEXT));
    any.assumed().forEach(t -> flow.paragraph(t, TEXT));
    for (HeadWork head : heads) {
      SolidFigure figure = SolidFigure.whole(context, head, flow.width());
      String mark = head.layout().opening().mark();
      String label = head.layout().opening().label();
      String name = label.isEmpty() ? mark : context.say("contractor.elevation-title", mark, label);
      flow.heading(name, figure.height());
      flow.figure(figure.height() + GAP, figure::draw);
    }
  }
}
