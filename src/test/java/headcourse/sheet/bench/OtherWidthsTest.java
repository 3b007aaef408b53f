package headcourse.sheet.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.job.Bundle;
import headcourse.job.Stock;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.frame.Frame;
import headcourse.stock.StockPlan.Saving;
import headcourse.testing.JobMaker;
import headcourse.units.Length;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What another width would save is said on the cutting plan and by {@code check}, and is true. */
class OtherWidthsTest {
  private static JobMaker job(double width, double target) {
    JobMaker maker = JobMaker.one();
    maker.first().width = Length.inches(width);
    maker.first().min = Length.inches(5);
    maker.first().max = Length.inches(9);
    maker.first().target = Length.inches(target);
    Length long24 = Length.inches(24);
    maker.stock =
        new Stock(
            List.of(
                new Stock.Item(
                    "stock.corners[0]",
                    "C1",
                    Stock.Kind.CORNER,
                    long24,
                    Length.inches(14),
                    Length.inches(5),
                    maker.thickness,
                    99,
                    false,
                    0)),
            0.1);
    return maker;
  }

  private static ShopWork work(JobMaker maker) {
    return WorkUp.of(maker.make()).value().orElseThrow();
  }

  private static void collect(List<Mark> marks, List<String> labels) {
    for (Mark mark : marks) {
      if (mark instanceof Mark.Group g) {
        collect(g.marks(), labels);
      } else if (mark instanceof Mark.Label l) {
        labels.add(l.text());
      }
    }
  }

  private static String text(ShopWork work) {
    List<String> labels = new ArrayList<>();
    for (Page p : SheetBook.compose(work, Bundle.BENCH, Frame.plain()).pages()) {
      collect(p.marks(), labels);
    }
    return String.join(" ", labels);
  }

  private static boolean noted(ShopWork work) {
    return work.findings().stream().anyMatch(f -> f.rule().equals("other-width"));
  }

  @Test
  void whatIsSaidIsSavedWhereTheWidthIsWrittenDown() {
    int found = 0;
    for (double width : new double[] {96, 121, 148, 196}) {
      ShopWork work = work(job(width, 8));
      List<Saving> savings = work.stock().savings();
      assertEquals(!savings.isEmpty(), noted(work), "width " + width);
      assertEquals(!savings.isEmpty(), text(work).contains("would take"), "width " + width);
      for (Saving s : savings) {
        found++;
        int now = work.stock().blanks().size();
        assertTrue(s.blanks() < now, "width " + width);
        ShopWork then = work(job(width, s.width().mm() / 25.4));
        assertEquals(s.blanks(), then.stock().blanks().size(), "width " + width);
        String said =
            "instead of 8\" would take " + s.blanks() + " corners in all instead of " + now;
        assertTrue(text(work).contains(said), text(work));
      }
    }
    assertTrue(found > 0);
  }
}
