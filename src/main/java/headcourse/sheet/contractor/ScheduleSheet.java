package headcourse.sheet.contractor;

import headcourse.bench.HeadWork;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.job.Bundle;
import headcourse.job.HeadSpec;
import headcourse.job.JobInfo;
import headcourse.job.Opening;
import headcourse.layout.HeadLayout;
import headcourse.layout.PlacedStone;
import headcourse.layout.Role;
import headcourse.layout.Side;
import headcourse.rules.MaterialsTakeOff;
import headcourse.sheet.Amounts;
import headcourse.sheet.AsMadeNotes;
import headcourse.sheet.ColumnShares;
import headcourse.sheet.PageDraft;
import headcourse.sheet.SheetComposer;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetContext.Turn;
import headcourse.sheet.SheetFlow;
import headcourse.sheet.Table.Column;
import headcourse.sheet.elevation.HeadFigures;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The opening schedule, what changed, and the box for review and signature. */
public final class ScheduleSheet implements SheetComposer {
  /** The column that tells where an opening stands. */
  private static final int PLACE = 3;

  /** The first sheet of a contractor's set. */
  public ScheduleSheet() {}

  @Override
  public Bundle bundle() {
    return Bundle.CONTRACTOR;
  }

  @Override
  public List<PageDraft> compose(SheetContext context) {
    String title = context.say("contractor.schedule");
    return SheetFlow.pages(
        context,
        Turn.LANDSCAPE,
        "G1",
        title,
        "",
        1,
        flow -> {
          flow.page().bookmark(1, title, "schedule", flow.page().area().minY());
          Lettering text = new Lettering(flow.width() > 380 ? 3.5 : 2.5, false);
          List<Column> columns = new ArrayList<>();
          columns.add(column(context, "mark", 17, true));
          columns.add(column(context, "opening", 34, false));
          columns.add(new Column(context.say("contractor.count"), 14, Align.END, true));
          boolean placed = context.job().openings().stream().anyMatch(o -> !o.at().isEmpty());
          if (placed) {
            columns.add(column(context, "place", 26, true));
          }
          columns.addAll(
              List.of(
                  column(context, "clear", 24, true),
                  column(context, "height", 20, false),
                  column(context, "head", 30, false),
                  column(context, "key", 38, false),
                  column(context, "stones", 28, false),
                  column(context, "bearing", 26, true),
                  column(context, "overall", 24, false),
                  column(context, "soffit", 24, false),
                  column(context, "mass", 20, false)));
          List<List<String>> rows = new ArrayList<>();
          for (HeadWork head : context.work().heads()) {
            List<String> row = new ArrayList<>(row(context.of(head), head));
            if (placed) {
              row.add(PLACE, place(context, head.layout().opening()));
            }
            rows.add(row);
          }
          schedule(flow, columns, rows, text);
          context.work().heads().forEach(h -> AsMadeNotes.write(flow, context, h, text));
          revisions(flow, context);
          ChangesTable.draw(flow, context);
          ReviewBox.draw(flow, context);
        });
  }

  // A row an opening; on a page too narrow for that without a broken word or figure, a table each.
  private static void schedule(
      SheetFlow flow, List<Column> columns, List<List<String>> rows, Lettering text) {
    if (ColumnShares.whole(ColumnShares.table(columns, rows, text, flow.width()))) {
      flow.table(columns, rows, text);
      return;
    }
    List<Column> pair =
        List.of(new Column("", 1, Align.START, false), new Column("", 2, Align.START, true));
    for (List<String> row : rows) {
      List<List<String>> one = new ArrayList<>();
      for (int i = 0; i < row.size(); i++) {
        one.add(List.of(columns.get(i).heading(), row.get(i)));
      }
      flow.table(pair, one, text);
      flow.space(3);
    }
  }

