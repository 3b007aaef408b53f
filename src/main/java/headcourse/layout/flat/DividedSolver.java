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
    return new SideResult(found, best == null ? 0 : best.meanMm(), steps);
  }

  private Choice check(Lines lines, End end, int count, SideCheck check) {
    long[] feet = geometry.divided(lines, end, count, step);
    if (feet == null) {
      return null;
    }
    long inner = lines.start();
    for (int i = 1; i < count; i++) {
      if (!check.jointStands(i, feet[i - 1]) || !check.stoneFits(i, inner, feet[i - 1])) {
        return null;
      }
      inner = feet[i - 1];
    }
    return check.endFits(count, inner, end) ? new Choice(lines, end, feet) : null;
  }
}
