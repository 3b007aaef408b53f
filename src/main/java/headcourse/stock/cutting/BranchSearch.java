package headcourse.stock.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * Exact search for the least of one component of the cost: fractions of filled blanks, with rules
 * of groups that raise their bound, dives for plans, and branching where a gap is left (branch,
 * price and cut).
 */
final class BranchSearch {
  private static final int CUT_ROUNDS = 3;
  private static final int CUTS = 12;
  private static final int MOST_CUTS = 80;
  private static final double CUTTING = 0.3;
  private static final double ROOT = 0.5;

  /** So many dives are made at once, the first three of them wide; then at some nodes only. */
  private static final int DIVES = 8;

  private static final int MANY = 5;
  private static final int SELDOM = 8;

  private static final int SEEDS = 400;
  private static final int WAITING = 4_000;

  private final CuttingProblem problem;
  private final Sequencer sequencer;
  private final Meter meter;
  private final Meter cutSteps;
  private final List<Rule> cuts = new ArrayList<>();
  private Aim aim;
  private Packing best;
  private long bound;
  private long id;
  private int divesLeft = DIVES;

  /**
   * @param best the best known
   * @param bound no plan has less of the aim
   */
  BranchSearch(
      CuttingProblem problem, Sequencer sequencer, Aim aim, Packing best, long bound, Meter meter) {
    this.problem = problem;
    this.sequencer = sequencer;
    this.aim = aim;
    this.best = best;
    this.bound = bound;
    this.meter = meter;
    this.cutSteps = meter.share(CUTTING);
  }

  /**
   * Some of the plans.
   *
   * @param rules that they keep
   * @param low by kind: so many blanks at least
   * @param high by kind: so many at most
   * @param bound none has less of the aim
   * @param seeds fillings to begin with
   */
  private record Node(
      long id,
      int depth,
      List<Rule> rules,
      int[] low,
      int[] high,
      long bound,
      List<Packing.Load> seeds) {}

  Packing best() {
    return best;
  }

  /** No plan has less of the aim. */
  long bound() {
    return bound;
  }

  /** Searches until the best is proved or the steps are used up. */
  void run() {
    int kinds = problem.bins().size();
    int[] high = problem.counts();
    Node root = new Node(id++, 0, List.of(), new int[kinds], high, bound, new ArrayList<>());
    PriorityQueue<Node> open =
        new PriorityQueue<>(
            Comparator.comparingLong(Node::bound)
                .thenComparing(n -> 0 - n.depth)
                .thenComparing(Node::id));
    List<Packing.Load> seeds = new ArrayList<>();
    best.loads().forEach(seeds::add);
    open.add(new Node(root.id, 0, root.rules, root.low, root.high, bound, seeds));
    while (!open.isEmpty()) {
      Node node = open.peek();
      bound = Math.max(bound, Math.min(node.bound, aim.of(best.cost())));
      if (proved() || meter.out() || open.size() > WAITING) {
        return;
      }
      open.poll();
      if (!look(node, open)) {
        // What could not be finished keeps its bound open.
        return;
      }
    }
    bound = aim.of(best.cost());
  }

  private boolean proved() {
    return aim.of(best.cost()) <= bound;
  }

