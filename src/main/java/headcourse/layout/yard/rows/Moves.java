package headcourse.layout.yard.rows;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/** The steps from one state of the search to the next. */
final class Moves {
  /** What the next steps are to find. */
  Beam.Aim aim;

  private final Pile pile;
  private final Store store;
  private final Reaches reaches;
  private final long[][] ahead;
  private final int[] forced;

  Moves(Store store, Reaches reaches) {
    pile = store.pile;
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
    IntStream all =
        head.ways().stream()
            .mapToInt(
                w ->
                    gone(w.left(), 0)
                        + gone(w.right(), 0)
                        + (w.ticket() == null ? 0 : w.ticket().gone()));
    return pile.ticketed() ? all.min().orElse(0) : 0;
  }

  private static int gone(Pile.Row row, int from) {
    int n = 0;
    for (int i = from; i < row.tickets().size(); i++) {
      n += row.tickets().get(i).gone();
    }
    return n;
  }

  /** How many of the stones must change in any case. */
  int forced() {
    return forced[0];
  }

  /** Sawn off, off the bearings, and wanting of spare in any case. */
  long[] least() {
    return ahead[0];
  }

  /** The states in which a way of the next head is taken, and its key's pieces. */
  void start(Node n, int way, List<Node> out) {
    int h = n.head + 1;
    Pile.Head head = pile.heads().get(h);
    Pile.Way w = head.ways().get(way);
    store.steps.count();
    if (reaches.least(h, way)[0] >= Store.NEVER) {
      return;
    }
    Node fixed = aim.draft() == null ? null : aim.draft().fixed(h, -1, 0);
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
          next.changes += w.key() < 0 ? 0 : changed(own, pieces, head.copies());
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
    n.used = (BitSet) n.used.clone();
    for (int k : pieces) {
      n.used.set(k);
      n.sawn += store.usable(k) - extent;
    }
  }

  private int changed(int[] own, int[] pieces, int copies) {
    if (!pile.ticketed()) {
      return 0;
    }
    int n = copies;
    for (int c = 0; own != null && c < copies; c++) {
      n -= own[c] == pieces[c] ? 1 : 0;
    }
    return n;
  }

  /** The state with a stone of just these pieces next, or null where it can't stand. */
  Node put(Node n, long width, boolean last, int[] pieces) {
    Pile.Row row = pile.heads().get(n.head).ways().get(n.way).row(n.turn);
    List<Node> out = new ArrayList<>();
    stone(n, row, n.set[n.turn] + 1, width, last, pieces, out);
    return out.isEmpty() ? null : out.get(0);
  }

  /** The states with one stone more. */
  List<Node> from(Node n) {
    List<Node> out = new ArrayList<>();
    Pile.Head head = pile.heads().get(n.head);
    Pile.Row row = head.ways().get(n.way).row(n.turn);
    RowSide side = row.side();
    int i = n.set[n.turn] + 1;
    long foot = n.foot[n.turn];
    Pile.Ticket ticket = row.ticket(i);
    long before = n.last[n.turn];
    long most =
        Math.min(reaches.of(n.head, n.way, n.turn).widest, side.lastEnd() - foot - side.joint());
    most = before < 0 || head.jump() > most ? most : Math.min(most, before + head.jump());
    long least = before < 0 ? head.min() : Math.max(head.min(), before - head.jump());
    Node fixed = aim.draft() == null ? null : aim.draft().fixed(n.head, n.turn, i);
    if (fixed != null || ticket != null && ticket.pinned()) {
      long only = fixed != null ? fixed.width : ticket.width();
      least = Math.max(least, only);
      most = Math.min(most, only);
    }
    for (int end = 0; end < 2; end++) {
      boolean last = end == 1;
      if (last ? row.each() > 0 && i != row.each() : i == row.each()) {
        continue;
      }
      StoneWidths widths = new StoneWidths(store, n, side, i, foot, last, least, most);
      for (long w : aim.whole() && fixed == null ? widths.whole() : widths.every()) {
        store.steps.count();
        stone(n, row, i, w, last, fixed == null ? null : fixed.pieces, out);
      }
    }
    return out;
  }

  private void stone(
      Node n, Pile.Row row, int i, long w, boolean last, int[] fixed, List<Node> out) {
    Pile.Head head = pile.heads().get(n.head);
    RowSide side = row.side();
    int s = n.turn;
    long foot = n.foot[s];
    long outer = foot + side.joint() + w;
    boolean on =
        last ? side.bearingOff(outer) >= 0 : !reaches.of(n.head, n.way, s).dead(i + 1, outer);
    if (!on || !side.stands(i, foot, outer, last)) {
      return;
    }
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
            : IntStream.of(fixed).allMatch(k -> store.usable(k) >= extent)
                ? List.of(fixed)
                : List.of();
    for (int[] pieces : picks) {
      int changed = changed(own, pieces, head.copies());
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
        long[] least = reaches.of(n.head, n.way, s).least(n.set[s] + 1, n.foot[s]);
        sawn += least[0];
        bearing += least[1];
        shortfall = Math.max(shortfall, least[2]);
        changes += pile.ticketed() ? gone(way.row(s), n.set[s]) : 0;
      }
    }
    return new Cost(changes, n.moved, shortfall, sawn, n.imbalance, bearing).parts(aim.cap());
  }
}
