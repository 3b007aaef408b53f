package headcourse.sheet.contractor;

import headcourse.bench.HeadWork;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.job.Bundle;
import headcourse.job.Contract;
import headcourse.job.Job;
import headcourse.rules.Finding;
import headcourse.rules.Materials;
import headcourse.rules.MaterialsTakeOff;
import headcourse.rules.Mortar;
import headcourse.sheet.Amounts;
import headcourse.sheet.PageDraft;
import headcourse.sheet.PropNotes;
import headcourse.sheet.SheetComposer;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetFlow;
import headcourse.sheet.Table.Column;
import headcourse.units.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Materials and masses, what the rules found, general notes and cautions. */
public final class NotesSheet implements SheetComposer {
  /** The narrowest column, mm: letter paper on its side has two. */
  private static final double COLUMN = 112;

  private static final Lettering TEXT = Lettering.NOTE;

  /** The last sheets of a contractor's set. */
  public NotesSheet() {}

  @Override
  public Bundle bundle() {
    return Bundle.CONTRACTOR;
  }

  @Override
  public List<PageDraft> compose(SheetContext context) {
    String title = context.say("contractor.notes");
    List<PageDraft> pages = new ArrayList<>(notes(context, title));
    String findings = context.say("contractor.findings");
    pages.addAll(
        SheetFlow.pages(
            context,
            SheetContext.Turn.LANDSCAPE,
            "",
            findings,
            "",
            flow -> {
              flow.page().bookmark(1, findings, "findings", flow.page().area().minY());
              findings(flow, context);
            }));
    return pages;
  }

  private static List<PageDraft> notes(SheetContext context, String title) {
    return SheetFlow.pages(
        context,
        SheetContext.Turn.LANDSCAPE,
        title,
        COLUMN,
        flow -> {
          flow.page().bookmark(1, title, "notes", flow.page().area().minY());
          int number = 1;
          for (String key :
              List.of("load", "code", "others", "confirm", "sizes", "left", "batch")) {
            String sign = Integer.toString(number++);
            for (String text : context.words().each("contractor.note-" + key)) {
              flow.item(sign, text, TEXT);
              sign = "";
            }
          }
          own(flow, context, number);
          PropNotes.table(flow, context, TEXT);
          cautions(flow, context);
          materials(flow, context);
        });
  }

  // The job's own notes go on where the general ones end.
  private static void own(SheetFlow flow, SheetContext context, int first) {
    int number = first;
    for (String note : context.job().info().contract().notes()) {
      if (number == first) {
        flow.heading(context.say("ask.job-notes"), 12);
      }
      flow.item(Integer.toString(number++), note, TEXT);
    }
  }

  private static void cautions(SheetFlow flow, SheetContext context) {
    flow.heading(context.say("contractor.cautions"), 20);
    double two = context.job().units() == Units.INCH ? 50 * 0.45359237 : 20;
    String mass = new Amounts(context.job().units()).wholeMass(two);
    for (String key : List.of("dust", "eyes", "lift", "scaffold")) {
      String sign = "!";
      for (String text : context.words().each("contractor.caution-" + key, mass)) {
        flow.item(sign, text, TEXT);
        sign = "";
      }
    }
  }

