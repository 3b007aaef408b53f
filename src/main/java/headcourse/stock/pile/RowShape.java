package headcourse.stock.pile;

/**
 * A row of so many stones on one side of a head, so many of them wholly past the jamb line, and
 * what its end allows.
 *
 * <p>The jamb line keeps joints out of one stretch of feet. So the stone that the line falls into
 * must reach over that stretch, and those past it must have room beyond.
 */
final class RowShape {
  final PileSide side;
  final int stones;
  final int past;
  private final Pile.Head head;
  private final long zero;
  private final long extras;
  private final long before;
  private final long beyond;
  private final long inner;
  private final long[] off;
  private long within = Long.MAX_VALUE;
  private long alone;
  private long from = Long.MIN_VALUE;
  private long to = Long.MAX_VALUE;

  /**
   * @param stones how many
   * @param past how many of them are past the jamb line
   */
  RowShape(Pile.Head head, PileSide side, int stones, int past) {
    this.head = head;
    this.side = side;
    this.stones = stones;
    this.past = past;
    long sum = 0;
    for (int i = 1; i <= stones; i++) {
      sum += side.extra(i);
    }
    extras = sum;
    zero = side.start() + stones * side.joint() - extras;
    long[] last = barred(stones - 1);
    before = last[0] - 1;
    beyond = last[1] + 1;
    inner = past == 1 ? barred(stones - 2)[0] - 1 : Long.MAX_VALUE / 4;
    off = new long[(int) Math.max(0, side.lastEnd() - side.firstEnd() + 1)];
    for (int i = 0; i < off.length; i++) {
      off[i] = side.bearingOff(side.firstEnd() + i);
    }
  }

  /** The same once more. */
  RowShape(RowShape other) {
    this(other.head, other.side, other.stones, other.past);
    alone = other.alone;
  }

  /** The first and the last foot where a joint may not stand. */
  private long[] barred(int index) {
    long first = Long.MAX_VALUE / 4;
    long last = Long.MIN_VALUE / 4;
    for (long f = side.start(); index > 0 && f <= side.lastEnd(); f++) {
      if (!side.jointStands(index, f)) {
        first = Math.min(first, f);
        last = f;
      }
    }
    return new long[] {first, last};
  }

  /** Takes note of what it saws off at least with the pile to itself. */
  void alone(long sawn) {
    alone = sawn;
  }

  long alone() {
    return alone;
  }

  /** Whether anything lies between the stones and the jamb line that makes past ones a choice. */
  boolean sensible() {
    return past == 0 || beyond > Long.MIN_VALUE / 8 && past < stones && most(side.lastEnd()) > 0;
  }

  /** Whether a row of widths allowed may end somewhere. */
  boolean comesOut() {
    int inside = stones - 1 - past;
    if (side.start() + inside * (side.joint() + head.min()) >= barred(inside)[0]) {
      return false;
    }
    for (long e = side.firstEnd(); e <= side.lastEnd(); e++) {
      if (off(e) >= 0
          && least(e) <= most(e)
          && widths(e) <= stones * head.max()
          && floor(e) <= widths(e)) {
        return true;
      }
    }
    return false;
  }

  /** Only ends whose bearing is off its target by no more than this count, pm. */
  void within(long most) {
    within = most;
  }

  /** Only ends from one to another count. */
  void between(long first, long last) {
    from = first;
    to = last;
  }

  /** How far the bearing is off at an end; negative where the row may not end there. */
  long off(long end) {
    int i = (int) (end - side.firstEnd());
    return i < 0 || i >= off.length || off[i] > within || end < from || end > to ? -1 : off[i];
  }

  /** The least that the bearing can be off, pm; huge where the row ends nowhere. */
  long leastOff() {
    long least = Long.MAX_VALUE / 8;
    for (long e = side.firstEnd(); e <= side.lastEnd(); e++) {
      least = off(e) >= 0 ? Math.min(least, off(e)) : least;
    }
    return least;
  }

  /** What the stones take along their blanks in all if the row ends there. */
  long need(long end) {
    return end - zero;
  }

  /** Sum of the widths if the row ends there. */
  long widths(long end) {
    return end - zero - extras;
  }

  /** The greatest end for stones that come to no more than this; less than the first for none. */
  long end(long sum) {
    long e = Math.min(side.lastEnd(), zero + sum);
    while (e >= side.firstEnd() && off(e) < 0) {
      e--;
    }
    return e;
  }

  /** The least end that counts, or one past the last. */
  long firstEnd() {
    long e = side.firstEnd();
    while (e <= side.lastEnd() && off(e) < 0) {
      e++;
    }
    return e;
  }

  /** The greatest end that counts, or less than the first. */
  long lastEnd() {
    return end(Long.MAX_VALUE / 8);
  }

  /** Least width of the end stone. */
  long least(long end) {
    if (stones == 0) {
      return 0;
    }
    return past > 0 || stones == 1 ? head.min() : Math.max(head.min(), end - side.joint() - before);
  }

  /** Greatest width of the end stone. */
  long most(long end) {
    if (past == 0) {
      return head.max();
    }
    long room = end - side.joint() - beyond - (past - 1) * (head.min() + side.joint());
    return Math.min(head.max(), room);
  }

  /** With one stone past the jamb line, the least that it and the one before it come to. */
  long two(long end) {
    return past == 1 && stones > 2 ? end - 2 * side.joint() - inner : 0;
  }

  /** The least that the widths come to if the row ends there. */
  long floor(long end) {
    long sum = 0;
    for (int i = 0; i < stones; i++) {
      long down = i == 0 ? 0 : head.jump() > Long.MAX_VALUE / 100 ? head.max() : i * head.jump();
      sum += Math.max(head.min(), least(end) - down);
    }
    return Math.max(sum, two(end) + (stones - 2) * head.min());
  }
}
