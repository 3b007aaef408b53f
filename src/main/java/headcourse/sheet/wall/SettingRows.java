package headcourse.sheet.wall;

import headcourse.bench.BedUnder;
import headcourse.bench.HeadWork;
import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.bench.SoffitBed;
import headcourse.job.Job;
import headcourse.layout.HeadLayout;
import headcourse.layout.JointLine;
import headcourse.layout.PlacedStone;
import headcourse.layout.Role;
import headcourse.layout.Side;
import headcourse.sheet.Amounts;
import headcourse.sheet.SheetContext;
import headcourse.sheet.elevation.HeadFigures;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import headcourse.units.Units;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The rows of the setting table, one a stone in the order in which they go up. */
final class SettingRows {
  private final SheetContext context;
  private final HeadWork head;
  private final LengthFormat format;
  private final SoffitBed bed;

  SettingRows(SheetContext context, HeadWork head) {
    this.context = context;
    this.head = head;
    this.format = context.format();
    this.bed = head.bed();
  }

  /** From this mass on a stone takes two people, kg; common practice, no source. */
  static double twoPeople(Job job) {
    return job.units() == Units.INCH ? 50 * 0.45359237 : 20;
  }

  List<List<String>> all() {
    List<List<String>> rows = new ArrayList<>();
    List<Piece> order = head.inSettingOrder();
    for (int i = 0; i < order.size(); i++) {
      Piece p = order.get(i);
      boolean third = (i + 1) % 3 == 0 || i + 1 == order.size();
      List<String> row = new ArrayList<>();
      row.add(Integer.toString(p.setOrder()));
      row.add(p.stone().mark());
      row.add(edge(p.stone()));
      row.add(screws(p));
      row.add(covers(p));
      if (bed.outOfLevel()) {
        row.add(bed(p));
      }
      row.add(checks(p, third));
      rows.add(row);
    }
    return rows;
  }

  private String edge(PlacedStone stone) {
    List<String> marks = new ArrayList<>();
    for (JointLine j : head.layout().joints()) {
      if (j.inner().equals(stone.mark())) {
        marks.add(format.tape(j.soffitMark()));
      }
    }
    return marks.stream().distinct().reduce((a, b) -> a + " | " + b).orElse("");
  }

  // Edges that take the same screw at the same height share a line.
  private String screws(Piece p) {
    Map<String, List<String>> edges = new LinkedHashMap<>();
    for (Notch n : p.notches()) {
      String edge = context.say("wall.edge-" + n.edge().word());
      String rest =
          !n.reachable()
              ? context.say("wall.not-reachable")
              : n.screw() == null
                  ? context.say("wall.no-screw")
                  : context.say("wall.screw-at", format.tape(n.screw()), format.tape(n.height()));
      edges.computeIfAbsent(rest, r -> new ArrayList<>()).add(edge);
    }
    List<String> all = new ArrayList<>();
    edges.forEach((rest, names) -> all.add(String.join(" + ", names) + ": " + rest));
    return all.isEmpty() ? context.say("wall.no-notch") : String.join("\n", all);
  }

  private String covers(Piece p) {
    List<String> all = new ArrayList<>();
    for (Notch n : p.notches()) {
      if (n.hiddenBy() == null || n.hiddenBy().isEmpty()) {
        continue;
      }
      switch (n.hiddenBy()) {
        case "joint" -> all.add(context.say("wall.covered-by-joint"));
        case "wall" -> all.add(context.say("wall.covered-by-wall"));
        default -> all.add(context.say("wall.covered-by-stone", n.hiddenBy()));
      }
    }
    return String.join("\n", all.stream().distinct().toList());
  }

  private String bed(Piece p) {
    return bed.of(p.stone().mark()).map(this::bed).orElse("");
  }

  private String bed(BedUnder b) {
    String left = format.tape(b.left());
    String right = format.tape(b.right());
    return left.equals(right) ? format.withUnit(b.left()) : context.say("wall.wedge", left, right);
  }

  private Length bearing(Side side) {
    HeadLayout layout = head.layout();
    if (new HeadFigures(head, format).curved()) {
      return side == Side.LEFT ? layout.bearingTopLeft() : layout.bearingTopRight();
    }
    return side == Side.LEFT ? layout.bearingLeft() : layout.bearingRight();
  }

  private String checks(Piece p, boolean third) {
    List<String> all = new ArrayList<>();
    PlacedStone s = p.stone();
    if (s.role() == Role.KEY) {
      all.add(context.say("wall.check-key", edge(s)));
    }
    if (s.role() == Role.END) {
      all.add(context.say("wall.check-end", format.withUnit(bearing(s.side()))));
    }
    if (p.liftingKg() >= twoPeople(context.job())) {
      String mass = new Amounts(context.job().units()).mass(p.liftingKg());
      all.add(context.say("wall.two-people", mass));
    }
    if (third) {
      all.add(
          context.say(
              new HeadFigures(head, format).curved() ? "wall.check-form" : "wall.check-line"));
    }
    return String.join("\n", all);
  }
}
