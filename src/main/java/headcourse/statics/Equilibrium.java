package headcourse.statics;

import headcourse.geom.Point;
import headcourse.geom.Vec;
import headcourse.statics.Yield.How;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Forces that keep a row of blocks at rest. All follow from three, those of the left wall on the
 * first block, and from what the seats take; a joint bears no tension at either of its two ends,
 * and no more shear than its friction allows:
 *
 * <pre>N₁ ≥ 0, N₂ ≥ 0, |T| ≤ µ (N₁ + N₂)</pre>
 *
 * <p>Loads are plumb, so the thrust, the level part of every force, is the same in all joints. Here
 * forces are parts of the whole weight and lengths parts of half the width.
 */
final class Equilibrium {
  private static final int THRUST = 0;
  private static final int UP = 1;
  private static final int MOMENT = 2;

  /** Forces at a seat: along the two edges of the cone of friction at each of its ends. */
  private static final int SEAT = 4;

  /** No thrust is looked for that is so many times the weight. */
  static final double MOST = 1_000;

  /** A safety of the joints past which more says nothing, in parts of the weight. */
  private static final double AMPLE = 1;

  private final Blocks blocks;
  private final double unit;
  private final double weight;
  private final int leftSeat;
  private final int rightSeat;
  private final int unknowns;
  private final List<double[]> rows = new ArrayList<>();
  private final List<Double> least = new ArrayList<>();
  private final List<Yield> what = new ArrayList<>();

  Equilibrium(Blocks blocks) {
    this.blocks = blocks;
    int last = blocks.joints().size() - 1;
    double width = blocks.joints().get(last).foot().x() - blocks.joints().get(0).foot().x();
    unit = width / 2;
    weight = blocks.weight();
    leftSeat = MOMENT + 1;
    rightSeat = leftSeat + SEAT * blocks.left().size();
    unknowns = rightSeat + SEAT * blocks.right().size();
    for (int i = 0; i <= last; i++) {
      rows(i);
    }
  }

  /** A force as sums over the unknowns: level part, upward part, moment about the origin. */
  private record Wrench(double[] level, double[] up, double[] moment) {}

  /** The force on what lies right of a joint; the last entry of each sum stands by itself. */
  private Wrench across(int joint) {
    Wrench w =
        new Wrench(new double[unknowns + 1], new double[unknowns + 1], new double[unknowns + 1]);
    w.level[THRUST] = 1;
    w.up[UP] = 1;
    w.moment[MOMENT] = 1;
    for (int i = 0; i < joint; i++) {
      Load load = blocks.loads().get(i);
      w.up[unknowns] -= load.weight() / weight;
      w.moment[unknowns] -= load.weight() / weight * load.x() / unit;
    }
    // Seats on the left that are still to come have not given their part yet.
    for (int k = joint; k < blocks.left().size(); k++) {
      take(w, blocks.left().get(k), leftSeat + SEAT * k, -1);
    }
    for (int k = blocks.loads().size() - joint; k < blocks.right().size(); k++) {
      take(w, blocks.right().get(k), rightSeat + SEAT * k, 1);
    }
    return w;
  }

  /** The seat takes its part: on the left what comes from below, on the right what goes there. */
  private void take(Wrench w, Seat seat, int first, int sign) {
    int k = first;
    for (Point at : List.of(seat.inner(), seat.outer())) {
      for (double slope : new double[] {blocks.friction(), -blocks.friction()}) {
        w.level[k] += sign * slope;
        w.up[k] += sign;
        w.moment[k] += sign * (at.x() - at.y() * slope) / unit;
        k++;
      }
    }
  }