  private boolean look(Node node, PriorityQueue<Node> open) {
    Totals totals = new Totals(problem, aim, node.low, node.high);
    long last = totals.last();
    if (last == Long.MIN_VALUE || node.bound > last) {
      return true;
    }
    Meter some = node.depth == 0 ? meter.share(ROOT) : meter;
    Master fractions = master(node, totals, node.seeds, last + 1, some);
    boolean solved = fractions.solve();
    if (node.depth == 0) {
      meter.add(some.used());
      bound = Math.max(bound, totals.next(Math.max(bound, fractions.bound())));
      dive(node, fractions, 0, solved ? 0.2 : 0.5);
      if (!solved && !proved()) {
        solved = fractions.solve(meter);
        if (!solved) {
          fractions.closeBound();
        }
        bound = Math.max(bound, totals.next(Math.max(bound, fractions.bound())));
      }
    }
    if (!solved) {
      return proved();
    }
    boolean counted = Branching.counted(fractions.fractions(), problem.bins().size());
    if (counted && fractions.bound() <= last) {
      if (divesLeft-- > 0 || node.id % SELDOM == 0) {
        dive(node, fractions, divesLeft >= MANY ? 2 : 0, 0.1);
      }
      fractions = cut(node, totals, fractions, last + 1);
      if (fractions == null) {
        return false;
      }
    }
    if (proved()) {
      return true;
    }
    totals = new Totals(problem, aim, node.low, node.high);
    long least = totals.next(Math.max(node.bound, fractions.bound()));
    if (least >= aim.under()) {
      return true;
    }
    if (!fractions.met()) {
      return false;
    }
    List<Master.Fraction> by = fractions.fractions();
    Branching.Branch branch = new Branching(by, problem.demand(), problem.bins().size()).choose();
    if (branch == null) {
      // Where the bound is not sharp, a better plan may be left.
      return whole(by) && least >= aim.of(best.cost());
    }
    List<Packing.Load> seeds = fractions.nearest(SEEDS);
    open.add(child(node, branch, false, least, seeds));
    open.add(child(node, branch, true, least, seeds));
    return true;
  }

  private Node child(
      Node of, Branching.Branch branch, boolean more, long least, List<Packing.Load> seeds) {
    Rule rule = branch.rule(problem.demand(), more);
    List<Rule> rules = new ArrayList<>(of.rules);
    rules.add(rule);
    int[] low = of.low.clone();
    int[] high = of.high.clone();
    if (rule.counts(branch.bin())) {
      if (more) {
        low[branch.bin()] = Math.max(low[branch.bin()], rule.bound());
      } else {
        high[branch.bin()] = Math.min(high[branch.bin()], rule.bound());
      }
    }
    return new Node(id++, of.depth + 1, rules, low, high, least, seeds);
  }

  private Master master(Node node, Totals totals, List<Packing.Load> seeds, long goal, Meter some) {
    List<Rule> rules = new ArrayList<>(cuts);
    rules.addAll(node.rules);
    return new Master(problem, sequencer, aim, totals, rules, seeds, goal, some);
  }

  /** A few rounds of rules of groups, until the fractions keep all of them. */
  private Master cut(Node node, Totals totals, Master first, long goal) {
    Master fractions = first;
    for (int round = 0; round < CUT_ROUNDS && !proved() && fractions.bound() < goal; round++) {
      List<Rule> more = new GroupCuts(fractions.fractions(), problem.demand()).find(CUTS);
      if (more.isEmpty() || cuts.size() >= MOST_CUTS || cutSteps.out()) {
        return fractions;
      }
      cuts.addAll(more);
      long before = meter.used();
      fractions = master(node, totals, fractions.nearest(SEEDS), goal, meter);
      boolean solved = fractions.solve();
      cutSteps.add(meter.used() - before);
      if (!solved) {
        return null;
      }
    }
    return fractions;
  }

  private void dive(Node node, Master fractions, int departures, double share) {
    if (proved()) {
      return;
    }
    Meter some = meter.share(share);
    Dive dive = new Dive(problem, node.high, sequencer, aim, best, bound, some);
    take(dive.run(fractions, departures));
    meter.add(some.used());
  }

  private boolean whole(List<Master.Fraction> by) {
    List<Packing.Load> loads = new ArrayList<>();
    int[] rest = problem.demand().clone();
    for (Master.Fraction f : by) {
      for (int k = 0; k < Math.rint(f.amount()); k++) {
        int[] counts = f.load().counts().clone();
        for (int t = 0; t < rest.length; t++) {
          counts[t] = Math.min(counts[t], rest[t]);
          rest[t] -= counts[t];
        }
        loads.add(new Packing.Load(f.load().bin(), counts));
      }
    }
    for (int t : rest) {
      if (t > 0) {
        return false;
      }
    }
    take(Packing.of(problem, loads, new int[rest.length]));
    return true;
  }

  private void take(Packing plan) {
    if (plan.cost().compareTo(best.cost()) < 0) {
      best = plan;
      aim = aim.rest(Cost.NONE, best.cost());
    }
  }
}
