package headcourse.layout.fitted;

import headcourse.job.Fitted;
import headcourse.layout.HeadLayout;
import headcourse.layout.Proof;
import headcourse.layout.Side;
import headcourse.layout.fitted.CutStonesComposer.Drawn;
import headcourse.layout.side.Choice;
import headcourse.layout.side.CutStones;
import headcourse.layout.side.End;
import headcourse.layout.side.FlatHead;
import headcourse.layout.side.FlatTerms;
import headcourse.layout.side.Lines;
import headcourse.layout.side.RestLines;
import headcourse.layout.side.SideCase;
import headcourse.layout.side.SideCost;
import headcourse.layout.side.SideResult;
import headcourse.layout.side.SideSolver;
import headcourse.layout.side.SidesSolver;
import headcourse.layout.side.SidesSolver.Pair;
import headcourse.layout.side.Spare;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Solves a head around stones that are cut already. They stand as they were measured, from the key
 * outwards. A side on which nothing differs from the drawing stays as drawn. Elsewhere fewest
 * stones are cut otherwise than drawn: if all that are left may keep their widths and stand a
 * little farther out or in, they do; else what is left is solved by the same rhythm and the same
 * constraints.
 */
public final class FittedSolver {
  private final FlatHead head;
  private final FlatTerms terms;
  private final List<Fitted> fitted;
  private final Drawn drawn;
  private final CutStonesComposer composer;
  private final FittedHead made;
  private long effort;

  /** For a head whose drawing may be missing (null). */
  public FittedSolver(FlatHead head, List<Fitted> fitted, Drawn drawn) {
    this.head = head;
    this.terms = head.terms();
    this.fitted = fitted;
    this.drawn = drawn;
    this.composer = new CutStonesComposer(head, fitted, drawn);
    this.made = new FittedHead(head, fitted, drawn);
  }

  /** What solving took; see {@link SideSolver#effort}. */
  public long effort() {
    return effort;
  }

  /** The head, or null where there is none. */
  public HeadLayout solve() {
    Pair best = null;
    for (double striking : strikings()) {
      Pair solved = solve(striking);
      if (solved != null && (best == null || solved.sounder(best))) {
        best = solved;
      }
      if (best != null && best.sound()) {
        break;
      }
    }
    return best == null ? null : built(best);
  }

  /** Depths of the striking point that may serve both sides; the drawing's where there is one. */
  private List<Double> strikings() {
    if (!head.geometry().fanned()) {
      return List.of(Double.NaN);
    }
    if (drawn != null) {
      return List.of(drawn.left().lines().striking());
    }
    long target = terms.bearing().target().picometres();
    return head.cases(terms.both(), Double.NaN).stream()
        .sorted(Comparator.comparingLong(c -> Math.abs(c.ends().get(0).bearing() - target)))
        .map(c -> c.lines().striking())
        .distinct()
        .toList();
  }

  private Pair solve(double striking) {
    Pair alike = null;
    if (alike(striking)) {
      Way both = new Way(head, terms.both(), Side.LEFT, striking);
      SideResult left = side(both);
      alike = left == null ? null : new Pair(left, twin(left));
      if (alike != null && (!terms.lopsided() || alike.sound())) {
        return alike;
      }
    }
    Pair apart = apart(striking);
    return alike == null || apart != null && apart.sounder(alike) ? apart : alike;
  }

  private Pair apart(double striking) {
    SideResult left = side(new Way(head.alone(terms.left()), terms.left(), Side.LEFT, striking));
    if (left == null) {
      return null;
    }
    SideResult right =
        side(new Way(head.alone(terms.right()), terms.right(), Side.RIGHT, striking));
    return right == null ? null : new Pair(left, right);
  }

  /**
   * One side to be solved.
   *
   * @param own the head as that side sees it
   * @param terms what the side must keep to
   * @param side which
   * @param striking depth of the striking point, or NaN
   */
  private record Way(FlatHead own, FlatTerms.SideTerms terms, Side side, double striking) {
    List<SideCase> cases() {
      return own.cases(terms, striking);
    }
  }

  /** Whether both sides begin alike and may go on alike. */
  private boolean alike(double striking) {
    if (!SidesSolver.alike(terms) || drawn != null && drawn.left() != drawn.right()) {
      return false;
    }
    List<SideCase> cases = head.cases(terms.both(), striking);
    if (cases.isEmpty()) {
      return false;
    }
    CutStones left = composer.compose(Side.LEFT, cases.get(0).lines(), false);
    CutStones right = composer.compose(Side.RIGHT, cases.get(0).lines(), false);
    return left != null && right != null && left.alike(right);
  }

