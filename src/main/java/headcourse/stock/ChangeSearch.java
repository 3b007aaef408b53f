package headcourse.stock;

import headcourse.stock.ChangeProblem.Found;
import headcourse.stock.ChangeProblem.Price;
import headcourse.stock.ChangeProblem.Row;
import headcourse.stock.ChangeProblem.Rows;
import headcourse.stock.ChangeProblem.Stone;
import headcourse.stock.PieceMatch.Demand;
import headcourse.stock.pile.Pile;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Complete search for the cheapest choice in which so many stones change: through all keys and
 * sides, outwards, each stone kept as planned, cut to its size from another piece, or cut to any
 * other width. Which pieces the changed stones take is settled last, at once for all of them.
 */
final class ChangeSearch {
  /** With more identical openings than this not every set of copies is tried for another piece. */
  private static final int COPIES = 4;

  private final ChangeProblem problem;
  private final PieceMatch match;
  private final long limit;
  private final int[] forcedFrom;
  private final RowReach[][] reach;
  private final boolean[] held;
  private final List<Demand> demands = new ArrayList<>();
  private final List<int[]> slots = new ArrayList<>();
  private final List<List<List<Pile.Picked>>> rows = new ArrayList<>();
  private final List<int[]> keys = new ArrayList<>();
  private final boolean whole;
  private Found best;
  private long steps;

  /**
   * @param best the best known with no more changes, or null
   * @param limit how many steps it may take
   */
  ChangeSearch(ChangeProblem problem, Found best, long limit) {
    this.problem = problem;
    this.best = best;
    this.limit = limit;
    this.match = new PieceMatch(problem.pieces());
    this.held = new boolean[problem.pieces().size()];
    int n = problem.heads().size();
    long longest = problem.pieces().stream().mapToLong(ChangeProblem.Piece::usable).max().orElse(0);
    forcedFrom = new int[3 * n + 1];
    reach = new RowReach[n][2];
    boolean few = true;
    for (int h = n - 1; h >= 0; h--) {
      Rows head = problem.heads().get(h);
      few &= head.copies() <= COPIES;
      for (int s = 1; s >= 0; s--) {
        int gone = head.row(s).before().stream().mapToInt(Stone::gone).sum();
        forcedFrom[3 * h + 1 + s] = forcedFrom[3 * h + 2 + s] + count(gone);
        reach[h][s] = new RowReach(head, head.row(s), longest, count(head.copies()));
      }
      int gone = head.key() == null ? 0 : head.key().gone();
      forcedFrom[3 * h] = forcedFrom[3 * h + 1] + count(gone);
    }
    whole = few;
    problem.heads().forEach(h -> rows.add(new ArrayList<>(List.of(List.of(), List.of()))));
    problem.heads().forEach(h -> keys.add(null));
  }

  private int count(int changes) {
    return problem.free() ? 0 : changes;
  }

  /** Searches; true where all was looked at. */
  boolean run(int changes) {
    site(0, changes, Price.NONE);
    return whole && steps() <= limit;
  }

  Found best() {
    return best;
  }

  long steps() {
    long n = steps;
    for (RowReach[] of : reach) {
      n += of[0].steps() + of[1].steps();
    }
    return n;
  }

  private boolean hopeless(Price cost) {
    return steps() > limit || best != null && cost.compareTo(best.price()) >= 0;
  }

  /** Settles one key or side after the other. */
  private void site(int at, int left, Price cost) {
    steps++;
    if (left < forcedFrom[at] || hopeless(cost)) {
      return;
    }
    if (at == 3 * problem.heads().size()) {
      settle(cost);
      return;
    }
    int h = at / 3;
    Rows head = problem.heads().get(h);
    if (at % 3 == 0) {
      if (head.key() == null) {
        site(at + 1, left, cost);
      } else {
        keep(
            new Place(at, 0, head.key().width()),
            head.key(),
            left,
            cost,
            (l, c) -> site(at + 1, l, c));
      }
      return;
    }
    int s = at % 3 - 1;
    Row row = head.row(s);
    List<Pile.Picked> mine = new ArrayList<>();
    rows.get(h).set(s, mine);
    if (row.mayEnd()) {
      int dropped = count(row.before().size() * head.copies());
      if (dropped <= left && reach[h][s].dropped(0) >= 0) {
        ended(at, left - dropped, cost);
      }
    }
    if (row.side() != null) {
      stone(at, 1, row.side().start(), left, cost);
    }
    rows.get(h).set(s, List.of());
  }