  private void rows(int i) {
    Joint joint = blocks.joints().get(i);
    Wrench w = across(i);
    Vec n = joint.across();
    Vec u = joint.along();
    double fx = joint.foot().x() / unit;
    double fy = joint.foot().y() / unit;
    double length = joint.length() / unit;
    double[] foot = new double[unknowns + 1];
    double[] head = new double[unknowns + 1];
    double[] down = new double[unknowns + 1];
    double[] rise = new double[unknowns + 1];
    for (int k = 0; k <= unknowns; k++) {
      double normal = w.level[k] * n.x() + w.up[k] * n.y();
      double shear = w.level[k] * u.x() + w.up[k] * u.y();
      double about = w.moment[k] - (fx * w.up[k] - fy * w.level[k]);
      head[k] = 0 - about / length;
      foot[k] = normal - head[k];
      down[k] = blocks.friction() * normal + shear;
      rise[k] = blocks.friction() * normal - shear;
    }
    row(foot, new Yield(i, How.HINGE_HEAD, 0));
    row(head, new Yield(i, How.HINGE_FOOT, 0));
    row(down, new Yield(i, How.SLIDE, 0));
    row(rise, new Yield(i, How.SLIDE, 0));
  }

  private void row(double[] sums, Yield yield) {
    rows.add(Arrays.copyOf(sums, unknowns));
    least.add(0 - sums[unknowns]);
    what.add(yield);
  }

  /**
   * Forces that do.
   *
   * @param forces the unknowns
   */
  record State(double[] forces) {
    /** The thrust, in parts of the whole weight. */
    double thrust() {
      return forces[THRUST];
    }

    /** Midway between two; where both keep the blocks at rest, so does this. */
    State middle(State other) {
      double[] mean = new double[forces.length];
      Arrays.setAll(mean, k -> (forces[k] + other.forces[k]) / 2);
      return new State(mean);
    }
  }

  /** What a state of the mirror image of these blocks is here. */
  State mirrored(State other) {
    double[] f = other.forces().clone();
    double turn = 0;
    for (Load load : blocks.loads()) {
      turn += load.weight() / weight * load.x() / unit;
    }
    f[UP] = 1 - f[UP];
    f[MOMENT] += turn;
    int otherRight = leftSeat + (unknowns - rightSeat);
    swap(other.forces(), leftSeat, f, rightSeat, unknowns - rightSeat);
    swap(other.forces(), otherRight, f, leftSeat, rightSeat - leftSeat);
    return new State(f);
  }

  /** What leans to one side at a seat leans to the other. */
  private static void swap(double[] from, int first, double[] to, int start, int n) {
    for (int k = 0; k < n; k++) {
      to[start + k] = from[first + (k ^ 1)];
    }
  }

  /** The state with the least thrust; none where nothing keeps the blocks at rest. */
  Optional<State> leastThrust() {
    Inequalities all = new Inequalities(free(unknowns));
    for (int i = 0; i < rows.size(); i++) {
      all.add(rows.get(i), least.get(i));
    }
    return all.least(cost(unknowns, THRUST)).map(a -> new State(a.x()));
  }

  /** The greatest thrust; infinite where friction and walls bear any. Only where there is one. */
  double greatestThrust() {
    // In terms of what it falls short of the most that is looked for.
    Inequalities all = new Inequalities(free(unknowns));
    for (int i = 0; i < rows.size(); i++) {
      double[] row = rows.get(i).clone();
      row[THRUST] = 0 - row[THRUST];
      all.add(row, least.get(i) + row[THRUST] * MOST);
    }
    double[] most = new double[unknowns];
    most[THRUST] = -1;
    all.add(most, 0 - MOST);
    double less = all.least(cost(unknowns, THRUST)).map(a -> a.x()[THRUST]).orElse(MOST);
    return less < 1e-6 ? Double.POSITIVE_INFINITY : MOST - less;
  }

  /**
   * How far a row of blocks is from failing.
   *
   * @param safety what every joint has to spare at least of its least normal forces and of its
   *     friction, in parts of the weight; negative where nothing keeps the blocks at rest
   * @param yields what gives way first
   * @param pushes whether the thrust that is allowed takes part in it
   */
  record Safety(double safety, List<Yield> yields, boolean pushes) {}

