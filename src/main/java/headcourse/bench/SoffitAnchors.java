package headcourse.bench;

import headcourse.bench.SoffitNotch.Edge;
import headcourse.geom.Point;
import headcourse.geom.Vec;
import headcourse.job.Job;
import headcourse.layout.Role;
import headcourse.layout.Side;
import headcourse.units.Length;
import headcourse.units.Units;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Gives a soffit piece its own screws: up through a slot in the upper corner of each end that is
 * open when the piece goes up, as on the stone's face. An end on the jamb's seat lets no driver in
 * from below; where no other is open the slot is in the back edge. All common practice, no source.
 */
final class SoffitAnchors {
  private final Job job;
  private final boolean bothEnds;
  private final AnchorFinder anchors;
  private final SlotChooser slots;
  private final Length edge;

  SoffitAnchors(Job job, boolean bothEnds) {
    this.job = job;
    this.bothEnds = bothEnds;
    this.anchors = new AnchorFinder(job);
    this.slots = new SlotChooser(job);
    this.edge = job.units() == Units.INCH ? Length.inches(0.75) : Length.mm(20);
  }

  /**
   * A piece in its place.
   *
   * @param frame the stone above it
   * @param middle of its underside, model space
   * @param up unit direction square to its underside
   * @param length the shorter of its two lengths
   * @param depth from its outer edge to its back
   * @param front of its outer edge behind the outside face
   * @param open the ends that no other soffit piece of the stone closes
   * @param seated whether its outer end lies on the jamb
   */
  record Piece(
      StoneFrame frame,
      Point middle,
      Vec up,
      Length length,
      Length depth,
      Length front,
      Set<Edge> open,
      boolean seated) {}

  /** Its slots; empty where it does not reach under what carries the opening. */
  List<SoffitNotch> of(Piece p) {
    // Everything is measured from the face of an ordinary stone; a stone stands proud of that.
    double proud = p.frame.stone().proud().max(Length.ZERO).mm();
    double back = p.front.plus(p.depth).mm() - proud;
    double from = behind();
    double to = Math.min(back, from + job.wall().framing().mm());
    if (to - from < 2 * edge.mm()) {
      return List.of();
    }
    Length place = job.grid().snapMm(back - (from + to) / 2);
    List<SoffitNotch> found = new ArrayList<>();
    Length t = job.stone().thickness();
    Length run = Length.mm(p.length.mm() / 3).max(t);
    for (Edge e : ends(p)) {
      notch(p, e, place, run).ifPresent(found::add);
    }
    if (found.isEmpty()) {
      Length run2 = Length.mm(p.depth.mm() / 3).max(t);
      Length middle = job.grid().snapMm(p.length.mm() / 2);
      notch(p, Edge.BACK, middle, run2).filter(n -> within(n, back - from)).ifPresent(found::add);
    }
    return found;
  }

  /** Depth behind the face at which what carries the opening begins, mm. */
  private double behind() {
    var w = job.wall();
    return job.stone()
        .thickness()
        .plus(w.bed())
        .plus(w.scratch())
        .plus(w.sheathing().thickness())
        .mm();
  }

  /** Whether a screw from the back edge still ends in what carries the opening. */
  private boolean within(SoffitNotch n, double room) {
    Length screw = n.anchor().screw();
    double far = screw == null ? 0 : screw.mm() * Math.cos(n.slant().radians());
    return far + edge.mm() <= room;
  }

  private Set<Edge> ends(Piece p) {
    Side side = p.frame.stone().side();
    Edge outer = side == Side.LEFT ? Edge.LEFT : Edge.RIGHT;
    boolean both = bothEnds || p.frame.stone().role() == Role.KEY;
    Set<Edge> ends = both ? EnumSet.of(Edge.LEFT, Edge.RIGHT) : EnumSet.of(outer);
    ends.retainAll(p.open);
    if (p.seated) {
      ends.remove(outer);
    }
    return ends;
  }

  private Optional<SoffitNotch> notch(Piece p, Edge e, Length place, Length run) {
    Length t = job.stone().thickness();
    double hangs = p.frame.stone().side() == Side.CENTRE ? drop(p) : 0;
    Length idle = job.wall().bed().plus(Length.mm(hangs));
    double over = t.plus(idle).mm() * p.up.y();
    Length from = Length.mm(p.middle.y() + over);
    return slots
        .choose(new SlotChooser.Bounds(t, idle, t, run))
        .map(
            c ->
                new SoffitNotch(
                    e,
                    place,
                    c.slot().mouth(),
                    c.slot().run(),
                    c.slot().slant(),
                    c.cover(),
                    Length.mm(c.slot().plunge()),
                    anchors.overhead(c.slot(), from, idle)));
  }

  /** How far a key hangs below its neighbours: so much more mortar lies over it. */
  private double drop(Piece p) {
    return Math.max(0, 0 - Math.min(p.frame.lowerLeft().y(), p.frame.lowerRight().y()));
  }
}
