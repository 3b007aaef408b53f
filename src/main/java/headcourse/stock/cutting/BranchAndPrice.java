package headcourse.stock.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * Exact search for the least of one component of the cost, by branch and price: a {@link
 * RestrictedMaster} at each node, dives for a better incumbent, and branching where a gap is left.
 */
final class BranchAndPrice {
  /** The share of the budget for the root before a dive is made. */
  private static final double ROOT = 0.3;

  /** The shares for going on with it after that, and for another dive then. */
  private static final double ROOT_AGAIN = 0.5;

  private static final double DIVE_AGAIN = 0.5;

  /** Shares for a dive: from a solved root, from one that isn't, and from another node. */
  private static final double DIVE_SOLVED = 0.2;

  private static final double DIVE_UNSOLVED = 0.3;
  private static final double DIVE_NODE = 0.1;

  /** The first nodes are dived from, some of them with discrepancies; then one in so many. */
  private static final int DIVES = 8;

  private static final int WIDE = 3;
  private static final int DISCREPANCIES = 2;
  private static final int SELDOM = 8;

  /** So many patterns are handed on to a child. */
  private static final int SEEDS = 400;

  /** More open nodes than this take too much memory. */
  private static final int WAITING = 4_000;

  private final CuttingProblem problem;
  private final Sequencer sequencer;
  private final StepBudget budget;
  private final Incumbent incumbent;
  private final PriorityQueue<Node> open =
      new PriorityQueue<>(
          Comparator.comparingLong(Node::bound)
              .thenComparing(n -> 0 - n.rows.size())
              .thenComparing(Node::id));
  private long id;
  private int dives;

  BranchAndPrice(
      CuttingProblem problem, Sequencer sequencer, Incumbent incumbent, StepBudget budget) {
    this.problem = problem;
    this.sequencer = sequencer;
    this.incumbent = incumbent;
    this.budget = budget;
  }

  /**
   * Some of the plans.
   *
   * @param rows that they keep
   * @param bound none has less of the objective
   * @param seeds patterns to begin with
   */
  private record Node(long id, List<PatternRow> rows, long bound, List<Packing.Pattern> seeds) {}

  /** Searches until the incumbent is proved or the budget is out. */
  void run() {
    open.add(new Node(id++, List.of(), incumbent.bound(), incumbent.best().patterns()));
    while (!open.isEmpty()) {
      Node node = open.peek();
      incumbent.raise(node.bound);
      if (incumbent.proved() || budget.out() || open.size() > WAITING) {
        return;
      }
      open.poll();
      if (!look(node)) {
        // What could not be finished keeps its bound open.
        return;
      }
    }
    incumbent.raise(Long.MAX_VALUE);
  }

  /** Whether nothing of a node is left to look at, but what its children are. */
  private boolean look(Node node) {
    AttainableTotals totals = totals(node);
    long last = totals.last();
    if (node.bound > last) {
      return true;
    }
    boolean root = node.rows.isEmpty();
    RestrictedMaster master =
        new RestrictedMaster(
            problem,
            sequencer,
            incumbent.objective(),
            totals,
            node.rows,
            node.seeds,
            last + 1,
            root ? budget.share(ROOT) : budget);
    boolean solved = master.solve();
    if (root) {
      incumbent.raise(totals.next(master.bound()));
      dive(node, master, 0, solved ? DIVE_SOLVED : DIVE_UNSOLVED);
      if (!solved && !incumbent.proved()) {
        solved = master.solve(budget.share(ROOT_AGAIN));
        dive(node, master, DISCREPANCIES, DIVE_AGAIN);
        solved = solved || master.solve(budget);
        if (!solved) {
          master.closeBound();
        }
        incumbent.raise(totals.next(master.bound()));
      }
    }
    if (!solved) {
      return incumbent.proved();
    }
    List<Columns.Fraction> by = master.columns().fractions();
    boolean counted = BranchingRule.counted(by, problem.bins().size());
    if (counted && master.bound() <= last && (dives++ < DIVES || node.id % SELDOM == 0)) {
      dive(node, master, dives <= WIDE ? DISCREPANCIES : 0, DIVE_NODE);
    }
    long least = totals(node).next(Math.max(node.bound, master.bound()));
    if (least >= incumbent.objective().under()) {
      return true;
    }
    if (!master.met()) {
      return false;
    }
    BranchingRule rule = new BranchingRule(by, problem.demand(), problem.bins().size(), budget);
    List<PatternRow> branches = rule.choose();
    if (branches.isEmpty()) {
      // The dive takes whole numbers of patterns. Where the bound is not sharp, a better plan may
      // be left.
      dive(node, master, 0, DIVE_NODE);
      return least >= incumbent.objective().under();
    }
    List<Packing.Pattern> seeds = master.columns().nearest(SEEDS);
    for (PatternRow row : branches) {
      List<PatternRow> rows = new ArrayList<>(node.rows);
      rows.add(row);
      open.add(new Node(id++, rows, least, seeds));
    }
    return true;
  }

  /** What plans of a node may come to. */
  private AttainableTotals totals(Node node) {
    return new AttainableTotals(
        problem, incumbent.objective(), blanks(node, true), blanks(node, false), budget);
  }

  /** By kind: so many blanks at least, or at most, are in plans of a node. */
  private int[] blanks(Node node, boolean atLeast) {
    int[] blanks = atLeast ? new int[problem.bins().size()] : problem.counts();
    for (PatternRow row : node.rows) {
      for (int b = 0; b < blanks.length; b++) {
        if (row.counts(b) && row.atLeast() == atLeast) {
          blanks[b] = atLeast ? Math.max(blanks[b], row.bound()) : Math.min(blanks[b], row.bound());
        }
      }
    }
    return blanks;
  }

  private void dive(Node node, RestrictedMaster master, int discrepancies, double share) {
    PartialPlan plan = new PartialPlan(problem, blanks(node, false));
    new Dive(problem, sequencer, incumbent, budget.share(share)).run(plan, master, discrepancies);
  }
}
