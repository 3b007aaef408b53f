package headcourse.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.drawing.Page;
import headcourse.drawing.PageSet;
import headcourse.job.Bundle;
import headcourse.job.Language;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.elevation.ElevationSvg;
import headcourse.sheet.frame.Frame;
import headcourse.testing.JobMaker;
import headcourse.testing.PageInspector;
import headcourse.testing.RandomJobs;
import headcourse.testing.Seeds;
import headcourse.units.Length;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sheets of heads as the program itself solves them, over random jobs and every curved shape. */
class SolvedSheetsTest {
  private static final List<String> PAPERS =
      List.of("letter", "legal", "tabloid", "a4", "a3", "a2", "a1", "arch-c", "arch-d");

  private static List<String> look(ShopWork work, String what) {
    List<String> faults = new ArrayList<>();
    for (Bundle bundle : List.of(Bundle.WALL, Bundle.CONTRACTOR)) {
      WatchedFrame frame = new WatchedFrame(Frame.plain());
      PageSet set = SheetBook.compose(work, bundle, frame);
      frame.faults(set.pages()).forEach(f -> faults.add(bundle + " of " + what + ": " + f));
    }
    Page page = ElevationSvg.page(work, work.heads().get(0));
    PageInspector.faults(page).forEach(f -> faults.add("elevation of " + what + ": " + f));
    return faults;
  }

  @Test
  void randomFlatHeadsCollideNowhere() {
    List<String> faults = new ArrayList<>();
    int solved = 0;
    for (long seed = 1; seed <= Seeds.of(70); seed++) {
      Random random = new Random(seed * 7919);
      JobMaker m = RandomJobs.flat(seed);
      m.paper = PAPERS.get(random.nextInt(PAPERS.size()));
      m.language = JobMaker.LANGUAGES[random.nextInt(3)];
      Optional<ShopWork> work = WorkUp.of(m.make()).value();
      if (work.isPresent()) {
        solved++;
        faults.addAll(
            look(work.get(), "seed " + seed + " on " + m.paper + " in " + m.language.word()));
      }
    }
    assertEquals(List.of(), faults);
    assertTrue(solved > 30, "only " + solved + " of the jobs could be solved");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "segmental",
        "semicircular",
        "three-centred",
        "elliptical",
        "pointed",
        "four-centred"
      })
  void curvedHeadsCollideNowhere(String shape) {
    for (String paper : List.of("letter", "a3", "arch-d")) {
      for (Language language : JobMaker.LANGUAGES) {
        assertEquals(List.of(), look(curved(shape, paper, language), shape + " on " + paper));
      }
    }
  }

  /** A curved head of a shape, five feet wide. */
  static ShopWork curved(String shape, String paper, Language language) {
    JobMaker m = JobMaker.one();
    m.paper = paper;
    m.language = language;
    JobMaker.OpeningMaker o = m.first();
    o.shape = shape;
    o.width = Length.inches(60);
    o.headHeight = Length.inches(10);
    o.key = null;
    o.min = Length.inches(4);
    o.max = Length.inches(9);
    o.target = Length.inches(6);
    o.step = Length.ZERO;
    switch (shape) {
      case "segmental" -> o.params.put("rise", Length.inches(12));
      case "three-centred", "elliptical" -> o.params.put("rise", Length.inches(20));
      default -> {}
    }
    var outcome = WorkUp.of(m.make());
    return outcome.value().orElseThrow(() -> new AssertionError(outcome.diagnostics().toString()));
  }
}
