package headcourse.stock;

import headcourse.stock.PileDraft.Slot;
import java.util.ArrayList;
import java.util.List;

/**
 * Puts the stones chosen for a head in rows that keep to all its rules, and saws off what is too
 * much where the two sides then differ least.
 *
 * <p>In the order of their lengths neighbours differ least, and stones side by side do; so that
 * order is tried first. Others are tried where the end stone is not the widest.
 */
final class RowFitter {
  private final RowPair pair;
  private final SweepSide[] sides;
  private final long[] ends;
  private long[][] best;
  private List<List<Batch>> bestRows;
  private long least = Long.MAX_VALUE;

  private RowFitter(RowPair pair, SweepSide[] sides, long[] ends) {
    this.pair = pair;
    this.sides = sides;
    this.ends = ends;
  }

  /**
   * A choice of these stones, or null.
   *
   * @param sides by head and side
   * @param ends where each ends
   * @param bound what it costs at least
   */
  static PileDraft fit(SweepSide[] sides, long[] ends, Pile.Cost bound) {
    List<List<List<Slot>>> heads = new ArrayList<>();
    long imbalance = 0;
    for (int h = 0; 2 * h < sides.length; h++) {
      RowPair pair = sides[2 * h].pair;
      SweepSide[] two = {sides[2 * h], sides[2 * h + 1]};
      RowFitter fitter = new RowFitter(pair, two, new long[] {ends[2 * h], ends[2 * h + 1]});
      fitter.run(bound.imbalance());
      if (fitter.best == null) {
        return null;
      }
      List<List<Slot>> rows = new ArrayList<>();
      for (int s = 0; s < 2; s++) {
        List<Slot> row = new ArrayList<>();
        for (int i = 0; i < fitter.best[s].length; i++) {
          row.add(new Slot(fitter.best[s][i], fitter.bestRows.get(s).get(i).types.clone()));
        }
        rows.add(row);
      }
      heads.add(rows);
      imbalance += pair.head().copies() * fitter.least;
    }
    return new PileDraft(heads, new Pile.Cost(bound.sawn(), imbalance, bound.bearing()));
  }

  private void run(long enough) {
    int k = Math.max(sides[0].body.size(), sides[1].body.size());
    for (int way = 0; way < 2 * k && least * pair.head().copies() > enough; way++) {
      attempt(List.of(order(sides[0], way), order(sides[1], way)));
      if (way == k - 1 && pair.row(0).side.extra(1) == 0 && pair.row(1).side.extra(1) == 0) {
        break;
      }
    }
  }

  /**
   * The stones from the centre outwards. In the first ways the body ends in its widest, its second
   * widest and so on, wider ones going up and down before it; in others one is moved to the key.
   */
  private static List<Batch> order(SweepSide side, int way) {
    int k = side.body.size();
    List<Batch> out = new ArrayList<>();
    if (way < k) {
      int last = k - 1 - way;
      for (int i = 0; i < last; i++) {
        out.add(side.body.get(i));
      }
      for (int i = last + 1; i < k; i += 2) {
        out.add(side.body.get(i));
      }
      for (int i = last + (k - 1 - last) / 2 * 2; i >= last; i -= 2) {
        out.add(side.body.get(i));
      }
    } else {
      out.addAll(side.body);
      out.add(0, out.remove(Math.max(0, Math.min(k - 1, 2 * k - 1 - way))));
    }
    if (side.end() != null) {
      out.add(side.end());
    }
    return out;
  }

