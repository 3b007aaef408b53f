package headcourse.guards;

import headcourse.job.Bundle;
import headcourse.job.Measured;
import headcourse.job.Opening;
import headcourse.testing.FinishedPdf.Part;
import headcourse.testing.FinishedPdf.Run;
import headcourse.testing.Tape;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/** Wall elevations and setting sheets: numbers, sides, screws, covers, beds. */
final class WallGuard {
  private final Printed p;

  private WallGuard(Printed p) {
    this.p = p;
  }

  static void hold(Printed p) {
    WallGuard g = new WallGuard(p);
    for (Json o : p.openings()) {
      g.elevation(o);
      g.setting(o);
    }
  }

  private void elevation(Json opening) {
    String mark = opening.text("mark");
    List<Stone> stones = p.stones(mark);
    String name = "wall elevation " + mark;
    Map<Boolean, TreeSet<Long>> low = new TreeMap<>();
    Map<Boolean, TreeSet<Long>> high = new TreeMap<>();
    List.of(true, false)
        .forEach(
            left -> {
              low.put(left, new TreeSet<>());
              high.put(left, new TreeSet<>());
            });
    TreeSet<String> seen = new TreeSet<>();
    for (Part sheet : p.sheets(Bundle.WALL)) {
      List<Run> heading = sheet.kids().get(0).texts();
      if (!sheet.alt().startsWith("Elevation ") || !heading.get(0).text().equals(mark)) {
        continue;
      }
      Part figure =
          sheet.kids().stream().filter(k -> k.type().equals("Figure")).findFirst().orElseThrow();
      List<Run> runs = figure.texts();
      double centre =
          runs.stream()
              .filter(r -> r.text().equals("0"))
              .mapToDouble(Run::middleX)
              .findFirst()
              .orElse(
                  runs.stream()
                      .filter(r -> r.text().equals("CENTRE LINE"))
                      .mapToDouble(Run::middleX)
                      .findFirst()
                      .orElse(Double.NaN));
      for (Stone s : stones) {
        order(name, runs, s, seen);
      }
      double middle =
          figure.runs().stream()
              .filter(r -> stones.stream().anyMatch(s -> s.own().equals(r.text())))
              .mapToDouble(Run::y)
              .average()
              .orElseThrow();
      for (Run r : runs) {
        if (Tape.isLength(r.text(), p.inch) && Math.abs(r.degrees() - 90) < 1) {
          boolean left = r.x() - 1.5 < centre;
          (r.y() + r.width() / 2 < middle ? low : high)
              .get(left)
              .add(Math.round(Tape.mm(r.text()) / p.layout.number("gridMm")));
        }
      }
      bearings(name, opening, runs, centre);
    }
    for (Stone s : stones) {
      p.that(seen.contains(s.own()), name + ": no number at " + s.own());
    }
    if (stones.stream().allMatch(Stone::plain)) {
      double top = opening.get("head").number("heightMm");
      for (boolean left : new boolean[] {true, false}) {
        TreeSet<Long> feet = feet(stones, left, 0);
        p.same(
            name + ", marks along the soffit, " + (left ? "left" : "right"), low.get(left), feet);
        TreeSet<Long> over = high.get(left);
        p.that(
            feet(stones, left, top).containsAll(over),
            name + ", marks along the top, " + (left ? "left" : "right") + ": " + over);
      }
    }
  }

  // Nearest under a stone's mark, or beside it, stands its number in the setting order.
  private void order(String name, List<Run> runs, Stone s, TreeSet<String> seen) {
    for (Run r : runs) {
      if (r.text().equals(s.own())) {
        // On the stone's own line it comes next; else it stands under the mark.
        boolean along = Math.abs(r.degrees()) > 0.01 && Math.abs(r.degrees() - 90) > 0.01;
        double turn = Math.toRadians(r.degrees());
        double ahead = along ? r.width() + 1.5 : 0;
        Run number =
            runs.stream()
                .filter(n -> n.text().matches("\\d{1,3}") && (along || n.y() < r.y() + 1))
                .min(
                    Comparator.comparingDouble(
                        n ->
                            along
                                ? Math.hypot(
                                    n.x() - r.x() - ahead * Math.cos(turn),
                                    n.y() - r.y() - ahead * Math.sin(turn))
                                : Math.hypot(n.middleX() - r.middleX(), n.y() + 4 - r.y())))
                .orElseThrow();
        p.same(name + ", number of " + s.own(), number.text(), "" + s.json().whole("setOrder"));
        seen.add(s.own());
      }
    }
  }

