package headcourse.guards;

import headcourse.job.Bundle;
import headcourse.testing.FinishedPdf.Part;
import headcourse.testing.Tape;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Striking out: a rod is as long as from its centre to the points of its arc, and every joint ends
 * on a corner of a stone.
 */
final class StrikingGuard {
  private final Printed p;
  private final String opening;
  private final Map<String, double[]> points = new TreeMap<>();

  private StrikingGuard(Printed p, String opening) {
    this.p = p;
    this.opening = opening;
  }

  static void hold(Printed p) {
    for (Json o : p.openings()) {
      StrikingGuard g = new StrikingGuard(p, o.text("mark"));
      List<Part> tables =
          p.sheets(Bundle.WALL).stream()
              .filter(s -> s.alt().equals("Striking out"))
              .filter(s -> s.kids().get(0).texts().get(0).text().equals(g.opening))
              .flatMap(s -> s.kids().stream())
              .filter(t -> t.type().equals("Table"))
              .toList();
      tables.forEach(t -> g.rows(t, "point").forEach(g::point));
      tables.forEach(t -> g.rows(t, "centre").forEach(g::centre));
      tables.forEach(t -> g.rows(t, "joint").forEach(g::joint));
      p.that(
          tables.isEmpty() || !g.points.isEmpty(), "striking sheet " + g.opening + ": no points");
    }
  }

  private List<List<String>> rows(Part table, String first) {
    List<List<String>> rows = table.rows();
    return rows.get(0).get(0).equals(first) ? rows.subList(1, rows.size()) : List.of();
  }

  private double size(String cell) {
    return cell.equals("on it") ? 0 : Tape.all(cell, p.inch).get(0);
  }

  private double up(String cell) {
    return cell.endsWith(" down") ? -size(cell) : size(cell);
  }

  private double across(String cell) {
    return cell.endsWith(" left") || cell.endsWith(" each side") ? -size(cell) : size(cell);
  }

  private void point(List<String> row) {
    String[] names = row.get(0).split(", ");
    points.put(names[0], new double[] {across(row.get(1)), up(row.get(2))});
    if (names.length > 1) {
      points.put(names[1], new double[] {-across(row.get(1)), up(row.get(2))});
    }
    double[] at = points.get(names[0]);
    p.that(
        near(at[0], at[1], p.layout.number("gridMm")),
        "striking sheet " + opening + ": no soffit at point " + row);
  }

  // Points on the soffit lie on a stone's outline.
  private boolean near(double x, double y, double within) {
    double slack = within + p.job.setting().joint().mm();
    for (Stone s : p.stones(opening)) {
      List<double[]> c = s.corners();
      for (int i = 0; i < c.size(); i++) {
        double[] a = c.get(i);
        double[] b = c.get((i + 1) % c.size());
        if (java.awt.geom.Line2D.ptSegDist(a[0], a[1], b[0], b[1], x, y) < slack) {
          return true;
        }
      }
    }
    return false;
  }

  private void centre(List<String> row) {
    String[] names = row.get(0).split(", ");
    double rod = size(row.get(3));
    for (int i = 0; i < names.length; i++) {
      double x = across(row.get(1)) * (i == 0 ? 1 : -1);
      double y = up(row.get(2));
      String arc = row.get(4);
      if (names.length > 1) {
        arc = arc.split(", ")[i].replaceFirst("^.*: ", "");
      }
      for (String point : arc.split("–")) {
        double[] at = points.get(point);
        p.near(
            "striking sheet " + opening + ", rod from " + names[i] + " to " + point,
            rod,
            Math.hypot(at[0] - x, at[1] - y),
            3 * p.half());
      }
    }
  }

  private void joint(List<String> row) {
    for (int i = 2; i <= 4; i += 2) {
      double x = size(row.get(i));
      double y = up(row.get(i + 1));
      double slack = 1.5 * p.layout.number("gridMm") + p.job.setting().joint().mm();
      double nearest =
          p.stones(opening).stream()
              .filter(s -> !s.side().equals("left"))
              .flatMap(s -> s.corners().stream())
              .mapToDouble(c -> Math.hypot(c[0] - x, c[1] - y))
              .min()
              .orElseThrow();
      p.that(
          nearest < slack,
          "striking sheet " + opening + ", joint " + row + ": no corner there, " + nearest);
      double foot = i == 2 ? Math.hypot(size(row.get(2)), up(row.get(3))) : 0;
      p.that(
          i == 4 || foot < Math.hypot(size(row.get(4)), up(row.get(5))) + 0.01,
          "striking sheet " + opening + ", joint " + row + ": soffit beyond the back");
    }
  }
}
