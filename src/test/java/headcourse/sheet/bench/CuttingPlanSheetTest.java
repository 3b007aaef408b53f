package headcourse.sheet.bench;

import static headcourse.testing.StockItems.flat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.job.Bundle;
import headcourse.job.HeadSpec;
import headcourse.job.Stock;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.frame.Frame;
import headcourse.testing.DemoJobs;
import headcourse.testing.JobMaker;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the cutting plan says beside its drawings. */
class CuttingPlanSheetTest {
  private static String printed(JobMaker m) {
    ShopWork work = WorkUp.of(m.make()).value().orElseThrow();
    List<String> labels = new ArrayList<>();
    for (Page page : SheetBook.compose(work, Bundle.BENCH, Frame.plain()).pages()) {
      collect(page.marks(), labels);
    }
    return String.join(" ", labels);
  }

  private static String text(Page page) {
    List<String> labels = new ArrayList<>();
    collect(page.marks(), labels);
    return String.join(" ", labels);
  }

  private static void collect(List<Mark> marks, List<String> labels) {
    for (Mark mark : marks) {
      if (mark instanceof Mark.Label label) {
        labels.add(label.text());
      } else if (mark instanceof Mark.Group group) {
        collect(group.marks(), labels);
      }
    }
  }

  /**
   * A 96 in door, 10 in key, soldiers: 96 + 2 × 6 − 10 = 98, 49 a side, seven of 7 or six of 8 1/6;
   * six of 8 3/16 end 1/8 beyond the aim and need 9 in blanks with their clean cuts, the key 11.
   */
  @Test
  void whatIsToBeOrderedIsSummedInTheUnitsOfTheTrade() {
    JobMaker m = JobMaker.one();
    m.stock = new Stock(List.of(), 0.1);
    ShopWork work = WorkUp.of(m.make()).value().orElseThrow();
    double inches = 0;
    int pieces = 0;
    for (var line : work.stock().order()) {
      inches += line.count() * line.length().inches();
      pieces += line.count();
    }
    assertEquals(13, work.heads().get(0).pieces().size());
    // 12 of 9 in and the key of 11 in are one family: 10 % of 13 are two spares of 11 in.
    assertEquals(15, pieces);
    assertEquals(12 * 9 + 3 * 11, inches, 1e-9);
    assertTrue(printed(m).contains("Corners in all: 15 pieces, 11.8 ft of arris"), printed(m));
  }

  /** Twenty blanks of one stone each, of which the last would begin a page by itself. */
  @Test
  void noBarStandsOnAPageAlone() throws IOException {
    ShopWork work = DemoJobs.work("sheep-wash");
    List<Integer> bars = new ArrayList<>();
    for (Page page : SheetBook.compose(work, Bundle.BENCH, Frame.plain()).pages()) {
      if (page.label().startsWith("plan")) {
        String text = " " + text(page) + " ";
        bars.add(
            (int)
                work.stock().blanks().stream()
                    .filter(b -> text.contains(" " + b.id() + " "))
                    .count());
      }
    }
    assertEquals(work.stock().blanks().size(), bars.stream().mapToInt(n -> n).sum());
    assertTrue(bars.size() > 1 && bars.stream().allMatch(n -> n > 1), bars.toString());
  }

  /** 2 × 8 soldiers and a key of flats 24 × 14: the soffit strips are ripped two to a length. */
  @Test
  void saysThatAnotherRowMightGoOnAFlat() {
    JobMaker m = JobMaker.one();
    m.first().soffit = HeadSpec.Soffit.MITRED;
    m.stock = new Stock(List.of(flat("F1", 24, 14, 20)), 0.1);
    String text = printed(m);
    assertTrue(text.contains("one row of stones on each flat"), text);
    assertTrue(text.contains("rip 4\""), text);
    m.first().soffit = HeadSpec.Soffit.NONE;
    assertTrue(!printed(m).contains("one row of stones"));
  }

  /** A strip that no flat is left for is told apart from its face. */
  @Test
  void aMissingStripIsNamedAsOne() {
    JobMaker m = JobMaker.one();
    m.first().soffit = HeadSpec.Soffit.MITRED;
    m.stock = new Stock(List.of(flat("F1", 24, 14, 6)), 0.1);
    String text = printed(m);
    String unfit = text.substring(text.indexOf("Fits no blank in the yard"));
    assertTrue(unfit.matches("(?s).*D1-[LRK][0-9]* soffit.*"), unfit);
    assertTrue(text.contains("Flats in all:"), text);
  }

  /** What is ordered in all is read where the order is, not on top of the next page. */
  @Test
  void theSumOfTheOrderStandsWithIt() throws IOException {
    ShopWork work = DemoJobs.work("forge-arch");
    int seen = 0;
    for (Page page : SheetBook.compose(work, Bundle.BENCH, Frame.plain()).pages()) {
      String text = text(page);
      assertEquals(text.contains("To order"), text.contains("Corners in all"), page.label());
      seen += text.contains("To order") ? 1 : 0;
    }
    assertEquals(1, seen);
  }

  /**
   * Index and plan agree on which of them has the runs of one fence, on whatever page they begin.
   */
  @Test
  void theRunsOfOneFenceStandOnce() throws IOException {
    for (String name : DemoJobs.names()) {
      long tables =
          SheetBook.compose(DemoJobs.work(name), Bundle.BENCH, Frame.plain()).pages().stream()
              .filter(p -> text(p).contains("One wrong setting goes into every stone"))
              .count();
      assertTrue(tables <= 1, name + ": " + tables);
    }
  }
}
