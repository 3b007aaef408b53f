package headcourse.layout.flat;

import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.Arrangement;
import headcourse.layout.HeadShape;
import headcourse.layout.side.Choice;
import headcourse.layout.side.CountRange;
import headcourse.layout.side.DividedSolver;
import headcourse.layout.side.End;
import headcourse.layout.side.FlatHead;
import headcourse.layout.side.FlatTerms;
import headcourse.layout.side.SideCase;
import headcourse.layout.side.SideCost;
import headcourse.layout.side.SideResult;
import headcourse.layout.side.SidesSolver;
import headcourse.layout.side.SidesSolver.Pair;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * All arrangements of a flat head: for even and graded stones every number with every width on the
 * grid, both sides alike; for mixed ones the best of each number. Where the solver itself would set
 * the two sides apart, because alike they don't land or can't be cut, its answer is one more.
 */
final class FlatArrangements {
  private final FlatHead head;
  private final FlatTerms terms;
  private final List<DividedSolver.Fit> kept = new ArrayList<>();

  private FlatArrangements(FlatHead head) {
    this.head = head;
    this.terms = head.terms();
  }

  static List<Arrangement> of(FlatShape shape, Job job, Opening opening) {
    HeadSpec.Rhythm rhythm = opening.head().stones().rhythm();
    FlatReading reading = shape.read(job, opening);
    if (rhythm == HeadSpec.Rhythm.FROM_STOCK || reading.head() == null) {
      return List.of();
    }
    return rhythm == HeadSpec.Rhythm.MIXED
        ? mixed(shape, reading.head(), job, opening)
        : new FlatArrangements(reading.head()).divided();
  }

  private List<Arrangement> divided() {
    DividedSolver solver = new DividedSolver(terms, head.geometry(), terms.widths().step());
    List<DividedSolver.Fit> fits = solver.all(head.cases(terms.both(), Double.NaN));
    fits.sort(
        Comparator.comparing(DividedSolver.Fit::cost, SideCost::compareDivided)
            .thenComparingLong(f -> f.choice().end().foot()));
    for (DividedSolver.Fit f : fits) {
      if (kept.stream().noneMatch(k -> asWide(k.choice(), f.choice()))) {
        kept.add(f);
      }
    }
    List<Arrangement> all = new ArrayList<>();
    boolean sound = false;
    for (DividedSolver.Fit f : kept) {
      SideResult both =
          new SideResult(
              f.choice(), f.cost().shortfall(), f.cost().unfit(), f.cost().meanMm(), kept.size());
      sound |= both.sound();
      all.add(arrangement(head, new Pair(both, both)));
    }
    if (!sound) {
      Pair own = new SidesSolver(head).pair();
      if (own != null && own.left() != own.right()) {
        all.add(arrangement(head, own));
      }
    }
    return all;
  }

  private static List<Arrangement> mixed(FlatShape shape, FlatHead any, Job job, Opening o) {
    int least = Integer.MAX_VALUE;
    int most = 0;
    for (FlatTerms.SideTerms side : List.of(any.terms().left(), any.terms().right())) {
      for (SideCase c : any.alone(side).cases(side, Double.NaN)) {
        for (End end : c.ends()) {
          CountRange range = CountRange.of(any.terms(), c.lines(), end);
          least = Math.min(least, range.least());
          most = Math.max(most, range.most());
        }
      }
    }
    List<Arrangement> all = new ArrayList<>();
    for (int n = least; n <= most; n++) {
      FlatHead counted = shape.read(job, HeadShape.withEachSide(o, n)).head();
      Pair pair = new SidesSolver(counted).pair();
      if (pair != null) {
        all.add(arrangement(counted, pair));
      }
    }
    return all;
  }

  private static Arrangement arrangement(FlatHead head, Pair pair) {
    Choice left = pair.left().choice();
    Choice right = pair.right().choice();
    long lap = Math.min(lap(head, left), lap(head, right));
    return new Arrangement(
        widths(head.terms(), left),
        widths(head.terms(), right),
        false,
        new Length(pair.shortfall()),
        head.terms().length(Math.max(0, 2 * left.lines().startSoffit())),
        head.terms().length(Math.max(0, 2 * left.lines().startTop())),
        new Length(lap),
        () -> head.build(left, right, pair.proof(), List.of()));
  }

  private static List<Length> widths(FlatTerms terms, Choice c) {
    List<Length> widths = new ArrayList<>();
    long inner = c.lines().start();
    for (int i = 0; i < c.count(); i++) {
      long outer = i == c.feet().length ? c.end().foot() : c.feet()[i];
      widths.add(terms.length(outer - inner - terms.joint()));
      inner = outer;
    }
    return widths;
  }

  /** The least distance of a joint from the jamb line, between running marks, pm. */
  private static long lap(FlatHead head, Choice c) {
    FlatTerms terms = head.terms();
    long least = Long.MAX_VALUE;
    for (int i = 0; i < c.count(); i++) {
      long foot = i == 0 ? c.lines().startSoffit() : c.lines().soffit(i, c.feet()[i - 1]);
      long inside = -terms.pastNear(foot + terms.joint());
      least = Math.min(least, inside >= 0 ? inside : terms.pastFar(foot));
    }
    boolean springs = c.end().inward() == End.FIXED;
    return Math.max(0, springs ? least : Math.min(least, terms.pastFar(c.end().soffit())));
  }

  /** Whether as many stones are, in the mean, less than a step of the grid wider or narrower. */
  private static boolean asWide(Choice a, Choice b) {
    long by = a.end().foot() - a.lines().start() - b.end().foot() + b.lines().start();
    return a.count() == b.count() && Math.abs(by) < a.count();
  }
}