  /** Where it stands along the wall, and how high where that is given. */
  private static String place(SheetContext context, Opening o) {
    LengthFormat f = context.format();
    String at = String.join("; ", o.at().stream().map(f::building).toList());
    return o.level() == null
        ? at
        : at + " " + context.say("contractor.place-level", f.building(o.level()));
  }

  private static Column column(SheetContext context, String key, double width, boolean bold) {
    return new Column(context.say("contractor." + key), width, Align.START, bold);
  }

  private static List<String> row(SheetContext context, HeadWork head) {
    LengthFormat f = context.format();
    HeadFigures figures = new HeadFigures(head, f);
    HeadLayout layout = head.layout();
    Opening o = layout.opening();
    HeadSpec spec = o.head();
    double kg = MaterialsTakeOff.headKg(head);
    return List.of(
        o.mark(),
        o.label(),
        Integer.toString(o.count()),
        f.building(layout.halfWidth().times(2)),
        o.height() == null ? "" : f.building(o.height()),
        context.words().sayOr("contractor.shape-" + spec.shape(), spec.shape())
            + ", "
            + context.say(
                figures.curved() ? "contractor.deep" : "contractor.high",
                f.withUnit(spec.height())),
        key(context, layout),
        stones(context, layout),
        bearing(context, layout, figures),
        f.building(figures.overallAnywhere()),
        soffit(context, o),
        new Amounts(context.job().units()).massInTenths(kg));
  }

  private static String key(SheetContext context, HeadLayout layout) {
    LengthFormat f = context.format();
    HeadSpec.Key spec = layout.opening().head().key();
    return layout.stones().stream()
        .filter(s -> s.role() == Role.KEY)
        .findFirst()
        .map(
            k -> {
              String size =
                  context.say("contractor.key-size", f.withUnit(k.bottom()), f.withUnit(k.top()));
              return spec == null
                  ? size
                  : size
                      + "; "
                      + context.say(
                          "contractor.key-stands",
                          f.withUnit(spec.rise()),
                          f.withUnit(spec.drop()),
                          f.withUnit(k.proud()));
            })
        .orElse(context.say("contractor.no-key"));
  }

  private static String stones(SheetContext context, HeadLayout layout) {
    LengthFormat f = context.format();
    List<Length> widths =
        layout.stones().stream()
            .filter(s -> s.role() != Role.KEY)
            .map(PlacedStone::bottom)
            .sorted(Comparator.naturalOrder())
            .toList();
    String least = f.withUnit(widths.get(0));
    String most = f.withUnit(widths.get(widths.size() - 1));
    return least.equals(most)
        ? context.say("contractor.stones-alike", widths.size(), least)
        : context.say("contractor.stones-of", widths.size(), least, most);
  }

  private static String bearing(SheetContext context, HeadLayout layout, HeadFigures figures) {
    LengthFormat f = context.format();
    String ends =
        f.withUnit(figures.bearing(Side.LEFT)) + " · " + f.withUnit(figures.bearing(Side.RIGHT));
    return layout.fanned()
        ? context.say(
            "contractor.bearing-top",
            ends,
            f.withUnit(figures.bearingOnTop(Side.LEFT))
                + " · "
                + f.withUnit(figures.bearingOnTop(Side.RIGHT)))
        : ends;
  }

  private static String soffit(SheetContext context, Opening o) {
    return context.say(
        "contractor.soffit-" + o.head().soffit().word(), context.format().withUnit(o.reveal()));
  }

  private static void revisions(SheetFlow flow, SheetContext context) {
    List<List<String>> rows = new ArrayList<>();
    for (JobInfo.Revision r : context.job().info().revisions()) {
      rows.add(List.of(r.mark(), r.date(), r.note()));
    }
    if (rows.isEmpty()) {
      return;
    }
    flow.table(
        context.say("contractor.revisions"),
        List.of(
            column(context, "r-mark", 16, true),
            column(context, "r-date", 30, false),
            column(context, "r-note", 150, false)),
        rows,
        new Lettering(3.5, false));
  }
}