  /** The right side like the left one, with its own stones. */
  private SideResult twin(SideResult left) {
    Choice c = left.choice();
    Lines all = c.lines() instanceof RestLines r ? r.all() : c.lines();
    CutStones own = composer.compose(Side.RIGHT, all, c.end() == null);
    return new SideResult(c.after(own), left.shortfall(), left.unfit(), left.cost(), 0);
  }

  private SideResult side(Way way) {
    Side side = way.side();
    int n = CutStonesComposer.count(fitted, side);
    if (drawn != null) {
      CutStones cut = composer.compose(side, drawn.on(side).lines(), false);
      if (cut != null && cut.asDrawn() && n <= drawn.on(side).count()) {
        Choice choice = drawn.on(side);
        long wanting =
            n == choice.count()
                ? 0
                : Spare.of(
                    way.own().terms(),
                    way.own().fanned(),
                    new Choice(
                        made.rest(choice.lines(), cut),
                        choice.end(),
                        Arrays.copyOfRange(choice.feet(), n, choice.feet().length)));
        double cost = drawn.head().proof().cost();
        return new SideResult(made.asDrawn(choice, cut), wanting, 0, cost, 0);
      }
    }
    boolean wholeFirst = n > 0 && (drawn == null || drawn.on(side).count() <= n);
    SideResult whole = wholeFirst ? whole(way) : null;
    SideResult rest = whole == null ? rest(way) : null;
    if (whole == null && rest == null && !wholeFirst) {
      whole = whole(way);
    }
    return whole != null ? whole : rest;
  }

  /** The side solved from its last fitted stone outwards, or null. */
  private SideResult rest(Way way) {
    FlatHead own = way.own();
    Side side = way.side();
    int n = CutStonesComposer.count(fitted, side);
    Integer each = terms.stones().eachSide();
    if (each != null && each <= n) {
      return null;
    }
    List<SideCase> cases = new ArrayList<>();
    List<CutStones> cuts = new ArrayList<>();
    for (SideCase c : way.cases()) {
      CutStones cut = composer.compose(side, c.lines(), false);
      if (cut == null || !made.stand(own, c.lines(), cut, n)) {
        continue;
      }
      RestLines lines = made.rest(c.lines(), cut);
      List<End> ends = c.ends().stream().filter(e -> e.foot() > lines.start()).toList();
      if (!ends.isEmpty()) {
        cases.add(new SideCase(lines, ends));
        cuts.add(cut);
      }
    }
    SideResult shifted = null;
    for (int i = 0; i < cases.size() && shifted == null; i++) {
      Choice moved = ShiftedSide.of(own, cases.get(i), drawn == null ? null : drawn.on(side), n);
      if (moved != null) {
        long wanting = Spare.of(own.terms(), own.fanned(), moved);
        SideCost cost =
            SideCost.of(own.terms(), moved.lines(), moved.end(), moved.count(), wanting, 0);
        shifted = new SideResult(moved.after(cuts.get(i)), wanting, 0, cost.meanMm(), 1);
      }
    }
    if (shifted != null && shifted.shortfall() == 0) {
      return shifted;
    }
    SideSolver solver = SidesSolver.solverOf(own.over(own.terms().after(n)));
    SideResult found = solver.solve(cases, way.terms().seed());
    effort += solver.effort();
    if (found.choice() == null || shifted != null && shifted.shortfall() <= found.shortfall()) {
      return shifted;
    }
    int at = 0;
    while (cases.get(at).lines() != found.choice().lines()) {
      at++;
    }
    return new SideResult(
        found.choice().after(cuts.get(at)),
        found.shortfall(),
        found.unfit(),
        found.cost(),
        found.steps());
  }

  /** The side made up of fitted stones alone, or null where they don't end as they must. */
  private SideResult whole(Way way) {
    FlatHead own = way.own();
    Side side = way.side();
    int n = CutStonesComposer.count(fitted, side);
    Integer each = terms.stones().eachSide();
    if (n == 0 || each != null && each != n) {
      return null;
    }
    for (SideCase c : way.cases()) {
      CutStones cut = composer.compose(side, c.lines(), true);
      if (cut != null
          && made.stand(own, c.lines(), cut, n - 1)
          && made.ends(own.terms(), way.terms(), cut)) {
        return new SideResult(Choice.whole(c.lines(), cut), 0, 0, 0, 1);
      }
    }
    return null;
  }

  private HeadLayout built(Pair pair) {
    SideResult left = pair.left();
    SideResult right = pair.right();
    Proof proof = left.steps() + right.steps() == 0 ? drawn.head().proof() : pair.proof();
    return made.build(left.choice(), right.choice(), proof);
  }
}
