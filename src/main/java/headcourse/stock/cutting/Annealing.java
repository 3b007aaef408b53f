package headcourse.stock.cutting;

import headcourse.stock.cutting.CuttingProblem.Bin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;

/**
 * Simulated annealing (Kirkpatrick, Gelatt and Vecchi 1983): a part goes to another blank, or
 * changes places with a part there, and either blank is then the cheapest kind that holds what is
 * on it.
 */
final class Annealing {
  /** The share of the budget. */
  private static final double SHARE = 0.12;

  /** So often it cools, from the best. */
  private static final int TIMES = 2;

  /** At first so much more is taken for better, of the dearest blank; less and less. */
  private static final double WARMTH = 0.02;

  /** How often a blank is begun for the part. */
  private static final double BEGUN = 0.05;

  /** How much the lesser component counts. */
  private static final double LESSER = 0.01;

  private final CuttingProblem problem;
  private final Sequencer sequencer;
  private final StepBudget budget;
  private final Random random = new Random(1);
  private final double[] worth;
  private final List<Integer> cheapest = new ArrayList<>();
  private List<Packing.Pattern> now;
  private int[] left;

  Annealing(CuttingProblem problem, Sequencer sequencer) {
    this.problem = problem;
    this.budget = sequencer.budget().share(SHARE);
    this.sequencer = sequencer.quick(budget);
    List<Bin> bins = problem.bins();
    double lead = bins.stream().mapToLong(b -> b.cost().lead()).max().orElse(1);
    double second = bins.stream().mapToLong(b -> b.cost().second()).max().orElse(1);
    worth = new double[bins.size()];
    for (int b = 0; b < worth.length; b++) {
      Cost c = bins.get(b).cost();
      worth[b] = c.lead() / Math.max(1, lead) + LESSER * c.second() / Math.max(1, second);
      cheapest.add(b);
    }
    cheapest.sort(Comparator.comparingDouble(b -> worth[b]));
  }

  /** The best plan; another only where that has nothing missing. */
  Packing better(Packing incumbent) {
    Packing best = incumbent;
    if (incumbent.cost().missing() > 0 || incumbent.patterns().size() < 2) {
      return best;
    }
    for (int n = 0; n < TIMES; n++) {
      best = cooled(best, budget.share(1.0 / (TIMES - n)));
    }
    return best;
  }

  private Packing cooled(Packing from, StepBudget time) {
    Packing best = from;
    left = problem.counts();
    now = new ArrayList<>(from.patterns());
    now.forEach(p -> left[p.bin()]--);
    while (!time.out()) {
      double warmth = WARMTH * Math.pow(1 - Math.min(1, time.spentShare()), 2);
      if (change(0 - warmth * Math.log(1 - random.nextDouble()))) {
        Packing plan = Packing.of(problem, now, from.missing());
        best = plan.cost().compareTo(best.cost()) < 0 ? plan : best;
      }
    }
    return best;
  }

  /** Makes a change at random where that costs no more than so much; whether it did. */
  private boolean change(double most) {
    int types = problem.demand().length;
    budget.spend(20L + 4L * types);
    List<Packing.Pattern> old = new ArrayList<>(List.of(now.remove(random.nextInt(now.size()))));
    boolean begun = now.isEmpty() || random.nextDouble() < BEGUN;
    if (!begun) {
      old.add(now.remove(random.nextInt(now.size())));
    }
    int[] one = old.get(0).counts().clone();
    int[] other = begun ? new int[types] : old.get(1).counts().clone();
    int t = any(one);
    if (!begun && random.nextBoolean()) {
      int u = any(other);
      other[u]--;
      one[u]++;
    }
    one[t]--;
    other[t]++;
    double room = most;
    for (Packing.Pattern p : old) {
      left[p.bin()]++;
      room += worth[p.bin()];
    }
    int first = kind(other, room);
    boolean none = Arrays.stream(one).allMatch(c -> c == 0);
    if (first >= 0) {
      left[first]--;
      int second = none ? -1 : kind(one, room - worth[first]);
      if (none || second >= 0) {
        now.add(new Packing.Pattern(first, other));
        if (!none) {
          left[second]--;
          now.add(new Packing.Pattern(second, one));
        }
        return true;
      }
      left[first]++;
    }
    for (Packing.Pattern p : old) {
      left[p.bin()]--;
      now.add(p);
    }
    return false;
  }

  private int any(int[] counts) {
    int[] present = Nesting.present(counts);
    return present[random.nextInt(present.length)];
  }

  /** The cheapest kind of blank left that holds so many of each type and costs no more, or −1. */
  private int kind(int[] counts, double most) {
    int[] present = Nesting.present(counts);
    budget.spend(problem.nesting().work(present.length) + cheapest.size());
    long least = problem.nesting().leastLength(counts);
    for (int b : cheapest) {
      Bin bin = problem.bins().get(b);
      if (worth[b] > most) {
        return -1;
      }
      if (left[b] > 0
          && !bin.single()
          && least <= bin.usable()
          && Arrays.stream(present).allMatch(t -> bin.takes()[t])
          && sequencer.fits(counts, bin.usable())) {
        return b;
      }
    }
    return -1;
  }
}
