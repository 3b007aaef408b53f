package headcourse.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.stock.ChangeProblem.Price;
import headcourse.stock.ChangeProblem.Row;
import headcourse.stock.ChangeProblem.Rows;
import headcourse.stock.ChangeProblem.Stone;
import headcourse.stock.pile.Pile;
import headcourse.stock.pile.PileSide;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Every choice there is, one after the other: fewest changes, then the least price. */
final class ChangeBrute {
  private final ChangeProblem problem;
  private final boolean[] used;
  private final List<List<List<Pile.Picked>>> rows = new ArrayList<>();
  private final long[] ends;
  private int changes = Integer.MAX_VALUE;
  private Price price;

  ChangeBrute(ChangeProblem problem) {
    this.problem = problem;
    this.used = new boolean[problem.pieces().size()];
    this.ends = new long[2 * problem.heads().size()];
    problem.heads().forEach(h -> rows.add(List.of(new ArrayList<>(), new ArrayList<>())));
  }

  /**
   * Holds what the program finds against all choices.
   *
   * @return the fewest changes; {@link Integer#MAX_VALUE} where there is no choice
   */
  static int agrees(ChangeProblem problem, String which) {
    ChangeBrute brute = new ChangeBrute(problem);
    brute.run();
    FewestChanges.Result r = new FewestChanges(List.of(problem), Integer.MAX_VALUE, 60_000).solve();
    String at = which + " " + brute;
    if (brute.changes() == Integer.MAX_VALUE) {
      assertEquals(null, r.found(), at);
    } else {
      assertTrue(r.proved(), at);
      assertEquals(brute.changes(), r.found().changes(), at);
      assertEquals(brute.price(), r.found().price(), at);
    }
    return brute.changes();
  }

  /** Fewest changes; {@link Integer#MAX_VALUE} where there is no choice. */
  int changes() {
    return changes;
  }

  Price price() {
    return price;
  }

  void run() {
    side(0);
  }

  private void side(int at) {
    if (at == ends.length) {
      weigh();
      return;
    }
    Row row = problem.heads().get(at / 2).row(at % 2);
    if (row.mayEnd()) {
      ends[at] = Long.MIN_VALUE;
      side(at + 1);
    }
    if (row.side() != null) {
      stone(at, row.side().start());
    }
  }

  private void stone(int at, long foot) {
    Rows head = problem.heads().get(at / 2);
    Row row = head.row(at % 2);
    List<Pile.Picked> mine = rows.get(at / 2).get(at % 2);
    int i = mine.size() + 1;
    for (long w = head.min(); w <= head.max(); w++) {
      long outer = foot + row.side().joint() + w;
      boolean near = i == 1 || Math.abs(mine.get(i - 2).width() - w) <= head.jump();
      if (near && outer <= row.side().lastEnd()) {
        pieces(at, i, foot, w, new ArrayList<>());
      }
    }
  }

  private void pieces(int at, int i, long foot, long w, List<Integer> of) {
    Rows head = problem.heads().get(at / 2);
    if (of.size() < head.copies()) {
      for (int p = 0; p < used.length; p++) {
        ChangeProblem.Piece piece = problem.pieces().get(p);
        // How long a fan's stone is shows only when it is known whether another follows.
        boolean long_ = fan(at) || piece.usable() >= w + head.row(at % 2).side().extra(i);
        if (!used[p] && piece.fits()[at / 2] && long_) {
          used[p] = true;
          of.add(p);
          pieces(at, i, foot, w, of);
          of.remove(of.size() - 1);
          used[p] = false;
        }
      }
      return;
    }
    PileSide side = head.row(at % 2).side();
    int each = head.row(at % 2).each();
    long outer = foot + side.joint() + w;
    List<Pile.Picked> mine = rows.get(at / 2).get(at % 2);
    mine.add(new Pile.Picked(w, of));
    boolean last = each == 0 || each == i;
    boolean may = last && side.bearingOff(outer) >= 0 && side.endFits(i, foot, outer);
    if (may && holds(of, side.extent(i, foot, outer, true))) {
      ends[at] = outer;
      side(at + 1);
    }
    boolean on = i != each && side.jointStands(i, outer) && side.stoneFits(i, foot, outer);
    if (on && holds(of, side.extent(i, foot, outer, false))) {
      stone(at, outer);
    }
    mine.remove(mine.size() - 1);
  }

  private boolean fan(int at) {
    return problem.heads().get(at / 2).row(at % 2).side().fanned();
  }

  private boolean holds(List<Integer> of, long extent) {
    return of.stream().allMatch(p -> problem.pieces().get(p).usable() >= extent);
  }

  private void weigh() {
    int n = 0;
    int moved = 0;
    long sawn = 0;
    long imbalance = 0;
    long bearing = 0;
    for (int h = 0; h < rows.size(); h++) {
      Rows head = problem.heads().get(h);
      List<List<Long>> all = new ArrayList<>();
      for (int s = 0; s < 2; s++) {
        Row row = head.row(s);
        List<Pile.Picked> mine = rows.get(h).get(s);
        List<Long> widths = new ArrayList<>(row.there());
        long foot = row.side() == null ? 0 : row.side().start();
        for (int i = 0; i < Math.max(mine.size(), row.before().size()); i++) {
          Stone was = i < row.before().size() ? row.before().get(i) : null;
          Pile.Picked is = i < mine.size() ? mine.get(i) : null;
          if (is == null) {
            n += head.copies();
            continue;
          }
          widths.add(is.width());
          long inner = foot;
          foot += row.side().joint() + is.width();
          boolean end = i + 1 == mine.size();
          boolean same = was != null && was.width() == is.width();
          if (row.side().fanned()) {
            same &= was != null && was.foot() == foot && end == (i + 1 == row.before().size());
          }
          long extent = row.side().extent(i + 1, inner, foot, end);
          boolean there = was != null && was.width() == is.width() && was.foot() == foot;
          moved += was != null && !there ? head.copies() : 0;
          for (int c = 0; c < head.copies(); c++) {
            n += same && was.pieces()[c] == is.pieces().get(c) ? 0 : 1;
            sawn += problem.pieces().get(is.pieces().get(c)).usable() - extent;
          }
        }
        long end = ends[2 * h + s];
        bearing += end == Long.MIN_VALUE ? 0 : head.copies() * row.side().bearingOff(end);
        all.add(widths);
      }
      int l = head.left().there().size();
      int r = head.right().there().size();
      for (int i = 0; head.mirror() && i < Math.max(all.get(0).size(), all.get(1).size()); i++) {
        boolean cut = i < l && i < r;
        long a = i < all.get(0).size() ? all.get(0).get(i) : 0;
        long b = i < all.get(1).size() ? all.get(1).get(i) : 0;
        imbalance += cut ? 0 : head.copies() * Math.abs(a - b);
      }
    }
    Price p = new Price(moved, new Pile.Cost(sawn, imbalance, bearing));
    if (n < changes || n == changes && p.compareTo(price) < 0) {
      changes = n;
      price = p;
    }
  }

  @Override
  public String toString() {
    return changes + " changes, " + price + " " + Arrays.toString(ends);
  }
}
