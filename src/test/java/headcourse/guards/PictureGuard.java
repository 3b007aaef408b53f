package headcourse.guards;

import headcourse.job.Bundle;
import headcourse.job.Opening;
import headcourse.testing.FinishedPdf.Part;
import headcourse.testing.FinishedPdf.Run;
import headcourse.testing.Tape;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The picture on the cover: heights from below upwards are ground, sill, opening and head as the
 * job gives them, floor above ground, and the width under it is the opening's.
 */
final class PictureGuard {
  private final Printed p;

  private PictureGuard(Printed p) {
    this.p = p;
  }

  static void hold(Printed p) {
    PictureGuard g = new PictureGuard(p);
    int found = 0;
    for (Part f : p.all(Bundle.CONTRACTOR, "Figure")) {
      for (Opening o : p.job.openings()) {
        if (f.alt().startsWith("Picture of " + o.mark() + " ")) {
          g.opening(f, o);
          found++;
        }
      }
    }
    p.same("pictures", found, p.job.openings().size());
  }

  private void opening(Part figure, Opening o) {
    Json head = p.opening(o.mark());
    List<Run> sizes = figure.texts().stream().filter(r -> Tape.isLength(r.text(), p.inch)).toList();
    double low = sizes.stream().mapToDouble(Run::middleY).min().orElseThrow();
    double left = sizes.stream().mapToDouble(Run::middleX).min().orElseThrow();
    // The width stands level under the opening, right of all heights.
    Run wide =
        sizes.stream().max(Comparator.comparingDouble(r -> r.middleX() - left)).orElseThrow();
    p.length(o.mark() + " picture, width", wide.text(), head.number("widthMm"), p.half());
    p.that(wide.middleY() < low + 12, o.mark() + " picture, width is not below");
    List<Run> chain =
        sizes.stream()
            .filter(r -> r != wide)
            .sorted(Comparator.comparingDouble(Run::middleY))
            .toList();
    List<Double> wanted = new ArrayList<>();
    if (o.height() != null) {
      if (o.floor().sill() != null && o.floor().ground() != null) {
        wanted.add(o.floor().ground().mm());
      }
      if (o.floor().sill() != null) {
        wanted.add(o.floor().sill().mm());
      }
      wanted.add(o.height().mm());
    }
    double crown = crown(o.mark());
    double top = arch(head) ? highest(o.mark()) : head.get("head").number("heightMm");
    wanted.add(crown);
    wanted.add(top - crown);
    wanted.removeIf(mm -> mm <= 0.5);
    p.same(o.mark() + " picture, heights", chain.size(), wanted.size());
    for (int i = 0; i < Math.min(chain.size(), wanted.size()); i++) {
      p.length(o.mark() + " picture, height " + i, chain.get(i).text(), wanted.get(i));
    }
    levels(figure, o);
  }

  // Floor over ground where the ground is lower.
  private void levels(Part figure, Opening o) {
    Double floor = height(figure, "floor");
    Double ground = height(figure, "ground");
    if (floor != null && ground != null) {
      p.that(floor > ground == o.floor().ground().isPositive(), o.mark() + ": floor and ground");
    }
  }

  private static Double height(Part figure, String word) {
    return figure.texts().stream()
        .filter(r -> r.text().equals(word))
        .map(Run::y)
        .findFirst()
        .orElse(null);
  }

  /** Top of the soffit of a curved head on the centre line; 0 of a flat one. */
  private double crown(String mark) {
    if (!arch(p.opening(mark))) {
      return 0;
    }
    double low = Double.POSITIVE_INFINITY;
    for (Stone s : p.stones(mark)) {
      List<double[]> c = s.corners();
      for (int i = 0; i < c.size(); i++) {
        double[] a = c.get(i);
        double[] b = c.get((i + 1) % c.size());
        // Just beside the centre line, where there may be a joint or an apex.
        double x = 0.3;
        if ((a[0] - x) * (b[0] - x) < 0) {
          low = Math.min(low, a[1] + (b[1] - a[1]) * (x - a[0]) / (b[0] - a[0]));
        }
      }
    }
    return low + drop(mark);
  }

  // A key may hang below the soffit that is measured to.
  private double drop(String mark) {
    return p.job.openings().stream()
        .filter(o -> o.mark().equals(mark) && o.head().key() != null)
        .mapToDouble(o -> o.head().key().drop().mm())
        .sum();
  }

  private static boolean arch(Json opening) {
    return !List.of("soldier", "jack").contains(opening.get("head").text("shape"));
  }

  private double highest(String mark) {
    return p.stones(mark).stream()
        .flatMap(s -> s.corners().stream())
        .mapToDouble(c -> c[1])
        .max()
        .orElseThrow();
  }
}
