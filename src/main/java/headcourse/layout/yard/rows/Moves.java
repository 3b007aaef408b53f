package headcourse.layout.yard.rows;

import java.util.ArrayList;
import java.util.List;

/** The steps from one state of the search to the next. */
final class Moves {
  /** How wide stones are looked at. */
  enum Widths {
    /** As wide as a piece gives, or as the stone on the other side; the last as it must be. */
    WHOLE,
    /** The same, but every width where neighbours may hardly differ. */
    CLOSE,
    /** Every width. */
    ALL
  }

  /** Neighbours that may differ by no more than this are tried at every width, ticks. */
  private static final long CLOSE = 16;

  /** How many pieces next shorter and next longer than the partner's are tried on the right. */
  private static final int NEAR = 2;

  private final Pile pile;
  private final Store store;
  private final Reaches reaches;
  private final long[][] ahead;
  private final int[] forced;
  private Widths widths = Widths.ALL;
  private long cap;
  private long room = Store.NEVER;
  private Draft draft;
  private long steps;

  Moves(Pile pile, Store store, Reaches reaches) {
    this.pile = pile;
    this.store = store;
    this.reaches = reaches;
    int n = pile.heads().size();
    ahead = new long[n + 1][3];
    forced = new int[n + 1];
    for (int h = n - 1; h >= 0; h--) {
      ahead[h] = reaches.ahead(h, ahead[h + 1]);
      forced[h] = forced[h + 1] + forced(pile.heads().get(h));
    }
  }

  /** Stones of a head, copies counted, that change in any case. */
  private int forced(Pile.Head head) {
    int least = Integer.MAX_VALUE;
    for (Pile.Way way : head.ways()) {
      int n = way.ticket() == null ? 0 : way.ticket().gone();
      least = Math.min(least, n + gone(way.left(), 0) + gone(way.right(), 0));
    }
    return pile.ticketed() && least < Integer.MAX_VALUE ? least : 0;
  }

  private static int gone(Pile.Row row, int from) {
    int n = 0;
    for (int i = from; i < row.tickets().size(); i++) {
      n += row.tickets().get(i).gone();
    }
    return n;
  }

  void widths(Widths as) {
    widths = as;
  }

  /** Stones that stay, or null. */
  void draft(Draft known) {
    draft = known;
  }

  /** No more than this may be sawn off in all, so that no choice beyond it is looked at. */
  void room(long most) {
    room = most;
  }

  /** Length sawn off that counts as none. */
  void cap(long most) {
    cap = most;
  }

  long steps() {
    return steps + reaches.steps();
  }

  /** How many of the stones must change in any case. */
  int forced() {
    return forced[0];
  }

  /** What is sawn off in any case. */
  long least() {
    return ahead[0][0];
  }

  /** What is wanting of spare in any case, pm. */
  long leastShortfall() {
    return ahead[0][2];
  }

  /** All states one step on. */
  List<Node> from(Node n) {
    List<Node> out = new ArrayList<>();
    if (n.whole) {
      for (int way = 0; way < pile.heads().get(n.head + 1).ways().size(); way++) {
        start(n, way, out);
      }
    } else {
      stones(n, out);
    }
    return out;
  }

  /** The states in which a way of the next head is taken, and its key's pieces. */
  void start(Node n, int way, List<Node> out) {
    int h = n.head + 1;
    Pile.Head head = pile.heads().get(h);
    Pile.Way w = head.ways().get(way);
    steps++;
    if (reaches.dead(h, way)) {
      return;
    }
    Node fixed = draft == null ? null : draft.fixedKey(h);
    if (fixed != null && fixed.way != way) {
      return;
    }
    int[] own = own(w.ticket());
    List<int[]> picks = List.of(new int[0]);
    if (w.key() >= 0) {
      picks =
          fixed != null
              ? List.of(fixed.pieces)
              : store.all(n.used, h, true, w.key(), head.copies(), own);
    }
    for (int[] pieces : picks) {
      for (int ends = 0; ends < 4; ends++) {
        boolean l = (ends & 1) != 0;
        boolean r = (ends & 2) != 0;
        if (may(w.left(), l) && may(w.right(), r)) {
          Node next = new Node(n, true);
          next.way = way;
          take(next, pieces, w.key());
          next.changes += w.key() < 0 ? 0 : changed(own, pieces, head.copies(), true);
          start(next, w, 0, l);
          start(next, w, 1, r);
          out.add(settled(next));
        }
      }
    }
  }

