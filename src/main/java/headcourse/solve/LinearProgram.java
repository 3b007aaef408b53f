package headcourse.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * A small linear programme to which columns are added while it is solved: least cost, so that every
 * row is met, by the revised simplex method with an explicit inverse.
 *
 * <p>Rows are {@code ≥} (parts asked for) or {@code ≤} (blanks at hand). It starts from artificial
 * columns so dear that they stay only where rows can't be met.
 */
public final class LinearProgram {
  private static final double EPS = 1e-9;

  /** Pivots after which the inverse is worked out afresh. */
  private static final int AFRESH = 50;

  private final int rows;
  private final double[] right;

  /** What is not zero of each column, and in which rows. */
  private final List<double[]> columns = new ArrayList<>();

  private final List<int[]> places = new ArrayList<>();
  private final List<Double> costs = new ArrayList<>();
  private final TreeSet<Integer> artificial = new TreeSet<>();
  private final int[] basis;
  private final double[][] inverse;
  private final double[] value;
  private long entries;
  private boolean unbounded;
  private double small;
  private int since;

  /**
   * @param right right-hand sides, not negative
   * @param atLeast whether each row is {@code ≥}
   * @param dear cost of leaving one unit of a {@code ≥} row unmet
   */
  public LinearProgram(double[] right, boolean[] atLeast, double dear) {
    rows = right.length;
    this.right = right.clone();
    basis = new int[rows];
    inverse = new double[rows][rows];
    value = right.clone();
    for (int i = 0; i < rows; i++) {
      double[] unit = new double[rows];
      unit[i] = 1;
      basis[i] = add(unit, atLeast[i] ? dear : 0);
      if (atLeast[i]) {
        artificial.add(basis[i]);
      }
      inverse[i][i] = 1;
      if (atLeast[i]) {
        double[] surplus = new double[rows];
        surplus[i] = -1;
        add(surplus, 0);
      }
    }
  }

  /**
   * Minds rounding, for rows that nearly depend on each other: a divisor much smaller than another
   * that would do is none, and the inverse is worked out afresh now and then.
   *
   * @param share of the greatest divisor that a smaller one has to have
   */
  public void careful(double share) {
    small = share;
  }

  /** Makes it so much dearer to leave rows unmet. */
  public void dearer(double times) {
    for (int c : artificial) {
      costs.set(c, costs.get(c) * times);
    }
  }

  /** How much of all rows is left unmet. */
  public double unmet() {
    double sum = 0;
    for (int i = 0; i < rows; i++) {
      sum += artificial.contains(basis[i]) ? value[i] : 0;
    }
    return sum;
  }

  /** Adds a column and gives its number. */
  public int add(double[] column, double cost) {
    int[] at = IntStream.range(0, rows).filter(i -> column[i] != 0).toArray();
    columns.add(IntStream.of(at).mapToDouble(i -> column[i]).toArray());
    places.add(at);
    entries += at.length + 2;
    costs.add(cost);
    return columns.size() - 1;
  }

  /** What one pivot takes, in products. */
  public long work() {
    return entries + 3L * rows * rows;
  }

  /** The price of each row. */
  public double[] duals() {
    double[] y = new double[rows];
    for (int i = 0; i < rows; i++) {
      double c = costs.get(basis[i]);
      if (c != 0) {
        for (int j = 0; j < rows; j++) {
          y[j] += c * inverse[i][j];
        }
      }
    }
    return y;
  }

  /** What a column costs beyond what the rows pay for it. */
  public double reduced(int column, double[] y) {
    double reduced = costs.get(column);
    double[] col = columns.get(column);
    int[] at = places.get(column);
    for (int i = 0; i < at.length; i++) {
      reduced -= y[at[i]] * col[i];
    }
    return reduced;
  }

  /**
   * Pivots until no known column is worth taking.
   *
   * @param pivots the most that it may take
   * @return how many it took
   */
  public int solve(int pivots) {
    unbounded = false;
    for (int n = 0; n < pivots; n++) {
      double[] y = duals();
      int enter = -1;
      double least = -EPS;
      for (int c = 0; c < columns.size(); c++) {
        double reduced = reduced(c, y);
        // After many pivots the first rather than the best, which can't run in a circle.
        if (reduced < least) {
          enter = c;
          least = n > pivots / 2 ? Double.NEGATIVE_INFINITY : reduced;
        }
      }
      if (enter < 0 || !pivot(enter)) {
        return n;
      }
    }
    return pivots;
  }

