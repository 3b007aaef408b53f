package headcourse.stock;

import headcourse.bench.HeadWork;
import headcourse.job.Job;
import headcourse.layout.yard.FromStock;
import java.util.ArrayList;
import java.util.List;

/** Makes the cutting plan and the order list of a job. */
public final class StockPlanner {
  private StockPlanner() {}

  /**
   * Plans which blank gives which stones, and what is to be bought.
   *
   * <p>Where the job says nothing of the yard, no blank is used, and everything is ordered by the
   * sizes that the stones need. Pieces named under {@code spoiled} are taken out one after another
   * from the plan as it was ticketed before.
   *
   * @param job the job
   * @param heads its heads, in the job's order
   */
  public static StockPlan plan(Job job, List<HeadWork> heads) {
    return plan(job, heads, FromStock.NONE, heads);
  }

  /**
   * Plans on from the tickets that were cut by, round the stones that were chosen from the yard's
   * pieces: each of these pieces gives its own stone and no other.
   *
   * @param job the job, with what the bench reports
   * @param heads its heads, in the job's order
   * @param chosen which piece is which stone
   * @param drawn the heads as they were ticketed, before anything was cut
   */
  public static StockPlan plan(
      Job job, List<HeadWork> heads, FromStock chosen, List<HeadWork> drawn) {
    OrderList orders = new OrderList(job);
    if (job.stock().items().isEmpty()) {
      List<Part> parts = Part.of(heads);
      return new StockPlan(List.of(), orders.of(List.of(), parts), List.of(), 0, true);
    }
    List<String> before =
        chosen.changes().stream()
            .map(FromStock.Moved::from)
            .filter(job.report().spoiled()::contains)
            .distinct()
            .toList();
    Tickets.Carried carried = new Tickets(job, heads, chosen.taken(), before).carried(drawn);
    Yard yard = carried.yard();
    Assignment plan = carried.plan();
    OffCuts offCuts = new OffCuts(job, yard);
    List<OffCuts.Left> left = offCuts.of(plan, carried.gone());
    List<StockPlan.CutBlank> blanks = offCuts.blanks(plan, left);
    List<StockPlan.Moved> changes = new ArrayList<>();
    for (FromStock.Moved m : chosen.changes()) {
      changes.add(new StockPlan.Moved(m.stone(), StockPlan.Part.WHOLE, m.from(), m.to()));
    }
    carried.changes().forEach(m -> changes.add(m.onto(blanks)));
    List<Part> missing =
        plan.missing().stream().flatMap(i -> yard.crosscuts().get(i).parts().stream()).toList();
    return new StockPlan(
        blanks,
        orders.of(Yard.fresh(plan), missing),
        missing.stream().map(new UnfitReason(job)::of).toList(),
        changes,
        offCuts.listed(left),
        yard.leastBlanks(plan),
        yard.priced() ? plan.cost().lead() / 100.0 : 0,
        yard.priced() ? plan.bound().lead() / 100.0 : 0,
        plan.proved(),
        List.of());
  }
}
