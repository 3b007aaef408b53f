package headcourse.layout.side;

import java.util.List;

/** Chooses the stones of one side. */
public interface SideSolver {
  /** The best choice among the cases, with its proof; deterministic in the seed. */
  SideResult solve(List<SideCase> cases, long seed);

  /** What all that was solved so far took: candidates, and words of tables. */
  long effort();
}
