package headcourse.layout.yard;

import headcourse.geom.Edge;
import headcourse.geom.Tolerance;
import headcourse.geom.Vec;
import headcourse.job.HeadSpec;
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
import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
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
  private List<Given> given = List.of();
  private int divided;

  /** Sets the head out, as far as the pieces that are not gone make it. */
  CurvedPile(Job job, Opening opening, HeadShape shape, Set<String> gone) {
    this.job = job;
    this.opening = opening;
    this.shape = shape;
    this.yard = new YardPieces(job);
    for (int n = 1; n <= MOST; n++) {
      if (divided(n) instanceof Solution.Solved solved) {
        divided++;
        match(solved.head(), gone);
      }
    }
  }

  /** A stone, which of its copies, and its piece. */
  private record Given(PlacedStone stone, int copy, Lying piece) {}

  private Solution divided(int n) {
    HeadSpec head = opening.head();
    return shape.setOut(job, opening.with(head.with(head.stones().divided(n))));
  }

  private void match(HeadLayout head, Set<String> gone) {
    Set<String> used = new LinkedHashSet<>(gone);
    List<Given> of = new ArrayList<>();
    List<PlacedStone> stones = new ArrayList<>(head.stones());
    stones.sort(Comparator.comparingLong(this::extent).reversed());
    for (PlacedStone s : stones) {
      for (int copy = 1; copy <= opening.count(); copy++) {
        Optional<Lying> p = holding(s, used);
        if (p.isPresent()) {
          used.add(p.get().id());
          of.add(new Given(s, copy, p.get()));
        } else if (s.role() != Role.KEY) {
          // A key that the yard has not got is ordered, and is no matter of the pile.
          return;
        }
      }
    }
    if (best == null || sawn(of) < sawn(given)) {
      best = head;
      given = of;
    }
  }

  private long sawn(List<Given> of) {
    return of.stream().mapToLong(g -> g.piece().usable() - extent(g.stone())).sum();
  }

  /** The shortest piece that holds a stone. */
  private Optional<Lying> holding(PlacedStone s, Set<String> gone) {
    double height = reach(s, along(s).normal()) - Tolerance.VERTEX;
    return yard.holding(opening, s.role() == Role.KEY, extent(s), gone).stream()
        .filter(p -> p.item().face().mm() >= height)
        .findFirst();
  }

  /** Length along the blank, ticks. */
  private long extent(PlacedStone s) {
    return (long) Math.ceil(reach(s, along(s)) / job.grid().tick().mm() - 1e-6);
  }

  /** The chord of its soffit, which lies along the arris. */
  private static Vec along(PlacedStone s) {
    List<Edge> soffit = s.edges(FaceEdge.Where.SOFFIT);
    return soffit.get(soffit.size() - 1).to().minus(soffit.get(0).from()).unit();
  }

  /** How far a stone reaches in a direction, mm. */
  private static double reach(PlacedStone s, Vec way) {
    DoubleSummaryStatistics of =
        s.outline().vertices(Tolerance.VERTEX).stream()
            .mapToDouble(p -> p.x() * way.x() + p.y() * way.y())
            .summaryStatistics();
    return of.getMax() - of.getMin();
  }

  /**
   * The head after all that broke, each stone that lost its piece from another.
   *
   * @param gone pieces of other heads and of this one as it was chosen; more go here
   * @param moved what comes from another piece is added
   */
  Solution solution(Set<String> gone, List<FromStock.Moved> moved) {
    for (String piece : job.report().spoiled()) {
      gone.add(piece);
      for (int i = 0; i < given.size(); i++) {
        if (given.get(i).piece().id().equals(piece)) {
          replace(i, gone, moved);
        }
      }
    }
    if (best != null) {
      return built();
    }
    given = List.of();
    return divided == 0
        ? divided(1)
        : PileReport.refused(
            job,
            opening,
            "no number of stones that the widths allow can be had from the yard's pieces",
            "add pieces to the yard, or allow narrower stones",
            "write rhythm: even or graded, and the cutting plan takes what fits");
  }

  private void replace(int i, Set<String> gone, List<FromStock.Moved> moved) {
    Given g = given.get(i);
    Optional<Lying> p = holding(g.stone(), gone);
    if (p.isEmpty()) {
      best = null;
    } else {
      moved.add(new FromStock.Moved(taken(g).stone(), g.piece().id(), p.get().id()));
      given.set(i, new Given(g.stone(), g.copy(), p.get()));
      gone.add(p.get().id());
    }
  }

  private FromStock.Taken taken(Given g) {
    String mark = opening.mark() + "-" + g.stone().mark();
    return new FromStock.Taken(mark, g.copy(), g.piece().id(), extent(g.stone()));
  }

  /** The pieces of its stones; none where there is no head. */
  List<FromStock.Taken> taken() {
    return given.stream().map(this::taken).toList();
  }

  private Solution built() {
    long off = sawn(given);
    String said =
        "from the yard: "
            + opening.mark()
            + " is divided evenly, as a curved head is; of the "
            + divided
            + " numbers of stones that the widths allow this saws off least, "
            + PileReport.length(job, off);
    List<Remark> remarks = new ArrayList<>(best.remarks());
    remarks.add(new Remark("from-stock", said));
    return new Solution.Solved(
        new HeadLayout(
            opening,
            best.halfWidth(),
            best.stones(),
            best.joints(),
            best.curve(),
            new Proof(Proof.Status.BOUNDED, job.grid().ticks(off).mm(), 0, divided),
            remarks,
            best.asBuilt()));
  }
}
