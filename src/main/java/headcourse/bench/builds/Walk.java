package headcourse.bench.builds;

/** One side being built: what its errors are this time, and where its edges come to stand. */
final class Walk {
  private final BuildPlan plan;
  private final BuildSide side;
  private final int count;
  private final double[] inner;
  private final double[] outer;
  private final int[] setting;
  private final int[] after;
  private final double[] wide;
  private final double[] joint;
  private final double[] read;
  private final double[] again;
  private final double[] trim;

  /** How far a joint stood too near the jamb line, the end fell short, went too far; mm. */
  double near;

  double inside;
  double outside;

  /** How far the end stands off its place, outwards. */
  double end;

  Walk(BuildPlan plan, BuildSide side) {
    this.plan = plan;
    this.side = side;
    count = side.stones().size();
    inner = new double[count + 1];
    outer = new double[count + 1];
    setting = new int[count + 1];
    outer[0] = side.keyEdge();
    for (int i = 1; i <= count; i++) {
      BuildSide.Stone s = side.stones().get(i - 1);
      inner[i] = s.inner();
      outer[i] = s.outer();
      setting[i] = s.setting();
    }
    int checks = side.checks().size();
    after = side.checks().stream().mapToInt(BuildSide.Check::after).toArray();
    wide = new double[count + 1];
    joint = new double[count + 1];
    read = new double[checks];
    again = new double[checks];
    trim = new double[count + 1];
  }

  /** Draws its errors. */
  void draw(SplitMix from, double[] fence) {
    Errors e = plan.errors();
    for (int i = 1; i <= count; i++) {
      wide[i] = setting[i] < 0 ? 0 : fence[setting[i]] + e.cut() * Ziggurat.NORMAL.either(from);
    }
    // The middle joint of a head without a key is drawn once for both sides.
    for (int j = plan.keyed() ? 0 : 1; j < count; j++) {
      joint[j] = joint(plan, from);
    }
    for (int c = 0; c < read.length; c++) {
      read[c] = e.read() * Ziggurat.NORMAL.either(from);
      again[c] = e.cut() * Ziggurat.NORMAL.either(from);
    }
  }

  /** What a joint is off its width, before anything is made up in it. */
  static double joint(BuildPlan plan, SplitMix from) {
    double f = plan.errors().joint();
    return plan.dry() ? f * Ziggurat.EXPONENTIAL.draw(from) : f * Ziggurat.NORMAL.either(from);
  }

  /** A mortar joint is never more than so much off, and never thinner than nothing. */
  static double held(BuildPlan plan, double off) {
    if (plan.dry()) {
      return off;
    }
    return Math.max(-Math.min(plan.mostJoint(), plan.mortar()), Math.min(plan.mostJoint(), off));
  }

  /**
   * Builds it.
   *
   * @param begin how far the edge it begins at stands off its place, outwards
   * @param jamb where the jamb line stands
   * @param checking whether it is measured and corrected on the way
   * @return whether it lands
   */
  boolean build(double begin, double jamb, boolean checking) {
    java.util.Arrays.fill(trim, 0);
    near = 0;
    double off = begin;
    double more = 0;
    int over = 0;
    int c = 0;
    for (int j = 0; j < count; j++) {
      if (checking && c < after.length && after[c] == j) {
        BuildSide.Check check = side.checks().get(c);
        double seen = off + read[c];
        over = 0;
        if (seen > plan.allowed() && check.trims() > 0) {
          trim[check.trims()] += seen - again[c];
        } else if (seen < -plan.allowed()) {
          over = check.opens();
          more = -seen / over;
        }
        c++;
      }
      double edge = outer[j] + off;
      if (j > 0 || plan.keyed()) {
        off += held(plan, over > 0 ? joint[j] + more : joint[j]);
        over--;
      }
      double next = inner[j + 1] + off;
      double miss = Math.min(next - (jamb - plan.clear()), jamb + plan.clear() - edge);
      near = Math.max(near, miss);
      off += wide[j + 1] - trim[j + 1];
    }
    end = off;
    if (side.closes()) {
      // Too long is trimmed to the skewback, which moves with the jamb; too short leaves a gap.
      inside = Math.max(0, side.least() - (off - (jamb - side.jamb())));
      outside = 0;
    } else {
      double bears = outer[count] + off - jamb;
      inside = Math.max(0, side.least() - bears);
      outside = Math.max(0, bears - side.most());
    }
    return near <= Builds.SAME && inside <= Builds.SAME && outside <= Builds.SAME;
  }
}
