package headcourse.sheet.wall;

import static java.util.stream.Collectors.joining;

import headcourse.bench.Anchor;
import headcourse.bench.BedUnder;
import headcourse.bench.EdgeName;
import headcourse.bench.HeadWork;
import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.bench.SoffitBed;
import headcourse.bench.SoffitNotch;
import headcourse.bench.SoffitPiece;
import headcourse.job.Job;
import headcourse.layout.JointLine;
import headcourse.layout.PlacedStone;
import headcourse.layout.Role;
import headcourse.layout.Side;
import headcourse.sheet.Amounts;
import headcourse.sheet.Holds;
import headcourse.sheet.SheetContext;
import headcourse.sheet.elevation.HeadFigures;
import headcourse.text.Words;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import headcourse.units.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

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
    HeadFigures figures = new HeadFigures(head, format);
    List<String> marks = new ArrayList<>();
    List<String> rises = new ArrayList<>();
    for (JointLine j : head.layout().joints()) {
      if (j.inner().equals(stone.mark())) {
        marks.add(figures.curved() ? figures.aroundForm(j) : format.tape(j.soffitMark()));
        rises.add(format.withUnit(figures.rise(j)));
      }
    }
    String stands = marks.stream().distinct().collect(joining(" | "));
    return figures.cambered() && !rises.isEmpty()
        ? stands + "\n↑ " + rises.stream().distinct().collect(joining(" | "))
        : stands;
  }

  /** Slots of an edge that are alike but for their heights. */
  private record Slots(
      EdgeName edge, boolean reachable, Length screw, Anchor anchor, List<Length> heights) {
    boolean alike(Slots o) {
      return reachable == o.reachable
          && Objects.equals(screw, o.screw)
          && (screw != null || anchor.hold() == o.anchor.hold())
          && (screw == null || !reachable || heights.equals(o.heights));
    }
  }

  // Slots of an edge that take the same screw share a line, and so do edges whose slots are alike.
  private String screws(Piece p) {
    List<Slots> slots = new ArrayList<>();
    for (Notch n : p.notches()) {
      Slots there =
          slots.stream()
              .filter(s -> s.edge == n.edge() && s.reachable == n.reachable())
              .filter(s -> Objects.equals(s.screw, n.screw()))
              .filter(s -> s.screw != null || s.anchor.hold() == n.anchor().hold())
              .findFirst()
              .orElse(null);
      if (there == null) {
        there = new Slots(n.edge(), n.reachable(), n.screw(), n.anchor(), new ArrayList<>());
        slots.add(there);
      }
      there.heights.add(n.height());
    }
    List<List<Slots>> lines = new ArrayList<>();
    for (Slots s : slots) {
      lines.stream()
          .filter(l -> l.get(0).alike(s))
          .findFirst()
          .orElseGet(
              () -> {
                lines.add(new ArrayList<>());
                return lines.get(lines.size() - 1);
              })
          .add(s);
    }
    return lines.isEmpty()
        ? context.say("wall.no-notch")
        : lines.stream().map(l -> context.say(w -> screws(w, l))).collect(joining("\n"));
  }

  private String screws(Words words, List<Slots> line) {
    String edges =
        line.stream().map(s -> words.say("wall.edge-" + s.edge.word())).collect(joining(" + "));
    Slots s = line.get(0);
    if (!s.reachable || s.screw == null) {
      return edges
          + ": "
          + (s.reachable ? Holds.none(words, s.anchor) : words.say("wall.not-reachable"));
    }
    String heights = s.heights.stream().map(format::tape).collect(joining(" · "));
    return edges + ": " + words.say("wall.screw-at", format.tape(s.screw), heights);
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

  // An end that springs from the jamb line lies on the wall above it alone.
  private String checkEnd(Side side) {
    HeadFigures figures = new HeadFigures(head, format);
    String on = context.say("wall.check-end", format.withUnit(figures.bearing(side)));
    if (!head.layout().fanned()) {
      return on;
    }
    String top = context.say("wall.check-end-top", format.withUnit(figures.bearingOnTop(side)));
    return figures.bearing(side).isPositive() ? on + "\n" + top : top;
  }

  // Its soffit piece's own screws, and the prop.
  private List<String> soffit(Piece p) {
    List<String> all = new ArrayList<>();
    for (SoffitPiece s : p.soffitPieces()) {
      for (SoffitNotch n : s.notches()) {
        Length screw = n.anchor().screw();
        if (screw != null) {
          all.add(context.say("wall.soffit-screw-" + n.edge().word(), format.tape(screw)));
        }
      }
      if (!s.held()) {
        all.add(context.say("wall.soffit-loose"));
      }
    }
    return all.stream().distinct().toList();
  }

  private String checks(Piece p, boolean third) {
    List<String> all = new ArrayList<>();
    PlacedStone s = p.stone();
    if (s.role() == Role.KEY) {
      all.add(context.say("wall.check-key", edge(s)));
    }
    if (s.role() == Role.END) {
      all.add(checkEnd(s.side()));
    }
    all.addAll(soffit(p));
    if (p.hangingKg() >= twoPeople(context.job())) {
      String mass = new Amounts(context.job().units()).mass(p.hangingKg());
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
