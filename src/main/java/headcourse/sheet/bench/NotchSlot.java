package headcourse.sheet.bench;

import headcourse.bench.Notch;
import headcourse.drawing.Board;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.geom.Arc;
import headcourse.geom.Box;
import headcourse.geom.Clip;
import headcourse.geom.Edge;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Straight;
import headcourse.geom.Vec;
import headcourse.sheet.SheetContext;
import java.util.ArrayList;
import java.util.List;

/**
 * A slot in section with its screw, on paper at 1:1.
 *
 * @param edge where the stone's edge stands
 * @param in 1 where the stone lies to the right of its edge, −1 where to the left
 * @param back where its back lies; y runs on from there to the face
 */
record NotchSlot(SheetContext c, Notch n, double edge, int in, double back) {
  void draw(Board g, Box room) {
    Point mouth = new Point(edge, back + n.mouth().mm());
    Point far = new Point(edge + in * n.run().mm(), back);
    g.outline(slot(mouth, far), Shade.WHITE, Pen.EDGE);
    screw(g, mouth, far, room);
  }

  // The head lies wholly within the edge, so that a neighbour closes up to it.
  private void screw(Board g, Point mouth, Point far, Box room) {
    Vec along = far.minus(mouth).unit();
    Vec across = along.normal();
    double head = c.job().fastener().head().mm() / 2;
    double shank = c.job().fastener().shank().mm() / 2;
    double sink = (Math.abs(across.x()) * head + 0.4) / Math.max(0.2, in * along.x());
    Point seat = mouth.plus(along.times(sink));
    double length = n.screw() == null ? n.mouth().mm() * 3 : n.screw().mm();
    Point tip = mouth.plus(along.times(length));
    for (double side : new double[] {shank, -shank}) {
      Path line = Path.through(seat.plus(across.times(side)), tip.plus(across.times(side)));
      Clip.toBox(line, room, 0.01).forEach(r -> g.stroke(r, Pen.EDGE));
    }
    g.line(seat.plus(across.times(head)), seat.plus(across.times(-head)), Pen.OUTLINE);
  }

  // The corner, and the blade's arc between mouth and run, bulging inwards.
  private Path slot(Point mouth, Point far) {
    double r = c.job().tools().grinder().blade().mm() / 2;
    double chord = mouth.distance(far);
    // Into the stone, away from the corner: towards the face.
    Vec into = far.minus(mouth).unit().normal().times(in);
    double rise = Math.sqrt(Math.max(0, r * r - chord * chord / 4));
    Point centre = mouth.towards(far, 0.5).plus(into.times(-rise));
    double start = mouth.minus(centre).angle();
    double sweep = far.minus(centre).angle() - start;
    while (sweep > Math.PI) {
      sweep -= 2 * Math.PI;
    }
    while (sweep < -Math.PI) {
      sweep += 2 * Math.PI;
    }
    Point corner = new Point(mouth.x(), far.y());
    List<Edge> edges = new ArrayList<>();
    edges.add(new Straight(corner, mouth));
    edges.add(new Arc(centre, r, start, sweep));
    edges.add(new Straight(far, corner));
    return new Path(edges, true);
  }
}
