package headcourse.sheet.book;

import static headcourse.testing.StockItems.flat;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.drawing.Page;
import headcourse.drawing.PageSet;
import headcourse.job.Bundle;
import headcourse.job.HeadSpec;
import headcourse.job.Language;
import headcourse.job.PaperSizes;
import headcourse.job.Stock;
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
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every page of every bundle, over papers, languages and random jobs: no text touches anything. */
class EverySheetTest {
  private static final List<String> PAPERS =
      List.of("letter", "legal", "tabloid", "a4", "a3", "arch-c", "arch-d");

  private static final int SEEDS = Seeds.of(90);

  /** Whether a set took larger paper than the job asks for. */
  private boolean larger;

  static Stream<String> papers() {
    return PAPERS.stream();
  }

  @ParameterizedTest
  @MethodSource("papers")
  void cartDoorOnEveryPaper(String paper) {
    for (Language language : JobMaker.LANGUAGES) {
      JobMaker m = cartDoor();
      m.paper = paper;
      m.language = language;
      List<String> faults = faults(WorkUp.of(m.make()).value().orElseThrow(), paper);
      assertFalse(larger, paper);
      assertTrue(faults.isEmpty(), () -> language + "\n" + String.join("\n", faults));
    }
  }

  @Test
  void randomJobs() {
    int drawn = 0;
    int more = 0;
    List<String> all = new ArrayList<>();
    for (long seed = 1; seed <= SEEDS; seed++) {
      JobMaker m = RandomJobs.flat(seed);
      m.paper = PAPERS.get((int) (seed % PAPERS.size()));
      m.first().soffit = HeadSpec.Soffit.values()[(int) (seed / 3 % 4)];
      m.language = JobMaker.LANGUAGES[(int) (seed % 3)];
      Optional<ShopWork> work = WorkUp.of(m.make()).value();
      if (work.isEmpty()) {
        continue;
      }
      drawn++;
      List<String> faults = faults(work.get(), m.paper);
      String which = "seed " + seed + ", " + m.paper + ", " + m.language;
      faults.forEach(f -> all.add(which + ": " + f));
      more += larger ? 1 : 0;
    }
    assertTrue(all.isEmpty(), () -> String.join("\n", all));
    // More than a hundred stones in a row have no room for their numbers on A3.
    assertTrue(50 * more <= drawn, more + " of " + drawn + " take larger paper");
    assertTrue(drawn > 25, "too few of the random jobs could be set out: " + drawn);
  }

  /**
   * Cutting plans of flats: soffit strips side by side, short ones, some that nothing is left for.
   */
  @Test
  void flatsWithTheirSoffitStrips() {
    int drawn = 0;
    List<String> all = new ArrayList<>();
    for (long seed = 1; seed <= SEEDS / 2; seed++) {
      JobMaker m = RandomJobs.flat(seed, 12, 160);
      m.paper = PAPERS.get((int) (seed % PAPERS.size()));
      m.first().soffit = seed % 2 == 0 ? HeadSpec.Soffit.MITRED : HeadSpec.Soffit.BUTTED;
      m.first().count = (int) (1 + seed / 5 % 2);
      m.language = JobMaker.LANGUAGES[(int) (seed % 3)];
      m.steps = 20_000;
      m.stock =
          new Stock(
              List.of(flat("F1", 20 + seed % 30, 17 + seed % 5, 12), flat("F2", 24, 5, 6)), 0.1);
      Optional<ShopWork> work = WorkUp.of(m.make()).value();
      if (work.isEmpty()) {
        continue;
      }
      drawn++;
      String which = "seed " + seed + ", " + m.paper + ", " + m.language;
      for (Page page : SheetBook.compose(work.get(), Bundle.BENCH, Frame.plain()).pages()) {
        PageInspector.faults(page).forEach(f -> all.add(which + ": " + f));
      }
    }
    assertTrue(all.isEmpty(), () -> String.join("\n", all));
    assertTrue(drawn > SEEDS / 4, "too few of the random jobs could be set out: " + drawn);
  }

  private List<String> faults(ShopWork work, String paper) {
    List<String> faults = new ArrayList<>();
    larger = false;
    for (Bundle bundle : Bundle.values()) {
      PageSet set = SheetBook.compose(work, bundle, Frame.plain());
      assertFalse(set.pages().isEmpty(), bundle + " has no page");
      var size = PaperSizes.named(paper).orElseThrow();
      for (Page page : set.pages()) {
        double more = page.width() + page.height() - size.width().mm() - size.height().mm();
        assertTrue(more > -1e-9, bundle + " on smaller paper");
        larger |= more > 1e-9;
        PageInspector.faults(page).forEach(f -> faults.add(bundle + " " + f));
      }
    }
    return faults;
  }

  private static JobMaker cartDoor() {
    JobMaker m = JobMaker.one();
    var o = m.first();
    o.width = Length.inches(192);
    o.key =
        new HeadSpec.Key(
            Length.inches(8),
            Length.inches(11),
            Length.inches(2),
            Length.inches(1),
            Length.inches(0.5));
    o.max = Length.inches(8.5);
    o.target = Length.inches(7);
    o.clear = Length.inches(2);
    m.stock =
        new Stock(
            List.of(
                new Stock.Item(
                    "stock.corners[0]",
                    "C1",
                    Stock.Kind.CORNER,
                    Length.inches(24),
                    Length.inches(16),
                    Length.inches(5),
                    Length.inches(1.25),
                    16,
                    false,
                    0)),
            0.1);
    return m;
  }
}
