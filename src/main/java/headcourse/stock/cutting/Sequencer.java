package headcourse.stock.cutting;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * Finds in which sequence parts lie on one blank so that they take the least length, and remembers
 * what it learnt of each set of parts.
 */
public final class Sequencer {
  /** So many sets are remembered, some hundred bytes each. */
  private static final int REMEMBERED = 400_000;

  /** Fewer parts are searched at once, without a local search before. */
  private static final int FEW = 8;

  /** Operations to look up a set of parts. */
  private static final int LOOK = 40;

  private final Nesting nesting;
  private final StepBudget budget;

  /** Of more parts sequences are not searched, only bettered by a local search. */
  private final int searchable;

  private final SequenceHeuristic heuristic;
  private final Map<Numbers, Known> known;
  private long searched;

  /**
   * @param nesting how parts lie together
   */
  public Sequencer(Nesting nesting) {
    this(nesting, StepBudget.endless());
  }

  /**
   * @param budget what it counts on; once it is out, only quick sequences are looked at
   */
  Sequencer(Nesting nesting, StepBudget budget) {
    this(nesting, budget, Integer.MAX_VALUE, new HashMap<>());
  }

  private Sequencer(Nesting nesting, StepBudget budget, int searchable, Map<Numbers, Known> known) {
    this.nesting = nesting;
    this.budget = budget;
    this.searchable = searchable;
    this.heuristic = new SequenceHeuristic(nesting, budget);
    this.known = known;
  }

  /** With the same memory, on a share of the budget; of more than a few parts no search. */
  Sequencer quick(StepBudget share) {
    return new Sequencer(nesting, share, FEW, known);
  }

  /** The types of parts, one by one. */
  private static Numbers key(int[] present, int[] counts) {
    int parts = 0;
    for (int t : present) {
      parts += counts[t];
    }
    int[] key = new int[parts];
    int n = 0;
    for (int t : present) {
      for (int k = 0; k < counts[t]; k++) {
        key[n++] = t;
      }
    }
    return new Numbers(key);
  }

  /** What is known of all but the part at a place, or null; each type once. */
  private Known without(Numbers key, int i) {
    budget.spend(LOOK);
    int[] parts = key.of();
    if (i > 0 && parts[i] == parts[i - 1]) {
      return null;
    }
    int[] less = Arrays.copyOf(parts, parts.length - 1);
    System.arraycopy(parts, i + 1, less, i, less.length - i);
    return known.get(new Numbers(less));
  }

  /** What is known of parts: a sequence, and lengths that they don't go in, or may not. */
  private static final class Known {
    private int[] order;
    private long atMost;
    private long over = -1;
    private long undecided = -1;
  }

  /** Nodes of all searches for a sequence so far. */
  long searched() {
    return searched;
  }

  /** What it counts on. */
  StepBudget budget() {
    return budget;
  }

  /** Whether so many of each type are known to go on one blank. */
  boolean fits(int[] counts, long usable) {
    return verdict(counts, usable) > 0;
  }

  /** Whether so many of each type are not known to be too many for one blank. */
  boolean mayFit(int[] counts, long usable) {
    return verdict(counts, usable) >= 0;
  }

  /** The same, where bounds have been looked at before. */
  boolean mayFitByOrder(int[] present, int[] counts, long usable) {
    return searched(present, counts, usable) >= 0;
  }

  /** 1 where a sequence that short is known, −1 where there is none, 0 where it is undecided. */
  private int verdict(int[] counts, long usable) {
    int[] present = Nesting.present(counts);
    budget.spend(nesting.work(present.length));
    return nesting.leastLength(counts) > usable ? -1 : searched(present, counts, usable);
  }

  private int searched(int[] present, int[] counts, long usable) {
    budget.spend(present.length + 10);
    if (nesting.square || nesting.mostLength(present, counts) <= usable) {
      return 1;
    }
    Numbers key = key(present, counts);
    budget.spend(2L * key.of().length + LOOK);
    Known of = known.get(key);
    if (of == null) {
      of = new Known();
      of.order = start(key, counts, usable);
      of.atMost = heuristic.length(of.order);
      if (known.size() < REMEMBERED) {
        known.put(key, of);
      }
    }
    if (of.atMost > usable && of.over < usable && of.undecided != usable) {
      search(of, key, counts, usable);
    }
    return of.atMost <= usable ? 1 : of.over >= usable ? -1 : 0;
  }

  private void search(Known of, Numbers key, int[] counts, long usable) {
    if (holdsTooMuch(key, usable)) {
      of.over = usable;
    } else if (!budget.out() && key.of().length <= searchable) {
      SequenceSearch search = new SequenceSearch(nesting, counts, usable + 1, usable, budget);
      search.run();
      searched += search.nodes();
      if (search.best() != null) {
        of.atMost = search.length();
        of.order = search.best();
      } else if (search.gaveUp()) {
        of.undecided = usable;
      } else {
        of.over = usable;
      }
    }
  }

  /** A good sequence: that of all but one of them, and this one where it adds least. */
  private int[] start(Numbers key, int[] counts, long usable) {
    int[] best = heuristic.byLean(counts);
    best = key.of().length > FEW ? heuristic.improved(best, usable) : best;
    for (int i = 0; i < key.of().length && nesting.length(best) > usable; i++) {
      Known rest = without(key, i);
      if (rest != null) {
        best = heuristic.inserted(rest.order, key.of()[i], best, nesting.length(best));
      }
    }
    return best;
  }

  /** Whether all but one of them are known to be too many. */
  private boolean holdsTooMuch(Numbers key, long usable) {
    for (int i = 0; i < key.of().length; i++) {
      Known rest = without(key, i);
      if (rest != null && rest.over >= usable) {
        return true;
      }
    }
    return false;
  }

  /** The nodes from left to right in the shortest sequence that is found, or was before. */
  public int[] best(int[] counts) {
    int[] best = heuristic.byLean(counts, false);
    if (!nesting.square) {
      StepBudget some = StepBudget.endless();
      best = new SequenceHeuristic(nesting, some).improved(heuristic.byLean(counts), 0);
      Known before = known.get(key(Nesting.present(counts), counts));
      if (before != null && before.atMost < nesting.length(best)) {
        best = before.order;
      }
      SequenceSearch search = new SequenceSearch(nesting, counts, nesting.length(best), -1, some);
      search.run();
      best = search.best() == null ? best : search.best();
    }
    return best;
  }
}
