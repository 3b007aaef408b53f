package headcourse.stock.fan;

import headcourse.stock.pile.Pile;
import headcourse.stock.pile.PileDraft.Slot;
import headcourse.stock.pile.PileTypes;
import headcourse.stock.pile.SearchState;
import headcourse.stock.pile.SeenPlaces;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Complete search over the ways, stones and pieces of some heads, outwards from the key; where the
 * sides are to be alike, left and right in turn. It keeps the best choice that costs less than a
 * limit; what can't cost less by {@link FanReach} is left at once, and so is a place that was
 * reached before with the same pieces left and no dearer.
 */
final class FanSearch {
  /** So many stones listed take a step. */
  private static final int LISTED = 32;

  private final FanPile pile;
  private final PileTypes types;
  private final int[] heads;
  private final List<List<FanWay>> ways;
  private final int[] left;
  private final long seed;
  private final long limit;
  private final boolean remembers;
  private final int[] shortest;
  private final SeenPlaces seen = new SeenPlaces();
  private final FanAhead ahead;
  private final FanWay[] way;
  private final int[] at;
  private final List<List<List<Slot>>> rows = new ArrayList<>();
  private Pile.Cost cap;
  private FanDraft best;
  private boolean first;
  private boolean any;
  private boolean boxed;
  private boolean settled;
  private long steps;

  /**
   * @param heads which heads, as places in the pile's list
   * @param ways the ways of each of them
   * @param left the pieces at hand, by type
   * @param cap what a choice must cost less than
   * @param seed in which order what seems as good is tried
   * @param limit how many steps it may take
   */
  FanSearch(
      FanPile pile,
      PileTypes types,
      int[] heads,
      List<List<FanWay>> ways,
      int[] left,
      Pile.Cost cap,
      long seed,
      long limit) {
    this.pile = pile;
    this.types = types;
    this.heads = heads.clone();
    this.ways = ways;
    this.left = left.clone();
    this.cap = cap;
    this.seed = seed;
    this.limit = limit;
    this.shortest = FanTrials.shortest(types);
    this.remembers = limit > 20_000;
    this.way = new FanWay[heads.length];
    this.at = new int[heads.length];
    this.ahead =
        new FanAhead(ways, Arrays.stream(heads).mapToObj(h -> pile.heads().get(h).copies()));
    for (int h = 0; h < heads.length; h++) {
      rows.add(List.of(new ArrayList<>(), new ArrayList<>()));
    }
  }

  private FanPile.Head head(int h) {
    return pile.heads().get(heads[h]);
  }

  /** Stops at the first choice that costs less than the limit. */
  FanSearch untilFirst() {
    first = true;
    // Where any will do, a stone may as well take the shortest piece that holds it.
    any = cap.sawn() >= Pile.Cost.ANY.sawn() && types.fits.stream().distinct().count() == 1;
    return this;
  }

  /** Holds the sides to the limit's difference even where less is sawn off than it allows. */
  FanSearch boxed() {
    boxed = true;
    return this;
  }

  /** Searches; true where all was looked at. */
  boolean run() {
    begin(0, 0, 0, 0);
    return steps <= limit;
  }

  /** The best choice of those heads, or null. */
  FanDraft best() {
    return best;
  }

  long steps() {
    return steps;
  }

  private boolean stopped() {
    return steps > limit || first && best != null;
  }

  /** Takes into account what each head costs at least with the pile to itself. */
  FanSearch over(List<Pile.Cost> alone) {
    ahead.over(alone);
    return this;
  }

  /** Takes it as known that nothing saws off less than the limit, or has sides more alike. */
  FanSearch settled() {
    settled = true;
    return this;
  }

  /** Whether what costs at least so much is of no use. */
  private boolean dear(long sawn, long imbalance, long off) {
    return sawn > cap.sawn()
        || settled && off >= cap.bearing()
        || boxed && imbalance > cap.imbalance()
        || sawn == cap.sawn()
            && (imbalance > cap.imbalance()
                || imbalance == cap.imbalance() && off >= cap.bearing());
  }