  private TreeSet<Long> feet(List<Stone> stones, boolean left, double level) {
    TreeSet<Long> all = new TreeSet<>();
    for (Stone s : stones) {
      if (s.side().equals("centre") || s.side().equals("left") == left) {
        long tick = Math.round(Math.abs(s.foot(left, level)) / p.layout.number("gridMm"));
        if (tick != 0) {
          all.add(tick);
        }
      }
    }
    return all;
  }

  private void bearings(String name, Json opening, List<Run> runs, double centre) {
    if (p.curved(opening)) {
      return;
    }
    for (boolean left : new boolean[] {true, false}) {
      double bearing = opening.number(left ? "bearingLeftMm" : "bearingRightMm");
      List<Run> words = runs.stream().filter(r -> r.text().equals("on the wall")).toList();
      // A figure stands over its word, or outside of it.
      for (Run word : words) {
        if (word.middleX() < centre == left && bearing > 0.02) {
          runs.stream()
              .filter(r -> Tape.isLength(r.text(), p.inch) && Math.abs(r.degrees()) < 1)
              .filter(r -> r.text().contains(p.inch ? "\"" : " mm") && !r.text().contains("'"))
              .min(
                  Comparator.comparingDouble(
                      r -> Math.hypot(r.middleX() - word.middleX(), r.y() - word.y())))
              .ifPresent(
                  r ->
                      p.length(
                          name + (left ? ", left" : ", right") + " bearing", r.text(), bearing));
        }
      }
    }
  }

  private void setting(Json opening) {
    String mark = opening.text("mark");
    String name = "setting sheet " + mark;
    int rows = 0;
    for (Part sheet : p.sheets(Bundle.WALL)) {
      if (!sheet.alt().equals("Setting sheet")
          || !sheet.kids().get(0).texts().get(0).text().equals(mark)) {
        continue;
      }
      for (Part table : sheet.kids()) {
        if (!table.type().equals("Table")) {
          continue;
        }
        List<List<String>> all = table.rows();
        if (all.get(0).get(0).equals("No.")) {
          for (List<String> row : all.subList(1, all.size())) {
            rows++;
            row(name, opening, all.get(0), row);
          }
        }
      }
      jambs(name, opening, sheet);
    }
    p.same(name + ", rows", rows, p.stones(mark).size());
  }

  private void jambs(String name, Json opening, Part sheet) {
    var m =
        java.util.regex.Pattern.compile("The jambs stand (.*?) left and (.*?) right of")
            .matcher(sheet.text());
    if (m.find()) {
      p.length(name + ", left jamb", m.group(1), opening.number("jambLeftMm"));
      p.length(name + ", right jamb", m.group(2), opening.number("jambRightMm"));
    }
  }

  private void row(String name, Json opening, List<String> head, List<String> row) {
    Stone s = p.stone(opening.text("mark") + "-" + row.get(1));
    String what = name + ", " + s.own();
    p.same(what + ", order", row.get(0), "" + s.json().whole("setOrder"));
    boolean left = s.side().equals("left");
    if (s.plain() && !row.get(2).isEmpty()) {
      String[] edges = row.get(2).split(" \\| ");
      p.length(what + ", outer edge", edges[0], Math.abs(s.foot(left, 0)));
    }
    rise(what, s, row.get(2));
    screws(what, s, row.get(3));
    covers(what, opening, s, row.get(4));
    boolean end = s.json().text("role").equals("end");
    if (end && !p.curved(opening)) {
      double bearing = opening.number(left ? "bearingLeftMm" : "bearingRightMm");
      if (bearing > 0) {
        String check = row.get(row.size() - 1);
        p.that(check.contains("on the wall "), what + " does not say what it bears");
        p.near(
            what + ", bearing",
            Tape.all(check.replaceFirst("^.*?on the wall ", ""), p.inch).get(0),
            bearing,
            p.half());
      }
    }
    int third = Integer.parseInt(row.get(0));
    if (third % 3 == 0) {
      p.that(
          row.get(row.size() - 1).matches(".*(level to the line|soffit to the form).*"),
          what + ": no check");
    }
    if (head.size() == 7) {
      bed(what, opening, s, row.get(5));
    }
  }

