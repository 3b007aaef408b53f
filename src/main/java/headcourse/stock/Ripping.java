package headcourse.stock;

import headcourse.job.Job;
import headcourse.layout.yard.FromStock;
import headcourse.stock.cutting.Cost;
import java.util.List;
import java.util.Set;

/**
 * Chooses how many soffit strips at most are ripped side by side: as many as leave the fewest parts
 * without a blank at the least cost. More of them take less length, but need higher flats.
 */
final class Ripping {
  private final Job job;
  private final List<Part> parts;
  private final List<FromStock.Taken> taken;

  Ripping(Job job, List<Part> parts, List<FromStock.Taken> taken) {
    this.job = job;
    this.parts = parts;
    this.taken = taken;
  }

  /**
   * The yard with the strips put side by side.
   *
   * @param gone pieces that were spoiled as stones chosen from the yard's pieces
   */
  Yard yard(Set<String> gone) {
    Strips strips = new Strips(job, parts);
    int most = strips.most();
    // All of them together take no more steps than one plan may.
    Job share = job.withSteps(Math.max(1, job.steps() / most));
    Yard best = new Yard(share, strips.lots(most), taken);
    if (most == 1) {
      return best;
    }
    Cost least = cost(best, gone);
    for (int n = most - 1; n >= 1; n--) {
      Yard other = new Yard(share, strips.lots(n), taken);
      Cost cost = cost(other, gone);
      if (cost.compareTo(least) < 0) {
        best = other;
        least = cost;
      }
    }
    return best;
  }

  /** What its best plan costs, every part without a blank counted. */
  private static Cost cost(Yard yard, Set<String> gone) {
    Assignment plan = yard.solve(gone);
    long missing = plan.missing().stream().mapToLong(i -> yard.lot(i).parts().size()).sum();
    return new Cost(missing, plan.cost().lead(), plan.cost().second());
  }
}
