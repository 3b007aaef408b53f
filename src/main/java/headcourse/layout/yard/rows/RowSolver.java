package headcourse.layout.yard.rows;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Sets heads from a pile of measured pieces: fewest changes of what was ticketed, then what lands,
 * then least sawn off, within what is given; then sides most alike where they are to be; then least
 * sawn off; then bearings nearest their target.
 */
public final class RowSolver {
  private static final int FIRST = 48;

  /** How often another choice is made among states that come to as little. */
  private static final int SEEDS = 3;

  private static final int WIDEST = 1 << 20;

  /** With how many steps for each state kept the first look gets by. */
  private static final long SHARE = 4_000;

  private final Pile pile;
  private final long limit;
  private final Store store;
  private final Steps steps;
  private final Moves moves;
  private final Beam beam;
  private final int first;
  private Node best;
  private int changes;
  private long sure;
  private SweepSearch sweeps;
  private boolean nothing;
  private int most = Integer.MAX_VALUE;

  private RowSolver(Pile pile, long limit) {
    this.pile = pile;
    store = new Store(pile);
    steps = store.steps;
    Reaches reaches = new Reaches(store);
    moves = new Moves(store, reaches);
    // Whatever the bound took beforehand, the rows get their chance.
    this.limit = Math.max(limit, steps.taken() + limit / 4);
    beam = new Beam(store, moves, reaches, this.limit);
    first = (int) Math.max(4, Math.min(FIRST, limit / SHARE));
  }

  /**
   * Solves.
   *
   * @param pile pieces and heads
   * @param limit how many steps it may take; what the bounds take beforehand counts, but is never
   *     cut short
   */
  public static Answer solve(Pile pile, long limit) {
    return new RowSolver(pile, limit).run();
  }

  private Answer run() {
    changes = moves.forced();
    boolean all = pile.ticketed() ? fewest() : leastSawn();
    if (best == null) {
      return new Answer(List.of(), null, 0, all, changes, steps.taken());
    }
    sure = all ? best.sawn : sure;
    boolean proved = mostAlike(best.sawn + pile.give()) && all;
    return new Answer(chosen(), best.cost(), sure, proved, changes, steps.taken());
  }

  /** Finds the least that is sawn off; whether that is sure. */
  private boolean leastSawn() {
    Beam.Aim aim = new Beam.Aim(first, true, 0, Cost.LEADING, most, null, 0);
    look(aim);
    sure = moves.least()[0];
    if (Numbers.apply(pile) && worse(0, Cost.LEADING)) {
      sweep();
    }
    for (int seed = 1; seed <= SEEDS && worse(0, Cost.LEADING); seed++) {
      look(aim.seeded(seed));
    }
    if (nothing) {
      return true;
    }
    better(aim);
    return !worse(0, Cost.LEADING) || wider(0, Cost.LEADING);
  }

  /** Sweeps over the pieces, first for rows that want as little spare as any could. */
  private void sweep() {
    long least = moves.least()[2];
    Node lands = best != null && best.shortfall <= least ? best : null;
    sweeps = new SweepSearch(store, moves, least, half());
    Node found = sweeps.less(lands, half());
    boolean none = found == null;
    if (none) {
      sweeps = new SweepSearch(store, moves, best == null ? Store.NEVER : best.shortfall, half());
      found = sweeps.less(best, half());
    }
    best = found == null ? best : found;
    long floor = sweeps.floor();
    if (!none || best == null || best.shortfall <= least) {
      sure = Math.max(sure, best == null ? 0 : Math.min(floor, best.sawn));
    }
    nothing = best == null && floor >= Store.NEVER;
  }

  /** With how many steps in all half of what is left is taken. */
  private long half() {
    return steps.taken() + (limit - steps.taken()) / 2;
  }

  /** Whether some choice may cost less in the first parts that count. */
  private boolean worse(long cap, int parts) {
    return best == null || best.cost().compare(good(), cap, parts) > 0;
  }

  /** No choice costs less. */
  private Cost good() {
    long[] least = moves.least();
    return pile.ticketed() ? Cost.NONE : new Cost(0, 0, least[2], sure, 0, least[1]);
  }

  /** Betters what is known in a share of the steps that are left. */
  private void better(Beam.Aim aim) {
    if (best != null) {
      long until = steps.taken() + (limit - steps.taken()) * 2 / 5;
      best = new Betterment(store, beam).run(best, aim, until, good());
    }
  }

  /** Looks at more and more; whether at all in the end. */
  private boolean wider(long cap, int parts) {
    // What changes few tickets has few ways to go.
    int from = pile.ticketed() ? WIDEST : 8 * first;
    for (int width = from; width <= WIDEST && !beam.over(); width *= 16) {
      look(new Beam.Aim(width, false, cap, parts, most, null, 0));
      if (beam.complete) {
        return true;
      }
    }
    return false;
  }

  /** Of those that saw off no more than a cap, the best; whether that is sure. */
  private boolean mostAlike(long cap) {
    most = pile.ticketed() ? best.changes : most;
    Beam.Aim aim = new Beam.Aim(first, true, cap, Cost.PARTS, most, null, 0);
    look(aim);
    if (!worse(cap, Cost.PARTS)) {
      return true;
    }
    if (Numbers.apply(pile)) {
      if (sweeps == null || best.shortfall < sweeps.shortfall) {
        sweeps = new SweepSearch(store, moves, best.shortfall, half());
      }
      best = sweeps.alike(best, cap, half());
      if (sweeps.proved && best.shortfall <= moves.least()[2]) {
        return true;
      }
    }
    if (!pile.ticketed()) {
      better(aim);
    }
    return !worse(cap, Cost.PARTS) || wider(cap, Cost.PARTS);
  }

  private boolean fewest() {
    boolean all = true;
    for (most = changes; !beam.over(); most++) {
      look(new Beam.Aim(WIDEST, false, 0, Cost.LEADING, most, null, 0));
      all &= beam.complete;
      if (best != null) {
        return all;
      }
      changes = all ? most + 1 : changes;
      if (most > 2 * pile.pieces().size() + 8) {
        return all;
      }
    }
    return false;
  }

  private void look(Beam.Aim aim) {
    Node found = beam.run(aim, best == null ? null : best.cost());
    best = found == null ? best : found;
  }

  private List<Answer.Chosen> chosen() {
    List<Node> steps = new ArrayList<>();
    for (Node n = best; n.before != null; n = n.before) {
      steps.add(0, n);
    }
    List<Answer.Chosen> out = new ArrayList<>();
    for (int h = 0; h < pile.heads().size(); h++) {
      int head = h;
      List<Node> of = steps.stream().filter(n -> n.head == head).toList();
      // The first is the key's.
      Node key = of.get(0);
      out.add(new Answer.Chosen(key.way, places(key), row(of, 0), row(of, 1)));
    }
    return out;
  }

  private List<Answer.Picked> row(List<Node> of, int s) {
    return of.stream()
        .filter(n -> n.side == s)
        .map(n -> new Answer.Picked(n.width, places(n)))
        .toList();
  }

  private List<Integer> places(Node n) {
    return IntStream.of(n.pieces).map(store::place).boxed().toList();
  }
}
