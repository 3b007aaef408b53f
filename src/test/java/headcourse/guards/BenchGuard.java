package headcourse.guards;

import headcourse.job.Bundle;
import headcourse.testing.FinishedPdf.Part;
import headcourse.testing.FinishedPdf.Run;
import headcourse.testing.Tape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Cutting plan: what lies where on a blank. Layout board: joints and jambs, left and right. */
final class BenchGuard {
  private final Printed p;

  private BenchGuard(Printed p) {
    this.p = p;
  }

  static void hold(Printed p) {
    BenchGuard g = new BenchGuard(p);
    for (Part sheet : p.sheets(Bundle.BENCH)) {
      if (sheet.alt().equals("Cutting plan")) {
        g.plan(sheet);
      } else if (sheet.alt().startsWith("Layout board, ")) {
        g.board(sheet, sheet.alt().substring(14));
      }
    }
  }

  private void plan(Part sheet) {
    for (Json blank : p.layout.list("blanks")) {
      for (Part figure : sheet.kids()) {
        if (figure.type().equals("Figure") && figure.alt().equals(blank.text("id"))) {
          bar(figure, blank);
        }
      }
    }
  }

  private void bar(Part figure, Json blank) {
    String name = "cutting plan, " + blank.text("id");
    Rectangle2D bar = Shape.box(Shape.area(figure));
    double length =
        p.layout.list("order").stream()
            .filter(o -> o.text("stock").equals(blank.text("stock")))
            .mapToDouble(o -> o.number("lengthMm"))
            .findFirst()
            .orElse(Double.NaN);
    Run size = figure.runs().get(1);
    if (!Double.isNaN(length)) {
      p.length(name + ", length", size.text(), length);
    }
    // An off-cut is as long as what was cut from it left, on whatever side of a tick that is.
    boolean offCut = blank.has("lengthMm");
    double scale = bar.getWidth() / (offCut ? blank.number("lengthMm") : Tape.mm(size.text()));
    if (offCut) {
      double is = blank.number("lengthMm");
      p.length(name + ", length", size.text(), is);
      p.that(Tape.mm(size.text()) <= is + 0.02, name + " is said to be longer than it is");
    }
    Map<Long, List<Json>> places = new TreeMap<>();
    for (Json s : blank.list("stones")) {
      double at = low(p.stone(s.text("mark")), s);
      places.computeIfAbsent(Math.round(at * 1000), k -> new ArrayList<>()).add(s);
    }
    List<Run> below =
        figure.runs().stream()
            .filter(r -> r.y() < bar.getMinY() && r.y() > bar.getMinY() - 8)
            .filter(r -> !Tape.all(r.text(), p.inch).isEmpty() && !r.text().contains("rip "))
            .sorted(Comparator.comparingDouble(Run::x))
            .toList();
    p.same(name + ", figures", below.size(), places.size());
    long strips =
        places.values().stream().filter(s -> s.get(0).text("part").equals("soffit")).count();
    long rips =
        figure.runs().stream()
            .filter(r -> r.y() < bar.getMinY() && r.text().contains("rip "))
            .filter(
                r -> below.stream().anyMatch(f -> f.y() > r.y() && Math.abs(f.x() - r.x()) < 0.1))
            .count();
    p.same(name + ", widths to rip under their figures", rips, strips);
    int i = 0;
    for (var e : places.entrySet()) {
      if (i < below.size()) {
        String text = below.get(i++).text().replaceFirst("^.*: ", "");
        double at = e.getKey() / 1000.0;
        p.near(name + ", place " + i, Tape.all(text, p.inch).get(0), at, p.half());
      }
      for (Json s : e.getValue()) {
        double x = bar.getMinX() + s.number("atMm") * scale;
        p.that(
            figure.paths().stream()
                .skip(1)
                .filter(path -> Shape.corners(path).size() > 2)
                .anyMatch(path -> Math.abs(Shape.box(path).getMinX() - x) < 0.05),
            name + ": nothing is drawn at " + s.text("mark"));
        marked(figure, bar, blank, s.text("mark"), x, name);
      }
    }
    lie(figure, bar, blank, scale, name);
    heads(figure, bar, blank, name);
  }

  /** Where a stone's left side leaves the blank's lower edge, from the blank's left end. */
  static double low(Stone stone, Json on) {
    return end(stone, on, true);
  }

  // Of an end of its left side; turned end for end, that is its right side upside down.
  private static double end(Stone stone, Json on, boolean low) {
    double at = on.number("atMm");
    if (!stone.plain() || on.text("part").equals("soffit")) {
      return at;
    }
    double least = stone.corners().stream().mapToDouble(c -> c[0]).min().orElseThrow();
    double most = stone.corners().stream().mapToDouble(c -> c[0]).max().orElseThrow();
    if ((Boolean) on.get("turned").value()) {
      return at + most - stone.corner(low ? 2 : 1)[0];
    }
    return at + stone.corner(low ? 0 : 3)[0] - least;
  }

  // Above the bar, where the left side of a stone that leans comes out at its top.
  private void heads(Part figure, Rectangle2D bar, Json blank, String name) {
    List<Double> wanted = new ArrayList<>();
    for (Json s : blank.list("stones")) {
      Stone stone = p.stone(s.text("mark"));
      if (!stone.plain()) {
        return;
      }
      if (Math.abs(end(stone, s, false) - low(stone, s)) * 2 >= p.layout.number("gridMm") - 1e-4) {
        wanted.add(end(stone, s, false));
      }
    }
    wanted.sort(Comparator.naturalOrder());
    List<Run> above =
        figure.runs().stream()
            .filter(r -> r.y() > bar.getMaxY() && Tape.isLength(r.text(), p.inch))
            .sorted(Comparator.comparingDouble(Run::x))
            .toList();
    p.same(name + ", figures above", above.size(), wanted.size());
    for (int i = 0; i < Math.min(above.size(), wanted.size()); i++) {
      p.length(name + ", top " + (i + 1), above.get(i).text(), wanted.get(i));
    }
  }