  /** A stone of a side, or the key, and the length that it must give. */
  private record Place(int at, int index, long extent) {
    int head() {
      return at / 3;
    }
  }

  private interface Next {
    void go(int left, Price cost);
  }

  /** A stone as wide as planned, all its pieces kept, or some of them given away. */
  private void keep(Place p, Stone stone, int left, Price cost, Next next) {
    int n = stone.pieces().length;
    int gone = 0;
    for (int c = 0; c < n; c++) {
      gone |= stone.pieces()[c] < 0 ? 1 << c : 0;
    }
    int all = (1 << n) - 1;
    int spare = problem.free() || stone.pinned() ? 0 : n <= COPIES ? all & ~gone : 0;
    // All ways to give some of them away, none first.
    for (int give = 0; ; give = (give - spare) & spare) {
      int other = gone | give;
      int changes = count(Integer.bitCount(other));
      if (changes <= left) {
        take(p, stone.pieces(), other, left - changes, cost, next);
      }
      if (give == spare) {
        return;
      }
    }
  }

  /** Keeps the pieces of those copies that are not named in {@code other}. */
  private void take(Place p, int[] pieces, int other, int left, Price cost, Next next) {
    int before = demands.size();
    int[] from = pieces.clone();
    long sawn = 0;
    Demand d = new Demand(p.extent(), p.head(), p.index() == 0);
    for (int c = 0; c < from.length; c++) {
      long off;
      if ((other >> c & 1) == 0) {
        held[from[c]] = true;
        off = match.usable(from[c]) - p.extent();
        // Beside a joint off the grid a stone may have become too long for its piece.
      } else {
        from[c] = -1;
        demands.add(d);
        slots.add(new int[] {p.at(), p.index(), c});
        off = match.least(d);
      }
      sawn = off < 0 || sawn < 0 ? -1 : sawn + off;
    }
    if (sawn >= 0) {
      Price more = cost.plus(sawn, 0, 0);
      if (!hopeless(more)) {
        if (p.index() == 0) {
          keys.set(p.head(), from);
        }
        next.go(left, more);
      }
    }
    while (demands.size() > before) {
      demands.remove(demands.size() - 1);
      slots.remove(slots.size() - 1);
    }
    for (int c = 0; c < pieces.length; c++) {
      if ((other >> c & 1) == 0) {
        held[pieces[c]] = false;
      }
    }
  }

  private void stone(int at, int i, long foot, int left, Price cost) {
    steps++;
    int h = at / 3;
    int s = at % 3 - 1;
    Rows head = problem.heads().get(h);
    Row row = head.row(s);
    RowReach can = reach[h][s];
    List<Pile.Picked> mine = rows.get(h).get(s);
    long last = mine.isEmpty() ? -1 : mine.get(i - 2).width();
    if (!can.comesOut(i, foot, last, left - forcedFrom[at + 1])) {
      return;
    }
    Stone planned = i <= row.before().size() ? row.before().get(i - 1) : null;
    if (can.keeps(i, foot, last)) {
      long w = planned.width();
      for (RowReach.Stand stand : can.stands(i, foot, w)) {
        if (can.keeps(i, foot, last, stand)) {
          Place p = new Place(at, i, stand.extent());
          keep(p, planned, left, cost, (l, c) -> placed(at, i, foot, w, stand, l, c));
        }
      }
    }
    int each = count(head.copies());
    if (each > left || planned != null && planned.pinned()) {
      return;
    }
    int[] none = new int[head.copies()];
    Arrays.fill(none, -1);
    long near = planned == null ? partner(h, s, i) : planned.width();
    for (RowReach.Try t :
        can.tries(i, foot, last, near, e -> match.least(new Demand(e, h, false)))) {
      long w = t.width();
      if (planned == null || w != planned.width() || !can.keeps(i, foot, last, t.stand())) {
        Place p = new Place(at, i, t.stand().extent());
        int all = (1 << none.length) - 1;
        take(p, none, all, left - each, cost, (l, c) -> placed(at, i, foot, w, t.stand(), l, c));
      }
    }
  }