  private static void materials(SheetFlow flow, SheetContext context) {
    Job job = context.job();
    Materials m = context.work().materials();
    Amounts a = new Amounts(job.units());
    List<List<String>> rows = new ArrayList<>();
    String name = job.stone().name().isEmpty() ? job.stone().kind() : job.stone().name();
    String thick = context.format().withUnit(job.stone().thickness());
    rows.add(List.of(context.say("contractor.m-stone", name), thick));
    add(rows, context, "density", a.density(job.stone().density()));
    add(rows, context, "area", a.area(m.stoneM2()));
    add(rows, context, "pieces", Integer.toString(m.stones()));
    rows.add(List.of(context.weighs("contractor.m-mass"), mass(context, a)));
    add(rows, context, "load", a.massPerArea(m.kgPerM2()));
    if (m.arrisM() > 0) {
      add(rows, context, "arris", a.run(m.arrisM()));
    }
    mortar(rows, context, a, m);
    for (Materials.ScrewCount c : m.screwsByLength()) {
      String length = context.format().withUnit(c.length());
      rows.add(List.of(context.say("contractor.m-screws", length), Integer.toString(c.count())));
    }
    Contract said = context.job().info().contract();
    specified(rows, context, "mortar", said.mortar());
    specified(rows, context, "screws", said.screws());
    add(rows, context, "sections", context.say("contractor.m-sections-text"));
    flow.table(
        context.weighs("contractor.materials-mass"),
        List.of(
            new Column(context.say("contractor.material"), 90, Align.START, false),
            new Column(context.say("contractor.amount"), 100, Align.START, true)),
        rows,
        TEXT);
  }

  private static void specified(
      List<List<String>> rows, SheetContext context, String what, String text) {
    String said = text.isBlank() ? context.say("ask.spec-none") : text;
    rows.add(List.of(context.say("ask.spec-" + what), said));
  }

  /** As the masses that the schedule prints add up. */
  private static String mass(SheetContext context, Amounts a) {
    List<Double> kg = new ArrayList<>();
    List<Integer> counts = new ArrayList<>();
    for (HeadWork head : context.work().heads()) {
      kg.add(MaterialsTakeOff.headKg(head));
      counts.add(head.layout().opening().count());
    }
    return a.massTogether(kg, counts);
  }

  private static void mortar(
      List<List<String>> rows, SheetContext context, Amounts a, Materials m) {
    Mortar mortar = m.mortar();
    List<String> parts =
        a.volumes(mortar.bed(), mortar.scratch(), mortar.soffit(), mortar.joints(), mortar.waste());
    double[] m3 = {mortar.bed(), mortar.scratch(), mortar.soffit(), mortar.joints(), 1};
    List<String> keys = List.of("bed", "scratch", "soffit", "joints", "waste");
    for (int i = 0; i < parts.size(); i++) {
      if (m3[i] > 0) {
        add(rows, context, "mortar-" + keys.get(i), parts.get(i));
      }
    }
    String all = context.say("contractor.bags", a.volume(m.mortarM3()), m.bags());
    add(rows, context, "mortar", all);
  }

  private static void add(
      List<List<String>> rows, SheetContext context, String key, String amount) {
    rows.add(List.of(context.say("contractor.m-" + key), amount));
  }

  private static void findings(SheetFlow flow, SheetContext context) {
    List<List<String>> rows = new ArrayList<>();
    for (Finding f : context.work().findings()) {
      rows.add(
          List.of(
              context.say("contractor.severity-" + f.severity().word()),
              where(context, f),
              f.message(),
              source(context, f),
              f.accepted() == null ? "" : f.accepted()));
    }
    if (rows.isEmpty()) {
      flow.say("contractor.no-findings", TEXT);
      return;
    }
    flow.table(
        List.of(
            new Column(context.say("contractor.f-grave"), 22, Align.START, true),
            new Column(context.say("contractor.f-where"), 22, Align.START, true),
            new Column(context.say("contractor.f-what"), 76, Align.START, false),
            new Column(context.say("contractor.f-source"), 46, Align.START, false),
            new Column(context.say("contractor.f-accepted"), 30, Align.START, false)),
        rows,
        TEXT);
  }

  private static String where(SheetContext context, Finding f) {
    if (f.stone() != null) {
      return f.stone();
    }
    return f.opening() != null ? f.opening() : context.say("contractor.f-job");
  }

  private static String source(SheetContext context, Finding f) {
    // What is common practice has no other source to name.
    return f.status() == Finding.SourceStatus.PRACTICE
        ? status(context, f)
        : f.source() + " (" + status(context, f) + ")";
  }

  private static String status(SheetContext context, Finding f) {
    return context.say("contractor.status-" + f.status().name().toLowerCase(Locale.ROOT));
  }
}
