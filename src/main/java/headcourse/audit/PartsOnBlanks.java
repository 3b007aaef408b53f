package headcourse.audit;

import headcourse.drawing.Mark;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.job.Bundle;
import headcourse.stock.StockPlan;
import headcourse.work.ShopWork;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The cutting plan: parts lie on their blank, none over another, each where its figure says. */
final class PartsOnBlanks implements Audit.Check {
  private static final double WITHIN = 0.06;
  private static final int LEVELS = 9;

  /** A side rises by at least so much of a part's height; chords of its curves rise by less. */
  private static final double SIDE = 0.2;

  @Override
  public void look(Figures figures, ShopWork work, List<String> faults) {
    if (figures.bundle() != Bundle.BENCH) {
      return;
    }
    for (Mark.Group drawing : figures.drawings()) {
      for (StockPlan.CutBlank blank : work.stock().blanks()) {
        if (blank.id().equals(drawing.title())) {
          blank(drawing, blank, work, faults);
        }
      }
    }
  }

  private static void blank(
      Mark.Group drawing, StockPlan.CutBlank blank, ShopWork work, List<String> faults) {
    List<Path> areas = Figures.lines(drawing).stream().filter(Path::closed).toList();
    Box bar = areas.get(0).bounds();
    double k = bar.width() / blank.length().mm();
    List<Path> parts = areas.subList(1, areas.size());
    if (parts.size() != blank.cuts().size()) {
      faults.add(blank.id() + ": " + parts.size() + " parts are drawn of " + blank.cuts().size());
    }
    for (int i = 0; i < parts.size(); i++) {
      if (!bar.grown(WITHIN).contains(parts.get(i).bounds())) {
        faults.add(blank.id() + ": part " + (i + 1) + " reaches off the blank");
      }
      for (int j = 0; j < i; j++) {
        if (overlap(parts.get(i), parts.get(j))) {
          faults.add(blank.id() + ": parts " + (j + 1) + " and " + (i + 1) + " overlap");
        }
      }
    }
    figures(drawing, bar, parts, blank, work, faults);
  }

  // Each figure stands for the left side of a part, and each part has one.
  private static void figures(
      Mark.Group drawing,
      Box bar,
      List<Path> parts,
      StockPlan.CutBlank blank,
      ShopWork work,
      List<String> faults) {
    double k = bar.width() / blank.length().mm();
    double within = (work.job().grid().tick().mm() / 2 + 0.02) * k + WITHIN;
    Set<Path> told = new HashSet<>();
    int others = 0;
    for (Mark.Label l : Figures.labels(drawing)) {
      boolean below = l.at().y() > bar.maxY();
      boolean above = l.at().y() < bar.minY();
      if (!below && !above || l.at().x() <= bar.minX() - 1.5 || l.degrees() != 0) {
        continue;
      }
      String[] said = l.text().split(" ↑ ");
      double at = LetteredLengths.mm(said[0], work.job().units());
      if (Double.isNaN(at)) {
        others += below ? 1 : 0;
        continue;
      }
      List<Path> here;
      if (said.length > 1) {
        double share = bar.height() / blank.face().mm();
        double up = LetteredLengths.mm(said[1], work.job().units());
        Point place = new Point(bar.minX() + at * k, bar.maxY() - up * share);
        here = parts.stream().filter(p -> turnsAt(p, place, within)).toList();
      } else {
        here =
            parts.stream()
                .filter(
                    p ->
                        left(p, below).stream()
                            .anyMatch(x -> Math.abs(x - bar.minX() - at * k) <= within))
                .toList();
      }
      if (here.isEmpty()) {
        faults.add(blank.id() + ": nothing begins at " + l.text());
      } else if (below) {
        told.addAll(here);
      }
    }
    if (parts.size() - told.size() > 0 && others == 0) {
      faults.add(blank.id() + ": a part of it has no figure");
    }
  }

  private static boolean turnsAt(Path part, Point place, double within) {
    return part.vertices(0.05).stream()
        .anyMatch(
            p -> Math.abs(p.x() - place.x()) <= within && Math.abs(p.y() - place.y()) <= within);
  }

  // Its lower or upper end, and that of the edge that runs on from there: a stepped stone turned
  // end
  // for end has its joint above its step. Of a part without a side that stands up, its leftmost
  // place.
  private static List<Double> left(Path part, boolean lower) {
    Box box = part.bounds();
    List<Point> corners = part.vertices(0.05);
    int n = corners.size();
    double least = Double.POSITIVE_INFINITY;
    List<Double> ends = List.of(box.minX());
    for (int i = 0; i < n; i++) {
      Point a = corners.get(i);
      Point b = corners.get((i + 1) % n);
      double middle = (a.x() + b.x()) / 2;
      if (Math.abs(a.y() - b.y()) >= box.height() * SIDE && middle < least) {
        least = middle;
        boolean first = a.y() > b.y() == lower;
        Point end = first ? a : b;
        Point on = corners.get(first ? (i + n - 1) % n : (i + 2) % n);
        boolean runsOn = on.y() > end.y() == lower && Math.abs(on.y() - end.y()) > WITHIN;
        ends = runsOn ? List.of(end.x(), on.x()) : List.of(end.x());
      }
    }
    return ends;
  }

  private static boolean overlap(Path a, Path b) {
    Box one = a.bounds();
    Box two = b.bounds();
    if (!one.overlaps(two)) {
      return false;
    }
    double low = Math.max(one.minY(), two.minY());
    double high = Math.min(one.maxY(), two.maxY());
    for (int i = 1; i < LEVELS && high - low > WITHIN; i++) {
      double y = low + (high - low) * i / LEVELS;
      double[] s = span(a, y);
      double[] t = span(b, y);
      if (Math.min(s[1], t[1]) - Math.max(s[0], t[0]) > WITHIN) {
        return true;
      }
    }
    return false;
  }

  // Parts have no dents: from their leftmost to their rightmost place on a level.
  private static double[] span(Path path, double y) {
    List<Point> v = path.vertices(0.05);
    List<Double> xs = new ArrayList<>();
    for (int i = 0; i < v.size(); i++) {
      Point a = v.get(i);
      Point b = v.get((i + 1) % v.size());
      if ((a.y() - y) * (b.y() - y) <= 0 && a.y() != b.y()) {
        xs.add(a.x() + (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y()));
      }
    }
    return new double[] {
      xs.stream().mapToDouble(x -> x).min().orElse(0),
      xs.stream().mapToDouble(x -> x).max().orElse(0)
    };
  }
}
