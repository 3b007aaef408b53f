package headcourse.work;

import headcourse.bench.HeadWork;
import headcourse.job.Bundle;
import headcourse.job.Job;
import headcourse.job.Paper;
import headcourse.job.Papers;
import headcourse.revision.Changes;
import headcourse.rules.Finding;
import headcourse.rules.Materials;
import headcourse.stock.StockPlan;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A job worked out: everything that the sheets and the data files print.
 *
 * @param job the job
 * @param heads one for each opening, in the job's order
 * @param stock cutting plan and order
 * @param materials what it takes
 * @param findings what the rules say, gravest first within each opening
 * @param changes what is not as it was in the revision before
 */
public record ShopWork(
    Job job,
    List<HeadWork> heads,
    StockPlan stock,
    Materials materials,
    List<Finding> findings,
    Changes changes) {
  /** Copies the lists. */
  public ShopWork {
    heads = List.copyOf(heads);
    findings = List.copyOf(findings);
  }

  /** The same work, a bundle of it on other paper. */
  public ShopWork on(Bundle bundle, Paper paper) {
    Map<Bundle, Paper> papers = new EnumMap<>(job.papers().byBundle());
    papers.put(bundle, paper);
    return new ShopWork(
        job.withPapers(new Papers(papers)), heads, stock, materials, findings, changes);
  }

  /** Whether every head has a curved soffit; that is what sheets of the whole job speak of. */
  public boolean archesOnly() {
    return heads.stream().allMatch(h -> h.layout().curved());
  }

  /** Whether an error stands that nobody accepted. */
  public boolean errorsStand() {
    return findings.stream().anyMatch(Finding::standing);
  }
}
