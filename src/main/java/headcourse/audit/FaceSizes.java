package headcourse.audit;

import headcourse.bench.HeadWork;
import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Mark;
import headcourse.geom.Edge;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Vec;
import headcourse.job.Bundle;
import headcourse.text.SecondLanguage;
import headcourse.text.Words;
import headcourse.work.ShopWork;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Faces on tickets: the outline is that of the stone at one scale, and a size says how long that is
 * on paper which it stands beside.
 */
final class FaceSizes implements Audit.Check {
  private static final String REST = "\u0001";

  /** A stone whose side leans more than this is not looked at size by size, degrees off plumb. */
  private static final double LEANS = 25;

  @Override
  public void look(Figures figures, ShopWork work, List<String> faults) {
    if (figures.bundle() != Bundle.BENCH) {
      return;
    }
    Words words = Words.of(work.job().language().word()).withTongues();
    for (Mark.Group drawing : figures.drawings()) {
      for (HeadWork head : work.heads()) {
        if (!drawing.title().contains(head.layout().opening().mark())) {
          continue;
        }
        for (Piece p : head.pieces()) {
          if (!drawing.title().contains(p.mark())) {
            continue;
          }
          String title =
              SecondLanguage.plain(words.say("ticket.face-alt", p.mark(), REST, REST, REST));
          if (drawing.title().startsWith(title.substring(0, title.indexOf(REST)))) {
            face(drawing, p, work, faults);
          }
        }
      }
    }
  }

  private static void face(Mark.Group drawing, Piece p, ShopWork work, List<String> faults) {
    Path outline = Figures.lines(drawing).get(0);
    double k = Math.sqrt(Math.abs(outline.area() / p.stone().outline().area()));
    List<Edge> true4 = p.stone().outline().edges();
    for (int i = 0; i < true4.size() && outline.edges().size() == true4.size(); i++) {
      if (Math.abs(outline.edges().get(i).length() - true4.get(i).length() * k) > 0.1) {
        faults.add(p.mark() + " is drawn with another outline");
        return;
      }
    }
    if (true4.size() != 4 || leans(outline)) {
      return;
    }
    double within = work.job().grid().tick().mm() / 2 + 0.02;
    for (Mark.Label l : Figures.labels(drawing)) {
      double said = LetteredLengths.mm(l.text(), work.job().units());
      if (Double.isNaN(said)) {
        continue;
      }
      List<Double> drawn = measured(outline, l, k);
      if (!drawn.isEmpty()
          && drawn.stream().noneMatch(is -> Math.abs(is - said) <= within)
          && !aside(p, l, said, within)) {
        faults.add(p.mark() + ": " + l.text() + " stands where " + drawn + " mm is drawn");
      }
    }
  }

  // Where an edge is drawn too short for its size, that stands level beside it, out of its way; and
  // a slot's height may lie below a face that is no higher than its letters.
  private static boolean aside(Piece p, Mark.Label l, double said, double within) {
    return l.degrees() == 0
        && Stream.concat(
                Stream.of(p.measures().leftEdge(), p.measures().rightEdge()),
                p.notches().stream().map(Notch::height))
            .anyMatch(size -> Math.abs(size.mm() - said) <= within);
  }

  // Beside a stone that leans far, sizes and heights of slots no longer lie apart by direction.
  private static boolean leans(Path outline) {
    Edge side = outline.edges().get(1);
    return off(90, side.to().minus(side.from())) > LEANS;
  }

  // What a size may stand beside: a diagonal that it lies along, or edges whose outside it is on.
  private static List<Double> measured(Path outline, Mark.Label l, double k) {
    List<Point> c = outline.edges().stream().map(Edge::from).toList();
    Point middle = LabelShape.bounds(l).centre();
    List<Double> found = new ArrayList<>();
    if (inside(c, middle)) {
      if (l.degrees() != 0) {
        double rising = off(l.degrees(), c.get(2).minus(c.get(0)));
        double falling = off(l.degrees(), c.get(3).minus(c.get(1)));
        int first = rising < falling ? 0 : 1;
        found.add(c.get(first).distance(c.get(first + 2)) / k);
      }
      return found;
    }
    for (int i = 0; i < 4; i++) {
      Point a = c.get(i);
      Point b = c.get((i + 1) % 4);
      if (off(l.degrees(), b.minus(a)) < 3 && beyond(c, a, b, middle)) {
        found.add(a.distance(b) / k);
      }
    }
    return found;
  }

  // How much a text is turned off a direction on paper, degrees.
  private static double off(double degrees, Vec way) {
    double turned = Math.toDegrees(Math.atan2(-way.y(), way.x()));
    return Math.abs(Math.IEEEremainder(turned - degrees, 180));
  }

  // On the other side of an edge than the rest of the stone.
  private static boolean beyond(List<Point> c, Point a, Point b, Point p) {
    Point rest =
        new Point(
            c.stream().mapToDouble(Point::x).average().orElseThrow(),
            c.stream().mapToDouble(Point::y).average().orElseThrow());
    return side(a, b, p) * side(a, b, rest) < 0;
  }

  private static double side(Point a, Point b, Point p) {
    return (b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x());
  }

  private static boolean inside(List<Point> c, Point p) {
    double first = side(c.get(0), c.get(1), p);
    for (int i = 1; i < c.size(); i++) {
      if (side(c.get(i), c.get((i + 1) % c.size()), p) * first < 0) {
        return false;
      }
    }
    return true;
  }
}
