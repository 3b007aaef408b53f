package headcourse.sheet.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.drawing.Page;
import headcourse.job.Bundle;
import headcourse.job.Job;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.frame.Frame;
import headcourse.testing.BlankHeight;
import headcourse.testing.DemoJobs;
import headcourse.testing.JobMaker;
import headcourse.testing.PageInspector;
import headcourse.testing.RandomArches;
import headcourse.testing.RandomJobs;
import headcourse.testing.Seeds;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Paper at the bench is not wasted: of ten pages fewer than one is a third blank. */
class BlankHeightTest {
  /** From here on a page counts as blank, of its height. */
  private static final double MOST = 0.3;

  private final List<String> blank = new ArrayList<>();
  private int pages;

  @Test
  void demoJobs() throws IOException {
    for (String name : DemoJobs.names()) {
      look(name, DemoJobs.work(name));
    }
    few();
  }

  /** Words of two languages, figures of long heads: all on the narrowest paper, nothing broken. */
  @Test
  void demoJobsInTwoLanguages() throws IOException {
    for (String name : DemoJobs.names()) {
      ShopWork work = DemoJobs.work(name, "a4", "en+es");
      for (Page page : look(name, work)) {
        assertEquals(210, Math.min(page.width(), page.height()), 0.1, page.label());
        assertEquals(List.of(), PageInspector.faults(page), name);
      }
    }
    few();
  }

  @Test
  void randomJobs() {
    for (long seed = 1; seed <= Seeds.of(16); seed++) {
      JobMaker m = seed % 3 == 0 ? RandomArches.job(seed) : RandomJobs.flat(7000 + seed, 24, 140);
      m.language = JobMaker.LANGUAGES[(int) (seed % 3)];
      Job job = m.make();
      Optional<ShopWork> work = WorkUp.of(job).value();
      if (work.isPresent()) {
        look("seed " + seed, work.get());
      }
    }
    few();
  }

  private List<Page> look(String name, ShopWork work) {
    Frame frame = Frame.plain();
    List<Page> all = SheetBook.compose(work, Bundle.BENCH, frame).pages();
    for (Page page : all) {
      double share = BlankHeight.share(page, frame.area(page.width(), page.height()));
      pages++;
      if (share > MOST) {
        blank.add(String.format(Locale.ROOT, "%s %s: %.0f %%", name, page.label(), 100 * share));
      }
    }
    return all;
  }

  private void few() {
    assertTrue(blank.size() * 10 < pages, () -> blank.size() + " of " + pages + ": " + blank);
  }
}
