package headcourse.layout.yard.rows;

import java.util.ArrayList;
import java.util.List;

/**
 * Sets heads from a pile of measured pieces: fewest changes of what was ticketed, then what lands,
 * then least sawn off, within what is given; then sides most alike where they are to be; then least
 * sawn off; then bearings nearest their target.
 */
public final class RowSolver {
  private static final int FIRST = 48;

  /** How often another choice is made among states that come to as little. */
  private static final int SEEDS = 3;

  /** How much may be sawn off where nothing was found yet, ticks. */
  private static final long NO_BEST = 400;

  private static final int WIDEST = 1 << 20;

  /** With how many steps for each state kept the first look gets by. */
  private static final long SHARE = 4_000;

  private final Pile pile;
  private final long limit;
  private final Store store;
  private final Moves moves;
  private final Beam beam;
  private final int first;
  private Node best;
  private int changes;
  private long least;
  private boolean proved;
  private SetBound sets;
  private long sure;
  private SweepSearch sweeps;
  private boolean nothing;
  private int most = Integer.MAX_VALUE;
  private Cost bound;

  private RowSolver(Pile pile, long limit) {
    this.pile = pile;
    this.limit = limit;
    store = new Store(pile);
    Reaches reaches = new Reaches(pile, store);
    moves = new Moves(pile, store, reaches);
    beam = new Beam(pile, store, moves, reaches, limit);
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
      return new Answer(List.of(), null, 0, Cost.NONE, all, changes, steps());
    }
    proved = all;
    least = best.sawn;
    sure = all ? least : sure;
    bound = Cost.NONE;
    proved &= mostAlike();
    Cost cost = best.cost();
    return new Answer(chosen(), cost, sure, proved ? cost : bound, proved, changes, steps());
  }

  private long steps() {
    return moves.steps();
  }

  /** Finds the least that is sawn off; whether that is sure. */
  private boolean leastSawn() {
    Beam.Aim aim = new Beam.Aim(first, Moves.Widths.WHOLE, 0, Cost.LEADING);
    look(aim);
    long most = best == null ? NO_BEST : best.sawn + pile.give();
    sets = new SetBound(pile, store, most, best == null ? Store.NEVER : best.shortfall, limit);
    moves.spend(sets.steps());
    if (sets.applies()) {
      Cost of = sets.least(best == null ? NO_BEST : best.sawn, false);
      sure = of != null ? of.sawn() : best == null ? 0 : best.sawn;
    }
    sure = Math.max(sure, moves.least());
    Cost good = new Cost(0, 0, moves.leastShortfall(), sure, 0, 0);
    if (Numbers.apply(pile) && (best == null || worse(good))) {
      sweep();
      good = new Cost(0, 0, moves.leastShortfall(), sure, 0, 0);
    }
    for (int seed = 1; seed <= SEEDS && (best == null || worse(good)); seed++) {
      look(aim.seeded(seed));
    }
    if (nothing) {
      return true;
    }
    better(aim, good);
    return best != null && !worse(good) || wider(0, Cost.LEADING);
  }

  /** Sweeps over the pieces, first for rows that want as little spare as any could. */
  private void sweep() {
    long least = moves.leastShortfall();
    Node lands = best != null && best.shortfall <= least ? best : null;
    sweeps = new SweepSearch(pile, store, moves, least);
    Node found = less(lands);
    boolean none = found == null;
    if (none) {
      sweeps = new SweepSearch(pile, store, moves, best == null ? Store.NEVER : best.shortfall);
      found = less(best);
    }
    best = found == null ? best : found;
    long floor = sweeps.floor();
    if (!none || best == null || best.shortfall <= least) {
      sure = Math.max(sure, best == null ? 0 : Math.min(floor, best.sawn));
    }
    nothing = best == null && floor >= Store.NEVER;
  }

  private Node less(Node known) {
    long before = sweeps.steps();
    Node found = sweeps.less(known, before + (limit - steps()) / 2);
    moves.spend(sweeps.steps() - before);
    return found;
  }

  /** Sweeps for sides more alike; whether the best is the best then for sure. */
  private boolean alike(long cap) {
    long before = sweeps.steps();
    best = sweeps.alike(best, cap, before + (limit - steps()) / 2);
    moves.spend(sweeps.steps() - before);
    return sweeps.proved() && best.shortfall <= moves.leastShortfall();
  }

  /** Whether the best saws off more than this, or lands less well. */
  private boolean worse(Cost good) {
    return java.util.Arrays.compare(
            best.cost().parts(0), 0, Cost.LEADING, good.parts(0), 0, Cost.LEADING)
        > 0;
  }

  /** Betters what is known in a share of the steps that are left. */
  private void better(Beam.Aim aim, Cost good) {
    if (best != null) {
      long until = beam.steps() + (limit - beam.steps()) * 2 / 5;
      best = new Betterment(pile, store, beam).run(best, aim, until, good);
    }
  }

  /** Looks at more and more; whether at all in the end. */
  private boolean wider(long cap, int parts) {
    // What changes few tickets has few ways to go.
    int from = pile.ticketed() ? WIDEST : 8 * first;
    for (int width = from; width <= WIDEST && !beam.over(); width *= 16) {
      look(new Beam.Aim(width, Moves.Widths.ALL, cap, parts).changing(most));
      if (beam.complete()) {
        return true;
      }
    }
    return false;
  }

  /** Of those that saw off as good as least, the best; whether that is sure. */
  private boolean mostAlike() {
    long cap = least + pile.give();
    most = pile.ticketed() ? best.changes : most;
    Beam.Aim aim = new Beam.Aim(first, Moves.Widths.WHOLE, cap, Cost.PARTS).changing(most);
    look(aim);
    if (sets != null && sets.applies()) {
      Cost of = sets.least(cap, true);
      bound = of == null ? Cost.NONE : of;
    }
    if (best.cost().compare(bound, cap) <= 0) {
      return true;
    }
    if (Numbers.apply(pile)) {
      if (sweeps == null || best.shortfall < sweeps.shortfall()) {
        sweeps = new SweepSearch(pile, store, moves, best.shortfall);
      }
      if (alike(cap)) {
        return true;
      }
    }
    if (!pile.ticketed()) {
      better(aim, bound);
    }
    return best.cost().compare(bound, cap) <= 0 || wider(cap, Cost.PARTS);
  }

  private boolean fewest() {
    boolean all = true;
    for (most = changes; !beam.over(); most++) {
      look(new Beam.Aim(WIDEST, Moves.Widths.ALL, 0, Cost.LEADING).changing(most));
      all &= beam.complete();
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
    look(aim, best == null ? null : best.cost());
  }

  private void look(Beam.Aim aim, Cost known) {
    beam.run(aim, known);
    if (beam.best() != null) {
      best = beam.best();
    }
  }

  private List<Answer.Chosen> chosen() {
    List<Node> steps = new ArrayList<>();
    for (Node n = best; n.before != null; n = n.before) {
      steps.add(0, n);
    }
    List<Answer.Chosen> out = new ArrayList<>();
    for (int h = 0; h < pile.heads().size(); h++) {
      List<Integer> key = List.of();
      int way = 0;
      List<List<Answer.Picked>> sides = List.of(new ArrayList<>(), new ArrayList<>());
      for (Node n : steps) {
        if (n.head != h) {
          continue;
        }
        List<Integer> of = new ArrayList<>();
        for (int k : n.pieces) {
          of.add(store.place(k));
        }
        if (n.side < 0) {
          key = of;
          way = n.way;
        } else {
          sides.get(n.side).add(new Answer.Picked(n.width, of));
        }
      }
      out.add(new Answer.Chosen(way, key, sides.get(0), sides.get(1)));
    }
    return out;
  }
}
