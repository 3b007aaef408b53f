package headcourse.audit;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Mark;
import headcourse.drawing.Mark.Role;
import headcourse.geom.Box;
import headcourse.geom.Edge;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.job.Bundle;
import headcourse.layout.FaceEdge;
import headcourse.layout.Side;
import headcourse.work.ShopWork;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * Elevations: every stone as far from the others as it is, at one scale, left on the left; and on
 * the wall's sheets every running mark on the side of a joint that is so far from the centre line.
 */
final class StonesInPlace implements Audit.Check {
  /** Paper may be off by this much, mm. */
  private static final double WITHIN = 0.1;

  /** A number nearer the centre line than this on paper tells no side, mm. */
  private static final double CLEAR = 10;

  /** A number in the setting order looks like a length in millimetres. */
  private static final Pattern ORDER = Pattern.compile("\\d{1,3}");

  @Override
  public void look(Figures figures, ShopWork work, List<String> faults) {
    if (figures.bundle() != Bundle.WALL && figures.bundle() != Bundle.CONTRACTOR) {
      return;
    }
    for (Mark.Group drawing : figures.drawings()) {
      for (HeadWork head : work.heads()) {
        head(drawing, head, figures.bundle() == Bundle.WALL, work, faults);
      }
    }
  }

  private static void head(
      Mark.Group drawing, HeadWork head, boolean marks, ShopWork work, List<String> faults) {
    Map<Piece, Box> drawn = new LinkedHashMap<>();
    for (Mark m : drawing.marks()) {
      if (m instanceof Mark.Group g && g.role() == Role.STONE) {
        head.pieces().stream()
            .filter(p -> p.mark().equals(g.id()))
            .forEach(p -> drawn.put(p, Figures.lines(g).get(0).bounds()));
      }
    }
    if (drawn.size() < 2) {
      return;
    }
    // The widest of all from the first stone tells the scale.
    Piece first = drawn.keySet().iterator().next();
    Box there = first.stone().outline().bounds();
    Box here = drawn.get(first);
    double k = here.width() / there.width();
    if (Math.abs(1 / k - Math.rint(1 / k)) > 0.01 / k) {
      faults.add(first.mark() + " is drawn at no scale, 1:" + 1 / k);
    }
    for (var e : drawn.entrySet()) {
      Box is = e.getKey().stone().outline().bounds();
      double dx = (is.centre().x() - there.centre().x()) * k;
      double dy = (is.centre().y() - there.centre().y()) * -k;
      Box box = e.getValue();
      if (Math.abs(box.centre().x() - here.centre().x() - dx) > WITHIN
          || Math.abs(box.centre().y() - here.centre().y() - dy) > WITHIN
          || Math.abs(box.width() - is.width() * k) > WITHIN) {
        faults.add(e.getKey().mark() + " is not drawn where it stands beside " + first.mark());
      }
    }
    if (marks) {
      double centre = here.centre().x() - there.centre().x() * k;
      running(drawing, head, centre, onlySide(drawn.keySet()), work, faults);
    }
  }

  // In a part of a head its numbers may be moved past the centre line to where there is room.
  private static double onlySide(Set<Piece> drawn) {
    boolean left = drawn.stream().allMatch(p -> p.stone().side() == Side.LEFT);
    boolean right = drawn.stream().allMatch(p -> p.stone().side() == Side.RIGHT);
    return left ? -1 : right ? 1 : 0;
  }

  private static void running(
      Mark.Group drawing,
      HeadWork head,
      double centre,
      double only,
      ShopWork work,
      List<String> faults) {
    List<Double> joints = joints(head);
    List<Double> around = around(head);
    List<Box> key = keyEdges(head);
    double half = middle(drawing);
    double within = work.job().grid().tick().mm() / 2 + 0.02;
    TreeMap<Double, Double> low = new TreeMap<>();
    TreeMap<Double, Double> high = new TreeMap<>();
    for (Mark.Label l : Figures.labels(drawing)) {
      double off = l.at().x() - centre;
      if (l.degrees() != 90 || only == 0 && Math.abs(off) < CLEAR) {
        continue;
      }
      double value = LetteredLengths.mm(l.text(), work.job().units());
      boolean order = ORDER.matcher(l.text()).matches() && value <= head.pieces().size();
      if (order || Double.isNaN(value)) {
        continue;
      }
      double x = (only == 0 ? Math.signum(off) : only) * value;
      if (around.stream().anyMatch(a -> Math.abs(a - Math.abs(x)) <= within)) {
        continue;
      }
      (LabelShape.bounds(l).centre().y() > half ? low : high).put(off, x);
      if (joints.stream().noneMatch(j -> Math.abs(j - x) <= within)
          && key.stream().noneMatch(b -> b.minX() <= x + within && x - within <= b.maxX())) {
        faults.add("no joint stands at " + l.text() + (off < 0 ? " left" : " right"));
      }
    }
    for (TreeMap<Double, Double> band : List.of(low, high)) {
      double before = Double.NEGATIVE_INFINITY;
      for (double x : band.values()) {
        if (x < before) {
          faults.add("running marks do not grow outwards at " + Math.abs(x) + " mm");
        }
        before = x;
      }
    }
  }

  // Along the form of an arch from its crown: inside the opening, so on no side of a level line.
  private static List<Double> around(HeadWork head) {
    return head.layout().curved()
        ? head.layout().curve().around().stream().map(a -> a.distance().mm()).toList()
        : List.of();
  }

  // Half way up what stones are drawn.
  private static double middle(Mark.Group drawing) {
    return drawing.marks().stream()
        .filter(m -> m instanceof Mark.Group g && g.role() == Role.STONE)
        .mapToDouble(m -> Figures.lines((Mark.Group) m).get(0).bounds().centre().y())
        .average()
        .orElse(0);
  }

  // A key that stands above an arch or hangs below it has its joints' ends within its edges.
  private static List<Box> keyEdges(HeadWork head) {
    List<Box> all = new ArrayList<>();
    for (Piece p : head.pieces()) {
      if (p.stone().side() == Side.CENTRE) {
        for (FaceEdge.Where side : List.of(FaceEdge.Where.LEFT, FaceEdge.Where.RIGHT)) {
          for (Edge e : p.stone().edges(side)) {
            all.add(Box.around(List.of(e.from(), e.to())));
          }
        }
      }
    }
    return all;
  }

  // Distances right of the centre line of all corners, and of straight edges on both lines.
  private static List<Double> joints(HeadWork head) {
    List<Double> all = new ArrayList<>();
    double top = head.layout().opening().head().height().mm();
    for (Piece p : head.pieces()) {
      Path outline = p.stone().outline();
      for (Edge e : outline.edges()) {
        Point a = e.from();
        Point b = e.to();
        all.add(a.x());
        double rise = b.y() - a.y();
        if (Math.abs(rise) > 1e-6) {
          all.add(a.x() + (b.x() - a.x()) * (0 - a.y()) / rise);
          all.add(a.x() + (b.x() - a.x()) * (top - a.y()) / rise);
        }
      }
    }
    return all;
  }
}
