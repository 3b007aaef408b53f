package headcourse.stock.pile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Settles one part of the cost after the other: the least length sawn off first, then with that the
 * least difference of the sides, then with both the least distance of the bearings from their
 * targets. Each is raised from what is known to be least until a choice comes out.
 */
final class LevelSearch {
  private static final long ANY = Long.MAX_VALUE / 4;
  private static final long ALONE = 10_000;
  private static final int HALVES = 12;

  private final Pile pile;
  private final PileTypes types;
  private final long limit;
  private final Effort effort;
  private final List<SweepBounds> numbers = new ArrayList<>();
  private PileDraft best;
  private Pile.Cost floor;
  private boolean proved;

  /** Whether all numbers of stones were last looked at to the end. */
  private boolean complete;

  private final SweepTables tables;
  private final List<List<List<RowShape>>> rows = new ArrayList<>();
  private long[] above = {};
  private long[] safe = {};

  /** By numbers of stones: the least level that was not looked at to the end. */
  private long[] cut = {};

  private long seed;
  private long steps;

  /**
   * @param best the best known, or null
   * @param limit how many steps it may take
   * @param effort how they are shared out
   */
  LevelSearch(Pile pile, PileTypes types, PileDraft best, long limit, Effort effort) {
    this.best = best;
    this.effort = effort;
    this.pile = pile;
    this.types = types;
    this.limit = limit;
    this.tables = new SweepTables(pile, types);
  }

  /** All numbers of stones that may saw off no more than this, those first that cost least. */
  private void collect(List<Pile.Head> heads, long sawn) {
    numbers.clear();
    collect(heads, sawn, 0, new ArrayList<>());
    numbers.sort(Comparator.comparing(SweepBounds::root));
    above = numbers.stream().mapToLong(b -> b.root().sawn()).toArray();
    safe = above.clone();
    uncut();
  }

  private void uncut() {
    cut = new long[above.length];
    Arrays.fill(cut, ANY);
  }

  private void collect(List<Pile.Head> heads, long sawn, long alone, List<RowPair> pairs) {
    int h = pairs.size();
    if (h == heads.size()) {
      SweepBounds b = new SweepBounds(types, List.copyOf(pairs), tables, alone);
      if (b.root().sawn() <= sawn && b.root().sawn() < CoverTable.NONE / 2) {
        numbers.add(b);
      }
      return;
    }
    Pile.Head head = heads.get(h);
    boolean alike = head.left().equals(head.right());
    for (RowShape l : rows.get(h).get(0)) {
      for (RowShape r : rows.get(h).get(1)) {
        long both = alone + l.alone() + r.alone();
        if (both > sawn
            || alike && (l.stones < r.stones || l.stones == r.stones && l.past < r.past)) {
          continue;
        }
        RowShape own = l == r ? new RowShape(r) : r;
        pairs.add(new RowPair(head, h, l, own));
        collect(heads, sawn, both, pairs);
        pairs.remove(h);
      }
    }
  }

  /** The rows that a side may have at all. */
  private List<RowShape> rows(List<Pile.Head> heads, int h, int s) {
    List<RowShape> out = new ArrayList<>();
    Pile.Head head = heads.get(h);
    PileSide side = head.side(s);
    int most = SweepTables.most(head, side);
    for (int n = Math.max(1, head.eachSide()); n <= most; n++) {
      RowShape row = new RowShape(head, side, n, 0);
      for (int past = 0; past < n && row.sensible(); past++) {
        if (row.comesOut() && alone(heads, h, s, row)) {
          out.add(row);
        }
        row = new RowShape(head, side, n, past + 1);
      }
    }
    return out;
  }

