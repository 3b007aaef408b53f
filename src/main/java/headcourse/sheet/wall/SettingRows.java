package headcourse.sheet.wall;

import headcourse.bench.HeadWork;
import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.job.Job;
import headcourse.layout.JointLine;
import headcourse.layout.PlacedStone;
import headcourse.layout.Role;
import headcourse.layout.Side;
import headcourse.sheet.Amounts;
import headcourse.sheet.SheetContext;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import headcourse.units.Units;
import java.util.ArrayList;
import java.util.List;

/** The rows of the setting table, one a stone in the order in which they go up. */
final class SettingRows {
  private final SheetContext context;
  private final HeadWork head;
  private final LengthFormat format;
  private final Bed bed;

  SettingRows(SheetContext context, HeadWork head) {
    this.context = context;
    this.head = head;
    this.format = context.format();
    this.bed = Bed.of(context.job(), head.layout().opening());
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
      if (!bed.level()) {
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

  private String screws(Piece p) {
    List<String> all = new ArrayList<>();
    for (Notch n : p.notches()) {
      String edge = context.say("wall.edge-" + n.edge().word());
      if (!n.reachable()) {
        all.add(context.say("wall.not-reachable", edge));
      } else if (n.screw() == null) {
        all.add(context.say("wall.no-screw", edge));
      } else {
        String length = format.withUnit(n.screw());
        all.add(context.say("wall.screw-at", edge, length, format.withUnit(n.height())));
      }
    }
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
    if (p.returnDepth().isZero()) {
      return "";
    }
    var box = p.stone().outline().bounds();
    Length left = bed.printed(box.minX(), format.grid());
    Length right = bed.printed(box.maxX(), format.grid());
    return left.equals(right)
        ? format.withUnit(left)
        : context.say("wall.wedge", format.tape(left), format.tape(right));
  }

  private String checks(Piece p, boolean third) {
    List<String> all = new ArrayList<>();
    PlacedStone s = p.stone();
    if (s.role() == Role.KEY) {
      all.add(context.say("wall.check-key", edge(s)));
    }
    if (s.role() == Role.END) {
      Length bears =
          s.side() == Side.LEFT ? head.layout().bearingLeft() : head.layout().bearingRight();
      all.add(context.say("wall.check-end", format.withUnit(bears)));
    }
    if (p.liftingKg() >= twoPeople(context.job())) {
      String mass = new Amounts(context.job().units()).mass(p.liftingKg());
      all.add(context.say("wall.two-people", mass));
    }
    if (third) {
      all.add(context.say("wall.check-line"));
    }
    return String.join("\n", all);
  }
}