  private static boolean may(Pile.Row row, boolean end) {
    return end ? row.mayEnd() : row.side() != null;
  }

  private void start(Node n, Pile.Way w, int s, boolean end) {
    Pile.Row row = w.row(s);
    n.ended[s] = end;
    n.foot[s] = row.side() == null ? 0 : row.side().start();
    n.changes += end ? dropped(row, 0, n.head) : 0;
  }

  private int dropped(Pile.Row row, int from, int head) {
    int left = row.tickets().size() - from;
    return pile.ticketed() ? Math.max(0, left) * pile.heads().get(head).copies() : 0;
  }

  private int[] own(Pile.Ticket t) {
    return t == null ? null : t.pieces().stream().mapToInt(store::index).toArray();
  }

  private void take(Node n, int[] pieces, long extent) {
    n.pieces = pieces;
    n.used = n.used.clone();
    for (int k : pieces) {
      Store.set(n.used, k);
      n.sawn += store.usable(k) - extent;
    }
  }

  private int changed(int[] own, int[] pieces, int copies, boolean same) {
    if (!pile.ticketed()) {
      return 0;
    }
    int n = copies;
    for (int c = 0; own != null && same && c < copies; c++) {
      n -= own[c] == pieces[c] ? 1 : 0;
    }
    return n;
  }

  private void stones(Node n, List<Node> out) {
    Pile.Head head = pile.heads().get(n.head);
    Pile.Row row = head.ways().get(n.way).row(n.turn);
    RowSide side = row.side();
    int i = n.set[n.turn] + 1;
    long foot = n.foot[n.turn];
    Pile.Ticket ticket = row.ticket(i);
    long before = n.last[n.turn];
    long most =
        Math.min(reaches.widest(n.head, n.way, n.turn), side.lastEnd() - foot - side.joint());
    most = before < 0 || head.jump() > most ? most : Math.min(most, before + head.jump());
    long least = before < 0 ? head.min() : Math.max(head.min(), before - head.jump());
    if (ticket != null && ticket.pinned()) {
      least = Math.max(least, ticket.width());
      most = Math.min(most, ticket.width());
    }
    Node fixed = draft == null ? null : draft.fixed(n.head, n.turn, i);
    if (fixed != null) {
      least = Math.max(least, fixed.width);
      most = Math.min(most, fixed.width);
    }
    for (int end = 0; end < 2; end++) {
      boolean last = end == 1;
      if (last ? row.each() > 0 && i != row.each() : i == row.each()) {
        continue;
      }
      boolean close = widths == Widths.CLOSE && head.jump() <= CLOSE;
      boolean all = widths == Widths.ALL || fixed != null || close;
      long[] tried = all ? null : whole(n, side, i, foot, last, least, most);
      if (all && fixed == null && !side.fanned()) {
        tried = every(n, side, i, foot, last, least, most);
      }
      int count = tried == null ? (int) (most - least + 1) : tried.length;
      for (int t = 0; t < count; t++) {
        long w = tried == null ? most - t : tried[t];
        long outer = foot + side.joint() + w;
        steps++;
        if (w >= least && w <= most && stands(n, row, side, i, foot, outer, last)) {
          stone(n, row, i, w, last, fixed, out);
        }
      }
    }
  }

  private boolean stands(
      Node n, Pile.Row row, RowSide side, int i, long foot, long outer, boolean last) {
    boolean on =
        last ? side.bearingOff(outer) >= 0 : !reaches.of(n.head, n.way, n.turn).dead(i + 1, outer);
    return on && side.stands(i, foot, outer, last);
  }

