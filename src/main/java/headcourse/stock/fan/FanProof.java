package headcourse.stock.fan;

import headcourse.stock.pile.Pile;
import java.util.ArrayList;
import java.util.List;

/**
 * Raises the floor under the cost of all keys together until it meets a choice: what costs no more
 * than the floor is searched completely, for one key after the other, and where there is nothing
 * the floor goes up. So the keys whose floor is the least go first, and those that can't beat the
 * best choice are never searched.
 */
public final class FanProof {
  /** Where no choice was found up to so much sawn off, any will do. */
  private static final long FAR = 32;

  /** What part of the steps is meant for finding out whether there is a choice at all. */
  private static final int SOME = 5;

  /** What part of the steps that are left one head by itself may take. */
  private static final int ALONE = 40;

  private final List<FanCase> cases;
  private long limit;
  private FanDraft best;
  private FanCase of;
  private long more = 1;
  private long steps;

  /**
   * @param cases the heads with each choice of their keys
   */
  public FanProof(List<FanCase> cases) {
    this.cases = cases;
  }

  /** Takes a choice into account. */
  public void know(FanDraft draft, FanCase one) {
    if (draft != null && draft.betterThan(best)) {
      best = draft;
      of = one;
    }
  }

  /** The best choice, or null. */
  public FanDraft best() {
    return best;
  }

  /** Whose choice that is. */
  public FanCase of() {
    return of;
  }

  /** How many steps it took. */
  public long steps() {
    return steps;
  }

  /** What no choice costs less than. */
  public Pile.Cost floor() {
    Pile.Cost least = cap();
    for (FanCase c : cases) {
      least = c.floor().compareTo(least) < 0 ? c.floor() : least;
    }
    return least;
  }

  /** Whether all striking points of all keys that may be better were looked at. */
  public boolean complete() {
    return cases.stream().allMatch(c -> c.complete() || c.floor().compareTo(cap()) >= 0);
  }

  /**
   * Raises the floor; with no choice in hand only until it is clear that there is one.
   *
   * @param most how many steps it may take
   */
  public void run(long most) {
    limit = steps + most;
    cases.forEach(c -> c.stuck(false));
    if (best == null) {
      // Any will do, and mostly there is one or soon none.
      limit = steps + most / SOME;
      level(open(), Pile.Cost.ANY, true);
      if (best == null) {
        return;
      }
      limit = steps + most;
      cases.forEach(c -> c.stuck(false));
    }
    for (List<FanCase> open = open(); !open.isEmpty() && steps < limit; open = open()) {
      Pile.Cost level = level(open);
      boolean one = level.sawn() > open.get(0).floor().sawn();
      more = one ? 2 * more : 1;
      level(open, level, one);
    }
    last(limit - steps);
  }

  /** Looks once more at those that may be better, each to the end if that can be. */
  void last(long most) {
    limit = steps + most;
    List<FanCase> stuck = cases.stream().filter(this::may).toList();
    for (int i = 0; i < stuck.size() && steps < limit; i++) {
      FanCase c = stuck.get(i);
      if (may(c)) {
        search(c, cap(), false, (limit - steps) / (stuck.size() - i));
      }
    }
  }

  private boolean may(FanCase c) {
    return c.floor().compareTo(cap()) < 0;
  }

  /** Those that may be better and weren't cut off, the most promising first. */
  private List<FanCase> open() {
    List<FanCase> open = new ArrayList<>();
    for (FanCase c : cases) {
      if (may(c) && !c.stuck()) {
        open.add(c);
      }
    }
    open.sort((a, b) -> a.floor().compareTo(b.floor()));
    return open;
  }

  /** The next floor to be reached. */
  private Pile.Cost level(List<FanCase> open) {
    Pile.Cost low = open.get(0).floor();
    Pile.Cost cap = cap();
    if (best == null && more > FAR) {
      return Pile.Cost.ANY;
    }
    if (low.sawn() < cap.sawn()) {
      long up = best == null ? more : Math.min(more, (cap.sawn() - low.sawn() + 1) / 2);
      return new Pile.Cost(low.sawn() + up, 0, 0);
    }
    if (low.imbalance() < cap.imbalance()) {
      return new Pile.Cost(low.sawn(), low.imbalance() + 1, 0);
    }
    return cap;
  }

  private void level(List<FanCase> open, Pile.Cost level, boolean one) {
    for (int i = 0; i < open.size() && steps < limit; i++) {
      FanCase c = open.get(i);
      Pile.Cost cap = cap().compareTo(level) < 0 ? cap() : level;
      if (c.floor().compareTo(cap) >= 0) {
        continue;
      }
      long rest = limit - steps;
      boolean found = search(c, cap, one, cases.size() == 1 ? rest / 2 : 2 * rest / (i + 3));
      if (found && one) {
        return;
      }
    }
  }

  /** Looks for a choice that costs less than so much; true where one was found. */
  private boolean search(FanCase c, Pile.Cost cap, boolean one, long most) {
    for (FanCase a : c.alone()) {
      Pile.Cost others = c.alone(a);
      alone(a, cap.plus(-others.sawn(), -others.imbalance(), -others.bearing()));
    }
    // Its floor may be found to be higher than it was known to be.
    c.pile();
    if (c.floor().compareTo(cap) >= 0) {
      return false;
    }
    FanSearch search = c.search(cap, most);
    Pile.Cost low = c.floor();
    if (low.sawn() == cap.sawn() && low.imbalance() == cap.imbalance()) {
      search.settled();
    }
    boolean all = (one ? search.untilFirst() : search).run();
    steps += 1 + search.steps();
    know(search.best(), c);
    boolean found = search.best() != null;
    if (all && !found) {
      c.raise(cap);
    } else if (all && !one) {
      c.raise(search.best().cost());
    }
    c.stuck(!all);
    return found;
  }

  /** Finds out whether a head with the pile to itself can cost less than so much. */
  private void alone(FanCase a, Pile.Cost cap) {
    a.pile();
    if (a.stuck() || a.exact() || a.floor().compareTo(cap) >= 0) {
      return;
    }
    FanSearch search = a.search(cap, (limit - steps) / ALONE);
    boolean all = search.run();
    steps += 1 + search.steps();
    a.stuck(!all);
    if (all) {
      a.raise(search.best() == null ? cap : search.best().cost());
      a.exact(search.best() != null);
    }
  }

  /** What a choice must cost less than to be of use. */
  private Pile.Cost cap() {
    return best == null ? Pile.Cost.ANY : best.cost();
  }
}
