package headcourse.layout.yard;

import headcourse.geom.Point;
import headcourse.geom.Tolerance;
import headcourse.geom.Vec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.FaceEdge;
import headcourse.layout.HeadLayout;
import headcourse.layout.HeadLayout.Remark;
import headcourse.layout.HeadShape;
import headcourse.layout.PlacedStone;
import headcourse.layout.Proof;
import headcourse.layout.Role;
import headcourse.layout.Solution;
import headcourse.layout.yard.YardPieces.Lying;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/**
 * A curved head set from the yard's pieces. Its stones are cut to the curve and all alike, so what
 * is chosen is how many there are: for every number that the widths allow each stone takes the
 * shortest piece that holds it, and the number with which least is sawn off is taken.
 */
final class CurvedPile {
  /** More stones a side than any head has. */
  private static final int MOST = 60;

  private final Job job;
  private final Opening opening;
  private final HeadShape shape;
  private final YardPieces yard;
  private HeadLayout best;
  private List<FromStock.Taken> taken = List.of();
  private long sawn = Long.MAX_VALUE;
  private Solution refused;
  private int divided;

  CurvedPile(Job job, Opening opening, HeadShape shape) {
    this.job = job;
    this.opening = opening;
    this.shape = shape;
    this.yard = new YardPieces(job);
  }

  /** Sets the head out, as far as the pieces that are not gone make it. */
  void choose(Set<String> gone) {
    List<Lying> lying =
        yard.but(gone).stream().sorted(Comparator.comparingLong(Lying::usable)).toList();
    for (int n = 1; n <= MOST; n++) {
      Solution s = shape.setOut(job, KeyWidths.divided(opening, n));
      if (s instanceof Solution.Solved solved) {
        divided++;
        match(solved.head(), lying);
      } else if (refused == null && divided == 0) {
        refused = s;
      }
    }
  }

  private void match(HeadLayout head, List<Lying> lying) {
    List<Lying> left = new ArrayList<>(lying);
    List<FromStock.Taken> of = new ArrayList<>();
    List<PlacedStone> stones = new ArrayList<>(head.stones());
    stones.sort(Comparator.comparingLong(this::extent).reversed());
    long off = 0;
    for (PlacedStone s : stones) {
      for (int copy = 1; copy <= opening.count(); copy++) {
        Lying p = left.stream().filter(x -> holds(x, s)).findFirst().orElse(null);
        if (p == null && s.role() == Role.KEY) {
          // A key that the yard has not got is ordered, and is no matter of the pile.
          continue;
        }
        if (p == null) {
          return;
        }
        left.remove(p);
        off += p.usable() - extent(s);
        of.add(new FromStock.Taken(mark(s), copy, p.id(), extent(s)));
      }
    }
    if (off < sawn) {
      sawn = off;
      best = head;
      taken = of;
    }
  }

  private String mark(PlacedStone s) {
    return opening.mark() + "-" + s.mark();
  }

  private boolean holds(Lying p, PlacedStone s) {
    double[] size = size(s);
    return p.usable() >= extent(s)
        && yard.fits(p.item(), opening, s.role() == Role.KEY)
        && p.item().face().mm() >= size[1] - Tolerance.VERTEX;
  }

  /** Length along the blank, ticks. */
  private long extent(PlacedStone s) {
    return (long) Math.ceil(size(s)[0] / job.grid().tick().mm() - 1e-6);
  }

  /** Length and height of a stone that lies with the chord of its soffit along the arris, mm. */
  private static double[] size(PlacedStone s) {
    List<headcourse.geom.Edge> edges = s.edges(FaceEdge.Where.SOFFIT);
    Vec chord =
        edges.isEmpty()
            ? new Vec(1, 0)
            : edges.get(edges.size() - 1).to().minus(edges.get(0).from());
    double[] low = {Double.MAX_VALUE, Double.MAX_VALUE};
    double[] high = {-Double.MAX_VALUE, -Double.MAX_VALUE};
    for (Point p : s.outline().vertices(Tolerance.VERTEX)) {
      double along = (p.x() * chord.x() + p.y() * chord.y()) / chord.length();
      double across = (p.y() * chord.x() - p.x() * chord.y()) / chord.length();
      low = new double[] {Math.min(low[0], along), Math.min(low[1], across)};
      high = new double[] {Math.max(high[0], along), Math.max(high[1], across)};
    }
    return new double[] {high[0] - low[0], high[1] - low[1]};
  }

  /** Takes another piece for each stone whose piece is gone; whether all have one. */
  boolean replace(String piece, Set<String> gone, List<FromStock.Moved> moved) {
    List<FromStock.Taken> now = new ArrayList<>(taken);
    for (int i = 0; i < now.size(); i++) {
      FromStock.Taken t = now.get(i);
      if (!t.piece().equals(piece)) {
        continue;
      }
      PlacedStone stone = best.stone(t.stone().substring(opening.mark().length() + 1));
      Lying p =
          yard.but(gone).stream()
              .filter(x -> holds(x, stone))
              .min(Comparator.comparingLong(Lying::usable))
              .orElse(null);
      if (p == null) {
        return false;
      }
      now.set(i, new FromStock.Taken(t.stone(), t.copy(), p.id(), t.extent()));
      moved.add(new FromStock.Moved(t.stone(), piece, p.id()));
      gone.add(p.id());
    }
    taken = now;
    return true;
  }

  List<FromStock.Taken> taken() {
    return taken;
  }

  boolean found() {
    return best != null;
  }

  /** Whether the shape itself can't be divided as asked, and what it says. */
  Solution refused() {
    return divided == 0 ? refused : null;
  }

  /** The head with its pieces. */
  Solution built() {
    LengthFormat format = new LengthFormat(job.units(), job.grid());
    long off = 0;
    List<Lying> all = yard.but(Set.of());
    for (FromStock.Taken t : taken) {
      off +=
          all.stream().filter(p -> p.id().equals(t.piece())).findFirst().orElseThrow().usable()
              - t.extent();
    }
    String said =
        "from the yard: "
            + opening.mark()
            + " is divided evenly, as a curved head is; of the "
            + divided
            + " numbers of stones that the widths allow this saws off least, "
            + format.plainWithUnit(job.grid().ticks(off));
    List<Remark> remarks = new ArrayList<>(best.remarks());
    remarks.add(new Remark("from-stock", said));
    double mm = job.grid().ticks(off).mm();
    return new Solution.Solved(
        new HeadLayout(
            opening,
            best.halfWidth(),
            best.stones(),
            best.joints(),
            best.curve(),
            new Proof(Proof.Status.BOUNDED, mm, 0, divided),
            remarks,
            best.asBuilt()));
  }
}