  /** Every width of an upright stone for which some piece leaves room enough, greatest first. */
  private long[] every(
      Node n, RowSide side, int i, long foot, boolean last, long least, long most) {
    if (most < least) {
      return new long[0];
    }
    int[] of = store.of(n.head, false);
    long extra = side.extent(i, foot, foot + side.joint() + least, last) - least;
    long left = (room - n.sawn) / pile.heads().get(n.head).copies();
    long[] out = new long[(int) (most - least + 1)];
    int count = 0;
    long from = most + 1;
    for (int k = of.length - 1; k >= 0 && from > least; k--) {
      if (Store.has(n.used, of[k])) {
        continue;
      }
      long usable = store.usable(of[k]);
      int lower = k - 1;
      while (lower >= 0 && Store.has(n.used, of[lower])) {
        lower--;
      }
      long to = Math.max(least, usable - extra - Math.max(-1, left));
      to = lower < 0 ? to : Math.max(to, store.usable(of[lower]) - extra + 1);
      for (long w = Math.min(from - 1, usable - extra); w >= to; w--) {
        out[count++] = w;
        from = w;
      }
    }
    return java.util.Arrays.copyOf(out, count);
  }

  /** The widths that pieces give, greatest first; the partner's; and where the row is to end. */
  private long[] whole(
      Node n, RowSide side, int i, long foot, boolean last, long least, long most) {
    Pile.Head head = pile.heads().get(n.head);
    int[] of = store.of(n.head, false);
    List<Long> out = new ArrayList<>();
    boolean paired = head.mirror() && n.turn == 1 && n.partner > 0;
    long w = paired ? Math.min(n.partner, most) : most;
    if (w < least) {
      w = paired ? least : w;
    }
    if (w < least) {
      return new long[0];
    }
    if (paired) {
      out.add(w);
      longer(n, side, i, foot, last, w, most, of, out);
    }
    long extent = side.extent(i, foot, foot + side.joint() + w, last);
    int from = store.from(of, extent);
    if (!paired && from < of.length) {
      out.add(w);
    }
    int near = 0;
    for (int k = from - 1; k >= 0 && w >= least && (!paired || near < NEAR); k--) {
      if (Store.has(n.used, of[k]) || k + 1 < from && same(of, k, n.used, from)) {
        continue;
      }
      long usable = store.usable(of[k]);
      w = down(side, i, foot, last, w, least, usable);
      if (w >= least) {
        out.add(w);
        near++;
      }
    }
    if (last) {
      ends(side, foot, least, most, out);
    }
    return out.stream().mapToLong(x -> x).toArray();
  }

  /** Whether the next longer piece that is still there is just as long. */
  private boolean same(int[] of, int k, long[] used, int from) {
    for (int j = k + 1; j < from && store.usable(of[j]) == store.usable(of[k]); j++) {
      if (!Store.has(used, of[j])) {
        return true;
      }
    }
    return false;
  }

  /** The greatest width no greater than one that a length gives; less than the least for none. */
  private long down(
      RowSide side, int i, long foot, boolean last, long from, long least, long usable) {
    long w = from;
    while (w >= least) {
      long over = side.extent(i, foot, foot + side.joint() + w, last) - usable;
      if (over <= 0) {
        return w;
      }
      steps++;
      w -= side.fanned() ? Math.max(1, over / 2) : over;
    }
    return w;
  }

  /** What the next longer pieces give. */
  private void longer(
      Node n,
      RowSide side,
      int i,
      long foot,
      boolean last,
      long width,
      long most,
      int[] of,
      List<Long> out) {
    long extent = side.extent(i, foot, foot + side.joint() + width, last);
    int near = 0;
    for (int k = store.from(of, extent); k < of.length && near < NEAR; k++) {
      if (Store.has(n.used, of[k])) {
        continue;
      }
      long usable = store.usable(of[k]);
      long w = down(side, i, foot, last, Math.min(most, width + usable - extent), width, usable);
      if (w > width && (out.isEmpty() || out.get(out.size() - 1) != w)) {
        out.add(w);
        near++;
      }
    }
  }

  /** Ends nearest the target that a last stone may reach, when sawn. */
  private static void ends(RowSide side, long foot, long least, long most, List<Long> out) {
    long best = -1;
    long off = Long.MAX_VALUE;
    long longest = -1;
    for (long w = most; w >= least; w--) {
      long b = side.bearingOff(foot + side.joint() + w);
      if (b >= 0 && longest < 0) {
        longest = w;
      }
      if (b >= 0 && b < off) {
        off = b;
        best = w;
      }
    }
    for (long w : new long[] {longest, best}) {
      if (w >= 0 && !out.contains(w)) {
        out.add(w);
      }
    }
  }

