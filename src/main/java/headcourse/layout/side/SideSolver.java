package headcourse.layout.side;

import java.util.List;

/** Chooses the stones of one side. */
public interface SideSolver {
  /** The best choice among the cases, with its proof; deterministic in the seed. */
  SideResult solve(List<SideCase> cases, long seed);

  /**
   * The same where nothing that wants more spare than {@code most}, pm, is of use: then there may
   * be none.
   */
  default SideResult solve(List<SideCase> cases, long seed, long most) {
    return solve(cases, seed);
  }

  /** What all that was solved so far took: candidates, and words of tables. */
  long effort();
}
