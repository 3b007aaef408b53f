package headcourse.sheet.book;

import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.drawing.Page;
import headcourse.job.Bundle;
import headcourse.sheet.frame.Frame;
import headcourse.testing.JobMaker;
import headcourse.testing.PageInspector;
import headcourse.testing.RandomArches;
import headcourse.testing.Seeds;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Every page of random curved heads: six shapes, three extrados, papers, languages. */
class ArchSheetsTest {
  private static final List<String> PAPERS =
      List.of("letter", "a4", "tabloid", "a3", "legal", "arch-c", "arch-d");

  /** More with the profile campaign, before a release. */
  private static final long SEEDS = Seeds.of(36);

  @Test
  void noTextTouchesAnything() {
    Set<String> shapes = new TreeSet<>();
    List<String> all = new ArrayList<>();
    for (long seed = 1; seed <= SEEDS; seed++) {
      JobMaker m = RandomArches.job(seed);
      m.paper = PAPERS.get((int) (seed % PAPERS.size()));
      m.language = JobMaker.LANGUAGES[(int) (seed / 2 % 3)];
      Optional<ShopWork> work = WorkUp.of(m.make()).value();
      if (work.isEmpty()) {
        continue;
      }
      shapes.add(m.first().shape + " " + m.first().params.get("extrados"));
      String which = "seed " + seed + ", " + m.paper + ", " + m.language + ", " + m.first().shape;
      for (Bundle bundle : Bundle.values()) {
        for (Page page : SheetBook.compose(work.get(), bundle, Frame.plain()).pages()) {
          for (String fault : PageInspector.faults(page)) {
            all.add(which + ": " + bundle + " " + fault);
          }
        }
      }
    }
    assertTrue(all.isEmpty(), () -> String.join("\n", all));
    assertTrue(shapes.size() >= 12, "too few of the random jobs could be set out: " + shapes);
  }
}
