package headcourse.layout.flat;

import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.Arrangement;
import headcourse.layout.HeadShape;
import headcourse.layout.Solution;
import java.util.List;

/** A flat head shape; what chooses stones by itself reads the bare head from here. */
public interface FlatShape extends HeadShape {
  /** The head before its stones are chosen, or why there is none. */
  FlatReading read(Job job, Opening opening);

  @Override
  default Solution setOut(Job job, Opening opening) {
    return FlatSolver.solve(this, job, opening);
  }

  @Override
  default List<Arrangement> arrangements(Job job, Opening opening) {
    return FlatArrangements.of(this, job, opening);
  }

  @Override
  default boolean flat() {
    return true;
  }
}
