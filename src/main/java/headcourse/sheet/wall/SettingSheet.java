package headcourse.sheet.wall;

import headcourse.bench.HeadWork;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.job.Bundle;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.rules.Materials;
import headcourse.rules.Mortar;
import headcourse.sheet.Amounts;
import headcourse.sheet.AsMadeNotes;
import headcourse.sheet.PageDraft;
import headcourse.sheet.PropNotes;
import headcourse.sheet.SheetComposer;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetContext.Turn;
import headcourse.sheet.SheetFlow;
import headcourse.sheet.Table.Column;
import headcourse.units.Units;
import java.util.ArrayList;
import java.util.List;

/** In which order a head goes up, what holds each stone, what to check, where the ends may land. */
public final class SettingSheet implements SheetComposer {
  private static final Lettering TEXT = new Lettering(3.5, false);
  private static final Lettering SMALL = Lettering.NOTE;

  /** The setting sheets of a wall bundle. */
  public SettingSheet() {}

  @Override
  public Bundle bundle() {
    return Bundle.WALL;
  }

  @Override
  public List<PageDraft> compose(SheetContext context) {
    List<PageDraft> pages = new ArrayList<>();
    for (HeadWork head : context.work().heads()) {
      pages.addAll(pages(context.of(head), head));
    }
    return pages;
  }

  /** The setting sheet of one head. */
  static List<PageDraft> pages(SheetContext context, HeadWork head) {
    Opening opening = head.layout().opening();
    Turn turn = SheetFlow.bestTurn(context);
    String title = context.say("wall.setting-sheet");
    return SheetFlow.pages(
        context,
        turn,
        opening.mark() + "-S",
        title,
        opening.mark(),
        flow -> {
          flow.page().bookmark(2, title, "setting-" + opening.mark(), flow.page().area().minY());
          AsBuiltNotes.write(flow, context, head, TEXT);
          AsMadeNotes.write(flow, context, head, TEXT);
          order(flow, context, head);
          AnchorList.put(flow, context, head, TEXT);
          closers(flow, context, head);
          stackUp(flow, context, head);
          PropNotes.write(flow, context, head, TEXT);
          mortar(flow, context);
          cautions(flow, context);
        });
  }

  private static void order(SheetFlow flow, SheetContext context, HeadWork head) {
    Job job = context.job();
    SettingRows rows = new SettingRows(context, head);
    boolean wedges = head.bed().outOfLevel();
    String screws = job.units() == Units.INCH ? "wall.screws" : "wall.screws-mm";
    List<Column> columns = new ArrayList<>();
    columns.add(new Column(context.say("wall.order"), wedges ? 13 : 10, Align.END, true));
    columns.add(new Column(context.say("wall.stone"), 16, Align.START, true));
    columns.add(new Column(context.say("wall.edge-stands-at"), 29, Align.START, true));
    columns.add(new Column(context.say(screws), 49, Align.START, false));
    columns.add(new Column(context.say("wall.covered-by"), 30, Align.START, false));
    if (wedges) {
      columns.add(new Column(context.say("wall.bed"), 30, Align.START, false));
    }
    columns.add(new Column(context.say("wall.then-check"), 55, Align.START, true));
    flow.table(columns, rows.all(), TEXT);
    String least = context.format().withUnit(job.wall().bed());
    flow.say(wedges ? "wall.bed-measured" : "wall.bed-level", TEXT, least);
    flow.say("wall.closing", TEXT);
    if (head.layout().curve() != null && head.layout().curve().striking() != null) {
      var depth = headcourse.units.Length.mm(head.layout().curve().striking());
      flow.say("wall.striking-point", TEXT, context.format().withUnit(depth));
    }
  }

  private static void closers(SheetFlow flow, SheetContext context, HeadWork head) {
    ClosersTable table = new ClosersTable(context, head);
    if (!table.rows().isEmpty()) {
      flow.heading(context.say("wall.closers"), 24);
      flow.say("wall.closers-text", TEXT);
      flow.table(table.columns(), table.rows(), TEXT);
    }
  }

  private static void stackUp(SheetFlow flow, SheetContext context, HeadWork head) {
    Job job = context.job();
    flow.heading(context.say("wall.stack-up"), 34);
    StackUpTables tables = new StackUpTables(context, head);
    flow.say(
        tables.endsKey(),
        TEXT,
        tables.fine(job.setting().cutTolerance()),
        tables.fine(job.setting().opens()));
    flow.table(tables.endColumns(), tables.ends(), TEXT);
    List<List<String>> drift = tables.drift();
    if (!drift.isEmpty()) {
      flow.paragraph(tables.trim(), TEXT);
      flow.table(tables.driftColumns(), drift, TEXT);
    }
    if (head.lands() != null) {
      LandsText lands = new LandsText(context, head);
      flow.paragraph(lands.often(), TEXT);
      flow.paragraph(lands.mover(), TEXT);
      flow.paragraph(lands.assumed(), TEXT);
    }
  }

  private static void mortar(SheetFlow flow, SheetContext context) {
    Materials m = context.work().materials();
    flow.heading(context.say("wall.mortar"), 20);
    Amounts amounts = new Amounts(context.job().units());
    flow.say(
        "wall.mortar-text",
        TEXT,
        amounts.volume(m.mortarM3()),
        m.bags(),
        amounts.trowel((m.mortar().set() - m.mortar().scratch()) / Math.max(1, m.stones())));
    Mortar mortar = m.mortar();
    List<String> parts =
        amounts.volumes(
            mortar.bed(), mortar.scratch(), mortar.soffit(), mortar.joints(), mortar.waste());
    flow.say("wall.mortar-parts", TEXT, parts.toArray());
    List<String> screws = new ArrayList<>();
    for (Materials.ScrewCount c : m.screwsByLength()) {
      screws.add(
          context.say("wall.screws-needed", c.count(), context.format().withUnit(c.length())));
    }
    if (!screws.isEmpty()) {
      flow.paragraph(String.join(" · ", screws), TEXT);
    }
  }

  /** The cautions that stand on every bundle. */
  static void cautions(SheetFlow flow, SheetContext context) {
    flow.heading(context.say("wall.cautions"), 20);
    Amounts amounts = new Amounts(context.job().units());
    String two = amounts.wholeMass(SettingRows.twoPeople(context.job()));
    for (String key :
        List.of(
            "wall.caution-load",
            "wall.caution-code",
            "wall.caution-dust",
            "wall.caution-eyes",
            "wall.caution-scaffold")) {
      context.words().each(key).forEach(t -> flow.item("!", t, SMALL));
    }
    context.words().each("wall.caution-lift", two).forEach(t -> flow.item("!", t, SMALL));
  }
}
