package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.bench.Rake;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.HeadLayout;
import headcourse.layout.PlacedStone;
import headcourse.layout.Solution;
import headcourse.layout.shapes.Shapes;
import headcourse.units.Angle;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Heads as the solvers set them out, with plain pieces: no slots, no cuts. */
final class SolvedHeads {
  private SolvedHeads() {}

  /** Every head of a job, or empty where one can't be set out. */
  static Optional<List<HeadWork>> of(Job job) {
    List<HeadWork> heads = new ArrayList<>();
    for (Opening o : job.openings()) {
      Solution s = Shapes.named(o.head().shape()).orElseThrow().setOut(job, o);
      if (!(s instanceof Solution.Solved solved)) {
        return Optional.empty();
      }
      heads.add(work(job, solved.head()));
    }
    return Optional.of(heads);
  }

  private static HeadWork work(Job job, HeadLayout layout) {
    List<Piece> pieces = new ArrayList<>();
    for (PlacedStone s : layout.stones()) {
      pieces.add(piece(job, layout.opening(), s, pieces.size() + 1));
    }
    return new HeadWork(layout, pieces, List.of());
  }

  private static Piece piece(Job job, Opening opening, PlacedStone s, int order) {
    Rake square = new Rake(Angle.degrees(0), Length.ZERO, s.height(), Rake.LongPoint.NEITHER);
    double area = s.outline().area() / 1e6;
    double volume = area * job.stone().thickness().mm() / 1000;
    return new Piece(
        opening.mark() + "-" + s.mark(),
        s,
        order,
        s.height(),
        s.height(),
        s.height(),
        s.height(),
        square,
        square,
        job.stone().thickness(),
        Length.ZERO,
        Length.ZERO,
        0,
        s.bottom(),
        area,
        volume,
        volume * job.stone().density(),
        volume * job.stone().liftingDensity(),
        s.outline().bounds().centre(),
        0,
        List.of(),
        List.of(),
        List.of(),
        order);
  }
}
