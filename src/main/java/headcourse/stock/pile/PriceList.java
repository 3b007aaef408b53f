package headcourse.stock.pile;

import java.util.Arrays;
import java.util.List;

/**
 * Prices of pieces, by type, and of differences between stones and their partners; and how they are
 * changed to raise a bound.
 *
 * <p>Source: the deflected subgradient of P. M. Camerini, L. Fratta, F. Maffioli, "On improving
 * relaxation methods by modified gradient techniques", Mathematical Programming Study 3 (1975),
 * 26–34.
 */
final class PriceList {
  private static final double BENT = 1.5;

  /** No price is higher. */
  private static final double TOP = 1L << 34;

  private final double[] price;
  private final RankPrices[] ranks;
  private final boolean differences;
  private final int size;
  private final double range;

  /** What the price of a difference is at most. */
  private double most;

  /** The way in which the prices were changed last. */
  private final double[] way;

  /**
   * @param types how many types of pieces there are
   * @param differences whether differences have prices
   */
  PriceList(int types, List<RowPair> pairs, boolean differences) {
    this.differences = differences;
    price = new double[types];
    ranks = new RankPrices[pairs.size()];
    int n = types + 1;
    double widest = 1;
    for (int h = 0; h < ranks.length; h++) {
      ranks[h] = new RankPrices(pairs.get(h));
      n += ranks[h].size();
      widest = Math.max(widest, ranks[h].range());
    }
    size = n;
    range = widest;
    way = new double[n];
  }

  /** How many there are, with the most of those of differences. */
  int size() {
    return size;
  }

  /** That of a type of piece. */
  long of(int type) {
    return (long) price[type];
  }

  /** What the price of a difference is at most. */
  double most() {
    return most;
  }

  /** What a tick of each stone of a side costs. */
  long[] widths(int h, int s) {
    return ranks[h].of(s, most);
  }

  /** All of them: by type, by head and pair, and the most. */
  double[] all() {
    double[] out = Arrays.copyOf(price, size);
    int at = price.length;
    for (RankPrices r : ranks) {
      for (int i = 0; i < r.size(); i++) {
        out[at++] = r.get(i);
      }
    }
    out[at] = most;
    return out;
  }

  /** Puts them back as they were. */
  void restore(double[] from) {
    if (from.length != size) {
      return;
    }
    System.arraycopy(from, 0, price, 0, price.length);
    int at = price.length;
    for (RankPrices r : ranks) {
      for (int i = 0; i < r.size(); i++) {
        r.set(i, differences ? from[at] : 0);
        at++;
      }
    }
    most = differences ? from[at] : 0;
  }

  /**
   * Completes how the bound changes with each of them.
   *
   * @param width by side: what the stones count of their widths
   * @param spared the difference that is allowed, negative
   * @param out by type: how many more pieces are taken than there are
   */
  void slope(double[][] width, double spared, double[] out) {
    for (int t = 0; t < price.length; t++) {
      out[t] = out[t] < 0 && price[t] <= 0 ? 0 : out[t];
    }
    if (differences) {
      int at = price.length;
      double alone = spared;
      for (int h = 0; h < ranks.length; h++) {
        double[] own = new double[ranks[h].size()];
        alone += ranks[h].slope(new double[][] {width[2 * h], width[2 * h + 1]}, own);
        for (double d : own) {
          out[at++] = d / ranks[h].range();
        }
      }
      out[at] = alone < 0 && most <= 0 ? 0 : alone / range;
    }
  }

  /** Changes them so that the bound might go up by so much; false where it can't. */
  boolean change(double by, double[] slope) {
    double steep = product(slope, slope);
    double along = product(slope, way);
    // Not back and forth: what turns against the way so far is bent towards it.
    double bent = along < 0 ? -BENT * along / product(way, way) : 0;
    for (int i = 0; i < slope.length; i++) {
      way[i] = slope[i] + bent * way[i];
    }
    double length = product(way, way);
    if (4 * length < steep) {
      System.arraycopy(slope, 0, way, 0, way.length);
      length = steep;
    }
    if (length == 0) {
      return false;
    }
    for (int t = 0; t < price.length; t++) {
      price[t] = Math.min(TOP, Math.max(0, price[t] + by / length * way[t]));
    }
    int at = price.length;
    for (RankPrices r : ranks) {
      for (int i = 0; i < r.size(); i++) {
        r.set(i, r.get(i) + by / length * way[at++] / r.range());
      }
    }
    most += by / length * way[at] / range;
    within();
    return true;
  }

  private static double product(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  /** Moves the prices of differences to the nearest that are within the most. */
  private void within() {
    double level = Math.max(0, most);
    for (double before = -1; before != level; ) {
      before = level;
      double sum = most;
      int n = 1;
      for (RankPrices r : ranks) {
        for (int i = 0; i < r.size(); i++) {
          boolean out = Math.abs(r.get(i)) > level;
          sum += out ? Math.abs(r.get(i)) : 0;
          n += out ? 1 : 0;
        }
      }
      // Those that are out pull the most up; it only goes up, so that there is an end to it.
      level = Math.max(level, sum / n);
    }
    most = Math.min(TOP, level);
    for (RankPrices r : ranks) {
      for (int i = 0; i < r.size(); i++) {
        r.set(i, Math.max(-most, Math.min(most, r.get(i))));
      }
    }
  }
}
