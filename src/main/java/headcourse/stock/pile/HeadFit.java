package headcourse.stock.pile;

import headcourse.stock.pile.PileDraft.Slot;
import java.util.List;

/** The best rows of a head from the pieces chosen for its sides, whatever their order and ends. */
final class HeadFit {
  private static final long ORDERS = 20_000;

  private final long most;
  private final SweepBounds bounds;
  private final PileTypes types;
  private final int h;
  private final SweepSide[] sides;
  private List<List<Slot>> rows;
  private Pile.Cost cost;
  private boolean sure = true;
  private long steps;

  HeadFit(SweepBounds bounds, PileTypes types, int h) {
    this(bounds, types, h, ORDERS);
  }

  /**
   * @param most what each look at orders may take, in steps
   */
  HeadFit(SweepBounds bounds, PileTypes types, int h, long most) {
    this.most = most;
    this.bounds = bounds;
    this.types = types;
    this.h = h;
    this.sides = new SweepSide[] {bounds.sides()[2 * h], bounds.sides()[2 * h + 1]};
  }

  List<List<Slot>> rows() {
    return rows;
  }

  /** What the rows cost, or null. */
  Pile.Cost cost() {
    return cost;
  }

  /** Whether there are no better rows within what was asked for. */
  boolean sure() {
    return sure;
  }

  long steps() {
    return steps;
  }

  /** The least that these pieces cost, or null where they end nowhere. */
  Pile.Cost least() {
    long l = sides[0].reached();
    long r = sides[1].reached();
    if (l < sides[0].row.side.firstEnd() || r < sides[1].row.side.firstEnd()) {
      return null;
    }
    return bounds.leaf(h, length(), l, r);
  }

  private long length() {
    return sides[0].length(types) + sides[1].length(types);
  }

  /**
   * Looks for rows.
   *
   * @param cap they may cost no more than this
   * @param limit how many steps it may take, more or less
   */
  void run(Pile.Cost cap, long limit) {
    long length = length();
    long left = sides[0].reached();
    long right = sides[1].reached();
    long least = bounds.leaf(h, length, left, right).sawn();
    int copies = sides[0].pair.head().copies();
    for (long off = 0; cost == null && least + copies * off <= cap.sawn(); off++) {
      boolean any = false;
      for (long l = 0; l <= off; l++) {
        any |=
            left - l >= sides[0].row.side.firstEnd()
                && right - off + l >= sides[1].row.side.firstEnd();
        boolean reaches = sides[0].reaches(left - l) && sides[1].reaches(right - off + l);
        if (reaches && steps > limit) {
          sure = false;
        } else if (reaches) {
          ends(left - l, right - off + l, length, cap, limit - steps);
        }
      }
      if (!any || !sure) {
        break;
      }
    }
  }

  private void search(RowOrders orders) {
    sure &= orders.run();
    steps += orders.steps();
  }

  /** Whether one of the sides does not even come out by itself. */
  private boolean nowhere(long[] at) {
    for (int s = 0; s < 2; s++) {
      RowFitter alone = new RowFitter(sides[0], sides[1], at[0], at[1], 0);
      RowOrders orders = new RowOrders(s, sides, at, alone, 0, 0, most);
      boolean all = orders.run();
      steps += orders.steps();
      if (all && !alone.settled(s) && alone.doubt() > 0) {
        return true;
      }
    }
    return false;
  }

  private void ends(long l, long r, long length, Pile.Cost cap, long limit) {
    Pile.Cost bound = bounds.leaf(h, length, l, r);
    if (bound.compareTo(cap) > 0 || cost != null && bound.compareTo(cost) >= 0) {
      return;
    }
    int copies = sides[0].pair.head().copies();
    RowFitter fitter =
        new RowFitter(sides[0], sides[1], l, r, Math.min(limit, 20 * most) * RowOrders.WORK);
    long enough = bound.imbalance() / copies;
    fitter.quick(enough);
    steps += 1 + fitter.work() / RowOrders.WORK;
    long[] at = {l, r};
    for (int s = 0; s < 2 && !sides[0].pair.head().mirror(); s++) {
      if (!fitter.settled(s)) {
        search(new RowOrders(s, sides, at, fitter, 0, 0, most));
      }
      if (!fitter.settled(s)) {
        return;
      }
    }
    if (fitter.rows() == null && nowhere(at)) {
      return;
    }
    if (fitter.imbalance() > enough) {
      long use = Math.min(cap.imbalance() / copies, fitter.imbalance() - 1);
      search(new RowOrders(-1, sides, at, fitter, use, enough, most));
    }
    boolean better = fitter.doubt() < fitter.imbalance() && fitter.imbalance() > enough;
    sure &= !better || copies * fitter.doubt() > cap.imbalance();
    if (fitter.rows() != null) {
      Pile.Cost now = new Pile.Cost(bound.sawn(), copies * fitter.imbalance(), bound.bearing());
      if (cost == null || now.compareTo(cost) < 0) {
        cost = now;
        rows = fitter.rows();
      }
    }
  }
}
