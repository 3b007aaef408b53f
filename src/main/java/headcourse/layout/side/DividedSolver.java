package headcourse.layout.side;

import headcourse.job.HeadSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToLongFunction;

/**
 * The rhythms {@code even} and {@code graded}: looks at every end with every number of stones, and
 * keeps the one that lands with most certainty, then with fewest stones that fit no blank, then,
 * where the job asks for it, from fewest blanks, then the least by |mean − target|, then |bearing −
 * target|, then fewest stones.
 */
public final class DividedSolver implements SideSolver {
  private final FlatTerms terms;
  private final FlatGeometry geometry;
  private final long step;
  private long effort;

  /** Equal widths, or widths that grow by a step, 0 or more ticks. */
  public DividedSolver(FlatTerms terms, FlatGeometry geometry, long step) {
    this.terms = terms;
    this.geometry = geometry;
    this.step = step;
  }

  @Override
  public SideResult solve(List<SideCase> cases, long seed) {
    SideCost best = null;
    Choice found = null;
    long steps = 0;
    boolean byBlanks = terms.stones().prefer() == HeadSpec.Prefer.BLANKS;
    for (SideCase c : cases) {
      SideCheck check = new SideCheck(terms, c.lines(), geometry.fanned());
      Blanks blanks = new Blanks(terms, geometry, c.lines());
      long start = check.spare().start();
      for (End end : c.ends()) {
        CountRange counts = CountRange.of(terms, c.lines(), end);
        for (int n = counts.least(); n <= counts.most(); n++) {
          steps++;
          long least = Math.max(start, check.spare().end(n, end));
          if (best != null && least > best.shortfall()) {
            continue;
          }
          long lacking = blanks.matter() ? blanks.lacking(n, end) : 0;
          SideCost cost = SideCost.of(terms, c.lines(), end, n, least, lacking);
          cost = byBlanks ? cost.withBlanks(blanks.used(n, end)) : cost;
          if (best != null && cost.compareDivided(best) >= 0
              || !geometry.divides(c.lines(), end, n, step)) {
            continue;
          }
          Choice choice = check(c.lines(), end, n, check);
          SideCost whole = choice == null ? null : cost(choice, check, blanks, cost);
          if (whole != null && (best == null || whole.compareDivided(best) < 0)) {
            best = whole;
            found = choice;
          }
        }
      }
    }
    effort += steps;
    return best == null
        ? SideResult.none(steps)
        : new SideResult(found, best.shortfall(), best.unfit(), best.meanMm(), steps);
  }

  /**
   * A side that keeps every constraint.
   *
   * @param choice its stones
   * @param cost what it costs
   */
  public record Fit(Choice choice, SideCost cost) {}

  /** All that there are: every end with every number of stones. */
  public List<Fit> all(List<SideCase> cases) {
    List<Fit> all = new ArrayList<>();
    for (SideCase c : cases) {
      SideCheck check = new SideCheck(terms, c.lines(), geometry.fanned());
      Blanks blanks = new Blanks(terms, geometry, c.lines());
      for (End end : c.ends()) {
        CountRange counts = CountRange.of(terms, c.lines(), end);
        for (int n = counts.least(); n <= counts.most(); n++) {
          if (geometry.divides(c.lines(), end, n, step)) {
            fit(check(c.lines(), end, n, check), check, blanks).ifPresent(all::add);
          }
        }
      }
    }
    effort += all.size();
    return all;
  }

  /** What a choice costs; none where there is no choice. */
  Optional<Fit> fit(Choice choice, SideCheck check, Blanks blanks) {
    if (choice == null) {
      return Optional.empty();
    }
    int n = choice.count();
    long least = Math.max(check.spare().start(), check.spare().end(n, choice.end()));
    long lacking = blanks.matter() ? blanks.lacking(n, choice.end()) : 0;
    SideCost cost = SideCost.of(terms, choice.lines(), choice.end(), n, least, lacking);
    return Optional.of(new Fit(choice, cost(choice, check, blanks, cost)));
  }

  /** With what its joints want, and its stones that are too long. */
  private SideCost cost(Choice choice, SideCheck check, Blanks blanks, SideCost cost) {
    long shortfall = cost.shortfall();
    long tooLong = 0;
    long inner = choice.lines().start();
    for (int i = 1; i < cost.count(); i++) {
      long foot = choice.feet()[i - 1];
      shortfall = Math.max(shortfall, check.spare().joint(i, foot));
      tooLong += blanks.tooLong(i, inner, foot) ? 1 : 0;
      inner = foot;
    }
    tooLong += blanks.tooLong(cost.count(), inner, choice.end()) ? 1 : 0;
    return cost.with(shortfall, blanks.unfit(tooLong, cost.unfit()));
  }

  @Override
  public long effort() {
    return effort;
  }

  /** From the end inwards, because what fails does so at the jamb first. */
  private Choice check(Lines lines, End end, int count, SideCheck check) {
    return check(lines, end, count, check, i -> geometry.divided(lines, end, count, step, i));
  }

  /** Feet of the joints between stones whose number runs from 1, or null where they can't be. */
  static Choice check(Lines lines, End end, int count, SideCheck check, IntToLongFunction at) {
    long[] feet = new long[count - 1];
    long outer = end.foot();
    for (int i = count - 1; i >= 0; i--) {
      long foot = i == 0 ? lines.start() : at.applyAsLong(i);
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