  /** Whether a row comes out if it has the pile to itself; notes the least it saws off then. */
  private boolean alone(List<Pile.Head> heads, int h, int s, RowShape row) {
    List<RowPair> pairs = new ArrayList<>();
    for (int k = 0; k < heads.size(); k++) {
      RowShape none = new RowShape(heads.get(k), new NoSide(), 0, 0);
      RowShape other = new RowShape(heads.get(k), new NoSide(), 0, 0);
      pairs.add(
          new RowPair(
              heads.get(k), k, k == h && s == 0 ? row : none, k == h && s == 1 ? row : other));
    }
    SweepBounds b = new SweepBounds(types, pairs, tables, 0);
    row.alone(b.root().sawn());
    long spent = 0;
    for (long more = 0; row.alone() < CoverTable.NONE / 2; more = 2 * more + 1) {
      long cap = row.alone() + more;
      PileSweep sweep =
          new PileSweep(
              types, b, null, new Pile.Cost(cap, ANY, ANY), Math.min(ALONE, limit - steps) - spent);
      boolean found = sweep.run();
      spent += sweep.steps();
      if (found || sweep.cutOff() || sweep.failed() != null) {
        break;
      }
      row.alone(cap >= most() ? CoverTable.NONE : b.nextSawn());
    }
    steps += spent;
    return row.alone() < CoverTable.NONE / 2;
  }

  PileDraft best() {
    return best;
  }

  /** No choice costs less. */
  Pile.Cost floor() {
    return floor;
  }

  /** Whether the answer is the best, or that there is none. */
  boolean proved() {
    return proved;
  }

  long steps() {
    return steps;
  }

  void run() {
    // How the sides differ does not matter yet.
    List<Pile.Head> plain = pile.heads().stream().map(Pile.Head::plain).toList();
    for (int h = 0; h < plain.size(); h++) {
      List<RowShape> left = rows(plain, h, 0);
      boolean alike = plain.get(h).left().equals(plain.get(h).right());
      rows.add(List.of(left, alike ? left : rows(plain, h, 1)));
    }
    collect(plain, ANY);
    floor = new Pile.Cost(Math.min(sure(), most()), 0, 0);
    // No choice saws off less than is known; none that was found, less than the best.
    long known = least();
    for (long more = 0; known < most() && steps <= limit; more = 2 * more + 1) {
      long to = best == null ? most() : best.cost().sawn() - 1;
      if (to < known) {
        break;
      }
      long cap = best == null ? known + more : known + (to - known) / 2;
      if (!look(new Pile.Cost(Math.min(to, cap), ANY, ANY), 2)) {
        known = least();
      }
    }
    proved = sure() >= (best == null ? most() : best.cost().sawn());
    floor = new Pile.Cost(Math.min(sure(), best == null ? most() : best.cost().sawn()), 0, 0);
    if (best != null) {
      imbalance(best.cost().sawn());
    }
  }

  /** The least that any numbers of stones may yet come to. */
  private long least() {
    return Arrays.stream(above).min().orElse(ANY);
  }

  /** The same where all that was cut off counts as not looked at. */
  private long sure() {
    return Arrays.stream(safe).min().orElse(ANY);
  }

  /** More than can be sawn off. */
  private long most() {
    long sum = 1;
    for (int t = 0; t < types.size(); t++) {
      sum += types.usable[t] * types.count[t];
    }
    return sum;
  }

  private void imbalance(long sawn) {
    collect(pile.heads(), sawn);
    for (int i = 0; i < above.length; i++) {
      numbers.get(i).settle(sawn);
      numbers.get(i).within(ANY / 2);
      above[i] = numbers.get(i).possible() ? numbers.get(i).floor() : ANY;
    }
    safe = above.clone();
    long known = least();
    if (effort.swaps() > 0 && hard(known)) {
      // What is found so leaves less to look at.
      better(new Pile.Cost(sawn, known, 0), Math.min(limit / effort.swaps(), (limit - steps) / 2));
    }
    for (long more = 0; best.cost().imbalance() > known && steps <= limit; more = 2 * more + 1) {
      long to = best.cost().imbalance() - 1;
      long cap = Math.min(to, known + more);
      if (look(new Pile.Cost(sawn, cap, ANY), 2)) {
        // From here on by halves.
        more = (best.cost().imbalance() - 1 - known) / 4;
      } else {
        known = least();
      }
    }
    if (proved) {
      floor = new Pile.Cost(sawn, Math.min(sure(), best.cost().imbalance()), 0);
      proved = sure() >= best.cost().imbalance();
    }
    uncut();
    bearing(best.cost());
  }

