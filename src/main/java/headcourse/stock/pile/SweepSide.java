package headcourse.stock.pile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** One side of a head while pieces are given to it, from the shortest to the longest. */
final class SweepSide {
  final RowPair pair;
  final RowShape row;
  final int s;
  final boolean labelled;

  /** Whether its end stone is not matched by rank. */
  final boolean apart;

  /** Whether its end stone has no partner. */
  final boolean lone;

  final int copies;
  private final CoverTable table;
  private final long extra;
  private final long jump;
  private final boolean bound;
  private RowSteps steps;
  private long endMost;
  private long endLeast;
  private long leastNeed;
  private long mostNeed;

  /** All stones but an end stone that is picked by itself, with the width each may have at most. */
  final List<Batch> body = new ArrayList<>();

  private final long[] cap;
  private Batch end;
  private long sum;

  SweepSide(RowPair pair, int s, CoverTable table, long extra) {
    this.pair = pair;
    this.s = s;
    this.row = pair.row(s);
    this.labelled = pair.labelled(s);
    this.apart = pair.apart(s);
    this.lone = apart && pair.longer(s);
    this.copies = pair.head().copies();
    this.table = table;
    this.extra = extra;
    this.bound = pair.head().jump() < Long.MAX_VALUE / 1000;
    this.jump = bound ? pair.head().jump() + extra : 0;
    cap = new long[row.stones + 1];
    measure();
  }

  /** Reads anew what the row's ends allow. */
  void measure() {
    long first = row.firstEnd();
    long last = row.lastEnd();
    endMost = row.most(last) + extra;
    endLeast = row.past == 0 ? row.least(first) : row.two(first) - row.most(first);
    leastNeed = row.need(first);
    mostNeed = row.need(last);
    steps = new RowSteps(this);
  }

  long leastNeed() {
    return leastNeed;
  }

  long mostNeed() {
    return mostNeed;
  }

  Batch end() {
    return end;
  }

  /** Its end stone, or the last that was given to its body. */
  Batch last(boolean asEnd) {
    return asEnd ? end : body.get(body.size() - 1);
  }

  /** The greatest difference of neighbours; negative where that is open. */
  long jump() {
    return bound ? jump : -1;
  }

  /** What the end stone, or the one before those past the jamb line, covers at least. */
  long endLeast() {
    return endLeast;
  }

  /** How much longer than wide a stone may be at most. */
  long extra() {
    return extra;
  }

  /** What an end stone that is picked by itself covers at most. */
  long endMost() {
    return endMost;
  }

  /** Stones of its body once it is complete. */
  int bodyStones() {
    return row.stones - (labelled ? 1 : 0);
  }

  /** How much a piece covers at most. */
  long covers(long usable) {
    return Math.min(usable, pair.head().max() + extra);
  }

  /** Stones still to come. */
  int missing() {
    return row.stones - body.size() - (end == null ? 0 : 1);
  }

  boolean takesBody() {
    return body.size() < row.stones - (labelled ? 1 : 0);
  }

  boolean takesEnd() {
    return labelled && end == null;
  }

  /** Sum of what its stones cover at most. */
  long sum() {
    return sum;
  }

  /** Whether a stone so wide can be the next of the body. */
  boolean takes(long usable) {
    return steps.wide(cap(usable), body.size());
  }

  /** How wide the next of the body may be: from its neighbours, and from the end stone. */
  private long cap(long usable) {
    return steps.cap(covers(usable), body.size(), widest(), end == null ? 0 : endCovers());
  }

  void push(Batch b) {
    long c = cap(b.usable);
    cap[body.size()] = c;
    sum += c;
    body.add(b);
  }

  void pop() {
    body.remove(body.size() - 1);
    sum -= cap[body.size()];
  }

  void setEnd(Batch b) {
    end = b;
    sum += endCovers();
  }

  void clearEnd() {
    sum -= endCovers();
    end = null;
  }

  private long endCovers() {
    return Math.min(covers(end.usable), endMost);
  }

  /** Width of the widest of the body at most. */
  private long widest() {
    return body.isEmpty() ? 0 : cap[body.size() - 1];
  }

  /**
   * The least that is sawn off one copy of this side, from what was given to it on.
   *
   * @param t types still to come
   * @param usable length of the shortest of them
   */
  long least(int t, long usable) {
    int r = missing() - (takesEnd() ? 1 : 0);
    long last = takesEnd() ? endMost : 0;
    long reach = reach(r);
    if (sum + last + reach < leastNeed) {
      return CoverTable.NONE;
    }
    long least = table.least(t, r, leastNeed - sum - last);
    least = Math.max(least, table.shortest(t, r) - Math.min(reach, mostNeed - sum - last));
    return takesEnd()
        ? Math.max(least + usable - endMost, table.least(t, r + 1, leastNeed - sum))
        : least;
  }

