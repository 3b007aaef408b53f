package headcourse.work;

import headcourse.bench.HeadBench;
import headcourse.bench.HeadWork;
import headcourse.diag.Diagnostic;
import headcourse.diag.Outcome;
import headcourse.diag.Severity;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.HeadLayout;
import headcourse.layout.HeadShape;
import headcourse.layout.Solution;
import headcourse.layout.shapes.Shapes;
import headcourse.rules.MaterialsTakeOff;
import headcourse.rules.RuleBook;
import headcourse.stock.StockPlan;
import headcourse.stock.StockPlanner;
import java.util.ArrayList;
import java.util.List;

/** Works a job out: sets out every head, derives its pieces, plans the stock, asks the rules. */
public final class WorkUp {
  private WorkUp() {}

  /** The job worked out, or what stands in the way of every opening that can't be done. */
  public static Outcome<ShopWork> of(Job job) {
    List<Diagnostic> said = new ArrayList<>(Unsupported.in(job));
    said.addAll(RuleBook.unknownAcceptances(job));
    List<HeadLayout> layouts = new ArrayList<>();
    if (!failed(said)) {
      for (Opening opening : job.openings()) {
        HeadShape shape = Shapes.named(opening.head().shape()).orElseThrow();
        Solution solution = shape.setOut(job, opening);
        if (solution instanceof Solution.Solved solved) {
          layouts.add(solved.head());
        } else if (solution instanceof Solution.Refused refused) {
          said.addAll(refused.problems());
        }
      }
    }
    if (failed(said)) {
      return Outcome.failed(said);
    }
    List<HeadWork> heads = HeadBench.workUp(job, layouts);
    StockPlan stock = StockPlanner.plan(job, heads);
    return Outcome.of(
        new ShopWork(
            job, heads, stock, MaterialsTakeOff.of(job, heads), RuleBook.check(job, heads, stock)),
        said);
  }

  private static boolean failed(List<Diagnostic> said) {
    return said.stream().anyMatch(d -> d.severity() == Severity.ERROR);
  }
}