  /** Whether sides that differ by no more than this are not soon found, nor ruled out. */
  private boolean hard(long imbalance) {
    if (best.cost().imbalance() <= imbalance || best.heads().isEmpty()) {
      return false;
    }
    boolean cutOff = false;
    Pile.Cost cap = new Pile.Cost(best.cost().sawn(), imbalance, ANY);
    for (int i = 0; i < above.length && steps <= limit; i++) {
      if (above[i] <= imbalance) {
        PricedLook look = new PricedLook(types, numbers.get(i), cap, effort);
        boolean found = look.run(Math.min(effort.quick(), limit - steps));
        steps += look.steps();
        cutOff |= look.cutOff();
        if (found) {
          best = look.best().under(pile);
          return false;
        }
      }
    }
    return cutOff;
  }

  /**
   * Lets pieces of the best choice change places once more, where it is not proved.
   *
   * @param most how many steps it may take
   */
  void polish(long most) {
    if (best != null && !best.heads().isEmpty() && !proved) {
      better(floor, most);
    }
  }

  /** Lets pieces of the best choice change places, with numbers of stones that promise most. */
  private void better(Pile.Cost goal, long most) {
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < above.length; i++) {
      if (above[i] <= best.cost().imbalance()) {
        order.add(i);
      }
    }
    order.sort(Comparator.comparingLong(i -> above[i]));
    SwapTrials trials = new SwapTrials(types, tables, best, goal, most);
    trials.run(order.stream().map(numbers::get).toList(), ++seed);
    steps += trials.steps();
    best = trials.best();
  }

  private void bearing(Pile.Cost cost) {
    long known = numbers.stream().mapToLong(b -> b.root().bearing()).min().orElse(0);
    long low = known;
    // A good choice first, by halves from the least on; what is cut off on the way decides nothing.
    for (int i = 0; i < HALVES && best.cost().bearing() > low && steps <= limit; i++) {
      long cap = i == 0 ? low : low + (best.cost().bearing() - 1 - low) / 2;
      if (!look(new Pile.Cost(cost.sawn(), best.cost().imbalance(), cap), 64)) {
        known = complete ? cap + 1 : known;
        low = cap + 1;
      }
    }
    boolean more = true;
    while (more && best.cost().bearing() > known) {
      long cap = best.cost().bearing() - 1;
      more = look(new Pile.Cost(cost.sawn(), best.cost().imbalance(), cap), 2);
      known = !more && complete ? cap + 1 : known;
    }
    proved &= best.cost().bearing() <= known;
    floor = proved ? best.cost() : floor;
  }

  /** Looks for a choice within a cap among all numbers of stones. */
  private boolean look(Pile.Cost cap, int share) {
    boolean sawn = cap.imbalance() == ANY;
    complete = true;
    for (int i = 0; i < above.length; i++) {
      SweepBounds b = numbers.get(i);
      long level = sawn ? cap.sawn() : cap.imbalance();
      if (safe[i] > level || cut[i] <= level) {
        above[i] = Math.max(above[i], level + 1);
        continue;
      }
      if (steps > limit) {
        complete = false;
        return false;
      }
      long most = Math.max((limit - steps) / share, Math.min(1000, limit - steps));
      PricedLook sweep = new PricedLook(types, b, cap, effort);
      boolean found = sweep.run(most);
      steps += sweep.steps();
      PileDraft draft = sweep.best() == null ? null : sweep.best().under(pile);
      if (draft != null && (best == null || draft.cost().compareTo(best.cost()) < 0)) {
        best = draft;
      }
      if (found) {
        return true;
      }
      boolean all = sweep.complete();
      complete &= all;
      if (cap.bearing() == ANY) {
        above[i] = sweep.cutOff() ? level + 1 : sawn ? b.nextSawn() : b.nextImbalance();
        safe[i] = all ? above[i] : safe[i];
        cut[i] = all ? cut[i] : Math.min(cut[i], level);
      }
    }
    return false;
  }
}