  private boolean pivot(int enter) {
    double[] col = columns.get(enter);
    int[] at = places.get(enter);
    double[] d = new double[rows];
    for (int i = 0; i < rows; i++) {
      for (int j = 0; j < at.length; j++) {
        d[i] += inverse[i][at[j]] * col[j];
      }
    }
    int leave = leaving(d);
    if (leave < 0) {
      unbounded = true;
      return false;
    }
    for (int j = 0; j < rows; j++) {
      inverse[leave][j] /= d[leave];
    }
    for (int i = 0; i < rows; i++) {
      if (i != leave && d[i] != 0) {
        for (int j = 0; j < rows; j++) {
          inverse[i][j] -= d[i] * inverse[leave][j];
        }
      }
    }
    basis[leave] = enter;
    if (small > 0 && ++since == AFRESH) {
      invert();
    }
    for (int i = 0; i < rows; i++) {
      value[i] = 0;
      for (int j = 0; j < rows; j++) {
        value[i] += inverse[i][j] * right[j];
      }
      value[i] = Math.max(0, value[i]);
    }
    return true;
  }

  // The row that binds first. Among those that bind alike, within what rounding leaves (the ratio
  // test of Harris, 1973), the first column goes whose divisor is not small beside the others':
  // by dividing by next to nothing an inverse becomes rounding errors.
  private int leaving(double[] d) {
    double most = Double.MAX_VALUE;
    for (int i = 0; i < rows; i++) {
      if (d[i] > EPS) {
        most = Math.min(most, (value[i] + EPS) / d[i]);
      }
    }
    double greatest = 0;
    for (int i = 0; i < rows; i++) {
      if (d[i] > EPS && value[i] <= most * d[i]) {
        greatest = Math.max(greatest, d[i]);
      }
    }
    int leave = -1;
    for (int i = 0; i < rows; i++) {
      if (d[i] > EPS
          && value[i] <= most * d[i]
          && d[i] >= small * greatest
          && (leave < 0 || basis[i] < basis[leave])) {
        leave = i;
      }
    }
    return leave;
  }

  // The inverse of the basis anew, by Gauss and Jordan with partial pivoting.
  private void invert() {
    since = 0;
    double[][] b = new double[rows][2 * rows];
    for (int j = 0; j < rows; j++) {
      double[] col = columns.get(basis[j]);
      int[] at = places.get(basis[j]);
      for (int k = 0; k < at.length; k++) {
        b[at[k]][j] = col[k];
      }
      b[j][rows + j] = 1;
    }
    for (int j = 0; j < rows; j++) {
      int best = j;
      for (int i = j + 1; i < rows; i++) {
        best = Math.abs(b[i][j]) > Math.abs(b[best][j]) ? i : best;
      }
      double[] row = b[best];
      b[best] = b[j];
      b[j] = row;
      double by = row[j];
      if (Math.abs(by) < 1e-12) {
        // Singular by rounding: the inverse that was carried on is the better one.
        return;
      }
      for (int k = j; k < 2 * rows; k++) {
        row[k] /= by;
      }
      for (int i = 0; i < rows; i++) {
        double f = b[i][j];
        if (i != j && f != 0) {
          for (int k = j; k < 2 * rows; k++) {
            b[i][k] -= f * row[k];
          }
        }
      }
    }
    for (int i = 0; i < rows; i++) {
      System.arraycopy(b[i], rows, inverse[i], 0, rows);
    }
  }

  /** Whether the last solving found that the cost falls without end. */
  public boolean unbounded() {
    return unbounded;
  }

  /** How much of each column the answer takes. */
  public double[] answer() {
    double[] x = new double[columns.size()];
    for (int i = 0; i < rows; i++) {
      x[basis[i]] = value[i];
    }
    return x;
  }
}
