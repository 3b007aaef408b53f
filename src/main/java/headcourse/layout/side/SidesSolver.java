package headcourse.layout.side;

import headcourse.job.HeadSpec;
import headcourse.layout.Proof;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Chooses both sides: alike, or each by itself where mixed widths need not mirror. */
public final class SidesSolver {
  private final FlatHead head;
  private final FlatTerms terms;
  private final OneSide middle;
  private final OneSide left;
  private final OneSide right;

  /** For both sides of a head. */
  public SidesSolver(FlatHead head) {
    this.head = head;
    this.terms = head.terms();
    this.middle = OneSide.of(head);
    this.left = terms.lopsided() ? OneSide.of(head.alone(terms.left())) : middle;
    this.right = terms.lopsided() ? OneSide.of(head.alone(terms.right())) : middle;
  }

  /** What solving took; see {@link SideSolver#effort}. */
  public long effort() {
    return middle.solver().effort()
        + (terms.lopsided() ? left.solver().effort() + right.solver().effort() : 0);
  }

  /**
   * Both sides as solved.
   *
   * @param left the left
   * @param right the right; the very same where they are alike
   */
  public record Pair(SideResult left, SideResult right) {
    /** That both are the best there are. */
    public Proof proof() {
      double cost = Math.max(left.cost(), right.cost());
      long steps = left.steps() + (left == right ? 0 : right.steps());
      return new Proof(Proof.Status.OPTIMAL, cost, cost, steps, new Length(shortfall()));
    }

    /** What the worse side wants of spare to land, pm. */
    public long shortfall() {
      return Math.max(left.shortfall(), right.shortfall());
    }

    private long unfit() {
      return Math.max(left.unfit(), right.unfit());
    }

    /** Whether both land and can be cut. */
    public boolean sound() {
      return left.sound() && right.sound();
    }

    /** Whether it lands with more certainty than another, or can better be cut. */
    public boolean sounder(Pair o) {
      int by = Long.compare(shortfall(), o.shortfall());
      return by < 0 || by == 0 && unfit() < o.unfit();
    }
  }

  /** Both sides, or null where there is no head. */
  public Pair pair() {
    HeadSpec.Widths widths = terms.stones().widths();
    if (widths != null) {
      return given(widths);
    }
    if (alike(terms)) {
      // The sides differ by their walls alone, so what the shorter allows serves both, and where
      // it allows nothing there is no head, but where one jamb stands nearer than the other.
      SideResult both = middle.side(terms.both(), Double.NaN, SideCheck.ANY);
      Pair alike = both.choice() == null ? null : new Pair(both, both);
      if (!terms.lopsided() || alike != null && alike.sound()) {
        return alike;
      }
      Pair apart = apart();
      return alike == null || apart != null && apart.sounder(alike) ? apart : alike;
    }
    return apart();
  }

  /** With the widths that the job gives. */
  private Pair given(HeadSpec.Widths widths) {
    if (widths.alike()) {
      SideResult both =
          new GivenSolver(head, widths.left()).solve(head.cases(terms.both(), Double.NaN), 0);
      return both.choice() == null ? null : new Pair(both, both);
    }
    SideResult one =
        new GivenSolver(left.head(), widths.left())
            .solve(left.head().cases(terms.left(), Double.NaN), 0);
    if (one.choice() == null) {
      return null;
    }
    double striking = head.fanned() ? one.choice().lines().striking() : Double.NaN;
    SideResult two =
        new GivenSolver(right.head(), widths.right())
            .solve(right.head().cases(terms.right(), striking), 0);
    return two.choice() == null ? null : new Pair(one, two);
  }

  /** Whether both sides are alike where they can be. */
  public static boolean alike(FlatTerms terms) {
    return terms.stones().mirror() || terms.stones().rhythm() != HeadSpec.Rhythm.MIXED;
  }

  /**
   * Each side by itself. One striking point serves both; the side with the shorter wall settles it,
   * by its best choice, or where the other can't live or doesn't land with that, by the one with
   * which both land best.
   */
  private Pair apart() {
    boolean leftFirst = terms.left().wall() <= terms.right().wall();
    OneSide one = leftFirst ? left : right;
    FlatTerms.SideTerms first = leftFirst ? terms.left() : terms.right();
    FlatTerms.SideTerms second = leftFirst ? terms.right() : terms.left();
    List<SideCase> cases = one.head().cases(first, Double.NaN);
    Pair pair = pair(one.solver().solve(cases, first.seed()), second, leftFirst, SideCheck.ANY);
    if (pair != null && pair.sound() || cases.size() < 2) {
      return pair;
    }
    long target = terms.bearing().target().picometres();
    List<SideCase> nearest = new ArrayList<>(cases);
    nearest.sort(Comparator.comparingLong(c -> Math.abs(c.ends().get(0).bearing() - target)));
    for (SideCase c : nearest) {
      long most = pair == null ? SideCheck.ANY : pair.shortfall();
      SideResult alone = one.solver().solve(List.of(c), first.seed(), most);
      Pair other = pair(alone, second, leftFirst, most);
      if (other != null && (pair == null || other.sounder(pair))) {
        pair = other;
      }
      if (pair != null && pair.sound()) {
        return pair;
      }
    }
    return pair;
  }

  private Pair pair(SideResult one, FlatTerms.SideTerms second, boolean leftFirst, long most) {
    if (one.choice() == null) {
      return null;
    }
    double striking = one.choice().lines().striking();
    OneSide other = leftFirst ? right : left;
    SideResult two = other.side(second, head.geometry().fanned() ? striking : Double.NaN, most);
    if (two.choice() == null) {
      return null;
    }
    return leftFirst ? new Pair(one, two) : new Pair(two, one);
  }

  private record OneSide(FlatHead head, SideSolver solver) {
    static OneSide of(FlatHead head) {
      return new OneSide(head, solverOf(head));
    }

    SideResult side(FlatTerms.SideTerms side, double striking, long most) {
      return solver.solve(head.cases(side, striking), side.seed(), most);
    }
  }

  /** What chooses the stones of one side of a head. */
  public static SideSolver solverOf(FlatHead head) {
    return head.terms().stones().rhythm() == HeadSpec.Rhythm.MIXED
        ? new MixedSolver(head.terms(), head.geometry())
        : new DividedSolver(head.terms(), head.geometry(), head.terms().widths().step());
  }
}
