package headcourse.layout.flat;

import java.util.List;

/**
 * The rhythms {@code even} and {@code graded}: looks at every end with every number of stones, and
 * keeps the least by |mean − target|, then |bearing − target|, then fewest stones.
 */
final class DividedSolver implements SideSolver {
  private final FlatTerms terms;
  private final FlatGeometry geometry;
  private final long step;
  private long effort;

  DividedSolver(FlatTerms terms, FlatGeometry geometry, long step) {
    this.terms = terms;
    this.geometry = geometry;
    this.step = step;
  }

  @Override
  public SideResult solve(List<SideCase> cases, long seed) {
    SideCost best = null;
    Choice found = null;
    long steps = 0;
    for (SideCase c : cases) {
      SideCheck check = new SideCheck(terms, c.lines(), geometry.fanned());
      for (End end : c.ends()) {
        CountRange counts = CountRange.of(terms, c.lines(), end);
        for (int n = counts.least(); n <= counts.most(); n++) {
          steps++;
          SideCost cost = SideCost.of(terms, c.lines(), end, n);
          if (best != null && cost.compareDivided(best) >= 0) {
            continue;
          }
          Choice choice = check(c.lines(), end, n, check);
          if (choice != null) {
            best = cost;
            found = choice;
          }
        }
      }
    }
    effort += steps;
    return new SideResult(found, best == null ? 0 : best.meanMm(), steps);
  }

  @Override
  public long effort() {
    return effort;
  }

  /** From the end inwards, because what fails does so at the jamb first. */
  private Choice check(Lines lines, End end, int count, SideCheck check) {
    if (!geometry.divides(lines, end, count, step)) {
      return null;
    }
    long[] feet = new long[count - 1];
    long outer = end.foot();
    for (int i = count - 1; i >= 0; i--) {
      long foot = i == 0 ? lines.start() : geometry.divided(lines, end, count, step, i);
      boolean fits =
          i == count - 1 ? check.endFits(count, foot, end) : check.stoneFits(i + 1, foot, outer);
      if (!fits || i > 0 && !check.jointStands(i, foot)) {
        return null;
      }
      if (i > 0) {
        feet[i - 1] = foot;
      }
      outer = foot;
    }
    return new Choice(lines, end, feet);
  }
}
