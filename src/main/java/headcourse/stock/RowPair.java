package headcourse.stock;

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
    if (!head.mirror()) {
      return 0;
    }
    long low = left.widths(left.firstEnd()) - right.widths(right.side.lastEnd());
    long high = left.widths(left.side.lastEnd()) - right.widths(right.firstEnd());
    long least = Math.max(0, Math.max(low, -high));
    for (int s = 0; s < 2; s++) {
      if (longer(s)) {
        long lone = lone(s, row(s).firstEnd());
        least = Math.max(least, Math.max(lone, 2 * lone - (s == 0 ? high : -low)));
      }
      if (unlike() && row(s).past < row(1 - s).past) {
        long past = row(1 - s).most(row(1 - s).side.lastEnd());
        long apart = row(s).least(row(s).firstEnd()) - past;
        long both = 2 * Math.min(head.jump(), Long.MAX_VALUE / 1000);
        long sum = 0;
        for (int i = 0; i < left.stones && apart > 0; i++, apart -= both) {
          sum += apart;
        }
        least = Math.max(least, sum);
      }
    }
    return least;
  }

  /** No choice of stones makes the sides of one copy differ less with these ends. */
  long floor(long leftEnd, long rightEnd) {
    if (!head.mirror()) {
      return 0;
    }
    long more = left.widths(leftEnd) - right.widths(rightEnd);
    long least = Math.abs(more);
    for (int s = 0; s < 2; s++) {
      if (longer(s)) {
        long lone = lone(s, s == 0 ? leftEnd : rightEnd);
        // The stones with partners make up for it.
        least = Math.max(least, Math.max(lone, 2 * lone - (s == 0 ? more : -more)));
      }
    }
    return unlike() ? Math.max(least, floor()) : least;
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
