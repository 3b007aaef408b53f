package headcourse.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.export.OrderListCsv;
import headcourse.job.Bundle;
import headcourse.job.yaml.JobReader;
import headcourse.layout.shapes.Shapes;
import headcourse.rules.RuleBook;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.frame.Frame;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A corner made to order, asked for in one line of the job. */
class OrderTest {
  private static final String JOB =
      """
      job: {setting-date: 2026-06-22}
      units: in
      stone: {density: 140 lb/ft3, thickness: 1 1/4}
      openings:
        - mark: D1
          width: 8'
          head:
            shape: soldier
            height: 12
            key: {bottom: 8, top: 10, rise: 1 1/2, proud: 1/2}
            stones: {min: 5, max: 9, target: 7}
            bearing: {min: 4, max: 8, target: 6}
            clear: 1 1/2
      stock:
        order:
          - {mark: X1, arris: 22, face: 18, return: 6, price: 48, lead: 3 weeks, trim: TRIM}
      """;

  private static ShopWork worked(String trim) {
    var read =
        JobReader.read(
            "job.yaml",
            JOB.replace("TRIM", trim).getBytes(StandardCharsets.UTF_8),
            Shapes.definitions(),
            RuleBook.limits(),
            name -> Optional.empty());
    return WorkUp.of(read.value().orElseThrow()).value().orElseThrow();
  }

  /**
   * Three stones of 7 in, two kerfs and two clean cuts of 1/8 take 21 1/2 of 22. The key, 10 in
   * wide at its top, leaves room for one: 14 stones and a key take 6, and one spare (10 %, at least
   * one) makes 7. Seven at 48 are 336; three weeks before 22 June is 1 June.
   */
  @Test
  void theCustomCornerIsWhatIsOrdered() {
    ShopWork work = worked("1/2");
    List<String> rows = OrderListCsv.write(work).lines().toList();
    assertEquals(2, rows.size(), rows.toString());
    assertTrue(rows.get(1).startsWith("X1,corner,7,1,22,18,6,1 1/4,"), rows.get(1));
    assertTrue(rows.get(1).endsWith(",336.0,21,2026-06-01"), rows.get(1));
    List<String> labels = new ArrayList<>();
    for (Page page : SheetBook.compose(work, Bundle.BENCH, Frame.plain()).pages()) {
      if (page.label().startsWith("plan")) {
        collect(page.marks(), labels);
      }
    }
    String plan = String.join(" ", labels);
    assertTrue(plan.contains("X1: 7 pieces, 336.00 in all."), plan);
    assertTrue(plan.contains("X1: order by 2026-06-01 at the latest (21 days"), plan);
  }

  /**
   * Asked for by its arris alone, it has the legs that the job needs: 12 and a rise of 1 1/2, 4 and
   * half an inch proud, and 1/2 over each. What is ordered is that corner, and no size made up.
   */
  @Test
  void anArrisAloneIsEnough() {
    String line = JOB.replace("face: 18, return: 6, ", "").replace("TRIM", "1/2");
    var read =
        JobReader.read(
            "job.yaml",
            line.getBytes(StandardCharsets.UTF_8),
            Shapes.definitions(),
            RuleBook.limits(),
            name -> Optional.empty());
    ShopWork work = WorkUp.of(read.value().orElseThrow()).value().orElseThrow();
    assertTrue(work.stock().unfit().isEmpty());
    List<String> rows = OrderListCsv.write(work).lines().toList();
    assertEquals(2, rows.size(), rows.toString());
    assertTrue(rows.get(1).startsWith("X1,corner,7,1,22,14,5,1 1/4,"), rows.get(1));
  }

  /** What a corner has over the finished stone, in its return, is what can be trimmed away. */
  @Test
  void theTrimmingAllowanceIsKeptOverTheFinishedStone() {
    assertTrue(worked("1 1/2").stock().unfit().isEmpty());
    // Its return is 4 1/2 under a key that stands proud by 1/2: 1 1/2 is all that 6 leaves.
    assertEquals("D1-K", worked("1 9/16").stock().unfit().get(0).stone());
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
}
