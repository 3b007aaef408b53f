package headcourse.sheet.contractor;

import headcourse.bench.HeadWork;
import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.rules.AnchorLoads;
import headcourse.sheet.Holds;
import headcourse.sheet.Marks;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetFlow;
import headcourse.sheet.Table.Column;
import headcourse.units.Length;
import headcourse.units.Limit;
import headcourse.units.Units;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What every screw has to hold and what it might, for the engineer; never a promise. */
final class AnchorTable {
  private final SheetContext context;
  private final Units units;

  private AnchorTable(SheetContext context) {
    this.context = context;
    this.units = context.job().units();
  }

  /** The table under its heading, with what is said of it; nothing where no stone has a slot. */
  static void put(SheetFlow flow, SheetContext context) {
    List<List<String>> rows = new AnchorTable(context).rows();
    if (rows.isEmpty()) {
      return;
    }
    flow.heading(context.say("contractor.anchors"), 44);
    flow.say("contractor.anchors-text", Lettering.NOTE);
    List<Column> columns = new ArrayList<>();
    int[] shares = {36, 22, 46, 20, 26, 40};
    String[] keys = {"stones", "weight", "holds", "thread", "withdrawal", "bending"};
    for (int i = 0; i < keys.length; i++) {
      String name = context.say("contractor.anchors-" + keys[i]);
      columns.add(new Column(name, shares[i], Align.START, i == 0));
    }
    flow.table(columns, rows, Lettering.NOTE);
    flow.say("contractor.anchors-source", Lettering.NOTE);
  }

  // Screws of which the same is said share a row.
  private List<List<String>> rows() {
    Map<List<String>, List<Piece>> found = new LinkedHashMap<>();
    for (HeadWork head : context.work().heads()) {
      for (Piece p : head.pieces()) {
        for (Notch n : p.notches()) {
          List<Piece> there = found.computeIfAbsent(row(p, n), k -> new ArrayList<>());
          if (there.isEmpty() || there.get(there.size() - 1) != p) {
            there.add(p);
          }
        }
      }
    }
    List<List<String>> rows = new ArrayList<>();
    found.forEach(
        (row, pieces) -> {
          List<String> all = new ArrayList<>(List.of(Marks.of(pieces, true)));
          all.addAll(row);
          rows.add(all);
        });
    return rows;
  }

  private List<String> row(Piece p, Notch n) {
    if (n.screw() == null) {
      String none = context.say(w -> Holds.none(w, n.anchor()));
      return List.of(weight(p, 0), none, "", "", "");
    }
    AnchorLoads loads = AnchorLoads.of(context.job(), p, n);
    String screw =
        context.say(
            w -> Holds.screw(context, w, n.anchor()) + ": " + Holds.hold(context, w, n.anchor()));
    boolean wood = !Double.isNaN(loads.withdrawalN());
    String maker = context.say("contractor.anchors-maker");
    return List.of(
        weight(p, loads.screws()),
        screw,
        wood ? Limit.MOST.withUnit(context.format(), Length.mm(loads.threadMm())) : "",
        wood ? AnchorLoads.force(units, Limit.MOST, loads.withdrawalN()) : maker,
        bending(loads, maker));
  }

  private String weight(Piece p, int screws) {
    double newtons = p.mass().liftingKg() * AnchorLoads.GRAVITY;
    String weight = AnchorLoads.force(units, Limit.LEAST, newtons);
    return screws == 0 ? weight : context.say("contractor.anchors-on", weight, screws);
  }

  private String bending(AnchorLoads loads, String maker) {
    String moment = AnchorLoads.moment(units, Limit.LEAST, loads.momentNmm());
    String most =
        Double.isNaN(loads.yieldNmm())
            ? maker
            : AnchorLoads.moment(units, Limit.MOST, loads.yieldNmm());
    String lever = Limit.LEAST.withUnit(context.format(), Length.mm(loads.leverMm()));
    return context.say("contractor.anchors-moment", moment, lever, most);
  }
}