  private void attempt(List<List<Batch>> rows) {
    long[][] high = new long[2][];
    long[][] low = new long[2][];
    for (int s = 0; s < 2; s++) {
      high[s] = new long[rows.get(s).size()];
      low[s] = new long[high[s].length];
      if (!limits(s, rows.get(s), low[s], high[s])) {
        return;
      }
    }
    long[][] width = {high[0].clone(), high[1].clone()};
    long[] over = new long[2];
    for (int s = 0; s < 2; s++) {
      over[s] = sum(high[s]) - pair.row(s).widths(ends[s]);
      if (over[s] < 0 || sum(low[s]) > pair.row(s).widths(ends[s])) {
        return;
      }
    }
    for (int s = 0; s < 2; s++) {
      long[] to = low[s].clone();
      for (int i = 0; i < to.length && pair.head().mirror(); i++) {
        long partner = i < high[1 - s].length ? high[1 - s][i] : 0;
        to[i] = Math.max(low[s][i], Math.min(high[s][i], partner));
      }
      over[s] -= lower(width[s], to, over[s]);
    }
    for (int s = 0; s < 2; s++) {
      lower(width[s], low[s], over[s]);
    }
    long imbalance = pair.imbalance(width[0], width[1]);
    if (imbalance < least && stands(0, width[0]) && stands(1, width[1])) {
      least = imbalance;
      best = width;
      bestRows = rows;
    }
  }

  private static long sum(long[] of) {
    return java.util.Arrays.stream(of).sum();
  }

  /** The least and the greatest width of each stone; false where there are none. */
  private boolean limits(int s, List<Batch> row, long[] low, long[] high) {
    Pile.Head head = pair.head();
    RowShape shape = pair.row(s);
    int n = high.length;
    for (int i = 0; i < n; i++) {
      low[i] = head.min();
      high[i] = Math.min(head.max(), row.get(i).usable - shape.side.extra(i + 1));
    }
    low[n - 1] = Math.max(low[n - 1], shape.least(ends[s]));
    high[n - 1] = Math.min(high[n - 1], shape.most(ends[s]));
    smooth(high, head.jump(), 1);
    if (shape.two(ends[s]) > 0) {
      low[n - 1] = Math.max(low[n - 1], Math.min(high[n - 1], shape.two(ends[s]) - head.min()));
      low[n - 2] = Math.max(low[n - 2], shape.two(ends[s]) - low[n - 1]);
    }
    smooth(low, head.jump(), -1);
    for (int i = 0; i < n; i++) {
      if (low[i] > high[i]) {
        return false;
      }
    }
    return true;
  }

  /** Keeps each within the jump of its neighbours: the greatest so, or the least. */
  private static void smooth(long[] of, long jump, int sign) {
    if (jump > Long.MAX_VALUE / 8) {
      return;
    }
    for (int i = 1; i < of.length; i++) {
      of[i] = sign * Math.min(sign * of[i], sign * of[i - 1] + jump);
    }
    for (int i = of.length - 2; i >= 0; i--) {
      of[i] = sign * Math.min(sign * of[i], sign * of[i + 1] + jump);
    }
  }

  /** Lowers the widest towards given widths, by so much in all if it can; how much it was. */
  private static long lower(long[] width, long[] to, long by) {
    long done = 0;
    while (done < by) {
      long top = Long.MIN_VALUE;
      for (int i = 0; i < width.length; i++) {
        top = width[i] > to[i] ? Math.max(top, width[i]) : top;
      }
      if (top == Long.MIN_VALUE) {
        break;
      }
      for (int i = 0; i < width.length && done < by; i++) {
        if (width[i] == top && width[i] > to[i]) {
          width[i]--;
          done++;
        }
      }
    }
    return done;
  }

  /** Whether a row keeps to all rules. */
  private boolean stands(int s, long[] width) {
    PileSide side = pair.row(s).side;
    long foot = side.start();
    for (int i = 0; i < width.length; i++) {
      if (i > 0 && Math.abs(width[i] - width[i - 1]) > pair.head().jump()) {
        return false;
      }
      long outer = foot + side.joint() + width[i];
      boolean good =
          i == width.length - 1
              ? side.bearingOff(outer) >= 0 && side.endFits(i + 1, foot, outer)
              : side.jointStands(i + 1, outer) && side.stoneFits(i + 1, foot, outer);
      if (!good) {
        return false;
      }
      foot = outer;
    }
    return true;
  }
}
