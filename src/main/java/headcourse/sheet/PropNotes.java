package headcourse.sheet;

import headcourse.bench.HeadWork;
import headcourse.bench.PropFinder;
import headcourse.bench.PropPlan;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.job.Props;
import headcourse.sheet.Table.Column;
import headcourse.units.Decimals;
import headcourse.units.LengthFormat;
import headcourse.units.Limit;
import headcourse.units.Units;
import java.util.ArrayList;
import java.util.List;

/** What carries the heads while the mortar is green, for the mason and for the contractor. */
public final class PropNotes {
  private PropNotes() {}

  /** What a head is propped with, then how long. */
  public static void write(SheetFlow flow, SheetContext context, HeadWork head, Lettering text) {
    flow.heading(context.say("props.heading"), 24);
    flow.say("props.what", text);
    PropFinder.find(context.job(), head).ifPresent(p -> head(flow, context, p, text));
    ending(flow, context, text);
  }

  private static void head(SheetFlow flow, SheetContext context, PropPlan plan, Lettering text) {
    Amounts a = new Amounts(context.job().units());
    LengthFormat f = context.format();
    Props props = context.job().props();
    flow.say(
        "props.load",
        text,
        a.massInTenths(plan.massKg()),
        f.withUnit(plan.over()),
        number(props.push()),
        a.massPerLength(plan.loadKgPerM()));
    if (plan.curved()) {
      flow.say(
          "props.centring",
          text,
          f.withUnit(props.lagging()),
          Integer.toString(plan.posts()),
          a.massAtMost(plan.postKg()));
    } else {
      flow.say(
          "props.plank",
          text,
          f.withUnit(props.thickness()),
          f.withUnit(props.width()),
          Integer.toString(plan.posts()),
          f.withUnit(plan.spacing()),
          Limit.LEAST.withUnit(fine(context), props.sag()),
          a.massAtMost(plan.postKg()));
    }
    if (plan.keyDrop().isPositive()) {
      flow.say(
          plan.curved() ? "props.key-lagging" : "props.key-step", text, f.withUnit(plan.keyDrop()));
    }
  }

  private static void ending(SheetFlow flow, SheetContext context, Lettering text) {
    flow.say("props.days", text);
    boolean inch = context.job().units() == Units.INCH;
    flow.say(inch ? "props.cold" : "props.cold-metric", text);
    double stiffness = context.job().props().stiffness();
    String e =
        inch
            ? grouped(Math.round(stiffness / Props.LB_PER_IN2)) + " lb/in²"
            : grouped(Math.round(stiffness)) + " N/mm²";
    flow.say("props.by", text, e);
  }

  /** One row for each opening, then how long. */
  public static void table(SheetFlow flow, SheetContext context, Lettering text) {
    Amounts a = new Amounts(context.job().units());
    Props props = context.job().props();
    LengthFormat f = context.format();
    List<List<String>> rows = new ArrayList<>();
    for (HeadWork head : context.work().heads()) {
      PropFinder.find(context.job(), head)
          .ifPresent(
              p ->
                  rows.add(
                      List.of(
                          head.layout().opening().mark(),
                          p.curved()
                              ? context.say("props.t-centring", f.withUnit(props.lagging()))
                              : context.say(
                                  "props.t-plank",
                                  f.withUnit(props.thickness()),
                                  f.withUnit(props.width())),
                          a.massPerLength(p.loadKgPerM()),
                          Integer.toString(p.posts()),
                          p.curved() ? "" : f.withUnit(p.spacing()),
                          a.massAtMost(p.postKg()))));
    }
    if (rows.isEmpty()) {
      return;
    }
    flow.table(
        context.say("props.heading"),
        List.of(
            new Column(context.say("props.t-mark"), 17, Align.START, true),
            new Column(context.say("props.t-what"), 60, Align.START, false),
            new Column(context.say("props.t-load"), 30, Align.END, false),
            new Column(context.say("props.t-posts"), 20, Align.END, true),
            new Column(context.say("props.t-spacing"), 30, Align.END, true),
            new Column(context.say("props.t-post"), 33, Align.END, false)),
        rows,
        text);
    ending(flow, context, text);
  }

  // A sag is finer than the grid; a quarter of its step still reads as a fraction.
  private static LengthFormat fine(SheetContext context) {
    LengthFormat f = context.format();
    return new LengthFormat(
        f.units(),
        new headcourse.units.Grid(new headcourse.units.Length(f.grid().tick().picometres() / 4)));
  }

  private static String grouped(long n) {
    return n < 1000
        ? Long.toString(n)
        : grouped(n / 1000) + " " + Long.toString(1000 + n % 1000).substring(1);
  }

  private static String number(double n) {
    return n == Math.rint(n) ? Decimals.fixed(n, 0) : Decimals.fixed(n, 1);
  }
}
