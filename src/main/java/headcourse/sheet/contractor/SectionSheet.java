package headcourse.sheet.contractor;

import headcourse.job.Bundle;
import headcourse.sheet.PageDraft;
import headcourse.sheet.SheetComposer;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetContext.Turn;
import headcourse.sheet.SheetFlow;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Sections through head and jamb, drawn from the job's own build-up, as many as a sheet holds. */
public final class SectionSheet implements SheetComposer {
  /** The narrowest columns in which a section stands beside its names, mm. */
  private static final double[] COLUMNS = {112, 150, 200};

  /** Sections are drawn no smaller than this, 3" = 1'-0" or 1:5, to stand side by side. */
  private static final int SMALL = 5;

  /** The sections of a contractor's set. */
  public SectionSheet() {}

  @Override
  public Bundle bundle() {
    return Bundle.CONTRACTOR;
  }

  @Override
  public List<PageDraft> compose(SheetContext context) {
    List<Cuts.Cut> upright = new ArrayList<>();
    List<Cuts.Cut> others = new ArrayList<>();
    for (Cuts.Cut c : Cuts.of(context)) {
      (c.level() || c.figure().trueHeight() < 200 ? others : upright).add(c);
    }
    // Together where they stand in columns of one width.
    if (flow(context, upright).width() == flow(context, others).width()) {
      upright.addAll(others);
      others.clear();
    }
    List<PageDraft> pages = new ArrayList<>(pages(context, upright, "sections"));
    if (!others.isEmpty()) {
      pages.addAll(pages(context, others, "sections-level"));
    }
    return pages;
  }

  private static List<PageDraft> pages(SheetContext context, List<Cuts.Cut> cuts, String anchor) {
    SheetFlow flow = flow(context, cuts);
    String title = context.say("contractor.sections");
    flow.page().bookmark(1, title, anchor, flow.page().area().minY());
    for (Cuts.Cut cut : cuts) {
      String where =
          cut.places().keySet().stream()
              .map(mark -> context.index().code("elevation-" + mark))
              .distinct()
              .collect(Collectors.joining(", "));
      cut.figure().put(flow, context, cut.letter(), context.say("contractor.cut-on", where));
      flow.page().bookmark(2, cut.figure().name(), cut.anchor(), flow.page().area().minY());
    }
    return flow.pages();
  }

  /** In the most columns that make no section smaller. */
  private static SheetFlow flow(SheetContext context, List<Cuts.Cut> cuts) {
    String title = context.say("contractor.sections");
    SheetFlow wide = new SheetFlow(context, Turn.LANDSCAPE, title, 1e6);
    for (double least : COLUMNS) {
      SheetFlow flow = new SheetFlow(context, Turn.LANDSCAPE, title, least);
      boolean asLarge =
          cuts.stream()
              .allMatch(
                  c ->
                      c.figure().fits(flow, context)
                          && c.figure().scale(flow, context).reduction()
                              <= Math.max(SMALL, c.figure().scale(wide, context).reduction()));
      if (asLarge) {
        return flow;
      }
    }
    return wide;
  }
}
