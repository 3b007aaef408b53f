package headcourse.bench.builds;

import java.util.ArrayList;
import java.util.List;

/** Plans of heads in which only what a test is about goes wrong. */
public final class Plans {
  private Plans() {}

  /** A side of so many stones, each 200 mm wide, checked after the key and every third stone. */
  public static BuildSide side(int stones, boolean alike) {
    List<BuildSide.Stone> list = new ArrayList<>();
    List<BuildSide.Check> checks = new ArrayList<>();
    for (int i = 0; i < stones; i++) {
      list.add(new BuildSide.Stone(100 + 200 * i, 300 + 200 * i, alike ? 1 : 1 + i));
      if (i % 3 == 0) {
        checks.add(new BuildSide.Check(i, i + 1, Math.min(3, stones - i)));
      }
    }
    double end = 100 + 200.0 * stones;
    return new BuildSide(100, list, checks, end - 100, 60, 140, false);
  }

  /** A dry head of two such sides beside a key, with errors. */
  public static BuildPlan dry(int stones, boolean alike, Errors errors) {
    return plan(stones, alike, errors, -1);
  }

  /** The same in mortar joints 10 mm wide. */
  public static BuildPlan mortar(int stones, boolean alike, Errors errors) {
    return plan(stones, alike, errors, 10);
  }

  private static BuildPlan plan(int stones, boolean alike, Errors errors, double mortar) {
    BuildSide side = side(stones, alike);
    return new BuildPlan(
        true, 0, alike ? 2 : 1 + stones, side, side, errors, mortar, 3.175, 40, 1.5875);
  }

  /** Ordinary care. */
  public static Errors ordinary() {
    double sixtyFourth = 25.4 / 64;
    return new Errors(
        sixtyFourth, sixtyFourth, sixtyFourth, sixtyFourth, 2 * sixtyFourth, 4 * sixtyFourth);
  }
}
