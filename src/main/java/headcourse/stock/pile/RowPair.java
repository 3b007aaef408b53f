package headcourse.stock.pile;

/**
 * The two rows of a head. An end stone is set apart from the others of its row where it is not
 * simply the widest of them: past the jamb line, or without a partner of its own rank.
 *
 * @param head the head
 * @param h its place
 * @param left left row
 * @param right right row
 */
record RowPair(Pile.Head head, int h, RowShape left, RowShape right) {
  RowShape row(int s) {
    return s == 0 ? left : right;
  }

  /** Whether a side has more stones than the other. */
  boolean longer(int s) {
    return row(s).stones > row(1 - s).stones;
  }

  private boolean unlike() {
    return left.stones == right.stones && left.past != right.past;
  }

  /** Whether the end stone of a side is picked by itself. */
  boolean labelled(int s) {
    return row(s).past > 0 || head.mirror() && (longer(s) || unlike());
  }

  /** Whether that stone's partner is known: the other end stone, or none. */
  boolean apart(int s) {
    return head.mirror()
        && labelled(s)
        && (longer(s) || left.stones == right.stones && labelled(1 - s));
  }

  /** Stones of a side that are matched by rank. */
  int ranked(int s) {
    return row(s).stones - (apart(s) ? 1 : 0);
  }

  /** How many ranked stones the left side has more than the right. */
  int lead() {
    return ranked(0) - ranked(1);
  }

  /** No choice of stones makes the sides of one copy differ less. */
  long floor() {
    return floor(left.firstEnd(), left.lastEnd(), right.firstEnd(), right.lastEnd());
  }

  /** No choice of stones makes the sides of one copy differ less with these ends. */
  long floor(long leftEnd, long rightEnd) {
    return floor(leftEnd, leftEnd, rightEnd, rightEnd);
  }

  /** The same for ends from one foot to another, by side. */
  private long floor(long leftFirst, long leftLast, long rightFirst, long rightLast) {
    if (!head.mirror()) {
      return 0;
    }
    long low = left.widths(leftFirst) - right.widths(rightLast);
    long high = left.widths(leftLast) - right.widths(rightFirst);
    long least = Math.max(0, Math.max(low, -high));
    for (int s = 0; s < 2; s++) {
      long first = s == 0 ? leftFirst : rightFirst;
      long more = longer(s) ? lone(s, first) : apart(s, first, s == 0 ? rightLast : leftLast);
      // Where some are so much wider than their partners, the others make up for it.
      least = Math.max(least, Math.max(more, 2 * more - (s == 0 ? high : -low)));
    }
    return least;
  }

  /** By how much the outer stones of a side are wider than their partners at least. */
  private long apart(int s, long end, long other) {
    long sum = 0;
    if (left.stones == right.stones) {
      long both = 2 * Math.min(head.jump(), Long.MAX_VALUE / 1000);
      long apart = row(s).least(end) - row(1 - s).most(other);
      for (int i = 0; i < left.stones && apart > 0; i++, apart -= both) {
        sum += apart;
      }
    }
    return sum;
  }

  /** The least that the stones without a partner come to. */
  private long lone(int s, long end) {
    int lone = row(s).stones - row(1 - s).stones;
    long jump = Math.min(head.jump(), Long.MAX_VALUE / 1000);
    long sum = 0;
    for (int i = 0; i < lone; i++) {
      sum += Math.max(head.min(), row(s).least(end) - i * jump);
    }
    return lone < 2 ? sum : Math.max(sum, row(s).two(end) + (lone - 2) * head.min());
  }

  /** Sum of the differences of two rows, position by position. */
  long imbalance(long[] l, long[] r) {
    long sum = 0;
    for (int i = 0; head.mirror() && i < Math.max(l.length, r.length); i++) {
      sum += Math.abs((i < l.length ? l[i] : 0) - (i < r.length ? r[i] : 0));
    }
    return sum;
  }
}