  // A cambered soffit: so far out, so far up, there is a corner of the stone.
  private void rise(String what, Stone s, String cell) {
    String[] parts = cell.split(" ↑ ");
    if (parts.length < 2) {
      return;
    }
    double out = Tape.all(parts[0], p.inch).get(0);
    double up = Tape.all(parts[1], p.inch).get(0);
    double slack = p.half() + 0.05 + p.job.setting().joint().mm();
    p.that(
        s.corners().stream()
            .anyMatch(
                c ->
                    Math.abs(Math.abs(c[0]) - out) < slack && Math.abs(c[1] - up) < p.half() + 0.3),
        what + ": no corner " + cell);
  }

  private void screws(String what, Stone s, String cell) {
    for (Json n : s.json().list("notches")) {
      if (!n.has("screwMm")) {
        continue;
      }
      String edge = n.text("edge");
      for (String line :
          cell.split("(?<=\\S) (?=(?:left|right|inner|outer|top)(?: \\+ \\w+)*: )")) {
        int colon = line.indexOf(": ");
        if (colon > 0
            && List.of(line.substring(0, colon).split(" \\+ ")).contains(edge)
            && line.contains(", ")) {
          String[] parts = line.substring(colon + 2).split(", ");
          p.length(what + ", screw", parts[0], n.number("screwMm"));
          p.that(
              Tape.all(parts[1], p.inch).stream()
                  .anyMatch(h -> Math.abs(h - n.number("heightMm")) < p.half()),
              what + ", height of the screw: " + parts[1] + " for " + n.number("heightMm"));
        }
      }
    }
  }

  // The stone that stands next outwards hides the slot of this one; at an end, the wall.
  private void covers(String what, Json opening, Stone s, String cell) {
    if (p.job.setting().joint().isPositive() || s.json().list("notches").isEmpty()) {
      return;
    }
    TreeSet<String> wanted = new TreeSet<>();
    for (Json n : s.json().list("notches")) {
      Boolean left = s.left(n.text("edge"));
      if (left == null || n.text("edge").equals("inner")) {
        return;
      }
      String next = (left ? "L" : "R") + (s.json().whole("index") + 1);
      boolean there = p.stones(opening.text("mark")).stream().anyMatch(o -> o.own().equals(next));
      wanted.add(there ? next : "wall stone");
    }
    TreeSet<String> said = new TreeSet<>();
    for (String word : cell.split(" (?!stone)")) {
      said.add(word);
    }
    p.same(what + ", covered by", said, wanted);
  }

  // The bed is as much thicker at one end as the rough head is higher there.
  private void bed(String what, Json opening, Stone s, String cell) {
    Opening o =
        p.job.openings().stream()
            .filter(x -> x.mark().equals(opening.text("mark")))
            .findFirst()
            .orElseThrow();
    List<Double> said = Tape.all(cell, p.inch);
    if (o.measured() == null || said.isEmpty() || !s.plain()) {
      return;
    }
    double left = said.get(0);
    double right = said.get(said.size() - 1);
    boolean relieved = s.json().number("reliefMm") > 0;
    double l =
        relieved && s.side().equals("left")
            ? s.foot(true, 0) + s.json().number("reliefMm")
            : s.foot(true, 0);
    double r =
        relieved && s.side().equals("right")
            ? s.foot(false, 0) - s.json().number("reliefMm")
            : s.foot(false, 0);
    p.near(
        what + ", bed left less right",
        left - right,
        rough(o.measured(), l) - rough(o.measured(), r),
        2.1 * p.half());
  }

  private static double rough(Measured m, double x) {
    List<Measured.Level> levels = new ArrayList<>(m.soffit());
    levels.sort(Comparator.comparing(Measured.Level::at));
    Measured.Level before = levels.get(0);
    for (Measured.Level l : levels) {
      if (x <= l.at().mm()) {
        double span = l.at().mm() - before.at().mm();
        double t = span == 0 ? 0 : (x - before.at().mm()) / span;
        return before.up().mm() + Math.max(0, t) * (l.up().mm() - before.up().mm());
      }
      before = l;
    }
    return before.up().mm();
  }
}
