package headcourse.guards;

import headcourse.job.Bundle;
import headcourse.testing.FinishedPdf.Part;
import headcourse.testing.FinishedPdf.Run;
import headcourse.testing.Tape;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Arches: what stands around the soffit at each joint, on the wall elevation, the setting sheet and
 * the striking sheet, against the arch itself.
 */
final class ArcGuard {
  private final Printed p;
  private final Json opening;
  private final String mark;
  private final List<Stone> stones;

  private ArcGuard(Printed p, Json opening) {
    this.p = p;
    this.opening = opening;
    this.mark = opening.text("mark");
    this.stones = p.stones(mark);
  }

  static void hold(Printed p) {
    for (Json o : p.openings()) {
      if (!List.of("soldier", "jack").contains(o.get("head").text("shape"))) {
        new ArcGuard(p, o).all();
      }
    }
  }

  private void all() {
    TreeMap<String, Double> struck = struck();
    p.that(!struck.isEmpty(), "arch " + mark + ": no joints on the striking sheet");
    Json head = opening.get("head");
    if (List.of("segmental", "semicircular").contains(head.text("shape"))) {
      round(struck, head.number("radiusMm"));
    }
    setting(struck);
    elevation(struck);
  }

  private List<Part> sheets(String title) {
    return p.sheets(Bundle.WALL).stream()
        .filter(s -> s.alt().startsWith(title))
        .filter(s -> s.kids().get(0).texts().get(0).text().equals(mark))
        .toList();
  }

  // By the joint's name, as in 3 | 4, how far around it stands; mm.
  private TreeMap<String, Double> struck() {
    TreeMap<String, Double> all = new TreeMap<>();
    for (Part sheet : sheets("Striking out")) {
      for (Part table : sheet.kids()) {
        if (table.type().equals("Table") && table.rows().get(0).get(0).equals("joint")) {
          for (List<String> row : table.rows().subList(1, table.rows().size())) {
            String cell = row.get(1);
            all.put(row.get(0), cell.equals("on it") ? 0 : Tape.all(cell, p.inch).get(0));
          }
        }
      }
    }
    return all;
  }

  // On one circle the way around is radius times angle; a joint is midway between two stones.
  private void round(TreeMap<String, Double> struck, double radius) {
    struck.forEach(
        (joint, around) -> {
          String outer = joint.replaceFirst("^.* \\| ?", "");
          if (outer.isEmpty() || around == 0) {
            return;
          }
          Stone s =
              stones.stream().filter(x -> x.own().equals("R" + outer)).findFirst().orElseThrow();
          // The corner of its inner joint on the soffit: that nearest to the centre line there.
          double chord = 2 * radius * Math.sin(around / 2 / radius);
          double crown = crown(radius);
          double nearest =
              s.corners().stream()
                  .mapToDouble(c -> Math.abs(Math.hypot(c[0], c[1] - crown) - chord))
                  .min()
                  .orElseThrow();
          double slack = p.half() + p.job.setting().joint().mm() / 2 + 0.1;
          p.that(
              nearest <= slack, "arch " + mark + ", joint " + joint + " around: off by " + nearest);
        });
  }

  // Where the soffit's circle crosses the centre line, from a stone's two soffit corners.
  private double crown(double radius) {
    Stone end = stones.get(stones.size() - 1);
    double[] low =
        end.corners().stream()
            .min(Comparator.comparingDouble(c -> Math.abs(c[0]) + 1e-3 * c[1]))
            .orElseThrow();
    return low[1] + radius - Math.sqrt(Math.max(0, radius * radius - low[0] * low[0]));
  }

  private void setting(TreeMap<String, Double> struck) {
    for (Part sheet : sheets("Setting sheet")) {
      for (Part table : sheet.kids()) {
        if (!table.type().equals("Table") || !table.rows().get(0).get(0).equals("No.")) {
          continue;
        }
        for (List<String> row : table.rows().subList(1, table.rows().size())) {
          String stone = row.get(1);
          if (row.get(2).isEmpty()) {
            continue;
          }
          String inner = stone.equals("K") ? "K" : stone.substring(1);
          struck.forEach(
              (joint, around) -> {
                if (joint.startsWith(inner + " |")) {
                  p.length("setting sheet " + mark + ", " + stone + " around", row.get(2), around);
                }
              });
        }
      }
    }
  }

  private void elevation(TreeMap<String, Double> struck) {
    TreeSet<String> seen = new TreeSet<>();
    for (Part sheet : sheets("Elevation ")) {
      Part figure =
          sheet.kids().stream().filter(k -> k.type().equals("Figure")).findFirst().orElseThrow();
      List<Run> runs = figure.texts();
      double highest =
          runs.stream()
              .filter(r -> stones.stream().anyMatch(s -> s.own().equals(r.text())))
              .mapToDouble(Run::y)
              .max()
              .orElseThrow();
      double centre = centre(runs);
      for (boolean left : new boolean[] {true, false}) {
        for (Run r : runs) {
          boolean here = Math.abs(r.middleX() - centre) < 0.5 || r.middleX() < centre == left;
          boolean around = r.degrees() != 0 || r.text().contains("\"") || !p.inch;
          if (!here || !around || r.y() > highest || !Tape.isLength(r.text(), p.inch)) {
            continue;
          }
          double said = Tape.mm(r.text());
          for (var e : struck.entrySet()) {
            if (Math.abs(e.getValue() - said) < 0.02 && said > 0) {
              seen.add(e.getKey() + left);
            }
          }
        }
      }
    }
    struck.forEach(
        (joint, around) -> {
          for (boolean left : new boolean[] {true, false}) {
            p.that(
                around == 0 || seen.contains(joint + left),
                "elevation " + mark + ": joint " + joint + " has no mark " + (left ? "L" : "R"));
          }
        });
  }

  private double centre(List<Run> runs) {
    return runs.stream()
        .filter(r -> r.text().equals("CENTRE LINE"))
        .mapToDouble(Run::middleX)
        .findFirst()
        .orElseGet(
            () -> {
              boolean left = runs.stream().anyMatch(r -> r.text().matches("L\\d+"));
              return left ? 1e9 : -1e9;
            });
  }
}
