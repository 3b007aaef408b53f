package headcourse.stock.pile;

/**
 * What it costs, within a bound, that a stone of one side of a head is wider than its partner by
 * rank on the other: for each pair a price between plus and minus of the most.
 *
 * <p>The sum of the differences is never less than that of the differences each times something
 * between one and minus one. Stones without a partner count whole.
 */
final class RankPrices {
  private final RowPair pair;
  private final boolean counts;
  private final boolean ends;

  /** By pair, from the narrowest, that of the end stones last. */
  private final double[] price;

  RankPrices(RowPair pair) {
    this.pair = pair;
    boolean known = true;
    for (int s = 0; s < 2; s++) {
      known &= !pair.labelled(s) || pair.apart(s);
    }
    counts = pair.head().mirror() && known;
    ends = counts && pair.apart(0) && pair.apart(1);
    int n = Math.min(pair.ranked(0), pair.ranked(1)) + (ends ? 1 : 0);
    price = new double[counts ? n : 0];
  }

  /** How many prices there are. */
  int size() {
    return price.length;
  }

  double get(int i) {
    return price[i];
  }

  void set(int i, double to) {
    price[i] = to;
  }

  /** How wide stones differ: what a price is measured by. */
  double range() {
    return Math.max(1, pair.head().max() - pair.head().min());
  }

  /**
   * What a tick of each stone of a side costs: those of the body from the narrowest, then an end
   * stone that is picked by itself.
   */
  long[] of(int s, double most) {
    int body = pair.row(s).stones - (pair.labelled(s) ? 1 : 0);
    long[] out = new long[body + 1];
    int lead = Math.max(0, s == 0 ? pair.lead() : -pair.lead());
    for (int k = 0; k < body && counts; k++) {
      out[k] = k < lead ? (long) most : (long) (s == 0 ? price[k - lead] : -price[k - lead]);
    }
    if (ends) {
      double p = price[price.length - 1];
      out[body] = (long) (s == 0 ? p : -p);
    } else if (counts && pair.labelled(s)) {
      out[body] = (long) most;
    }
    return out;
  }

  /**
   * How the bound changes with the prices.
   *
   * @param width by side: what the stones count of it
   * @param slope by price
   * @return the same with the most that a price may be
   */
  double slope(double[][] width, double[] slope) {
    double alone = 0;
    int copies = pair.head().copies();
    for (int s = 0; s < 2 && counts; s++) {
      int body = width[s].length - 1;
      int lead = Math.max(0, s == 0 ? pair.lead() : -pair.lead());
      for (int k = 0; k < body; k++) {
        if (k < lead) {
          alone += copies * width[s][k];
        } else {
          slope[k - lead] += copies * (s == 0 ? width[s][k] : -width[s][k]);
        }
      }
      if (ends) {
        slope[price.length - 1] += copies * (s == 0 ? width[s][body] : -width[s][body]);
      } else if (pair.labelled(s)) {
        alone += copies * width[s][body];
      }
    }
    return alone;
  }
}
