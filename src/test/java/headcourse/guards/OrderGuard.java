package headcourse.guards;

import headcourse.job.Bundle;
import headcourse.testing.FinishedPdf.Part;
import headcourse.testing.FinishedPdf.Run;
import headcourse.testing.Tape;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/** The order: each line's sizes in their columns, its weight, the sums, and the corner's legs. */
final class OrderGuard {
  private static final double KG_PER_LB = 0.45359237;

  private final Printed p;

  private OrderGuard(Printed p) {
    this.p = p;
  }

  static void hold(Printed p) {
    OrderGuard g = new OrderGuard(p);
    List<Json> order = p.layout.list("order");
    String all = String.join(" ", p.sheets(Bundle.ORDER).stream().map(Part::text).toList());
    p.same("order, pages", p.sheets(Bundle.ORDER).size(), 1);
    p.same("nothing to order", all.contains("Nothing is to be ordered"), order.isEmpty());
    for (Part t : p.all(Bundle.ORDER, "Table")) {
      List<List<String>> rows = t.rows();
      if (rows.get(0).contains("pieces")) {
        g.lines(rows, order);
      }
    }
    TreeSet<String> drawn = new TreeSet<>();
    for (Part f : p.all(Bundle.ORDER, "Figure")) {
      drawn.add(f.alt().split(":")[0]);
      if (f.alt().startsWith("Corner")) {
        g.corner(f);
      }
    }
    TreeSet<String> kinds = new TreeSet<>();
    order.forEach(o -> kinds.add(o.number("returnMm") > 0 ? "Corner" : "Flat"));
    p.same("order, kinds drawn", drawn, kinds);
  }

  private void lines(List<List<String>> rows, List<Json> order) {
    List<String> head = rows.get(0);
    p.same("order, lines", rows.size() - 2, order.size());
    double weight = 0;
    int count = 0;
    for (int i = 0; i < Math.min(rows.size() - 2, order.size()); i++) {
      List<String> row = rows.get(i + 1);
      Json o = order.get(i);
      String name = "order, line " + (i + 1);
      if (!o.text("stock").isEmpty()) {
        p.same(name + ", mark", row.get(0), o.text("stock"));
      }
      p.same(name + ", count", row.get(head.indexOf("pieces")), "" + o.whole("count"));
      count += o.whole("count");
      p.length(name + ", arris", row.get(4), o.number("lengthMm"));
      p.length(name + ", face", row.get(5), o.number("faceMm"));
      double back = o.number("returnMm");
      if (back > 0) {
        p.length(name + ", return", row.get(6), back);
      }
      p.length(name + ", thickness", row.get(7), o.number("thicknessMm"));
      double kg = kg(o);
      weight += kg;
      p.near(name + ", weight", number(row.get(9)), p.inch ? kg / KG_PER_LB : kg, 0.06);
    }
    List<String> sum = rows.get(rows.size() - 1);
    p.same("order, sum", sum.get(head.indexOf("pieces")), "" + count);
    double all = p.inch ? weight / KG_PER_LB : weight;
    p.near("order, sum of weights", number(sum.get(9)), all, 0.06 * order.size() + 0.01);
  }

  // Two plates, the second without the corner that the first has already.
  private double kg(Json o) {
    double t = o.number("thicknessMm");
    double back = Math.max(0, o.number("returnMm") - t);
    double mm3 = o.number("lengthMm") * t * (o.number("faceMm") + back) * o.whole("count");
    return mm3 / 1e9 * p.job.stone().density();
  }

  private static double number(String text) {
    return Double.parseDouble(text.split(" ")[0]);
  }

  // A leg by its letter, where drawings are small, or else by its name.
  private static Run named(Part f, String name) {
    String letter = name.substring(0, 1);
    return f.texts().stream()
        .filter(r -> r.text().equals(letter))
        .findFirst()
        .orElse(starting(f, name));
  }

  // The face stands up at the left, the arris lies below it, the return runs back at the right.
  private void corner(Part f) {
    Run face = named(f, "F face");
    Run arris = named(f, "A arris");
    Run back = named(f, "R return");
    p.that(face != null && arris != null && back != null, "order, legs without names");
    if (face == null || arris == null || back == null) {
      return;
    }
    p.that(Math.abs(face.degrees() - 90) < 1, "order, the face is not named upright");
    p.that(face.middleX() < arris.middleX() && arris.middleX() < back.middleX(), "order, legs");
    p.that(arris.y() < back.y() && arris.y() < face.middleY(), "order, the arris is not below");
    List<Json> corners =
        p.layout.list("order").stream().filter(o -> o.number("returnMm") > 0).toList();
    // Among others each is drawn by its letters alone.
    if (corners.size() == 1 && starting(f, "F face") != null) {
      Json o = corners.get(0);
      p.near("order, drawn face", last(starting(f, "F face")), o.number("faceMm"), p.half());
      p.near("order, drawn arris", last(starting(f, "A arris")), o.number("lengthMm"), p.half());
      p.near("order, drawn return", last(starting(f, "R return")), o.number("returnMm"), p.half());
    }
  }

  private double last(Run r) {
    return Tape.all(r.text(), p.inch).stream().reduce((a, b) -> b).orElse(Double.NaN);
  }

  private static Run starting(Part f, String words) {
    return f.texts().stream()
        .filter(r -> r.text().startsWith(words))
        .max(Comparator.comparingDouble(Run::width))
        .orElse(null);
  }
}
