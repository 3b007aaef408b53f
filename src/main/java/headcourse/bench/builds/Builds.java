package headcourse.bench.builds;

import java.util.Arrays;

/**
 * Builds a head many times. Each build draws an error for the key's place, the opening's width,
 * each saw setting, each cut, each joint and each reading, and is gone through twice: measured and
 * corrected on the way, and not.
 */
public final class Builds {
  /** Closer than this is on the limit, mm. */
  static final double SAME = 1e-6;

  private final BuildPlan plan;
  private final SplitMix from;
  private final Walk first;
  private final Walk second;
  private final double[] fence;

  /** Where an edge begins this time, and what the opening is off. */
  private double key;

  private double half;
  private double site;

  /** Builds of a head; the same plan gives the same ones. */
  Builds(BuildPlan plan) {
    this.plan = plan;
    from = new SplitMix(plan.digest());
    first = new Walk(plan, plan.first());
    second = new Walk(plan, plan.second());
    fence = new double[plan.settings()];
  }

  /**
   * Builds a head so many times.
   *
   * @param plan the head
   * @param builds how many times, at least 1
   */
  public static Tally run(BuildPlan plan, int builds) {
    Builds b = new Builds(plan);
    int checked = 0;
    int unchecked = 0;
    double[] near = new double[builds];
    double[] inside = new double[builds];
    double[] outside = new double[builds];
    for (int i = 0; i < builds; i++) {
      b.draw();
      if (b.build(true)) {
        checked++;
      }
      near[i] = Math.max(b.first.near, b.second.near);
      inside[i] = Math.max(b.first.inside, b.second.inside);
      outside[i] = Math.max(b.first.outside, b.second.outside);
      if (b.build(false)) {
        unchecked++;
      }
    }
    return new Tally(builds, checked, unchecked, miss(near), miss(inside), miss(outside));
  }

  private static Tally.Miss miss(double[] by) {
    Arrays.sort(by);
    int some = by.length;
    while (some > 0 && by[some - 1] > SAME) {
      some--;
    }
    int most = by.length - 1 - by.length / 100;
    return new Tally.Miss(by.length - some, by[most] > SAME ? by[most] : 0);
  }

  /** Draws the errors of the next build. */
  void draw() {
    Errors e = plan.errors();
    site = e.site() * Ziggurat.NORMAL.either(from);
    key = e.key() * Ziggurat.NORMAL.either(from);
    for (int s = 0; s < fence.length; s++) {
      fence[s] = e.fence() * Ziggurat.NORMAL.either(from);
    }
    if (!plan.keyed()) {
      half = Walk.held(plan, Walk.joint(plan, from)) / 2;
    } else if (plan.keySetting() == BuildSide.KNOWN) {
      half = 0;
    } else {
      half = (fence[plan.keySetting()] + e.cut() * Ziggurat.NORMAL.either(from)) / 2;
    }
    first.draw(from, fence);
    second.draw(from, fence);
  }

  /** Goes through the build drawn; whether it lands on both sides. */
  boolean build(boolean checking) {
    boolean one = first.build(half + key, plan.first().jamb() + site / 2, checking);
    boolean other = second.build(half - key, plan.second().jamb() + site / 2, checking);
    return one && other;
  }

  /** How far the end of the first side stands off its place after {@link #build}, mm. */
  double firstEnd() {
    return first.end;
  }

  /** The same of the second side. */
  double secondEnd() {
    return second.end;
  }
}