  // Where a stone has one piece on a blank, its mark stands right of where that begins.
  private void marked(
      Part figure, Rectangle2D bar, Json blank, String mark, double x, String name) {
    List<Run> marks =
        figure.runs().stream()
            .filter(r -> r.text().equals(mark))
            .filter(r -> r.y() > bar.getMinY() && r.y() < bar.getMaxY())
            .toList();
    long pieces = blank.list("stones").stream().filter(o -> o.text("mark").equals(mark)).count();
    if (pieces == 1 && marks.size() == 1) {
      p.that(marks.get(0).middleX() > x, name + ": " + mark + " is left of its place");
    }
  }

  // A stone that is turned has its top below; a face's longer side says which way it lies.
  private void lie(Part figure, Rectangle2D bar, Json blank, double scale, String name) {
    for (Json s : blank.list("stones")) {
      Stone stone = p.stone(s.text("mark"));
      if (!stone.plain() || s.text("part").equals("soffit") || s.number("upMm") > 0) {
        continue;
      }
      double x = bar.getMinX() + s.number("atMm") * scale;
      boolean turned = (Boolean) s.get("turned").value();
      double low = stone.json().number(turned ? "topMm" : "bottomMm") * scale;
      for (Path2D path : figure.paths().subList(1, figure.paths().size())) {
        List<double[]> c = Shape.corners(path);
        if (c.size() == 4 && Math.abs(Shape.box(path).getMinX() - x) < 0.05) {
          double foot = c.stream().mapToDouble(v -> v[1]).min().orElseThrow();
          List<double[]> on = c.stream().filter(v -> Math.abs(v[1] - foot) < 0.05).toList();
          p.near(
              name + ", foot of " + stone.mark(),
              on.stream().mapToDouble(v -> v[0]).max().orElseThrow()
                  - on.stream().mapToDouble(v -> v[0]).min().orElseThrow(),
              low,
              0.1);
        }
      }
    }
  }

  private void board(Part sheet, String mark) {
    Json opening = p.opening(mark);
    String name = "layout board " + mark;
    double top = opening.get("head").number("heightMm");
    for (Part part : sheet.kids()) {
      if (part.type().equals("Table")) {
        String[] before = {"", ""};
        for (List<String> row : part.rows()) {
          int half = (row.size() - 1) / 2;
          p.same(name + ", white between left and right", "", row.get(half));
          for (int side = 0; side < 2; side++) {
            int at = side * (half + 1);
            List<String> cells = new ArrayList<>(row.subList(at, at + half));
            if (half == 3) {
              // A dry joint is said once: each stone begins where the one before it ends.
              cells.add(1, before[side]);
            }
            before[side] = cells.get(2);
            row(name, opening, cells, side == 0, top);
          }
        }
      }
    }
    running(sheet, name, mark);
  }

  private void row(String name, Json opening, List<String> cells, boolean left, double top) {
    String what = cells.get(0);
    if (what.equals("jamb")) {
      p.length(
          name + (left ? ", left jamb" : ", right jamb"),
          cells.get(2),
          opening.number(left ? "jambLeftMm" : "jambRightMm"));
      return;
    }
    if (what.equals("on the wall")) {
      String side = left ? "Left" : "Right";
      if (!cells.get(2).isEmpty()) {
        double bearing = opening.number("bearing" + side + "Mm");
        p.length(name + ", bearing " + side, cells.get(2), bearing, 2 * p.half());
      }
      return;
    }
    if (what.isEmpty() || what.equals("left") || what.equals("right")) {
      return;
    }
    Stone s = p.stone(opening.text("mark") + "-" + what);
    if (!s.plain()) {
      return;
    }
    if (!s.side().equals("centre")) {
      p.same(name + ", side of " + what, left, s.side().equals("left"));
      p.length(name + ", " + what + " from", cells.get(1), Math.abs(s.foot(!left, 0)));
    }
    p.length(name + ", " + what + " to", cells.get(2), Math.abs(s.foot(left, 0)));
    p.length(name + ", " + what + " on top", cells.get(3), Math.abs(s.foot(left, top)));
  }

  // Along each length of the strip from the left: every stone's outer edge, the key's both.
  private void running(Part sheet, String name, String mark) {
    List<Stone> stones = p.stones(mark);
    if (!stones.stream().allMatch(Stone::plain)) {
      return;
    }
    List<Double> wanted = new ArrayList<>();
    for (Stone s : stones) {
      if (!s.side().equals("right")) {
        wanted.add(s.foot(true, 0));
      }
      if (!s.side().equals("left")) {
        wanted.add(s.foot(false, 0));
      }
    }
    List<Double> marks =
        wanted.stream().sorted().map(Math::abs).collect(Collectors.toCollection(ArrayList::new));
    List<Run> runs =
        sheet.texts().stream()
            .filter(r -> Math.abs(r.degrees() - 90) < 1 && Tape.isLength(r.text(), p.inch))
            .sorted(
                Comparator.comparingLong((Run r) -> -Math.round(r.y() + r.width()))
                    .thenComparingDouble(Run::x))
            .toList();
    if (runs.size() == marks.size()) {
      for (int i = 0; i < marks.size(); i++) {
        p.length(name + ", mark " + (i + 1) + " from the left", runs.get(i).text(), marks.get(i));
      }
    }
  }
}