  private void begin(int h, long sawn, long imbalance, long off) {
    if (stopped() || dear(sawn + ahead.sawn(h), imbalance + ahead.unlike(h), off + ahead.off(h))) {
      return;
    }
    if (h == heads.length) {
      List<List<List<Slot>>> copy = new ArrayList<>();
      rows.forEach(r -> copy.add(List.of(List.copyOf(r.get(0)), List.copyOf(r.get(1)))));
      cap = new Pile.Cost(sawn, imbalance, off);
      best = new FanDraft(Arrays.stream(way).map(FanWay::fan).toList(), copy, cap);
      return;
    }
    at[h] = 0;
    for (FanWay w : ways.get(h)) {
      at[h]++;
      if (w.comesOut()) {
        way[h] = w;
        extend(h, new int[2], new boolean[2], sawn + w.sawn(), imbalance, off);
      }
    }
  }

  /** Sets the next stone of a head. */
  private void extend(int h, int[] foot, boolean[] ended, long sawn, long imbalance, long off) {
    steps++;
    if (ended[0] && ended[1]) {
      begin(h + 1, sawn, imbalance, off);
      return;
    }
    FanPile.Head head = head(h);
    int nl = rows.get(h).get(0).size();
    int nr = rows.get(h).get(1).size();
    long lowSawn = sawn + ahead.sawn(h + 1);
    long lowOff = off + ahead.off(h + 1);
    for (int s = 0; s < 2; s++) {
      if (!ended[s]) {
        int n = s == 0 ? nl : nr;
        lowSawn += way[h].side(s).sawn(n, foot[s]);
        lowOff += head.copies() * way[h].side(s).off(n, foot[s]);
      }
    }
    boolean level = !head.mirror() || nl == nr || ended[0] || ended[1];
    long apart = head.mirror() && nl == nr ? imbalance + apart(h, foot, ended) : imbalance;
    if (stopped() || dear(lowSawn, apart + ahead.unlike(h + 1), lowOff)) {
      return;
    }
    // Where the bearings can't be less off, the sides must be more alike.
    long near = cap.imbalance() - imbalance - (!boxed && lowOff >= cap.bearing() ? 1 : 0);
    near -= lowSawn == cap.sawn() ? ahead.unlike(h + 1) : 0;
    boolean whole = lowSawn == cap.sawn() && lowSawn == sawn + ahead.sawn(h + 1);
    if (whole && nl == nr && !ended[0] && !ended[1] && !paired(h, nl, foot, near)) {
      return;
    }
    if (remembers && level && again(h, foot, ended, new Pile.Cost(sawn, imbalance, off))) {
      return;
    }
    int s = ended[0] ? 1 : !head.mirror() || ended[1] || nl <= nr ? 0 : 1;
    s = ended[1] ? 0 : s;
    long room = cap.sawn() - lowSawn;
    boolean pairs = head.mirror() && nl == nr && !ended[0] && !ended[1];
    FanPartners partners = pairs && (room == 0 || boxed) ? partners(h, foot[1], room, near) : null;
    FanTrial across = alike(h, s, foot) ? mate(h) : null;
    for (FanTrial t : trials(h, s, foot[s], room, partner(h, s, ended), near)) {
      boolean alone = partners != null && !partners.any(t, left[t.types()[0]] > 1);
      if (alone || across != null && t.before(across)) {
        continue;
      }
      set(h, s, t, foot, ended, sawn, imbalance, off);
      if (stopped()) {
        return;
      }
    }
  }

  /** The stones for the next place of a side, what is sure to be sawn off it and after it aside. */
  private List<FanTrial> trials(int h, int s, int foot, long room, long partner, long near) {
    FanReach reach = way[h].side(s);
    List<Slot> mine = rows.get(h).get(s);
    long before = mine.isEmpty() ? -1 : mine.get(mine.size() - 1).width();
    FanTrials trials = new FanTrials(head(h), types, left, heads[h], shortest, seed + steps);
    List<FanTrial> found =
        (any ? trials.shortest() : trials)
            .of(
                reach,
                mine.size() + 1,
                before,
                partner,
                foot,
                room + reach.sawn(mine.size(), foot),
                near,
                boxed);
    steps += found.size() / LISTED;
    return found;
  }

  private FanPartners partners(int h, int foot, long room, long near) {
    steps++;
    FanPile.Head head = head(h);
    long apart = near / head.copies();
    boolean together = apart < head.min();
    List<FanTrial> across = trials(h, 1, foot, room, -1, near);
    return new FanPartners(across, way[h].right().rows, apart, together);
  }

