package headcourse.layout.side;

import headcourse.units.Length;
import java.util.List;
import java.util.Optional;

/** Stones whose widths the job gives, one by one: there is one place for each, or none. */
final class GivenSolver implements SideSolver {
  private final FlatTerms terms;
  private final FlatGeometry geometry;
  private final long[] widths;
  private long effort;

  /** One side of a head with the widths of its stones from the key outwards. */
  GivenSolver(FlatHead head, List<Length> widths) {
    this.terms = head.terms();
    this.geometry = head.geometry();
    this.widths = widths.stream().mapToLong(w -> terms.job().grid().nearest(w)).toArray();
  }

  @Override
  public SideResult solve(List<SideCase> cases, long seed) {
    DividedSolver divided = new DividedSolver(terms, geometry, 0);
    DividedSolver.Fit best = null;
    for (SideCase c : cases) {
      SideCheck check = new SideCheck(terms, c.lines(), geometry.fanned());
      Blanks blanks = new Blanks(terms, geometry, c.lines());
      long last = foot(c.lines(), widths.length);
      for (End end : c.ends()) {
        effort++;
        if (end.foot() != last) {
          continue;
        }
        Choice choice =
            DividedSolver.check(c.lines(), end, widths.length, check, i -> foot(c.lines(), i));
        Optional<DividedSolver.Fit> fit = divided.fit(choice, check, blanks);
        if (fit.isPresent() && (best == null || fit.get().cost().compareDivided(best.cost()) < 0)) {
          best = fit.get();
        }
      }
    }
    return best == null
        ? SideResult.none(effort)
        : new SideResult(best.choice(), best.cost().shortfall(), best.cost().unfit(), 0, effort);
  }

  private long foot(Lines lines, int index) {
    long at = lines.start();
    for (int i = 0; i < index; i++) {
      at += terms.joint() + widths[i];
    }
    return at;
  }

  @Override
  public long effort() {
    return effort;
  }
}