  /** How much more than what it has it may cover at most. */
  long room() {
    int r = missing() - (takesEnd() ? 1 : 0);
    return Math.min(mostNeed - sum, reach(r) + (takesEnd() ? endMost : 0));
  }

  /** What so many more of the body come to at most. */
  private long reach(int r) {
    long last = end == null ? 0 : endCovers();
    return steps.reach(r, body.size(), widest(), last, pair.head().max() + extra);
  }

  /** The greatest end that the stones may reach, or one less than the first for none. */
  long reached() {
    return reached(sum, widest(), labelled ? endCovers() : 0);
  }

  /** The same for stones of which no more is known. */
  long reached(long sum, long widest, long covers) {
    long e = row.end(sum);
    while (e >= row.side.firstEnd() && !reaches(e, sum, widest, covers)) {
      e--;
    }
    return e;
  }

  /** Whether the stones may end there, whatever their order. */
  boolean reaches(long e) {
    return reaches(e, sum, widest(), labelled ? endCovers() : 0);
  }

  /**
   * The same for stones that cover so much in all, with such a widest of the body and such an end.
   */
  boolean reaches(long e, long sum, long widest, long covers) {
    if (row.off(e) < 0 || row.floor(e) > row.widths(e) || row.need(e) > sum) {
      return false;
    }
    if (!labelled) {
      return widest >= row.least(e);
    }
    long last = Math.min(covers, row.most(e) + extra);
    if (bound && row.stones > 1) {
      last = Math.min(last, widest + jump);
    }
    return row.need(e) <= sum - covers + last
        && last >= Math.max(pair.head().min(), row.least(e))
        && last + widest >= row.two(e);
  }

  /**
   * The least that so many of its outermost stones come to if the stones end there: the others must
   * make up for the rest, and follow the innermost of these within the jump.
   */
  long lone(int stones, long e) {
    if (extra > 0 || !labelled || stones < 1 || stones > row.stones) {
      return 0;
    }
    long most = stones > 1 ? pair.head().max() : Math.min(endCovers(), row.most(e));
    long x = Math.max(pair.head().min(), bound ? row.least(e) - (stones - 1) * jump : 0);
    // By halves: one comes to more with its width, the others need less of it.
    long from = x;
    long high = most;
    while (x < high) {
      long mid = x + (high - x) / 2;
      if (outermost(stones, mid, e) >= row.widths(e) - others(stones, mid)) {
        high = mid;
      } else {
        x = mid + 1;
      }
    }
    long at = Math.max(outermost(stones, x, e), row.widths(e) - others(stones, x));
    if (x == from) {
      return at;
    }
    long before = row.widths(e) - others(stones, x - 1);
    return Math.min(at, Math.max(before, outermost(stones, x - 1, e)));
  }

  /** What the outermost come to at least, the innermost of them so wide. */
  private long outermost(int stones, long x, long e) {
    long sum = 0;
    for (int i = 0; i < stones; i++) {
      long least = Math.max(pair.head().min(), bound ? x - i * jump : 0);
      sum += i == 0 && stones > 1 ? x : Math.max(least, row.least(e) - steps(stones - 1 - i));
    }
    return Math.max(sum, x);
  }

  private long steps(int number) {
    return number == 0 ? 0 : bound ? number * jump : pair.head().max();
  }

  /** What all but the outermost come to at most, the innermost of those so wide. */
  private long others(int stones, long x) {
    long sum = 0;
    for (int i = 1; i <= row.stones - stones; i++) {
      long c = cap[stones - 2 + i];
      sum += bound ? Math.min(c, x + i * jump) : c;
    }
    return sum;
  }

  /** Length of its pieces. */
  long length(PileTypes types) {
    long all = 0;
    for (Batch b : body) {
      all += b.length(types);
    }
    return end == null ? all : all + end.length(types);
  }

  /** What its stones may be wide at most, ranked, ascending. */
  long[] ranks() {
    boolean in = labelled && !apart;
    long[] out = Arrays.copyOf(cap, body.size() + (in ? 1 : 0));
    if (in) {
      out[body.size()] = endCovers();
      Arrays.sort(out);
    }
    return out;
  }

  /** What an end stone set apart may be wide at most; 0 for none. */
  long apart() {
    return apart ? endCovers() : 0;
  }

  /** What matters of it for the pieces still to come. */
  void key(long[] out, int at) {
    out[at] = body.size();
    out[at + 1] = sum;
    out[at + 2] = end == null ? -1 : endCovers();
    boolean more = takesBody();
    out[at + 3] =
        more && !bound
            ? -1
            : more
                ? widest()
                : Math.min(
                    widest(), 1 + Math.max(row.least(row.lastEnd()), row.two(row.lastEnd())));
  }
}
