package headcourse.layout.yard.rows;

import java.util.ArrayList;
import java.util.List;

/** The steps from one state of the search to the next. */
final class Moves {
  /** How wide stones are looked at. */
  enum Widths {
    /** As wide as a piece gives, or as the stone on the other side; the last as it must be. */
    WHOLE,
    /** Every width. */
    ALL
  }

  private final Pile pile;
  private final Store store;
  private final Reaches reaches;
  private final StoneWidths tried;
  private final long[][] ahead;
  private final int[] forced;
  private Widths widths = Widths.ALL;
  private long cap;
  private Draft draft;
  private long steps;

  Moves(Pile pile, Store store, Reaches reaches) {
    this.pile = pile;
    this.store = store;
    this.reaches = reaches;
    tried = new StoneWidths(pile, store);
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
    tried.room(most);
  }

  /** Length sawn off that counts as none. */
  void cap(long most) {
    cap = most;
  }

  long steps() {
    return steps + reaches.steps() + tried.steps();
  }

  /** Counts steps taken elsewhere. */
  void spend(long more) {
    steps += more;
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

  /** The state with a stone of just these pieces next, or null where it can't stand. */
  Node put(Node n, long width, boolean last, int[] pieces) {
    Pile.Row row = pile.heads().get(n.head).ways().get(n.way).row(n.turn);
    int i = n.set[n.turn] + 1;
    long foot = n.foot[n.turn];
    Node like = new Node(store.words());
    like.pieces = pieces;
    List<Node> out = new ArrayList<>();
    if (row.side().stands(i, foot, foot + row.side().joint() + width, last)) {
      stone(n, row, i, width, last, like, out);
    }
    return out.isEmpty() ? null : out.get(0);
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
      boolean all = widths == Widths.ALL || fixed != null;
      StoneWidths.Place place = new StoneWidths.Place(n, side, i, foot, last, least, most);
      long[] of = all ? null : tried.whole(place);
      if (all && fixed == null && !side.fanned()) {
        of = tried.every(place);
      }
      int count = of == null ? (int) (most - least + 1) : of.length;
      for (int t = 0; t < count; t++) {
        long w = of == null ? most - t : of[t];
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