  private void stone(
      Node n, Pile.Row row, int i, long w, boolean last, Node fixed, List<Node> out) {
    Pile.Head head = pile.heads().get(n.head);
    RowSide side = row.side();
    int s = n.turn;
    long foot = n.foot[s];
    long outer = foot + side.joint() + w;
    long extent = side.extent(i, foot, outer, last);
    Pile.Ticket t = row.ticket(i);
    boolean placed = t != null && t.width() == w && t.foot() == outer;
    boolean same = t != null && t.width() == w;
    if (side.fanned()) {
      same = placed && last == (i == row.tickets().size());
    }
    int[] own = same ? own(t) : null;
    List<int[]> picks =
        fixed == null
            ? store.all(n.used, n.head, false, extent, head.copies(), own)
            : hold(fixed.pieces, extent) ? List.of(fixed.pieces) : List.of();
    for (int[] pieces : picks) {
      int changed = changed(own, pieces, head.copies(), same);
      if (t != null && t.pinned() && changed > 0) {
        continue;
      }
      Node next = new Node(n, false);
      next.side = s;
      next.width = w;
      take(next, pieces, extent);
      next.changes += changed;
      next.moved += pile.ticketed() && t != null && !placed ? head.copies() : 0;
      next.shortfall = Math.max(next.shortfall, side.shortfall(i, outer, last));
      next.foot[s] = outer;
      next.last[s] = head.jump() >= head.max() - head.min() ? -1 : w;
      next.set[s] = i;
      if (last) {
        next.ended[s] = true;
        next.bearing += head.copies() * side.bearingOff(outer);
        next.changes += dropped(row, i, n.head);
      }
      out.add(settled(next));
    }
  }

  private boolean hold(int[] pieces, long extent) {
    for (int k : pieces) {
      if (store.usable(k) < extent) {
        return false;
      }
    }
    return true;
  }

  /** Goes over the places that need no stone, and settles what the state can come to. */
  private Node settled(Node n) {
    Pile.Head head = pile.heads().get(n.head);
    Pile.Way way = head.ways().get(n.way);
    if (n.side >= 0) {
      place(n, head, n.width);
    }
    while (!n.whole) {
      Pile.Row row = way.row(n.turn);
      int there = row.there().size();
      if (n.at > there && !n.ended[n.turn]) {
        break;
      }
      place(n, head, n.at <= there ? row.there().get(n.at - 1) : 0);
      if (n.turn == 0) {
        n.whole = over(n, way, 0) && over(n, way, 1);
      }
    }
    n.low = low(n, way);
    return n;
  }

  /** A stone of this width, or none, at the place; then the other side, or the next place. */
  private static void place(Node n, Pile.Head head, long width) {
    if (n.turn == 0) {
      n.partner = width;
      n.turn = 1;
    } else {
      n.imbalance += head.mirror() ? head.copies() * Math.abs(width - n.partner) : 0;
      n.partner = 0;
      n.turn = 0;
      n.at++;
    }
  }

  private static boolean over(Node n, Pile.Way way, int s) {
    return n.ended[s] && n.at > way.row(s).there().size() + n.set[s];
  }

  private long[] low(Node n, Pile.Way way) {
    long[] rest = ahead[n.head + 1];
    long sawn = n.sawn + rest[0];
    long bearing = n.bearing + rest[1];
    long shortfall = Math.max(n.shortfall, rest[2]);
    int changes = n.changes + forced[n.head + 1];
    for (int s = 0; s < 2; s++) {
      if (!n.ended[s]) {
        Reach r = reaches.of(n.head, n.way, s);
        sawn += r.sawn(n.set[s] + 1, n.foot[s]);
        bearing += r.bearing(n.set[s] + 1, n.foot[s]);
        shortfall = Math.max(shortfall, r.shortfall(n.set[s] + 1, n.foot[s]));
        changes += pile.ticketed() ? gone(way.row(s), n.set[s]) : 0;
      }
    }
    return Cost.parts(cap, changes, n.moved, shortfall, sawn, n.imbalance, bearing);
  }
}