  /** The greatest safety that a thrust up to so many times the weight gives. */
  Safety safety(double most) {
    int short_ = unknowns;
    Inequalities all = new Inequalities(free(unknowns + 1));
    for (int i = 0; i < rows.size(); i++) {
      double[] row = Arrays.copyOf(rows.get(i), unknowns + 1);
      row[short_] = 1;
      all.add(row, least.get(i) + AMPLE);
    }
    double[] push = new double[unknowns + 1];
    push[THRUST] = -1;
    all.add(push, 0 - most);
    Inequalities.Answer a = all.least(cost(unknowns + 1, short_)).orElseThrow();
    List<Yield> yields = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      if (a.weights()[i] > 1e-7) {
        Yield y = what.get(i);
        yields.add(new Yield(y.joint(), y.how(), a.weights()[i]));
      }
    }
    return new Safety(AMPLE - a.x()[short_], yields, a.weights()[rows.size()] > 1e-7);
  }

  private static boolean[] free(int n) {
    boolean[] free = new boolean[n];
    free[UP] = true;
    free[MOMENT] = true;
    return free;
  }

  private static double[] cost(int n, int of) {
    double[] cost = new double[n];
    cost[of] = 1;
    return cost;
  }

  /**
   * Where the resultant crosses the joints, from the left wall to the right one. Ends that lie on
   * the jamb are met where the whole force of the wall meets the seats or the end joint; what
   * passes between the stones beside it on the wall is not shown.
   */
  List<Point> line(State state) {
    List<Point> line = new ArrayList<>();
    int last = blocks.joints().size() - 1;
    end(0, blocks.left(), state).ifPresent(line::add);
    int from = Math.max(1, blocks.left().size());
    int to = last - Math.max(1, blocks.right().size());
    for (int i = from; i <= to; i++) {
      met(i, across(i), state).ifPresent(line::add);
    }
    end(last, blocks.right(), state).ifPresent(line::add);
    return line;
  }

  /** Where all that a wall bears meets the seats on it, or else its end joint. */
  private Optional<Point> end(int joint, List<Seat> seats, State state) {
    Wrench w = across(joint);
    if (seats.isEmpty()) {
      return met(joint, w, state);
    }
    for (double[] sums : List.of(w.level, w.up, w.moment)) {
      Arrays.fill(sums, leftSeat, unknowns, 0);
    }
    double up = sum(w.up, state.forces());
    if (Math.abs(up) > 1e-9) {
      double moment = sum(w.moment, state.forces()) * unit;
      Point inner = seats.get(seats.size() - 1).inner();
      double x = (moment + inner.y() * sum(w.level, state.forces())) / up;
      double outer = seats.get(0).outer().x();
      if (x >= Math.min(inner.x(), outer) - 1e-6 && x <= Math.max(inner.x(), outer) + 1e-6) {
        return Optional.of(new Point(x, inner.y()));
      }
    }
    return met(joint, w, state);
  }

  private Optional<Point> met(int i, Wrench w, State state) {
    double level = sum(w.level, state.forces());
    double up = sum(w.up, state.forces());
    double moment = sum(w.moment, state.forces()) * unit;
    if (Math.hypot(level, up) <= 1e-9) {
      return Optional.empty();
    }
    Joint joint = blocks.joints().get(i);
    Vec u = joint.along();
    double turn = u.x() * up - u.y() * level;
    if (Math.abs(turn) < 1e-9) {
      return Optional.empty();
    }
    Point f = joint.foot();
    double s = (moment - (f.x() * up - f.y() * level)) / turn;
    // Rounding may put it past the joint by less than anyone can draw.
    double within = Math.max(0, Math.min(joint.length(), s));
    return Math.abs(within - s) < 1e-4 * joint.length()
        ? Optional.of(f.plus(u.times(within)))
        : Optional.empty();
  }

  private double sum(double[] sums, double[] forces) {
    double total = sums[unknowns];
    for (int k = 0; k < unknowns; k++) {
      total += sums[k] * forces[k];
    }
    return total;
  }
}
