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
  private Objective objective;
  private Packing best;
  private long bound;
  private long id;
  private int dives;

  /**
   * @param best the best known
   * @param bound no plan has less of the objective
   */
  BranchAndPrice(
      CuttingProblem problem,
      Sequencer sequencer,
      Objective objective,
      Packing best,
      long bound,
      StepBudget budget) {
    this.problem = problem;
    this.sequencer = sequencer;
    this.objective = objective;
    this.best = best;
    this.bound = bound;
    this.budget = budget;
  }

  /**
   * Some of the plans.
   *
   * @param rows that they keep
   * @param low by kind: so many blanks at least
   * @param high by kind: so many at most
   * @param bound none has less of the objective
   * @param seeds patterns to begin with
   */
  private record Node(
      long id,
      int depth,
      List<PatternRow> rows,
      int[] low,
      int[] high,
      long bound,
      List<Packing.Pattern> seeds) {}

  Packing best() {
    return best;
  }

  /** No plan has less of the objective. */
  long bound() {
    return bound;
  }

  /** Searches until the best is proved or the budget is out. */
  void run() {
    int[] high = problem.counts();
    PriorityQueue<Node> open =
        new PriorityQueue<>(
            Comparator.comparingLong(Node::bound)
                .thenComparing(n -> 0 - n.depth)
                .thenComparing(Node::id));
    open.add(new Node(id++, 0, List.of(), new int[kinds()], high, bound, best.patterns()));
    while (!open.isEmpty()) {
      Node node = open.peek();
      bound = Math.max(bound, Math.min(node.bound, objective.of(best.cost())));
      if (proved() || budget.out() || open.size() > WAITING) {
        return;
      }
      open.poll();
      if (!look(node, open)) {
        // What could not be finished keeps its bound open.
        return;
      }
    }
    bound = objective.of(best.cost());
  }

  private int kinds() {
    return problem.bins().size();
  }

  private boolean proved() {
    return objective.of(best.cost()) <= bound;
  }

  private boolean look(Node node, PriorityQueue<Node> open) {
    AttainableTotals totals = new AttainableTotals(problem, objective, node.low, node.high);
    long last = totals.last();
    if (last == Long.MIN_VALUE || node.bound > last) {
      return true;
    }
    StepBudget some = node.depth == 0 ? budget.share(ROOT) : budget;
    RestrictedMaster master = master(node, totals, node.seeds, last + 1, some);
    boolean solved = master.solve();
    if (node.depth == 0) {
      bound = Math.max(bound, totals.next(Math.max(bound, master.bound())));
      dive(node, master, 0, solved ? DIVE_SOLVED : DIVE_UNSOLVED);
      if (!solved && !proved()) {
        solved = master.solve(budget.share(ROOT_AGAIN));
        dive(node, master, DISCREPANCIES, DIVE_AGAIN);
        solved = solved || master.solve(budget);
        if (!solved) {
          master.closeBound();
        }
        bound = Math.max(bound, totals.next(Math.max(bound, master.bound())));
      }
    }
    if (!solved) {
      return proved();
    }
    boolean counted = BranchingRule.counted(master.columns().fractions(), kinds());
    if (counted && master.bound() <= last) {
      if (dives++ < DIVES || node.id % SELDOM == 0) {
        dive(node, master, dives <= WIDE ? DISCREPANCIES : 0, DIVE_NODE);
      }
    }
    if (proved()) {
      return true;
    }
    totals = new AttainableTotals(problem, objective, node.low, node.high);
    long least = totals.next(Math.max(node.bound, master.bound()));
    if (least >= objective.under()) {
      return true;
    }
    if (!master.met()) {
      return false;
    }
    List<Columns.Fraction> by = master.columns().fractions();
    BranchingRule.Branch branch = new BranchingRule(by, problem.demand(), kinds(), budget).choose();
    if (branch == null) {
      // Where the bound is not sharp, a better plan may be left.
      return whole(by) && least >= objective.of(best.cost());
    }
    List<Packing.Pattern> seeds = master.columns().nearest(SEEDS);
    open.add(child(node, branch, false, least, seeds));
    open.add(child(node, branch, true, least, seeds));
    return true;
  }

  private Node child(
      Node of, BranchingRule.Branch branch, boolean more, long least, List<Packing.Pattern> seeds) {
    PatternRow row = branch.row(more);
    List<PatternRow> rows = new ArrayList<>(of.rows);
    rows.add(row);
    int[] low = of.low.clone();
    int[] high = of.high.clone();
    if (row.counts(branch.bin())) {
      if (more) {
        low[branch.bin()] = Math.max(low[branch.bin()], row.bound());
      } else {
        high[branch.bin()] = Math.min(high[branch.bin()], row.bound());
      }
    }
    return new Node(id++, of.depth + 1, rows, low, high, least, seeds);
  }

  private RestrictedMaster master(
      Node node, AttainableTotals totals, List<Packing.Pattern> seeds, long goal, StepBudget some) {
    return new RestrictedMaster(
        problem, sequencer, objective, totals, node.rows, seeds, goal, some);
  }

  private void dive(Node node, RestrictedMaster master, int discrepancies, double share) {
    if (proved()) {
      return;
    }
    StepBudget some = budget.share(share);
    DiscrepancyDive dive = new DiscrepancyDive(problem, sequencer, objective, best, bound, some);
    take(dive.run(node.high, master, discrepancies));
  }

  /** Takes the plan that whole numbers of patterns make; false if they don't give all parts. */
  private boolean whole(List<Columns.Fraction> by) {
    PartialPlan plan = new PartialPlan(problem, problem.counts());
    for (Columns.Fraction f : by) {
      for (int k = 0; k < Math.rint(f.amount()); k++) {
        plan.take(f.pattern());
      }
    }
    if (plan.open().parts() > 0) {
      return false;
    }
    take(plan.packing());
    return true;
  }

  private void take(Packing plan) {
    if (plan.cost().compareTo(best.cost()) < 0) {
      best = plan;
      objective = objective.rest(Cost.NONE, best.cost());
    }
  }
}
