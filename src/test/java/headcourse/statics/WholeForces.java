package headcourse.statics;

import headcourse.geom.Point;
import headcourse.geom.Vec;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.optim.MaxIter;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NoFeasibleSolutionException;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;

/**
 * The same question put otherwise and answered by a general library: every force at either end of
 * every joint and seat is an unknown of its own, along the two edges of its cone of friction, and
 * each block has its own three equations of rest.
 */
final class WholeForces {
  private final Blocks blocks;
  private final List<double[]> columns = new ArrayList<>();
  private final List<Integer> first = new ArrayList<>();

  WholeForces(Blocks blocks) {
    this.blocks = blocks;
    int n = blocks.loads().size();
    for (int i = 0; i <= n; i++) {
      Joint j = blocks.joints().get(i);
      Vec across = j.head().minus(j.foot()).unit().normal().times(-1);
      for (Point at : List.of(j.foot(), j.head())) {
        // What comes from the left acts on block i, and its opposite on block i − 1.
        cone(at, across, i, i - 1, i == 0);
      }
    }
    for (int k = 0; k < blocks.left().size(); k++) {
      seat(blocks.left().get(k), k, true);
    }
    for (int k = 0; k < blocks.right().size(); k++) {
      seat(blocks.right().get(k), n - 1 - k, false);
    }
  }

  private void seat(Seat seat, int block, boolean left) {
    cone(seat.inner(), new Vec(0, 1), block, -1, left);
    cone(seat.outer(), new Vec(0, 1), block, -1, left);
  }

  private void cone(Point at, Vec normal, int on, int from, boolean left) {
    int n = blocks.loads().size();
    double unit = blocks.joints().get(n).foot().x() - blocks.joints().get(0).foot().x();
    for (double slope : new double[] {blocks.friction(), -blocks.friction()}) {
      Vec f = normal.plus(normal.normal().times(slope));
      double turn = (at.x() * f.y() - at.y() * f.x()) / unit;
      double[] column = new double[3 * n + 1];
      if (on < n) {
        add(column, on, f, turn, 1);
      }
      if (from >= 0) {
        add(column, from, f, turn, -1);
      }
      // The thrust: what the supports on the left push to the right.
      column[3 * n] = left ? f.x() : 0;
      columns.add(column);
    }
  }

  private static void add(double[] column, int block, Vec f, double turn, int sign) {
    column[3 * block] += sign * f.x();
    column[3 * block + 1] += sign * f.y();
    column[3 * block + 2] += sign * turn;
  }

  Optional<Double> leastThrust() {
    int n = blocks.loads().size();
    double weight = blocks.weight();
    double unit = blocks.joints().get(n).foot().x() - blocks.joints().get(0).foot().x();
    List<LinearConstraint> rest = new ArrayList<>();
    for (int r = 0; r < 3 * n; r++) {
      Load load = blocks.loads().get(r / 3);
      double w = load.weight() / weight;
      double needs = r % 3 == 0 ? 0 : r % 3 == 1 ? w : w * load.x() / unit;
      rest.add(new LinearConstraint(row(r), Relationship.EQ, needs));
    }
    try {
      return Optional.of(
          new SimplexSolver(1e-9, 10, 1e-12)
              .optimize(
                  new MaxIter(20_000),
                  new LinearObjectiveFunction(row(3 * n), 0),
                  new LinearConstraintSet(rest),
                  GoalType.MINIMIZE,
                  new NonNegativeConstraint(true))
              .getValue());
    } catch (NoFeasibleSolutionException e) {
      return Optional.empty();
    }
  }

  private double[] row(int r) {
    double[] row = new double[columns.size()];
    Arrays.setAll(row, k -> columns.get(k)[r]);
    return row;
  }
}