  /**
   * Whether the sides could change places from here on, but for the stone that the left one has got
   * already: then the right one's need not go before it.
   */
  private boolean alike(int h, int s, int[] foot) {
    List<Slot> l = rows.get(h).get(0);
    List<Slot> r = rows.get(h).get(1);
    if (s == 0
        || !head(h).mirror()
        || way[h].left() != way[h].right()
        || l.size() != r.size() + 1) {
      return false;
    }
    int n = r.size();
    boolean follows =
        n == 0 || head(h).jump() == Long.MAX_VALUE || l.get(n - 1).width() == r.get(n - 1).width();
    return follows && foot[0] - way[h].left().rows.joint - l.get(n).width() == foot[1];
  }

  private FanTrial mate(int h) {
    List<Slot> l = rows.get(h).get(0);
    Slot last = l.get(l.size() - 1);
    return new FanTrial(last.width(), false, last.types(), 0, 0);
  }

  /**
   * The least difference still to come where each side's ends are as near as may be: widths left
   * must sum up to what is left.
   */
  private long apart(int h, int[] foot, boolean[] ended) {
    if (ended[0] || ended[1]) {
      return 0;
    }
    return head(h).copies() * way[h].gap(foot[0], foot[1]);
  }

  /** Whether the sides may be so near alike with nothing sawn off, as far as that is known. */
  private boolean paired(int h, int stones, int[] foot, long near) {
    return way[h].paired(stones, foot[0], foot[1], near / head(h).copies());
  }

  /**
   * Width of the stone across, 0 where there will be none, −1 where it is not known or of no
   * matter.
   */
  private long partner(int h, int s, boolean[] ended) {
    if (!head(h).mirror()) {
      return -1;
    }
    List<Slot> across = rows.get(h).get(1 - s);
    int index = rows.get(h).get(s).size();
    return index < across.size() ? across.get(index).width() : ended[1 - s] ? 0 : -1;
  }

  private void set(
      int h, int s, FanTrial t, int[] foot, boolean[] ended, long sawn, long imbalance, long off) {
    FanPile.Head head = head(h);
    FanReach reach = way[h].side(s);
    long partner = partner(h, s, ended);
    long more = partner < 0 ? 0 : head.copies() * Math.abs(t.width() - partner);
    List<Slot> mine = rows.get(h).get(s);
    mine.add(new Slot(t.width(), t.types()));
    for (int k : t.types()) {
      left[k]--;
    }
    int was = foot[s];
    foot[s] = was + reach.rows.joint + (int) t.width();
    if (t.end()) {
      ended[s] = true;
      long there = head.copies() * reach.rows.off(foot[s]);
      extend(h, foot, ended, sawn + t.sawn(), imbalance + more, off + there);
      ended[s] = false;
    } else {
      extend(h, foot, ended, sawn + t.sawn(), imbalance + more, off);
    }
    foot[s] = was;
    for (int k : t.types()) {
      left[k]++;
    }
    mine.remove(mine.size() - 1);
  }

  private boolean again(int h, int[] foot, boolean[] ended, Pile.Cost cost) {
    long[] n = new long[left.length / 4 + 4];
    for (int t = 0; t < left.length; t++) {
      n[t / 4] = n[t / 4] << 16 | left[t];
    }
    FanPile.Head head = head(h);
    int nl = rows.get(h).get(0).size();
    int nr = rows.get(h).get(1).size();
    int k = left.length / 4 + 1;
    int sides = (ended[0] ? 2 : 0) + (ended[1] ? 1 : 0);
    n[k++] = (long) h << 48 | (long) at[h] << 16 | sides << 2 | Integer.signum(nl - nr) + 1;
    for (int s = 0; s < 2; s++) {
      List<Slot> mine = rows.get(h).get(s);
      int size = mine.size();
      // The last width counts where it bounds the next, or where its partner is still to come.
      boolean counts = head.jump() < Long.MAX_VALUE || head.mirror() && nl != nr;
      long before = size == 0 || !counts ? 0 : mine.get(size - 1).width();
      long index = head.eachSide() > 0 ? size : Math.min(size, way[h].side(s).rows.rules());
      n[k++] = (long) (ended[s] ? 0xFFFFFF : foot[s]) << 40 | index << 24 | before;
    }
    return seen.again(new SearchState(n), cost);
  }
}
