package headcourse.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import headcourse.bench.Piece;
import headcourse.testing.JobMaker;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Marks in a row: what runs on is said by its ends, and only that. */
class MarksTest {
  @Test
  void runsEndWhereTheSideOrTheOpeningEnds() {
    JobMaker m = JobMaker.one();
    JobMaker.OpeningMaker second = new JobMaker.OpeningMaker();
    second.mark = "D2";
    m.openings.add(second);
    ShopWork work = WorkUp.of(m.make()).value().orElseThrow();
    List<Piece> pieces = new ArrayList<>();
    for (String mark : List.of("D1-L1", "D1-L2", "D1-L3", "D2-L4", "D2-L5", "D2-R6", "D2-K")) {
      work.heads().stream()
          .flatMap(h -> h.pieces().stream())
          .filter(p -> p.mark().equals(mark))
          .forEach(pieces::add);
    }
    assertEquals("D1-L1 … D1-L3, D2-L4, D2-L5, D2-R6, D2-K", Marks.of(pieces, true));
    assertEquals("L1 … L3, L4, L5, R6, K", Marks.of(pieces, false));
    assertEquals("D1-L1", Marks.of(pieces.subList(0, 1), true));
  }
}