  private long partner(int h, int s, int i) {
    Rows head = problem.heads().get(h);
    int index = head.row(s).there().size() + i;
    return head.mirror() ? width(h, 1 - s, index) : -1;
  }

  /** Width of the stone at a place of a side, those that are there counted; −1 where none is. */
  private long width(int h, int s, int index) {
    List<Long> there = problem.heads().get(h).row(s).there();
    List<Pile.Picked> row = rows.get(h).get(s);
    if (index <= there.size()) {
      return there.get(index - 1);
    }
    int i = index - there.size();
    return i <= row.size() ? row.get(i - 1).width() : -1;
  }

  private void placed(
      int at, int i, long foot, long w, RowReach.Stand stand, int left, Price cost) {
    int h = at / 3;
    int s = at % 3 - 1;
    Rows head = problem.heads().get(h);
    RowReach can = reach[h][s];
    List<Pile.Picked> mine = rows.get(h).get(s);
    mine.add(new Pile.Picked(w, List.of()));
    long outer = foot + head.row(s).side().joint() + w;
    Stone planned = i <= head.row(s).before().size() ? head.row(s).before().get(i - 1) : null;
    boolean moved = planned != null && (planned.width() != w || planned.foot() != outer);
    Price now = cost.moved(moved ? head.copies() : 0);
    if (head.mirror() && s == 1) {
      long partner = width(h, 0, head.row(1).there().size() + i);
      now = now.plus(0, head.copies() * Math.abs(w - Math.max(0, partner)), 0);
    }
    if (!hopeless(now)) {
      int dropped = can.dropped(i);
      if (stand.ends() && dropped >= 0 && dropped <= left && can.ends(i, foot, outer)) {
        long off = head.copies() * head.row(s).side().bearingOff(outer);
        ended(at, left - dropped, now.plus(0, 0, off));
      }
      if (stand.goesOn() && can.goesOn(i, foot, outer)) {
        stone(at, i + 1, outer, left, now);
      }
    }
    mine.remove(mine.size() - 1);
  }

  /** Goes on after a side; the right one settles what its own stones left open of the balance. */
  private void ended(int at, int left, Price cost) {
    int h = at / 3;
    Rows head = problem.heads().get(h);
    long off = 0;
    if (head.mirror() && at % 3 == 2) {
      int there = head.right().there().size();
      int set = there + rows.get(h).get(1).size();
      int fixed = head.left().there().size();
      for (int j = fixed + 1; j <= there; j++) {
        off += Math.abs(width(h, 1, j) - Math.max(0, width(h, 0, j)));
      }
      for (int j = set + 1; width(h, 0, j) >= 0; j++) {
        off += width(h, 0, j);
      }
    }
    site(at + 1, left, cost.plus(0, head.copies() * off, 0));
  }

  /** Hands out the pieces. */
  private void settle(Price bound) {
    steps += demands.size();
    int[] of = match.match(demands, held);
    if (of == null) {
      return;
    }
    long more = 0;
    for (int d = 0; d < of.length; d++) {
      Demand x = demands.get(d);
      more += match.usable(of[d]) - x.extent() - match.least(x);
    }
    Price cost = bound.plus(more, 0, 0);
    if (best == null || cost.compareTo(best.price()) < 0) {
      best = new ChangeAnswer(problem, rows, keys, slots, of).found(cost);
    }
  }
}
