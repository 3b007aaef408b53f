package headcourse.stock;

import headcourse.stock.ChangeProblem.Found;
import java.util.List;

/**
 * The choice with the fewest changes to what was planned, and among those the cheapest: all choices
 * with no change, then all with one, and so on, until some come out.
 */
final class FewestChanges {
  private final List<ChangeProblem> ways;
  private final int beyond;
  private final long limit;
  private long steps;

  /**
   * @param ways the problem for each way in which keys may be: as planned first
   * @param beyond fewest changes in a way that is not among them; {@link Integer#MAX_VALUE} where
   *     there is no other
   * @param limit how many steps it may take
   */
  FewestChanges(List<ChangeProblem> ways, int beyond, long limit) {
    this.ways = List.copyOf(ways);
    this.beyond = beyond;
    this.limit = limit;
  }

  /**
   * What it came to.
   *
   * @param way number of the way
   * @param found the choice, or null
   * @param least no choice changes fewer
   * @param proved whether the choice is proved best; with none, whether there is none
   * @param steps how many steps it took
   */
  record Result(int way, Found found, int least, boolean proved, long steps) {}

  Result solve() {
    int least = ways.stream().mapToInt(FewestChanges::forced).min().orElse(0);
    int most = ways.stream().mapToInt(p -> p.free() ? 0 : p.all()).max().orElse(0);
    int sure = least;
    boolean all = true;
    for (int k = least; k <= most; k++) {
      all &= k < beyond;
      Found best = null;
      int way = -1;
      for (int v = 0; v < ways.size() && steps <= limit; v++) {
        if (forced(ways.get(v)) > k) {
          continue;
        }
        ChangeSearch search = new ChangeSearch(ways.get(v), best, limit - steps);
        all &= search.run(k);
        steps += search.steps();
        if (search.best() != best) {
          best = search.best();
          way = v;
        }
      }
      all &= steps <= limit;
      if (best != null || steps > limit) {
        return new Result(way, best, sure, all, steps);
      }
      sure = all ? k + 1 : sure;
    }
    return new Result(-1, null, sure, all && beyond > most, steps);
  }

  private static int forced(ChangeProblem p) {
    return p.free() ? 0 : p.forced();
  }
}
